/** Rows with their labels: where later words find them, what "all WS rows" fills in, and in which order they are worked. */
import { sizeValue } from '../../grammar/count.ts';
import type { Label, Row, Side, Statement, Step } from '../../grammar/tree.ts';
import { playRowsOfLabel } from './again/rows-of-label.ts';
import { gatherPieces } from './gathering.ts';
import { live } from './needles.ts';
import { handOf, type Play, sectionOf } from './play.ts';
import { rowsOfSentences } from './row-sentences.ts';
import { playSteps } from './rows.ts';
import type { NumberedRow } from './rows-in-turn.ts';

/** "All WS rows:", "Even rounds:": rows that come between the numbered ones, and at no place of their own. */
export function fillsIn(row: Row): boolean {
  const { label } = row;
  return label?.name === 'every' && label.numbers.length === 0 && (label.side !== null || label.andAll !== null);
}

/** Puts a row where "rep Rows 1–4" and "Rep Dec Rnd" will look for it. */
export function defineRow(play: Play, row: Row, section: number): void {
  const { label } = row;
  if (label === null) return;
  if (fillsIn(row)) {
    const fillers = play.fillers.get(section) ?? [];
    if (!fillers.includes(row)) play.fillers.set(section, [...fillers, row]);
  }
  if (label.name !== null) {
    const numbers = label.numbers.length > 0 ? label.numbers : [null];
    for (const number of numbers) play.named.push({ name: label.name, number, row, section });
    if (label.numbers.length === 0) return;
  }
  const set = play.sets.get(section) ?? new Map<number, Row>();
  if (label.name === null) for (const number of label.numbers) set.set(number, row);
  if (label.andAll !== null) {
    const fillers = play.fillers.get(section) ?? [];
    if (!fillers.includes(row)) play.fillers.set(section, [...fillers, row]);
  }
  play.sets.set(section, set);
}

/** Whether the rows of a side have even or odd numbers: Row 1 faces the right side where nothing else is said. */
function bySide(play: Play, section: number, side: Side | null): 'even' | 'odd' | null {
  if (side === null) return null;
  const first = play.sets.get(section)?.get(1)?.label?.side ?? 'RS';
  return side === first ? 'odd' : 'even';
}

/** Row `number` where only "all WS rows" gives it. */
export function fillerFor(play: Play, section: number, number: number): Row | null {
  for (const row of play.fillers.get(section) ?? []) {
    const all = row.label?.andAll ?? (fillsIn(row) ? bySide(play, section, row.label?.side ?? null) : null);
    const first = row.label?.numbers[0] ?? 2;
    if (all === null) continue;
    const fits = all === 'even' ? number % 2 === 0 : all === 'odd' ? number % 2 === 1 : (number - first) % 2 === 0;
    if (fits) return row;
  }
  return null;
}

function fillTo(play: Play, section: number, from: number, to: number, sizes: readonly number[]): void {
  for (let number = from; number < to; number += 1) {
    const row = fillerFor(play, section, number);
    if (row === null || play.sets.get(section)?.get(number) !== undefined) return;
    playSteps(play, row, row.children, sizes, { span: row.span, textSpan: row.span, inline: false, number, node: row });
    play.inline = { section, number };
  }
}

/** The closing row that "all WS rows" gives, once the numbered rows of the section have been worked. */
export function fillAfter(play: Play, next: Statement, sizes: readonly number[]): void {
  const last = play.inline;
  if (last === null || (play.fillers.get(last.section) ?? []).length === 0) return;
  if (next.type === 'row' && next.label !== null && next.label.numbers.length > 0) return;
  if (next.type === 'stated' || next.type === 'remark') return;
  const number = last.number + 1;
  const row = fillerFor(play, last.section, number);
  if (row === null || number % 2 === 1) return;
  fillTo(play, last.section, number, number + 1, sizes);
  play.inline = null;
}

