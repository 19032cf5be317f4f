/** The count sheet to read: per row and size the stitches before, used, made, after and stated. */
import type { Proof } from '../../index.ts';
import type { Entry } from '../../replay/replay.ts';
import { checkpoints, statedTotals } from '../checkpoints.ts';
import type { ReportInput } from '../input.ts';
import { skips } from '../not-checked.ts';
import { hasSizes, rangeOf } from '../place.ts';
import { nameOf, type Report, whole } from '../report.ts';
import { multipleWords, sectionTitle } from '../tally-json.ts';
import { html, type Markup, nothing } from './markup.ts';
import { pageOfDrafts, plainList } from './page-of-drafts.ts';
import { sizeFilter, summary } from './proof-page.ts';

const leastFolded = 4;

export const tallyPage: Report<Markup> = {
  part: (proof, index, { drafts }) => sheet(proof, `d${index}`, drafts === 1),
  assemble: (run) =>
    pageOfDrafts(run, {
      title: (name) => `${name}: count sheet`,
      heading: (name, one) => (one ? name : `Count sheets of ${name}`),
      list: plainList,
      foot: '? stands where the count is not known, – where the size does not work the row.',
    }),
};

export const tallyHtml = (input: ReportInput): string => whole(tallyPage, input);

/** Something to print in one table body: single rows, or a stretch that is folded. */
interface Stretch {
  readonly section: string;
  readonly folded: boolean;
  readonly indexes: readonly number[];
}

function sheet(proof: Proof, id: string, one: boolean): Markup {
  const sizes = proof.pattern.sizes.map((_, size) => size);
  const counted = new Set(checkpoints(proof, sizes));
  const totals = statedTotals(proof);
  const stretches = stretchesOf(proof, totals);
  const columns = 4 + sizes.length * 5;
  let lastSection: string | null = null;
  const bodies = stretches.map((stretch, index) => {
    const head =
      stretch.section === lastSection
        ? nothing
        : html`<tbody><tr class="section"><th colspan="${columns}" scope="rowgroup">${stretch.section === '' ? 'Before the first heading' : stretch.section}</th></tr></tbody>`;
    lastSection = stretch.section;
    return html`${head}${body(proof, id, stretch, index, counted, totals)}`;
  });
  const named = hasSizes(proof);
  return html`<section id="${id}" data-draft aria-label="${nameOf(proof)}">${one ? nothing : html`<h2>${nameOf(proof)}</h2>`}
<p class="meta">${summary(proof)}</p>
${sizeFilter(proof, id)}<div><fieldset class="views" hidden><legend>Rows</legend><label><input type="radio" name="${id}-rows" value="all" checked> all rows</label><label><input type="radio" name="${id}-rows" value="checkpoints"> checkpoints only: where the count changes for the last time in a block</label></fieldset>
<div class="scroll" tabindex="0" role="region" aria-label="Count sheet"><table class="sheet"><caption>Stitches on the needle: before the row, used, made, after it, and as the draft states them</caption>
<thead>${named ? html`<tr><th colspan="4"><span class="vh">Row</span></th>${proof.pattern.sizes.map((name, size) => html`<th colspan="5" scope="colgroup" data-s="${size}">size ${name}</th>`)}</tr>` : nothing}<tr><th scope="col">line</th><th scope="col" class="t">row</th><th scope="col">side</th><th scope="col">times</th>${sizes.map((size) => ['before', 'used', 'made', 'after', 'stated'].map((word, column) => html`<th scope="col" data-s="${size}"${column === 0 ? html` class="b"` : nothing}>${word}</th>`))}</tr></thead>
${bodies}</table></div></div></section>`;
}

/** Nothing is gained or lost in any size, and nothing is stated. */
function isPlain(proof: Proof, index: number, stated: Stated): boolean {
  const entry = proof.replay.entries[index] as Entry;
  if (entry.unit === 'step' || entry.afterPerRepeat !== null) return false;
  return proof.pattern.sizes.every(
    (_, size) => entry.before[size] === entry.after[size] && entry.before[size] !== undefined && stated(index, size) === null,
  );
}

