/** The editor's page: findings beside the draft, questions for a mail, what was not checked, squared paper. */
import type { Level } from '../../../rules/rule.ts';
import type { Proof } from '../../index.ts';
import type { ReportInput } from '../input.ts';
import { countSentence, levelHeading, levels } from '../levels.ts';
import { gaps } from '../not-checked.ts';
import { hasSizes, printedPath, rangeOf } from '../place.ts';
import { plural } from '../plural.ts';
import { digestOf, nameOf, type Report, whole } from '../report.ts';
import { contextOf, type DraftContext, lineId } from './context.ts';
import { markedDraft } from './draft.ts';
import { findingCard } from './finding.ts';
import { gaugeBlock } from './gauge-block.ts';
import { html, type Markup, nothing } from './markup.ts';
import { type Listed, pageOfDrafts } from './page-of-drafts.ts';
import { planBlock } from './plan-block.ts';
import { queriesText } from './queries.ts';

/** One page for all drafts of the run. */
export const proofPage: Report<Markup> = {
  part: (proof, index, { drafts }) => draftSection(contextOf(proof, index), drafts === 1),
  assemble: (run) =>
    pageOfDrafts(run, {
      title: (name) => `${name}: proof`,
      heading: (name, one) => (one ? name : `Proof of ${name}`),
      list: draftList,
      foot: 'A proof finds contradictions; that it found none does not make a pattern right.',
    }),
};

export const proofHtml = (input: ReportInput): string => whole(proofPage, input);

function draftList(listed: readonly Listed[]): Markup {
  return html`<nav aria-label="Drafts"><ul>${listed.map(({ id, digest: { name, found } }) => html`<li><a href="#${id}">${name}</a> <span class="meta">${found.error} / ${found.query} / ${found.style}</span></li>`)}</ul>
<p class="small">The numbers: places that stop the knitter, questions to the author, remarks on house style.</p></nav>`;
}

const many = (context: DraftContext, level: Level) => context.findings.filter((finding) => finding.level === level).length;

function draftSection(context: DraftContext, one: boolean): Markup {
  const { proof, id } = context;
  const queries = queriesText(proof);
  const plan = planBlock(context);
  const gauge = gaugeBlock(context);
  return html`<section id="${id}" data-draft aria-label="${nameOf(proof)}">${one ? nothing : html`<h2>${nameOf(proof)}</h2>`}
<p class="lead">${countSentence(digestOf(proof).found)}</p>
<p class="meta">${summary(proof)}</p>
<nav aria-label="${one ? 'On this page' : nameOf(proof)}"><ul>${levels.filter((level) => many(context, level) > 0).map((level) => html`<li><a href="#${id}-${level}">${levelHeading[level]} (${many(context, level)})</a></li>`)}<li><a href="#${id}-draft">The draft</a></li>${queries === '' ? nothing : html`<li><a href="#${id}-mail">Questions for a mail</a></li>`}<li><a href="#${id}-not">Not checked</a></li>${gauge === null ? nothing : html`<li><a href="#${id}-gauge">Measures at gauge</a></li>`}${plan === null ? nothing : html`<li><a href="#${id}-plan">Squared paper</a></li>`}</ul></nav>
${sizeFilter(proof, id)}
<div class="panes"><section class="pane" tabindex="0" role="region" aria-label="Findings">${blocks(context)}</section>
<section class="pane" tabindex="0" role="region" aria-labelledby="${id}-draft"><h2 id="${id}-draft">The draft</h2>${markedDraft(context)}</section></div>
${queries === '' ? nothing : mail(context, queries)}${notChecked(context)}${gauge}${plan}</section>`;
}

/** "S, M and L · 312 rows in 3 sizes · 410 of 412 steps read." */
export function summary(proof: Proof): string {
  const rows = proof.replay.entries.filter((entry) => entry.unit !== 'step').reduce((sum, entry) => sum + entry.times, 0);
  const { steps, read } = proof.pattern.reading;
  const sizes = hasSizes(proof) ? ` in ${plural(proof.pattern.sizes.length, 'size')} (${proof.pattern.sizes.join(', ')})` : '';
  return `${printedPath(proof.path)} · ${plural(rows, 'row')} worked${sizes} · ${read} of ${plural(steps, 'step')} read`;
}