/** Works the rows of a label; of one that shares its numbers with others, the row `only`. */
export function playRow(play: Play, row: Row, sizes: readonly number[], only?: number): void {
  const { label } = row;
  const section = sectionOf(play);
  defineRow(play, row, play.section);
  if (fillsIn(row)) return;
  // Rows of a stitch pattern that nothing is on the needles for are only told, not worked.
  const active = sizes.filter((size) => !handOf(play, size).fresh || begins(row));
  if (section.kind === 'front') return;
  if (active.length === 0) return;
  // "Turn work inside out": no row; what was inside faces from here on, and the round goes on the other way round.
  if (row.children.length > 0 && row.children.every((step) => step.type === 'turn' && step.insideOut === true)) {
    for (const size of active) handOf(play, size).needles.inside = handOf(play, size).needles.inside !== true;
    return;
  }
  // Nothing is on the needles: the row is told for later, unless it works what the holders have.
  if (
    !begins(row) &&
    !gatherPieces(play, row, active) &&
    active.every((size) => live(handOf(play, size).needles) === 0 && handOf(play, size).needles.sure)
  ) {
    return;
  }
  // All stitches of the row are picked up here: whatever was in doubt before, it is not about these.
  if (picksUpAll(row)) for (const size of active) if (live(handOf(play, size).needles) === 0) handOf(play, size).needles.sure = true;
  if (row.does !== null) {
    // "Row 4: …", "Row 6: As Row 4": the row between them that "all WS rows" gives.
    const first = label?.numbers[0];
    if (first !== undefined && label?.name === null && play.inline?.section === play.section && first > play.inline.number + 1)
      fillTo(play, play.section, play.inline.number + 1, first, active);
    const own = only === undefined || label === null ? label : { ...label, numbers: [only] };
    playRowsOfLabel(play, own === label ? row : { ...row, label: own }, active);
    note(play, own);
    return;
  }
  const numbers: readonly (number | null)[] =
    only !== undefined
      ? [only]
      : label === null || label.numbers.length === 0
        ? [null]
        : label.name !== null
          ? [label.numbers[0] ?? null]
          : label.numbers;
  if (label !== null && label.andAll !== null) {
    const number = label.numbers[0] ?? null;
    playOnce(play, row, active, number);
    return;
  }
  const next = label?.next?.values ?? null;
  const last = label?.lastBySize ?? null;
  const times = next === null ? 1 : Math.max(1, ...active.map((size) => sizeValue(next, size) ?? 1));
  for (const number of numbers) {
    if (
      number !== null &&
      label?.name === null &&
      play.inline !== null &&
      play.inline.section === play.section &&
      number > play.inline.number + 1
    )
      fillTo(play, play.section, play.inline.number + 1, number, active);
    for (let time = 0; time < Math.min(times, 400); time += 1) {
      const now = active.filter(
        (size) =>
          (next === null || (sizeValue(next, size) ?? 1) > time) &&
          (last === null || number === null || number <= (sizeValue(last, size) ?? 0)),
      );
      if (now.length > 0) playOnce(play, row, now, number);
    }
  }
}

/** Rows told together and worked in turn: "Rows 1 and 3: … Rows 2 and 4: …". */
export function playInTurn(play: Play, rows: readonly NumberedRow[], sizes: readonly number[]): void {
  for (const row of new Set(rows.map((each) => each.row))) defineRow(play, row, play.section);
  for (const { row, number } of rows) playRow(play, row, sizes, number);
}

function playOnce(play: Play, row: Row, sizes: readonly number[], number: number | null): void {
  for (const each of rowsOfSentences(play, row, sizes))
    playSteps(play, each, each.children, sizes, {
      span: each.span,
      textSpan: each.span,
      inline: true,
      number: each.label === null ? null : number,
      node: each,
    });
  if (number !== null && row.label?.name === null) play.inline = { section: play.section, number };
}

function note(play: Play, label: Label | null): void {
  const last = label?.numbers.at(-1);
  if (last !== undefined && label?.name === null) play.inline = { section: play.section, number: last };
}

const besidePicking = new Set<Step['type']>(['pickUp', 'change', 'remark', 'marker', 'stated', 'join']);

/** Every stitch is picked up from an edge, by a number each, and none from a holder. */
function picksUpAll(row: Row): boolean {
  return (
    row.children.some((step) => step.type === 'pickUp') &&
    row.children.every((step) => besidePicking.has(step.type) && (step.type !== 'pickUp' || (step.count !== null && !step.includingHeld)))
  );
}

/** A row that brings its own stitches. */
export function begins(row: Row): boolean {
  return row.children.some(
    (step) =>
      step.type === 'castOn' ||
      step.type === 'pickUp' ||
      step.type === 'takeUp' ||
      (step.type === 'join' && step.what === 'rejoin') ||
      (step.type === 'hold' && step.which === 'centre'),
  );
}
