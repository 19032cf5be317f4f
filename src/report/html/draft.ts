/** The draft itself, line by line, with the words at fault marked and the note in the margin. */
import type { Finding, Level } from '../../../rules/rule.ts';
import type { Span } from '../../manuscript/manuscript.ts';
import { levels } from '../levels.ts';
import { rangeOf } from '../place.ts';
import { type DraftContext, findingId, findingLine, lineId, numberOf, planId } from './context.ts';
import { html, type Markup, nothing } from './markup.ts';

interface Marked extends Span {
  readonly name: Level | 'unread' | 'also';
  /** Where a click leads. */
  readonly href: string | null;
}

/** From the gravest: it decides how words look that several findings mark. */
const order: readonly Marked['name'][] = [...levels, 'unread', 'also'];

export function markedDraft(context: DraftContext): Markup {
  const { manuscript } = context.proof;
  const { source } = manuscript;
  const marks = marksOf(context);
  const notes = notesByLine(context);
  const rows = firstRows(context);
  const headings = new Set(
    manuscript.blocks.filter((block) => block.kind === 'heading').map((block) => manuscript.place(block.start).line),
  );
  const lines: Markup[] = [];
  let start = 0;
  let number = 1;
  let at = 0;
  while (start <= source.length) {
    let end = source.indexOf('\n', start);
    if (end < 0) end = source.length;
    while (at < marks.length && (marks[at] as Marked).end <= start && !marks.slice(at, at + 40).some((mark) => mark.end > start)) at += 1;
    if (!(end === source.length && start === end && number > 1)) {
      const here = marks.slice(at).filter((mark) => mark.start < Math.max(end, start + 1) && mark.end > start);
      lines.push(
        lineMarkup(context, number, markLine(source, start, end, here), notes.get(number) ?? [], rows.get(number), headings.has(number)),
      );
    }
    start = end + 1;
    number += 1;
  }
  return html`<ol class="draft">${lines}</ol>`;
}

function lineMarkup(
  context: DraftContext,
  number: number,
  text: Markup,
  notes: readonly Markup[],
  row: string | undefined,
  heading: boolean,
): Markup {
  const squares =
    row === undefined
      ? nothing
      : html` <a href="#${row}" title="This row on squared paper"><span aria-hidden="true">▦</span><span class="vh">Squared paper of line ${number}</span></a>`;
  return html`<li id="${lineId(context, number)}"><span class="ln"><span class="vh">Line </span>${number}${squares}</span><span class="tx${heading ? ' h' : ''}">${text}</span>${notes.length === 0 ? nothing : html`<span class="notes">${notes}</span>`}</li>`;
}

function marksOf(context: DraftContext): Marked[] {
  const marks: Marked[] = [];
  for (const finding of context.findings) {
    marks.push({ ...finding.span, name: finding.level, href: `#${findingId(context, finding)}` });
    for (const also of finding.also ?? []) marks.push({ ...also, name: 'also', href: null });
  }
  for (const unread of context.proof.pattern.reading.notRead) marks.push({ ...unread.span, name: 'unread', href: null });
  return marks.filter((mark) => mark.end > mark.start).sort((a, b) => a.start - b.start || b.end - a.end);
}

/** One line cut where marks begin and end; the gravest of those that cover a piece gives it its look. */
function markLine(source: string, start: number, end: number, marks: readonly Marked[]): Markup {
  const stop = end > start && source[end - 1] === '\r' ? end - 1 : end;
  const cuts = new Set<number>([start, stop]);
  for (const mark of marks) {
    cuts.add(Math.min(stop, Math.max(start, mark.start)));
    cuts.add(Math.min(stop, Math.max(start, mark.end)));
  }
  const places = [...cuts].sort((a, b) => a - b);
  const pieces: Markup[] = [];
  for (let index = 0; index + 1 < places.length; index += 1) {
    const from = places[index] as number;
    const to = places[index + 1] as number;
    const text = source.slice(from, to);
    const over = marks
      .filter((mark) => mark.start <= from && mark.end >= to)
      .sort((a, b) => order.indexOf(a.name) - order.indexOf(b.name) || b.start - a.start)[0];
    pieces.push(over === undefined ? html`${text}` : html`<mark class="${over.name}">${text}</mark>`);
  }
  return html`${pieces}`;
}

function notesByLine(context: DraftContext): Map<number, Markup[]> {
  const notes = new Map<number, Markup[]>();
  const add = (line: number, note: Markup) => notes.set(line, [...(notes.get(line) ?? []), note]);
  for (const finding of context.findings) add(findingLine(context, finding), note(context, finding));
  for (const unread of context.proof.pattern.reading.notRead) {
    add(rangeOf(context.proof.manuscript, unread.span).line, html`<span class="note unread"><span>Not read, not checked.</span></span>`);
  }
  return notes;
}

function note(context: DraftContext, finding: Finding): Markup {
  return html`<span class="note ${finding.level}"><span class="no">${numberOf(context, finding)}</span><a href="#${findingId(context, finding)}">${firstSentence(finding.message)}</a></span>`;
}

const longestNote = 150;

function firstSentence(message: string): string {
  const stop = /[.?!] (?=[A-Z"“])/.exec(message);
  const sentence = stop === null ? message : message.slice(0, stop.index + 1);
  return sentence.length > longestNote ? `${sentence.slice(0, longestNote).replace(/\s+\S*$/, '')} …` : sentence;
}

/** For every line with rows of its own, the first of them on the squared paper of the first size that works it. */
function firstRows(context: DraftContext): Map<number, string> {
  const rows = new Map<number, string>();
  const { proof } = context;
  proof.replay.entries.forEach((entry, index) => {
    const line = proof.manuscript.place(entry.textSpan.start).line;
    if (rows.has(line) || entry.afterPerRepeat !== null) return;
    const size = proof.pattern.sizes.findIndex((_, each) => entry.before[each] !== null || entry.after[each] !== null);
    if (size >= 0) rows.set(line, `${planId(context, size)}-e${index}`);
  });
  return rows;
}
