/**
 * The report an editor reads: what stops a knitter first, then questions to the author, then house style, each in the
 * order of the draft, and at the end what was not read. Plain text that survives mail.
 */
import type { Finding, Level } from '../../rules/rule.ts';
import type { Proof } from '../index.ts';
import type { ReportInput } from './input.ts';
import { cut, show, wrap } from './layout.ts';
import { countSentence, levelHeading, levels } from './levels.ts';
import { type Paint, plainPaint } from './paint.ts';
import { hasSizes, inPlaceOrder, printedPath, rangeOf, sectionAt } from './place.ts';
import { plural } from './plural.ts';
import { findingText, indent } from './text-finding.ts';

export interface TextOptions {
  /** Columns of the page. */
  readonly width: number;
  readonly paint: Paint;
}

export const plainText: TextOptions = { width: 80, paint: plainPaint };

/** The findings of every draft, drafts in the order given. */
export function proofText(input: ReportInput, options: TextOptions = plainText): string {
  const drafts = input.proofs.map((proof) => draftText(proof, options).join('\n'));
  const all = input.proofs.length + input.unreadable.length > 1 ? [allDrafts(input, options)] : [];
  return `${[...drafts, ...all].join(`\n\n${'─'.repeat(options.width)}\n\n`)}\n`;
}

function draftText(proof: Proof, { width, paint }: TextOptions): readonly string[] {
  return [
    ...titleLines(proof, width, paint),
    ...findingLines(proof, width, paint),
    ...notReadLines(proof, width, paint),
    '',
    ...closing(proof, width),
  ];
}

function titleLines(proof: Proof, width: number, paint: Paint): readonly string[] {
  const path = show(printedPath(proof.path));
  const title = show(proof.pattern.title);
  const names = proof.pattern.sizes.map(show);
  const sizes = hasSizes(proof) ? `${names.length === 1 ? 'Size' : 'Sizes'} ${names.join(', ')}. ` : '';
  return [
    ...(title === '' ? [] : wrap(title, width).map((line) => paint.strong(line))),
    path,
    ...wrap(`${sizes}${readingWords(proof)}`, width),
  ];
}

/** "412 of 415 steps read." */
export function readingWords(proof: Proof): string {
  const { steps, read } = proof.pattern.reading;
  if (steps > 0) return `${read} of ${plural(steps, 'step')} read.`;
  return proof.manuscript.source.trim() === '' || proof.manuscript.source === '\ufeff'
    ? 'The draft is empty: there is nothing to check.'
    : 'The draft instructs nothing: no rows were found to check.';
}

function findingLines(proof: Proof, width: number, paint: Paint): readonly string[] {
  const lines: string[] = [];
  let number = 0;
  for (const level of levels) {
    const found = inPlaceOrder(proof.findings.filter((finding) => finding.level === level));
    if (found.length === 0) continue;
    lines.push('', heading(level, found, paint));
    for (const finding of found) {
      number += 1;
      lines.push('', ...findingText(proof, finding, number, width, paint));
    }
  }
  return lines;
}

function heading(level: Level, found: readonly Finding[], paint: Paint): string {
  return paint.strong(paint.level(`${levelHeading[level].toUpperCase()} (${found.length})`, level));
}

function notReadLines(proof: Proof, width: number, paint: Paint): readonly string[] {
  const { notRead } = proof.pattern.reading;
  if (notRead.length === 0) return [];
  const lines = notRead.map((unread) => {
    const at = `line ${rangeOf(proof.manuscript, unread.span).line}`.padEnd(10);
    const section = show(sectionAt(proof, unread.span.start));
    const place = section === '' ? '' : `${cut(section, 24)}: `;
    return `${indent}${cut(`${at}${place}"${show(unread.text).trim()}"`, width - indent.length)}`;
  });
  return ['', paint.strong(`NOT READ (${notRead.length})`), ...lines];
}

/** What was found and how far the reading went; never that the pattern is right. */
function closing(proof: Proof, width: number): readonly string[] {
  const { steps, notRead } = proof.pattern.reading;
  if (proof.findings.length > 0) {
    const rest = notRead.length === 0 ? [] : wrap(unreadWords(notRead.length), width);
    const put = (proof.known?.length ?? 0) + (proof.withheld?.length ?? 0);
    const still = put === 0 ? [] : wrap(`${put} known or let stand ${put === 1 ? 'is' : 'are'} not repeated.`, width);
    return [...wrap(countSentence(proof.findings.map((finding) => finding.level)), width), ...rest, ...still];
  }
  if (steps === 0) return ['Nothing was checked.'];
  const inSizes = hasSizes(proof) ? ` in ${plural(proof.pattern.sizes.length, 'size')}` : '';
  const rest = notRead.length === 0 ? '.' : `; ${unreadWords(notRead.length)}`;
  const put = (proof.known?.length ?? 0) + (proof.withheld?.length ?? 0);
  const still = put === 0 ? '' : ` ${put} known or let stand ${put === 1 ? 'is' : 'are'} not repeated.`;
  return wrap(
    `No ${put === 0 ? '' : 'new '}contradiction found in ${plural(proof.pattern.reading.read, 'step')}${inSizes}${rest}${still}`,
    width,
  );
}

function unreadWords(count: number): string {
  return count === 1 ? '1 step was not read and not checked.' : `${count} steps were not read and not checked.`;
}

function allDrafts(input: ReportInput, { width }: TextOptions): string {
  const findings = input.proofs.flatMap((proof) => proof.findings);
  const notRead = input.proofs.reduce((sum, proof) => sum + proof.pattern.reading.notRead.length, 0);
  const parts = [
    `${plural(input.proofs.length, 'draft')} proofed.`,
    ...(input.unreadable.length === 0 ? [] : [`${plural(input.unreadable.length, 'draft')} could not be proofed.`]),
    countSentence(findings.map((finding) => finding.level)),
    ...(notRead === 0 ? [] : [unreadWords(notRead)]),
  ];
  return parts.flatMap((part) => wrap(part, width)).join('\n');
}
