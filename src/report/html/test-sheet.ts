/** The test knitter's sheet for one size: counts to reach, boxes to tick and fill, markers that stay, yarn to keep back. */

import { printed, valueAt } from '../../../rules/facts/units.ts';
import type { Range } from '../../../rules/tables/loop-length.ts';
import type { Proof } from '../../index.ts';
import type { Entry } from '../../replay/replay.ts';
import { checkpoints } from '../checkpoints.ts';
import { finishedMeasures } from '../finished-measures.ts';
import type { ReportInput } from '../input.ts';
import { printedPath, sizeIndex, withoutSizeSentence } from '../place.ts';
import { type MarkerPlan, markerPlan } from '../plan/free-columns.ts';
import { planLines } from '../plan/layout.ts';
import { plural } from '../plural.ts';
import { nameOf, type Report, whole } from '../report.ts';
import { rowsWorked } from '../rows-worked.ts';
import { sectionTitle } from '../tally-json.ts';
import { plainWords } from '../words.ts';
import { yarnNeeds } from '../yarn-needs.ts';
import { contextOf } from './context.ts';
import { html, type Markup, nothing } from './markup.ts';
import { pageOfDrafts, plainList } from './page-of-drafts.ts';

/** The sheet of every draft that has the size; a draft that does not have it has no part. `size` is its name as a person writes it. */
export const testSheet = (size: string): Report<Markup | null> => ({
  part: (proof, index, { drafts }) => {
    const at = sizeIndex(proof.pattern.sizes, size);
    return at < 0 ? null : sheet(proof, index, at, drafts === 1);
  },
  assemble: (run) => {
    const without: string[] = [];
    let printed = '';
    const made = pageOfDrafts(run, {
      title: (name) => `${name}${printed}: test knitting`,
      heading: (name) => `${name}${printed}: sheet for the test knitter`,
      list: (listed) => html`${listed.length > 1 ? plainList(listed) : nothing}${withoutSize(without, size)}`,
      foot: 'Nothing here judges the knitter: where a count differs, the pattern is asked first.',
    });
    return {
      ...made,
      add(part, digest) {
        const at = sizeIndex(digest.sizes, size);
        if (at < 0) without.push(digest.name);
        else if (digest.hasSizes && printed === '') printed = `, size ${digest.sizes[at] ?? ''}`;
        return made.add(part, digest);
      },
    };
  },
});

export const testSheetHtml = (input: ReportInput, size: string): string => whole(testSheet(size), input);

function withoutSize(names: readonly string[], size: string): Markup {
  return names.length === 0 ? nothing : html`<p>${withoutSizeSentence(names, size)}</p>`;
}

const box = html`<span class="box" aria-hidden="true"></span>`;
const blank = html`<span class="fill" aria-hidden="true"></span>`;

function sheet(proof: Proof, index: number, size: number, one: boolean): Markup {
  const id = `d${index}`;
  return html`<section id="${id}" aria-label="${nameOf(proof)}">${one ? nothing : html`<h2>${nameOf(proof)}</h2>`}
<p class="meta">${printedPath(proof.path)} <button type="button" data-print hidden>Print</button></p>
${before(proof)}${counts(proof, size)}${markers(proof, index, size)}${measures(proof, size)}${yarn(proof, size)}${unclear(proof, size)}${closing}</section>`;
}

function before(proof: Proof): Markup {
  const gauge = proof.pattern.front.gauges[0];
  const yarns = proof.pattern.front.yarns;
  const asked = gauge === undefined ? 'not given' : plainWords(proof.manuscript, gauge.span);
  const rows =
    yarns.length === 0 ? ['yarn'] : yarns.map((each, number) => each.colour ?? (yarns.length === 1 ? 'yarn' : `yarn ${number + 1}`));
  return html`<h2>Before you begin</h2>
<p>Gauge asked for: ${asked}. Mine, washed: stitches ${blank} rows ${blank} over ${blank}, needle ${blank}, ${box} flat ${box} in the round</p>
<table class="ticks"><caption>Weight of the yarn on the scales, ends and swatch included</caption><thead><tr><th scope="col" class="t">yarn</th><th scope="col">before</th><th scope="col">after</th></tr></thead><tbody>${rows.map((name) => html`<tr><th scope="row">${name}</th><td>${blank}</td><td>${blank}</td></tr>`)}</tbody></table>`;
}

