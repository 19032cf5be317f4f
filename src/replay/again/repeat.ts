/** Rows worked again: so many times, up to a goal, on a schedule. */
import { sizeValue } from '../../../grammar/count.ts';
import type { RepeatRows } from '../../../grammar/tree.ts';
import { live } from '../needles.ts';
import { type Hand, handOf, met, type Play, shown, type Worked, write } from '../play.ts';
import { intervalsOf, playIntervals, worksOnSchedule } from '../scheduled.ts';
import { nextSide, settle } from '../sides.ts';
import { checkStated } from '../stated.ts';
import { chooseWay } from '../two-ways.ts';
import { type Again, rowsNamed, sameList } from './named-rows.ts';
import { passChange, playAgain, playPasses } from './passes.ts';
import { playToGoal } from './to-goal.ts';

/** Whether the rows named have just been worked, so that "times" counts further passes. */
function justWorked(hand: Hand, list: readonly Again[]): boolean {
  const last = list.at(-1);
  const worked = hand.history.at(-1);
  if (last === undefined || worked === undefined || last.row === null) return false;
  return worked.row === last.row || worked.textSpan.start === last.textSpan.start;
}

export function playRepeat(play: Play, node: RepeatRows, sizes: readonly number[]): void {
  const live0 = play.hands.map((hand) => live(hand.needles));
  const working = sizes.filter((size) => !handOf(play, size).fresh);
  if (working.length === 0) return;
  const rows0 = play.hands.map((hand) => hand.rows);
  const groups: { sizes: number[]; list: Again[] }[] = [];
  let worked = false;
  for (const size of working) {
    const found = rowsNamed(play, node.rows, handOf(play, size), size);
    if (found === null || found.missing !== null) {
      if (node.rows.kind === 'mark' || node.rows.kind === 'pattern') {
        handOf(play, size).needles.sure = false;
        continue;
      }
      met(
        play,
        {
          kind: 'rowMissing',
          span: node.span,
          numbers: found?.missing ? { row: found.missing } : {},
          words: { name: node.rows.name ?? node.rows.of ?? '' },
        },
        size,
        node,
        null,
      );
      handOf(play, size).needles.sure = false;
      continue;
    }
    if (justWorked(handOf(play, size), found.list)) worked = true;
    const group = groups.find((each) => sameList(each.list, found.list));
    if (group) group.sizes.push(size);
    else groups.push({ sizes: [size], list: found.list });
  }
  if (groups.length === 0) return;
  if (node.times === null && node.until === null && node.schedule.length === 0 && node.inPlace === null) {
    // "Rep Rows 1–6." at the end of a card: a declaration.
    write(play, { label: 'Repeat', span: node.span, textSpan: node.span, node, side: null, unit: 'step' }, working, play.hands.map(shown));
    return;
  }
  const length = groups[0]?.list.reduce((sum, each) => sum + each.times, 0) ?? 0;
  const before = play.hands.map(shown);
  const action = (variant: number): void => {
    for (const group of groups) playGroup(play, node, group, worked, variant);
  };
  const variant = readingOf(play, node, working, worked, length, action);
  const entries = play.book.entries.length;
  action(variant);
  if (play.book.entries.length === entries)
    write(play, { label: 'Repeat', span: node.span, textSpan: node.span, node, side: null, unit: 'step' }, working, before);
  const rows = play.hands.map((hand, size) => hand.rows - (rows0[size] ?? 0));
  for (const size of working) handOf(play, size).setRows = (rows[size] ?? 0) + (worked && node.rows.kind !== 'last' ? length : 0);
  for (const stated of node.stated) checkStated(play, stated, working, { before: live0, node, label: null, rows });
  finishSide(play, node, working, groups[0]?.list ?? []);
}

function finishSide(play: Play, node: RepeatRows, sizes: readonly number[], list: readonly Again[]): void {
  if (node.ending === null) return;
  for (const size of sizes) {
    const { needles } = handOf(play, size);
    const row = node.ending.row === null ? null : sizeValue(node.ending.row, size);
    if (node.until?.kind === 'measure' || node.until?.kind === 'matches' || node.until?.kind === 'loose') {
      // The number of rows is not known; the words say on which one the work stops.
      const index = row === null ? -1 : list.findIndex((each) => each.number === row);
      if (index >= 0 && list.length % 2 === 0 && (index + 1) % 2 === 1 && needles.mode === 'flat')
        needles.side = needles.side === 'RS' ? 'WS' : 'RS';
      else if (node.ending.last !== null && needles.mode === 'flat') settle(needles, node.ending.last === 'RS' ? 'WS' : 'RS');
    }
  }
}

