/** Squared paper of every size, section by section, with its twin in words. */
import type { Gauge } from '../../pattern/front/front-matter.ts';
import { hasSizes } from '../place.ts';
import { type ColumnRows, columnRows, type Drawn, foldLines } from '../plan/fold.ts';
import { type PlanLine, planLines } from '../plan/layout.ts';
import { sayColumns, sayLine } from '../plan/say.ts';
import { bandWords, planSvg } from '../plan/svg.ts';
import { type DraftContext, lineId, planId } from './context.ts';
import { legend } from './legend.ts';
import { html, type Markup, nothing } from './markup.ts';

/** Height of a square by its width at gauge; null where the draft gives no gauge for rows. */
export function proportionOf(gauges: readonly Gauge[]): number | null {
  const gauge = gauges.find((each) => each.stitches !== null && each.rows !== null && each.stitches > 0 && each.rows > 0);
  return gauge === undefined ? null : (gauge.stitches as number) / (gauge.rows as number);
}

export function planBlock(context: DraftContext): Markup | null {
  const { proof } = context;
  const sizes = proof.pattern.sizes.map((name, size) => sizePlan(context, name, size));
  if (sizes.every((each) => each === null)) return null;
  const proportion = proportionOf(proof.pattern.front.gauges);
  const views =
    proportion === null
      ? nothing
      : html`<fieldset class="views" hidden><legend>Squares</legend><label><input type="radio" name="${context.id}-paper" value="squares" checked> square, for counting</label><label><input type="radio" name="${context.id}-paper" value="gauge"> in the proportion of the gauge</label></fieldset>`;
  return html`<section class="view-squares" aria-labelledby="${context.id}-plan"><h2 id="${context.id}-plan">Squared paper</h2>
<p>One square is one stitch of one row. The lowest row comes first, the right edge lies right, as the right side shows it; a row is named on the side from which it starts. A click on a row leads to its words.</p>
${legend}${views}${sizes.map((each) => each ?? nothing)}</section>`;
}

interface Part {
  readonly title: string;
  readonly lines: PlanLine[];
}

/** Consecutive lines of one section. */
function partsOf(context: DraftContext, lines: readonly PlanLine[]): Part[] {
  const parts: Part[] = [];
  let section = -1;
  for (const line of lines) {
    if (line.section !== section || parts.length === 0) {
      section = line.section;
      parts.push({ title: context.proof.pattern.sections[section]?.title ?? '', lines: [] });
    }
    parts.at(-1)?.lines.push(line);
  }
  return parts;
}

function sizePlan(context: DraftContext, name: string, size: number): Markup | null {
  const lines = planLines(context.proof, size, context.moments);
  if (lines.length === 0) return null;
  const id = planId(context, size);
  const title = hasSizes(context.proof) ? html`<h3>Size ${name}</h3>` : nothing;
  return html`<div class="size-plan" data-size="${size}" id="${id}">${title}${partsOf(context, lines).map((part, index) => partPlan(context, part, size, `${id}s${index}`))}</div>`;
}

function partPlan(context: DraftContext, part: Part, size: number, id: string): Markup {
  const drawn = foldLines(part.lines);
  const columns = columnRows(part.lines);
  const paper = {
    id: planId(context, size),
    named: true,
    proportion: 1,
    wordsOf: (line: PlanLine) => wordsOf(context, line),
    sayLine,
  };
  const squares = planSvg(drawn, columns, { ...paper, pattern: id });
  const proportion = proportionOf(context.proof.pattern.front.gauges);
  const gauge =
    proportion === null || Math.abs(proportion - 1) < 0.02
      ? null
      : planSvg(drawn, columns, { ...paper, pattern: `${id}g`, named: false, proportion });
  if (squares === null) return nothing;
  return html`${hasSizes(context.proof) ? html`<h4>${part.title}</h4>` : html`<h3>${part.title}</h3>`}
<div class="scroll squares${gauge === null ? ' both' : ''}" tabindex="0" role="region" aria-label="Squared paper: ${part.title}">${squares}</div>${gauge === null ? nothing : html`<div class="scroll gauge" tabindex="0" role="region" aria-label="Squared paper in the proportion of the gauge: ${part.title}">${gauge}</div>`}
<details><summary>The same in words<span class="vh">: ${part.title}</span></summary>${twin(context, drawn, columns)}</details>`;
}

function wordsOf(context: DraftContext, line: PlanLine): string {
  const entry = context.proof.replay.entries[line.entry];
  return entry === undefined ? `#${context.id}` : `#${lineId(context, context.proof.manuscript.place(entry.textSpan.start).line)}`;
}

function twin(context: DraftContext, drawn: readonly Drawn[], columns: readonly ColumnRows[] | null): Markup {
  const items = drawn.map((each) => {
    if (each.kind === 'line') return html`<li><a href="${wordsOf(context, each.line)}">${sayLine(each.line)}</a></li>`;
    const first = each.kind === 'even' ? each.line : undefined;
    return html`<li>${each.kind === 'even' && first !== undefined ? html`<a href="${wordsOf(context, first)}">${first.label}: ${bandWords(each)}${first.after === null ? '' : `, ${first.after} stitches`}</a>` : bandWords(each)}</li>`;
  });
  return html`<ol>${items}</ol>${columns === null ? nothing : html`<p>${sayColumns(columns)}</p>`}`;
}