/** Rows between two counts at most, where the count changes: so far a slip has to be looked for. */
const rowsBetween = 10;

function counts(proof: Proof, size: number): Markup {
  const indexes = checkpoints(proof, [size], rowsBetween).filter((index) => proof.replay.entries[index]?.after[size] !== 0);
  if (indexes.length === 0) return html`<h2>Counts</h2><p>No row changes the count.</p>`;
  const done = rowsWorked(proof, size);
  let last = '';
  const rows = indexes.map((index) => {
    const entry = proof.replay.entries[index] as Entry;
    const section = sectionTitle(proof, entry);
    const head =
      section === last
        ? nothing
        : html`<tr class="section"><th colspan="5" scope="rowgroup" class="t">${section === '' ? 'Beginning' : section}</th></tr>`;
    last = section;
    const unsure = entry.before[size] == null;
    return html`${head}<tr><td>${box}</td><th scope="row">${entry.unit === 'step' ? entry.label : `after ${entry.label}`}${unsure ? ' (the count was not known before it)' : ''}</th><td>${done[index] ?? 0}</td><td><strong>${entry.after[size] ?? '?'}</strong></td><td>${blank}</td></tr>`;
  });
  return html`<h2>Counts to reach</h2>
<p>Tick what agrees. Where it differs write your number and go on with what you have. Did you add or drop a stitch to make it fit? Say where: that is what we most want to know.</p>
<div class="scroll" tabindex="0" role="region" aria-label="Counts to reach"><table class="ticks sheet"><caption>Rows are counted from the beginning of the piece, as far as the pattern gives their number</caption><thead><tr><th scope="col"><span class="vh">agrees</span></th><th scope="col" class="t">place</th><th scope="col">rows worked</th><th scope="col">you should have</th><th scope="col">I have</th></tr></thead><tbody>${rows}</tbody></table></div>`;
}

function markers(proof: Proof, index: number, size: number): Markup {
  const lines = planLines(proof, size, contextOf(proof, index).moments);
  const sections = [...new Set(lines.map((line) => line.section))];
  const items = sections.flatMap((section) => {
    const own = lines.filter((line) => line.section === section);
    const plan = markerPlan(own);
    return plan === null || plan.changes.length > mostChanges
      ? []
      : [
          html`<li><strong>${proof.pattern.sections[section]?.title ?? ''}:</strong> ${markerWords(
            plan,
            own.every((line) => line.unit !== 'row'),
          )}</li>`,
        ];
  });
  if (items.length === 0) return nothing;
  return html`<h2>Markers that may stay where they are</h2><p>No stitch crosses these places, so nobody need count the whole row again.</p><ul>${items}</ul>`;
}

/** Where the stitches between two markers are others again and again, markers save no counting. */
const mostChanges = 3;

function markerWords(plan: MarkerPlan, inRounds: boolean): string {
  const place = `counted from ${inRounds ? 'the beginning of the round' : 'the right edge of the right side'}, after stitch ${plan.first} and then every ${plan.every} stitches (${plural(plan.markers, 'marker')}).`;
  if (plan.changes.length === 0) return `${place} Between two markers there are ${plan.every} after every row.`;
  const changes = plan.changes.map(
    (change) => `${change.between === null ? 'not the same number everywhere' : change.between} from ${change.label} on`,
  );
  return `${place} Between two markers there are ${plan.every}; ${changes.join(', ')}.`;
}

