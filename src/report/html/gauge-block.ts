/** The schematic in words on the editor's page: pieces at gauge, the measures printed, yarn per size. */
import { printed, valueAt } from '../../../rules/facts/units.ts';
import { atGauge, type PieceMeasures } from '../at-gauge.ts';
import { finishedMeasures } from '../finished-measures.ts';
import { hasSizes } from '../place.ts';
import type { DraftContext } from './context.ts';
import { html, type Markup, nothing } from './markup.ts';

export function gaugeBlock({ proof, id }: DraftContext): Markup | null {
  const made = atGauge(proof);
  if (made === null) return null;
  const { sizes } = proof.pattern;
  const head = html`<thead><tr><th scope="col" class="t">measure</th>${sizes.map((name, size) => html`<th scope="col" data-s="${size}">${hasSizes(proof) ? `size ${name}` : 'cm'}</th>`)}</tr></thead>`;
  const line = (words: string, cells: readonly (string | null)[]) =>
    cells.every((cell) => cell === null)
      ? nothing
      : html`<tr><th scope="row">${words}</th>${cells.map((cell, size) => html`<td data-s="${size}">${cell ?? '?'}</td>`)}</tr>`;
  const cm = (values: readonly (number | null)[]) => values.map((value) => (value === null ? null : `${value} cm`));
  const piece = (each: PieceMeasures) => {
    const across = each.inRounds ? 'around' : 'wide';
    const same = (one: readonly (number | null)[], other: readonly (number | null)[]) => one.every((value, size) => value === other[size]);
    return html`<tbody><tr class="section"><th colspan="${sizes.length + 1}" scope="rowgroup">${each.title === '' ? 'The piece' : each.title}</th></tr>
${line(`begins, ${across}`, cm(each.begins))}${same(each.widest, each.begins) ? nothing : line(`widest, ${across}`, cm(each.widest))}${same(each.ends, each.widest) ? nothing : line(`last count, ${across}`, cm(each.ends))}${line('high, rows as counted', cm(each.height))}</tbody>`;
  };
  const asPrinted = finishedMeasures(proof);
  const printedRows = asPrinted.map(({ name, measure }) =>
    line(
      name,
      sizes.map((_, size) => {
        const value = valueAt(measure, size, sizes.length);
        return value === null ? null : printed(value, measure.unit);
      }),
    ),
  );
  const tens = (value: number) => (value < 200 ? Math.round(value / 5) * 5 : Math.round(value / 10) * 10);
  const yarn =
    made.yarn === null
      ? nothing
      : html`<tbody><tr class="section"><th colspan="${sizes.length + 1}" scope="rowgroup">Yarn, all colours together</th></tr>${line('stitches worked', made.yarn.stitches.map(String))}${line(
          'takes about, m',
          made.yarn.metres.map(({ low, high }) => `${tens(low)}–${tens(high)}`),
        )}</tbody>`;
  return html`<section aria-labelledby="${id}-gauge"><h2 id="${id}-gauge">Measures at gauge</h2>
<p>What the counts of each piece come to at ${made.words}, edges drawn straight, without seams and trims; beside it what the draft prints. A check drawing in words: differences within the rounding of a repeat are none.</p>
<div class="scroll" tabindex="0" role="region" aria-label="Table of measures"><table class="sheet">${head}${made.pieces.map(piece)}${printedRows.length === 0 ? nothing : html`<tbody><tr class="section"><th colspan="${sizes.length + 1}" scope="rowgroup">As printed in the draft</th></tr>${printedRows}</tbody>`}${yarn}</table></div>
${made.yarn === null ? html`<p class="small">Some lengths are told by measures, so the stitches of the whole, and the yarn they take, are not known.</p>` : html`<p class="small">The yarn is reckoned from the length of one loop of plain knitting at this gauge; ribs, cables and stranded knitting take more. A piece counts as often as its heading says it is made.</p>`}</section>`;
}