export function sizeFilter(proof: Proof, id: string): Markup {
  if (!hasSizes(proof) || proof.pattern.sizes.length < 2) return nothing;
  const choice = (value: string, words: string, checked: boolean) =>
    html`<label><input type="radio" name="${id}-size" value="${value}"${checked ? ' checked' : ''}> ${words}</label>`;
  return html`<fieldset class="filter" hidden><legend>Show</legend>${choice('all', 'every size', true)}${proof.pattern.sizes.map((name, size) => choice(String(size), `size ${name}`, false))} <output class="small"></output></fieldset>`;
}

function blocks(context: DraftContext): Markup {
  if (context.findings.length === 0) {
    const { steps, read } = context.proof.pattern.reading;
    const rows = context.proof.replay.entries.length;
    return html`<h2>Findings</h2><p class="ok">No contradictions found in ${plural(rows, 'line')} of the count sheet${hasSizes(context.proof) ? ` × ${plural(context.proof.pattern.sizes.length, 'size')}` : ''}; ${plural(steps - read, 'step')} not checked.</p>`;
  }
  return html`${levels.map((level) => {
    const found = context.findings.filter((finding) => finding.level === level);
    return found.length === 0
      ? nothing
      : html`<h2 id="${context.id}-${level}">${levelHeading[level]}</h2>${found.map((finding) => findingCard(context, finding))}`;
  })}${accepted(context)}`;
}

/** What the draft itself lets stand, and what an older record knows. */
function accepted({ proof }: DraftContext): Markup {
  const withheld = proof.withheld ?? [];
  const known = proof.known ?? [];
  if (withheld.length + known.length === 0) return nothing;
  const item = (words: string, line: number, why: string) => html`<li>Line ${line}: ${words} <span class="small">(${why})</span></li>`;
  return html`<details><summary>${plural(withheld.length + known.length, 'finding')} let stand</summary><ul>${withheld.map(({ finding, reason }) => item(finding.message, rangeOf(proof.manuscript, finding.span).line, reason === '' ? 'stet' : `stet: ${reason}`))}${known.map((finding) => item(finding.message, rangeOf(proof.manuscript, finding.span).line, 'known before'))}</ul></details>`;
}

function mail({ id }: DraftContext, text: string): Markup {
  return html`<section aria-labelledby="${id}-mail"><h2 id="${id}-mail">Questions for a mail</h2>
<p>Each can be answered by yes, no or a number. <button type="button" data-copy="${id}-mail-text" hidden>Copy</button> <output class="small"></output></p>
<pre id="${id}-mail-text" tabindex="0">${text}</pre></section>`;
}

function notChecked(context: DraftContext): Markup {
  const { proof, id } = context;
  const { notRead } = proof.pattern.reading;
  const others = gaps(proof);
  return html`<section aria-labelledby="${id}-not" class="not"><h2 id="${id}-not">Not checked</h2>
${
  notRead.length === 0
    ? html`<p>Every instruction was read.</p>`
    : html`<p>${plural(notRead.length, 'passage')} instruct${notRead.length === 1 ? 's' : ''} and ${notRead.length === 1 ? 'was' : 'were'} not understood:</p><ul>${notRead.map(
        (unread) => {
          const { line } = rangeOf(proof.manuscript, unread.span);
          return html`<li><a href="#${lineId(context, line)}">Line ${line}</a>: ${unread.text.replace(/\s+/g, ' ')}</li>`;
        },
      )}</ul>`
}${others.length === 0 ? nothing : html`<ul>${others.map((words) => html`<li>${words}</li>`)}</ul>`}
<p class="small">Charts that are pictures are never checked.</p></section>`;
}