/** Finished measures in this size, with room for what they are at the knitter's gauge and on her table. */
function measures(proof: Proof, size: number): Markup {
  const rows = finishedMeasures(proof).flatMap(({ name, measure }) => {
    const value = valueAt(measure, size, proof.pattern.sizes.length);
    return value === null
      ? []
      : [html`<tr><th scope="row">${name}</th><td>${printed(value, measure.unit)}</td><td>${blank}</td><td>${blank}</td></tr>`];
  });
  if (rows.length === 0) return nothing;
  const gauge = proof.pattern.front.gauges.find((each) => each.stitches !== null);
  const ways = [
    gauge?.stitches == null ? null : `a width in the pattern × ${gauge.stitches} ÷ my stitches`,
    gauge?.rows == null ? null : `a length told in rows × ${gauge.rows} ÷ my rows`,
  ].filter((way) => way !== null);
  const how =
    ways.length === 0
      ? 'The pattern gives no gauge to work it out from.'
      : `At my gauge it becomes ${ways.join(', ')}, counted over the same length.`;
  return html`<h2>Measures</h2><p>${how}</p><div class="scroll" tabindex="0" role="region" aria-label="Table of measures"><table class="ticks"><thead><tr><th scope="col" class="t">measure</th><th scope="col">in the pattern</th><th scope="col">at my gauge</th><th scope="col">mine, washed</th></tr></thead><tbody>${rows}</tbody></table></div>`;
}

const cm = ({ low, high }: Range) =>
  high >= 150 ? `${(low / 100).toFixed(1)} to ${(high / 100).toFixed(1)} m` : `${Math.round(low)} to ${Math.round(high)} cm`;

function yarn(proof: Proof, size: number): Markup {
  const needs = yarnNeeds(proof);
  if (needs === null) return html`<h2>Yarn</h2><p>The pattern gives no gauge, so no length of yarn can be estimated.</p>`;
  const { entries } = proof.replay;
  const castOns = entries.filter((entry) => entry.node.type === 'castOn' && entry.before[size] === 0 && (entry.after[size] ?? 0) > 0);
  const most = Math.max(0, ...entries.map((entry) => entry.after[size] ?? 0));
  const off = Math.max(0, ...entries.filter((entry) => entry.node.type === 'bindOff').map((entry) => entry.before[size] ?? 0));
  const line = (words: string, range: Range) => html`<tr><th scope="row">${words}</th><td>${cm(range)}</td></tr>`;
  return html`<h2>Yarn</h2>
<table class="ticks"><caption>Estimates from the gauge of the pattern, for plain knitting; rules of thumb disagree, so each is a range</caption><tbody>
${castOns.map((entry) => line(`${sectionTitle(proof, entry) === '' ? '' : `${sectionTitle(proof, entry)}: `}tail to leave for a long-tail cast-on of ${entry.after[size] ?? 0} stitches`, needs.tail(entry.after[size] ?? 0)))}
${line(`one more row of ${most} stitches, the widest there is`, needs.row(most))}
${off === 0 ? nothing : line(`binding off ${off} stitches, the longest edge`, needs.castOff(off))}</tbody></table>
<p class="small">Surer than any number: halve the yarn that is left, tie a loose knot there, and work two rows. If you do not reach the knot, two more are safe.</p>`;
}

function unclear(proof: Proof, size: number): Markup {
  const titles = [...new Set(proof.replay.entries.filter((entry) => entry.after[size] != null).map((entry) => sectionTitle(proof, entry)))];
  return html`<h2>Unclear, because …</h2><table class="ticks"><tbody>${titles.map((title) => html`<tr><th scope="row">${title === '' ? 'Beginning' : title}</th><td>${blank}${blank}${blank}</td></tr>`)}</tbody></table>`;
}

const closing = html`<h2>At the end</h2><ul><li>Hours, about: ${blank}</li><li>Photographs: ${box} the whole piece ${box} worn ${box} a detail ${box} whatever was unclear</li><li>What stopped you? ${blank}${blank}</li><li>What did you change of your own accord? ${blank}${blank}</li><li>Would you knit it again? ${blank}</li></ul>`;
