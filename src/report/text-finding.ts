/** One finding as an editor reads it: the place, the line, what the knitter runs into, the sum, the evidence, the edits. */
import type { Finding } from '../../rules/rule.ts';
import type { Proof } from '../index.ts';
import { excerpt } from './excerpt.ts';
import { columns, padStart, show, textWidth, wrap } from './layout.ts';
import type { Paint } from './paint.ts';
import { alsoOn, hasSizes, listWords, placeWords, rangeOf } from './place.ts';
import { plural } from './plural.ts';
import { sumOf } from './sum.ts';

export const indent = '   ';

/** A finding numbered within its draft, so that a mail can speak of "number 4". */
export function findingText(proof: Proof, finding: Finding, number: number, width: number, paint: Paint): readonly string[] {
  const inner = width - indent.length;
  return [
    ...headLines(proof, finding, number, width, paint),
    '',
    ...excerptLines(proof, finding, inner, paint),
    ...indented(wrap(show(finding.message), inner)),
    ...sumText(proof, finding),
    ...otherSizes(proof, finding, inner),
    ...(finding.evidence ?? []).flatMap((sentence) => indented(wrap(`– ${show(sentence)}`, inner, '  '))),
    ...editLines(proof, finding, inner),
    ...alsoLines(proof, finding, inner),
    paint.quiet(`${indent}${finding.rule}`),
  ];
}

const indented = (lines: readonly string[]) => lines.map((line) => indent + line);

function headLines(proof: Proof, finding: Finding, number: number, width: number, paint: Paint): readonly string[] {
  const { line } = rangeOf(proof.manuscript, finding.span);
  const label = `${padStart(String(number), 2)} `;
  const words = show(placeWords(proof, finding)) || 'The draft as a whole';
  const at = `line ${line}`;
  const lines = wrap(words, width - label.length - at.length - 2);
  const gap = ' '.repeat(Math.max(2, width - label.length - textWidth(lines[0] ?? '') - at.length));
  const first = `${label}${paint.level(lines[0] ?? '', finding.level)}${gap}${paint.quiet(at)}`;
  return [first, ...lines.slice(1).map((more) => indent + paint.level(more, finding.level))];
}

function excerptLines(proof: Proof, finding: Finding, width: number, paint: Paint): readonly string[] {
  const { text, mark } = excerpt(proof.manuscript, finding.span, width - 2);
  if (text.trim() === '') return [];
  const { line, endLine } = rangeOf(proof.manuscript, finding.span);
  const on = endLine > line ? ` and on to line ${endLine}` : '';
  return [`${indent}| ${text}`, `${indent}| ${paint.level(mark, finding.level)}${on}`.trimEnd()];
}

const printed = (value: number | null) => (value === null ? '?' : String(value));

/** A question that is not about a count is not helped by one. */
const asksForSum = (finding: Finding) => finding.level === 'error' || finding.stated !== null || finding.replayed !== null;

function sumText(proof: Proof, finding: Finding): readonly string[] {
  if (!asksForSum(finding)) return [];
  const sum = sumOf(proof, finding);
  if (sum === null) return [];
  const withSizes = hasSizes(proof);
  const withWork = sum.times === 1 && sum.lines.some((line) => line.takes !== null && line.makes !== null);
  const withStated = sum.lines.some((line) => line.stated !== null);
  const head = [
    ...(withSizes ? ['size'] : []),
    'before',
    ...(withWork ? ['takes', 'makes'] : []),
    'after',
    ...(withStated ? ['stated'] : []),
  ];
  const rows = sum.lines.map((line) => [
    ...(withSizes ? [show(line.size)] : []),
    printed(line.before),
    ...(withWork ? [printed(line.takes), printed(line.makes)] : []),
    printed(line.after),
    ...(withStated ? [statedCell(line.stated, line.after)] : []),
  ]);
  const times = sum.times > 1 ? [`${indent}   (worked ${plural(sum.times, 'time')}: before the first, after the last)`] : [];
  return ['', ...columns([head, ...rows], withSizes ? [0] : []).map((line) => `${indent}   ${line}`), ...times, ''];
}

/** A count that differs carries a sign, not only a colour. */
function statedCell(stated: number | null, after: number | null): string {
  if (stated === null) return '';
  return stated === after ? String(stated) : `≠ ${stated}`;
}

function otherSizes(proof: Proof, finding: Finding, width: number): readonly string[] {
  const all = proof.pattern.sizes;
  if (finding.sizes.length === 0 || finding.sizes.length === all.length || !hasSizes(proof)) return [];
  const others = all.filter((_, size) => !finding.sizes.includes(size)).map(show);
  const words = others.length === 1 ? `size ${listWords(others)}` : `sizes ${listWords(others)}`;
  return indented(wrap(`Nothing found here in ${words}.`, width));
}

function editLines(proof: Proof, finding: Finding, width: number): readonly string[] {
  if (finding.fix !== null) {
    const { span, text } = finding.fix;
    const was = show(proof.manuscript.source.slice(span.start, span.end));
    const line = rangeOf(proof.manuscript, span).line;
    const place = line === rangeOf(proof.manuscript, finding.span).line ? '' : `, line ${line}`;
    const edit = was === '' ? `Add: "${show(text)}"` : text === '' ? `Take out: "${was}"` : `Change: "${was}" to "${show(text)}"`;
    return indented(wrap(`${edit}${place}`, width, '  '));
  }
  const edits = finding.wouldFit ?? [];
  return edits.flatMap((edit, index) => {
    const lead = index === 0 ? 'Would fit: ' : '       or: ';
    const [first = '', ...more] = wrap(show(edit), width - lead.length);
    return indented([lead + first, ...more.map((line) => ' '.repeat(lead.length) + line)]);
  });
}

function alsoLines(proof: Proof, finding: Finding, width: number): readonly string[] {
  const lines = alsoOn(proof, finding);
  if (lines.length === 0) return [];
  const shown = lines.slice(0, 12).map(String);
  const more = lines.length > shown.length ? ` and ${lines.length - shown.length} more` : '';
  return indented(
    wrap(`See also ${lines.length === 1 ? 'line' : 'lines'} ${more === '' ? listWords(shown) : shown.join(', ')}${more}.`, width),
  );
}