/** Chooses between "N more" and "N in all" by what the draft states next. */
function readingOf(
  play: Play,
  node: RepeatRows,
  sizes: readonly number[],
  worked: boolean,
  length: number,
  action: (variant: number) => void,
): number {
  const { times } = node;
  const scheduled = worked && worksOnSchedule(node);
  if (!scheduled && (times === null || times.sense !== 'plain')) return 0;
  // "Rep this row once": once in all would be nothing at all.
  if (worked && times?.count.values.every((value) => value === 1)) return countsIn(node) ? 1 : 0;
  const ways = ['the pass just worked is not counted in', 'the pass just worked is one of them'] as const;
  return chooseWay(play, sizes, {
    play: (way) => {
      action(way);
      for (const stated of node.stated) checkStated(play, stated, sizes, { before: [], node, label: null });
    },
    words: countsIn(node) ? [ways[1], ways[0]] : ways,
    node,
    span: node.span,
    stated: node.stated.length > 0,
    // Rows that have not just been worked are not asked about.
    ask: worked,
    known: worked && !scheduled ? shownByNumber(play, node, sizes, length) : null,
  });
}

/** "Work Rows 1–8 twice" after they stood: the working just done is one of them. */
function countsIn(node: RepeatRows): boolean {
  return node.verb === 'work' && node.rows.kind !== 'last';
}

/** "Row 4: … Rep Rows 3 and 4 three times. Row 11: …": the number of the next row shows how many were worked. */
function shownByNumber(play: Play, node: RepeatRows, sizes: readonly number[], length: number): 0 | 1 | null {
  const next = play.flow[play.at + 1]?.statement;
  const number = next?.type === 'row' && next.label?.name === null ? next.label.numbers[0] : undefined;
  const last = play.inline;
  if (number === undefined || last === null || last.section !== play.section || node.times === null) return null;
  const { count } = node.times;
  const shows = (fewer: number): boolean =>
    sizes.every((size) => number === last.number + length * ((sizeValue(count.values, size) ?? 0) - fewer) + 1);
  const usual = countsIn(node) ? 1 : 0;
  return shows(usual) ? 0 : shows(1 - usual) ? 1 : null;
}

function playGroup(play: Play, node: RepeatRows, group: { sizes: number[]; list: Again[] }, worked: boolean, variant: number): void {
  const { list, sizes } = group;
  if (node.schedule.length > 0) {
    playScheduled(play, node, list, sizes, variant);
    return;
  }
  if (node.until !== null) {
    playToGoal(play, node, node.until, list, sizes);
    return;
  }
  const passes = new Map<number, number>();
  for (const size of sizes) {
    const n = node.times === null ? 0 : sizeValue(node.times.count.values, size);
    if (n === null) continue;
    const more = node.times?.sense === 'more';
    const inAll = node.times?.sense === 'all' || (node.times?.sense === 'plain' && countsIn(node));
    const base = more ? n : inAll ? n - (worked ? 1 : 0) : n;
    const other = more ? n : inAll ? n : n - 1;
    passes.set(size, Math.max(0, variant === 0 ? base : other));
  }
  playPasses(play, list, passes, node.span, node);
}

/** "Rep Dec Rnd every 10 (10, 8) rnds 6 (7, 9) more times". */
function playScheduled(play: Play, node: RepeatRows, list: readonly Again[], sizes: readonly number[], variant: number): void {
  const last = list.at(-1);
  const isNamed = (worked: Worked): boolean =>
    worked.row !== null ? worked.row === last?.row : node.rows.kind === 'shaping' && worked.textSpan.start === last?.textSpan.start;
  const intervals = new Map(sizes.map((size) => [size, intervalsOf(play, node, size, passChange(play, list, size), isNamed, variant)]));
  const side = list[0]?.row?.label?.side ?? null;
  playIntervals(play, intervals, (now) => {
    for (const size of now) {
      const { needles } = handOf(play, size);
      if (side !== null && needles.mode === 'flat' && nextSide(needles) === null) settle(needles, side);
    }
    playAgain(play, list, now, node.span, node);
  });
}
