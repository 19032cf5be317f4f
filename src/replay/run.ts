/** The whole replay of a pattern: every section in the order of the draft, every size. */
import type { Span, Statement } from '../../grammar/tree.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { observationsOf } from './book.ts';
import { defineRow } from './labelled-rows.ts';
import { playMultiple } from './multiples.ts';
import { leaveTurns } from './open-turns.ts';
import { allSizes, type Item, type Moment, newPlay, type Play } from './play.ts';
import type { Entry, Replay } from './replay.ts';
import { playFrom } from './statements.ts';

/** A labelled row told with turns in it comes as several rows under one label: it is worked, and called again, as one. */
function joinedRows(statements: readonly Statement[]): Statement[] {
  const out: Statement[] = [];
  for (const statement of statements) {
    const last = out.at(-1);
    if (
      statement.type === 'row' &&
      statement.label !== null &&
      statement.does === null &&
      last?.type === 'row' &&
      last.label === statement.label &&
      last.does === null
    ) {
      out[out.length - 1] = {
        ...last,
        children: [...last.children, ...statement.children],
        stated: [...last.stated, ...statement.stated],
        span: { start: last.span.start, end: statement.span.end },
      };
    } else out.push(statement);
  }
  return out;
}

/** Statements in working order, with what only defines left to the rows that call it. */
function flowOf(pattern: Pattern): Item[] {
  const flow: Item[] = [];
  pattern.sections.forEach((section, index) => {
    if (section.kind === 'front' || section.kind === 'other') return;
    joinedRows(section.statements).forEach((statement, position) => {
      flow.push({ section: index, statement, first: position === 0 });
    });
  });
  return flow;
}

function defineAhead(play: Play): void {
  play.pattern.sections.forEach((section, index) => {
    if (section.kind !== 'front') return;
    const define = (statement: Statement): void => {
      if (statement.type === 'row') defineRow(play, statement, index);
    };
    section.statements.forEach(define);
  });
}

/**
 * Plays the pattern. Pure: the same pattern gives the same replay.
 * @param text gives the author's words at a place, for labels
 * @param witness is told of every row before it is written down, with the needles as they stood at its head
 */
export function replayPattern(pattern: Pattern, text: (span: Span) => string, witness?: (moment: Moment) => void): Replay {
  const flow = flowOf(pattern);
  const play = newPlay(pattern, flow, text, witness);
  defineAhead(play);
  const sizes = allSizes(play);
  let at = 0;
  while (at < flow.length) {
    const section = (flow[at] as Item).section;
    let end = at;
    while (end < flow.length && (flow[end] as Item).section === section) end += 1;
    const own = pattern.sections[section];
    const idle = play.hands.every((hand) => hand.fresh || hand.needles.left.n + hand.needles.right.n === 0);
    if (own?.multiple && idle && !own.statements.some((statement) => statement.type === 'castOn')) playMultiple(play, section);
    else playFrom(play, at, end, sizes);
    at = end;
  }
  leaveTurns(play);
  return {
    entries: play.book.entries as readonly Entry[],
    observations: observationsOf(play.book.met),
    sectionRows: [],
    heads: play.book.heads,
    steps: play.book.steps,
  };
}
