/** One finding as a card: place, sentence, sum, sizes, evidence, edits, and the row step by step. */
import type { Finding } from '../../../rules/rule.ts';
import { replayEntry } from '../../replay/replay-row.ts';
import { alsoOn, hasSizes, listWords, rangeOf, sizeNames } from '../place.ts';
import { entryOf, sumOf } from '../sum.ts';
import { type DraftContext, findingId, findingLine, lineId, numberOf, planId } from './context.ts';
import { html, type Markup, nothing } from './markup.ts';
import { rowTable } from './row-table.ts';

const printed = (value: number | null) => (value === null ? '?' : value);

export function findingCard(context: DraftContext, finding: Finding): Markup {
  const number = numberOf(context, finding);
  const line = findingLine(context, finding);
  const place = [finding.section ?? '', finding.row ?? ''].filter((word) => word !== '').join(' · ') || 'The draft as a whole';
  return html`<article class="finding ${finding.level}" id="${findingId(context, finding)}" data-sizes="${finding.sizes.join(' ')}" aria-labelledby="${findingId(context, finding)}-h">
<h3 id="${findingId(context, finding)}-h"><span class="no"><span class="vh">Number </span>${number}</span> <span>${place}</span> <a class="where" href="#${lineId(context, line)}">line ${line}</a></h3>
<p>${finding.message}</p>
${sumTable(context, finding)}${sizeLine(context, finding)}${evidence(finding)}${edits(context, finding)}${alsoLine(context, finding)}${stepByStep(context, finding)}
<p class="id"><span>${finding.rule}</span> <label><input type="checkbox"> dealt with<span class="vh">: number ${number}</span></label></p>
</article>`;
}

/** A question that is not about a count is not helped by one. */
const asksForSum = (finding: Finding) => finding.level === 'error' || finding.stated !== null || finding.replayed !== null;

function sumTable({ proof }: DraftContext, finding: Finding): Markup {
  const sum = asksForSum(finding) ? sumOf(proof, finding) : null;
  if (sum === null) return nothing;
  const withSizes = hasSizes(proof);
  const withWork = sum.times === 1 && sum.lines.some((line) => line.takes !== null && line.makes !== null);
  const withStated = sum.lines.some((line) => line.stated !== null);
  const head = (word: string) => html`<th scope="col">${word}</th>`;
  const times = sum.times > 1 ? html`<caption>worked ${sum.times} times: before the first, after the last</caption>` : nothing;
  return html`<table class="sum">${times}<thead><tr>${withSizes ? html`<th scope="col" class="t">size</th>` : nothing}${head('before')}${withWork ? [head('takes'), head('makes')] : []}${head('after')}${withStated ? head('stated') : nothing}</tr></thead><tbody>${sum.lines.map(
    (line) =>
      html`<tr>${withSizes ? html`<th scope="row">${line.size}</th>` : nothing}<td>${printed(line.before)}</td>${withWork ? html`<td>${printed(line.takes)}</td><td>${printed(line.makes)}</td>` : nothing}<td>${printed(line.after)}</td>${withStated ? statedCell(line.stated, line.after) : nothing}</tr>`,
  )}</tbody></table>`;
}

/** A count that differs carries a sign, not only a colour. */
export function statedCell(stated: number | null, after: number | null): Markup {
  if (stated === null) return html`<td></td>`;
  return stated === after ? html`<td>${stated}</td>` : html`<td class="differs">≠ ${stated}</td>`;
}

function sizeLine({ proof }: DraftContext, finding: Finding): Markup {
  if (finding.sizes.length === 0 || !hasSizes(proof)) return nothing;
  const all = proof.pattern.sizes;
  const names = sizeNames(proof, finding.sizes);
  if (names.length === all.length && all.length > 1) return html`<p class="small">Holds in every size.</p>`;
  const fine = all.filter((_, size) => !finding.sizes.includes(size));
  return html`<p class="small">Holds in ${names.length === 1 ? 'size' : 'sizes'} <strong>${listWords(names)}</strong>.${fine.length === 0 ? '' : ` Nothing found here in ${listWords(fine)}.`}</p>`;
}

function evidence(finding: Finding): Markup {
  const sentences = finding.evidence ?? [];
  return sentences.length === 0 ? nothing : html`<ul>${sentences.map((sentence) => html`<li>${sentence}</li>`)}</ul>`;
}

function edits(context: DraftContext, finding: Finding): Markup {
  if (finding.fix !== null) {
    const { manuscript } = context.proof;
    const { span, text } = finding.fix;
    const was = manuscript.source.slice(span.start, span.end);
    const line = rangeOf(manuscript, span).line;
    const place = line === findingLine(context, finding) ? '' : `, line ${line}`;
    if (was === '') return html`<p class="edit">Add <ins>${text}</ins>${place}</p>`;
    if (text === '') return html`<p class="edit">Take out <del>${was}</del>${place}</p>`;
    return html`<p class="edit">Change <del>${was}</del> to <ins>${text}</ins>${place}</p>`;
  }
  const fits = finding.wouldFit ?? [];
  if (fits.length === 0) return nothing;
  if (fits.length === 1) return html`<p class="edit">Would fit: ${fits[0] ?? ''}</p>`;
  return html`<div class="edit"><p>Would fit:</p><ol>${fits.map((edit) => html`<li>${edit}</li>`)}</ol></div>`;
}

function alsoLine(context: DraftContext, finding: Finding): Markup {
  const lines = alsoOn(context.proof, finding);
  if (lines.length === 0) return nothing;
  const links = lines.slice(0, 12).map((line, index) => html`${index === 0 ? '' : ', '}<a href="#${lineId(context, line)}">${line}</a>`);
  return html`<p class="small">See also ${lines.length === 1 ? 'line' : 'lines'} ${links}${lines.length > 12 ? ` and ${lines.length - 12} more` : ''}.</p>`;
}

/** The row in the first size the finding holds for, and the way to its squares. */
function stepByStep(context: DraftContext, finding: Finding): Markup {
  const { proof, moments } = context;
  const entry = entryOf(proof, finding);
  if (entry === null || entry.afterPerRepeat !== null) return nothing;
  const index = proof.replay.entries.indexOf(entry);
  const size = finding.sizes[0] ?? 0;
  if (!moments.some((moment) => moment.entry === index && moment.size === size)) return nothing;
  const replay = replayEntry(proof, index, proof.pattern.sizes[size] ?? null, undefined, moments);
  const squares = html`<p class="small screen"><a href="#${planId(context, size)}-e${index}">This row on squared paper</a></p>`;
  if (replay === null) return squares;
  const title = hasSizes(proof) ? `The row step by step in size ${replay.size}` : 'The row step by step';
  return html`<details><summary>${title}</summary>${rowTable(replay, hasSizes(proof))}</details>${squares}`;
}