type Stated = ReturnType<typeof statedTotals>;

function stretchesOf(proof: Proof, stated: Stated): Stretch[] {
  const { entries } = proof.replay;
  const out: Stretch[] = [];
  for (let at = 0; at < entries.length; ) {
    const first = entries[at] as Entry;
    const section = sectionTitle(proof, first);
    let end = at + 1;
    const plain = isPlain(proof, at, stated);
    if (plain)
      while (
        end < entries.length &&
        entries[end]?.section === first.section &&
        isPlain(proof, end, stated) &&
        sameCounts(first, entries[end] as Entry)
      )
        end += 1;
    out.push({ section, folded: plain && end - at >= leastFolded, indexes: Array.from({ length: end - at }, (_, step) => at + step) });
    at = end;
  }
  return out;
}

const sameCounts = (a: Entry, b: Entry) => a.after.every((count, size) => count === b.after[size]);

function body(proof: Proof, id: string, stretch: Stretch, index: number, counted: ReadonlySet<number>, totals: Stated): Markup {
  const rows = stretch.indexes.map((each) => row(proof, id, each, counted.has(each), totals));
  if (!stretch.folded) return html`<tbody>${rows}</tbody>`;
  const entries = stretch.indexes.map((each) => proof.replay.entries[each] as Entry);
  const first = entries[0] as Entry;
  const worked = entries.reduce((sum, entry) => sum + entry.times, 0);
  const words = `${worked} ${first.unit === 'round' ? 'rounds' : 'rows'} even, ${first.label} to ${entries.at(-1)?.label ?? ''}`;
  const fold = `${id}-fold${index}`;
  return html`<tbody><tr class="plain"><td>${rangeOf(proof.manuscript, first.span).line}</td><th scope="row">${words} <button type="button" data-folds="${fold}" aria-expanded="true" hidden>rows</button></th><td></td><td>${worked}</td>${proof.pattern.sizes.map(
    (_, size) => {
      const count = first.after[size];
      return html`<td class="b" data-s="${size}">${count ?? ''}</td><td data-s="${size}"></td><td data-s="${size}"></td><td data-s="${size}">${count ?? ''}</td><td data-s="${size}"></td>`;
    },
  )}</tr></tbody><tbody id="${fold}" class="folded">${rows}</tbody>`;
}

function row(proof: Proof, id: string, index: number, isCheckpoint: boolean, totals: Stated): Markup {
  const entry = proof.replay.entries[index] as Entry;
  const head = html`<td>${rangeOf(proof.manuscript, entry.span).line}</td><th scope="row">${entry.label}</th><td>${entry.unit === 'round' ? '' : (entry.side ?? '')}</td><td>${entry.times > 1 ? entry.times : ''}</td>`;
  if (entry.afterPerRepeat !== null) {
    return html`<tr id="${id}-e${index}">${head}<td class="b t" colspan="${proof.pattern.sizes.length * 5}">after it a ${multipleWords(entry.afterPerRepeat)} stitches, for every number of repeats</td></tr>`;
  }
  const cells = proof.pattern.sizes.map((_, size) => {
    const before = entry.before[size] ?? null;
    const after = entry.after[size] ?? null;
    const unknown = skips(entry, size) ? '–' : '?';
    const stated = totals(index, size);
    const data = html` data-s="${size}"`;
    const statedCell =
      stated === null || (before === null && after === null)
        ? html`<td${data}></td>`
        : stated === after || after === null
          ? html`<td${data}>${stated}</td>`
          : html`<td${data} class="differs">≠ ${stated}</td>`;
    return html`<td class="b"${data}>${before ?? unknown}</td><td${data}>${entry.takes[size] ?? ''}</td><td${data}>${entry.makes[size] ?? ''}</td><td${data}>${after ?? unknown}</td>${statedCell}`;
  });
  return html`<tr id="${id}-e${index}"${isCheckpoint ? nothing : html` class="plain"`}>${head}${cells}</tr>`;
}
