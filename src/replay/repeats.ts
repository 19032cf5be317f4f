/** Rows worked again: by number, by name, the last ones, up to a goal, on a schedule. */
import { sizeValue } from '../../grammar/count.ts';
import type { Goal, Label, RepeatRows, Row, RowsNamed, Span, Statement } from '../../grammar/tree.ts';
import { passesUntil, testsFor } from './goals.ts';
import { live, type Needles } from './needles.ts';
import { playPlainRows } from './plain-rows.ts';
import { copyHand, type Hand, handOf, labelWords, met, type Play, sectionOf, shown, tryOut, type Worked, write } from './play.ts';
import { contradictions, nextSide, playSteps, settle } from './rows.ts';
import { intervalsOf, playIntervals } from './scheduled.ts';
import { openTurns } from './short-rows.ts';
import { checkStated } from './stated.ts';
import { fillerFor, playFrom } from './statements.ts';

/** A row as it will be worked once more. */
interface Again {
  readonly row: Row | null;
  readonly number: number | null;
  readonly times: number;
  readonly textSpan: Span;
  readonly label: string;
  readonly change: number;
}

/** Most passes that are worked one by one. */
const mostPasses = 12_000;

function again(row: Row, number: number | null): Again {
  return { row, number, times: 1, textSpan: row.span, label: labelWords(row.label, number), change: 0 };
}

/** Words of a name without what every name has. */
function nameWords(name: string): string[] {
  return name
    .toLowerCase()
    .split(/[^a-z0-9]+/)
    .filter(
      (word) => word !== '' && !['row', 'rows', 'rnd', 'rnds', 'round', 'rounds', 'the', 'of', 'st', 'pattern', 'patt'].includes(word),
    )
    .map((word) => (word.length > 3 ? word.replace(/(rease|rease[ds])$/, '').replace(/s$/, '') : word));
}

/** A named row: "Dec Rnd", "Rib rnd", "moss st row"; the newest of that name. */
export function findRow(play: Play, name: string, number: number | null): { row: Row; section: number } | null {
  const wanted = nameWords(name);
  for (let at = play.named.length - 1; at >= 0; at -= 1) {
    const each = play.named[at];
    if (each === undefined) continue;
    if (number !== null && each.number !== null && each.number !== number) continue;
    if (number !== null && each.number === null) continue;
    const have = nameWords(each.name);
    if (have.length === wanted.length && have.every((word, index) => word === wanted[index])) return each;
  }
  for (let at = play.named.length - 1; at >= 0; at -= 1) {
    const each = play.named[at];
    if (each === undefined) continue;
    if (number !== null && each.number !== null && each.number !== number) continue;
    const have = nameWords(each.name);
    if (wanted.length > 0 && wanted.every((word) => have.includes(word))) return each;
  }
  return null;
}

/** The section whose numbered rows are meant: the one named, the one being worked, else the last that has them. */
function setFor(play: Play, rows: RowsNamed): { section: number; set: Map<number, Row> } | null {
  const has = (set: Map<number, Row> | undefined, section: number): boolean =>
    set !== undefined && rows.numbers.every((number) => set.has(number) || fillerFor(play, section, number) !== null);
  if (rows.of !== null) {
    const wanted = nameWords(rows.of);
    const { sections } = play.pattern;
    for (let section = sections.length - 1; section >= 0; section -= 1) {
      const words = nameWords(sections[section]?.title ?? '');
      const set = play.sets.get(section);
      if (set !== undefined && wanted.length > 0 && wanted.some((word) => words.includes(word)) && has(set, section))
        return { section, set };
    }
  }
  const own = play.sets.get(play.section);
  if (own !== undefined && has(own, play.section)) return { section: play.section, set: own };
  for (let section = play.section - 1; section >= 0; section -= 1) {
    const set = play.sets.get(section);
    if (set !== undefined && set.size > 0 && has(set, section)) return { section, set };
  }
  return own === undefined ? null : { section: play.section, set: own };
}

/** The rows that the words name, in order, for one size; null when some of them do not exist. */
function rowsNamed(
  play: Play,
  rows: RowsNamed,
  hand: Hand,
  size: number,
): { list: Again[]; missing: number | null; section: number } | null {
  switch (rows.kind) {
    case 'last':
    case 'these':
    case 'pattern': {
      if (rows.kind !== 'last' && rows.count === null) {
        const set = play.sets.get(play.section);
        if (set !== undefined && set.size > 0) {
          const numbers = [...set.keys()].sort((a, b) => a - b);
          const highest = numbers.at(-1) ?? 0;
          const list: Again[] = [];
          for (let number = numbers[0] ?? 1; number <= highest; number += 1) {
            const row = set.get(number) ?? fillerFor(play, play.section, number);
            if (row !== null && row !== undefined) list.push(again(row, number));
          }
          return { list, missing: null, section: play.section };
        }
        if (rows.kind === 'pattern') return null;
      }
      const count = rows.count === null ? 1 : (sizeValue(rows.count.values, size) ?? 0);
      return lastRows(hand, count);
    }
    case 'first': {
      const set = play.sets.get(play.section);
      const count = rows.count === null ? 1 : (sizeValue(rows.count.values, size) ?? 0);
      const list: Again[] = [];
      for (let number = 1; number <= count; number += 1) {
        const row = set?.get(number);
        if (row) list.push(again(row, number));
      }
      return list.length === count ? { list, missing: null, section: play.section } : null;
    }
    case 'numbers': {
      const found = setFor(play, rows);
      if (found === null) return null;
      const list: Again[] = [];
      for (const number of rows.numbers) {
        const row = found.set.get(number) ?? fillerFor(play, found.section, number);
        if (row === undefined || row === null) return { list: [], missing: number, section: found.section };
        list.push(again(row, number));
      }
      return { list, missing: null, section: found.section };
    }
    case 'name': {
      if (rows.name === null) return null;
      const list: Again[] = [];
      for (const number of rows.numbers.length > 0 ? rows.numbers : [null]) {
        const found = findRow(play, rows.name, number);
        if (found === null) return null;
        list.push(again(found.row, number));
      }
      return { list, missing: null, section: play.section };
    }
    default:
      return null;
  }
}

function lastRows(hand: Hand, count: number): { list: Again[]; missing: number | null; section: number } | null {
  const list: Again[] = [];
  let need = count;
  for (let at = hand.history.length - 1; at >= 0 && need > 0; at -= 1) {
    const worked = hand.history[at] as Worked;
    const times = Math.min(worked.times, need);
    list.unshift({
      row: worked.row,
      number: worked.row?.label?.numbers[0] ?? null,
      times,
      textSpan: worked.textSpan,
      label: worked.label,
      change: worked.row === null ? worked.change : 0,
    });
    need -= times;
  }
  return need > 0 ? null : { list, missing: null, section: -1 };
}

function sameList(a: readonly Again[], b: readonly Again[]): boolean {
  return (
    a.length === b.length &&
    a.every(
      (each, index) =>
        each.row === b[index]?.row &&
        each.times === b[index]?.times &&
        each.textSpan.start === b[index]?.textSpan.start &&
        each.number === b[index]?.number,
    )
  );
}

/** Where a hand stands, for seeing that a pass has changed nothing. */
function signature(needles: Needles): string {
  const marks = (list: readonly { kind: string; at: number; name: string | null }[]): string =>
    list.map((mark) => `${mark.kind}${mark.name ?? ''}${mark.at}`).join(',');
  return `${needles.left.n}/${needles.right.n}/${needles.side}/${needles.begun}/${needles.sure}/${needles.mode}/${marks(needles.left.marks)}/${marks(needles.right.marks)}`;
}

/** "Rnds 4–8. As Rnd 1": each of its numbers is one row of the same words. */
function sameRows(row: Row): boolean {
  const { does, label } = row;
  return (
    label !== null &&
    label.numbers.length > 1 &&
    does?.type === 'refer' &&
    does.to === 'row' &&
    does.rows.length === 1 &&
    does.times === null
  );
}

function playAgain(play: Play, list: readonly Again[], sizes: readonly number[], span: Span, node: Statement): void {
  for (const each of list) {
    if (each.row === null)
      playPlainRows(play, sizes, each.times, { span, textSpan: each.textSpan, node, label: each.label, change: each.change });
    else if (each.row.does !== null)
      playRowsOfLabel(
        play,
        each.number !== null && each.times === 1 && sameRows(each.row)
          ? { ...each.row, label: { ...(each.row.label as Label), numbers: [each.number] } }
          : each.row,
        sizes,
      );
    else playSteps(play, each.row, each.row.children, sizes, { span, textSpan: each.textSpan, inline: false, number: each.number, node });
  }
}

/** Works a list of rows a number of times per size; sizes with fewer passes begin later, so that all end together. */
function playPasses(play: Play, list: readonly Again[], passes: ReadonlyMap<number, number>, span: Span, node: Statement): void {
  const most = Math.min(mostPasses, Math.max(0, ...passes.values()));
  let last: { before: string[]; first: number; sizes: number } | null = null;
  for (let pass = 0; pass < most; pass += 1) {
    const sizes = [...passes].filter(([, count]) => Math.min(count, most) >= most - pass).map(([size]) => size);
    if (sizes.length === 0) continue;
    const first = play.book.entries.length;
    const before = sizes.map((size) => signature(handOf(play, size).needles));
    playAgain(play, list, sizes, span, node);
    const after = sizes.map((size) => signature(handOf(play, size).needles));
    // Worked flat, an odd number of rows stands as before only after two passes.
    const period = after.every((each, index) => each === before[index])
      ? 1
      : last !== null && last.sizes === sizes.length && after.every((each, index) => each === last?.before[index])
        ? 2
        : 0;
    const begun = period === 2 ? (last?.first ?? first) : first;
    last = { before, first, sizes: sizes.length };
    if (period === 0) continue;
    // Nothing has changed: the passes up to the one where another size joins in are the same.
    const joins = [...passes.values()].map((count) => most - Math.min(count, most)).filter((start) => start > pass);
    const until = Math.min(most, ...joins);
    const fold = Math.floor((until - pass - 1) / period);
    if (fold <= 0) continue;
    for (let at = begun; at < play.book.entries.length; at += 1) {
      const entry = play.book.entries[at];
      if (entry) entry.times += fold * entry.times;
    }
    const rows = list.reduce((sum, each) => sum + each.times, 0) * fold * period;
    for (const size of sizes) {
      const hand = handOf(play, size);
      hand.rows += rows;
      hand.sectionRows += rows;
    }
    pass += fold * period;
  }
}

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
  const before = play.hands.map(shown);
  const action = (variant: number): void => {
    for (const group of groups) playGroup(play, node, group, worked, variant);
  };
  const variant = readingOf(play, node, working, worked, action);
  const entries = play.book.entries.length;
  action(variant);
  if (play.book.entries.length === entries)
    write(play, { label: 'Repeat', span: node.span, textSpan: node.span, node, side: null, unit: 'step' }, working, before);
  const rows = play.hands.map((hand, size) => hand.rows - (rows0[size] ?? 0));
  const length = groups[0]?.list.reduce((sum, each) => sum + each.times, 0) ?? 0;
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
function readingOf(play: Play, node: RepeatRows, sizes: readonly number[], worked: boolean, action: (variant: number) => void): number {
  if (play.trying || node.times === null || node.times.sense !== 'plain') return 0;
  const check = (variant: number): number =>
    contradictions(play, sizes, () => {
      action(variant);
      for (const stated of node.stated) checkStated(play, stated, sizes, { before: [], node, label: null });
      if (node.stated.length === 0) playFrom(play, play.at + 1, Math.min(play.flow.length, play.at + 6), sizes);
    });
  const first = check(0);
  if (first === 0) return 0;
  void worked;
  return check(1) < first ? 1 : 0;
}

function playGroup(play: Play, node: RepeatRows, group: { sizes: number[]; list: Again[] }, worked: boolean, variant: number): void {
  const { list, sizes } = group;
  if (node.schedule.length > 0) {
    playScheduled(play, node, list, sizes);
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
    const inAll = node.times?.sense === 'all' || (node.times?.sense === 'plain' && node.verb === 'work' && node.rows.kind !== 'last');
    // "Work Rows 1–8 twice" after they stood: the working just done is one of them.
    const base = more ? n : inAll ? n - (worked ? 1 : 0) : n;
    const other = more ? n : inAll ? n : n - 1;
    passes.set(size, Math.max(0, variant === 0 ? base : other));
  }
  playPasses(play, list, passes, node.span, node);
}

/** "Rep Dec Rnd every 10 (10, 8) rnds 6 (7, 9) more times". */
function playScheduled(play: Play, node: RepeatRows, list: readonly Again[], sizes: readonly number[]): void {
  const isNamed = (worked: Worked): boolean => worked.row !== null && worked.row === list.at(-1)?.row;
  const intervals = new Map(sizes.map((size) => [size, intervalsOf(play, node, size, passChange(play, list, size), isNamed)]));
  const side = list[0]?.row?.label?.side ?? null;
  playIntervals(play, intervals, (now) => {
    for (const size of now) {
      const { needles } = handOf(play, size);
      if (side !== null && needles.mode === 'flat' && nextSide(needles) === null) settle(needles, side);
    }
    playAgain(play, list, now, node.span, node);
  });
}

function passChange(play: Play, list: readonly Again[], size: number): number {
  const before = live(handOf(play, size).needles);
  const { hands } = tryOut(play, () =>
    playAgain(
      play,
      list,
      [size],
      { start: 0, end: 0 },
      (list[0]?.row ?? ({ type: 'remark', span: { start: 0, end: 0 } } as Statement)) as Statement,
    ),
  );
  return live((hands[size] as Hand).needles) - before;
}

/** Whole passes until the goal is met; a goal that is never met exactly is reported. */
function playToGoal(play: Play, node: RepeatRows, goal: Goal, list: readonly Again[], sizes: readonly number[]): void {
  const passes = new Map<number, number>();
  for (const size of sizes) {
    const hand = handOf(play, size);
    const have = live(hand.needles);
    if (goal.kind === 'count') {
      const target = sizeValue(goal.count.values, size);
      if (target === null) continue;
      passes.set(size, passesTo(play, node, goal.sense, list, size, target, have));
    } else if (goal.kind === 'rows') {
      const rows = sizeValue(goal.count.values, size) ?? 0;
      const length = list.reduce((sum, each) => sum + each.times, 0) || 1;
      passes.set(size, Math.max(0, Math.round((rows - hand.sectionRows) / length)));
    } else if (goal.kind === 'allWorked' || goal.kind === 'marks')
      passes.set(size, passesToTurns(play, node, goal, list, size, goal.kind === 'marks' ? sizeValue(goal.count.values, size) : null));
    else {
      // To a length: the number of passes is open; one pass shows that the rows fit.
      const change = passChange(play, list, size);
      passes.set(size, 1);
      if (change !== 0 && !(list.length === 0)) hand.needles.sure = hand.needles.sure && change === 0;
    }
  }
  const lenient = play.lenient;
  // All stitches may be worked before the last row of a pass: the rest of it is left out.
  const partial = play.partial ?? new Map<number, number>();
  play.lenient = goal.kind === 'allWorked';
  play.partial = undefined;
  playPasses(play, list, passes, node.span, node);
  for (const [size, rows] of partial) playAgain(play, list.slice(0, rows), [size], node.span, node);
  play.lenient = lenient;
}

function passesTo(play: Play, node: RepeatRows, sense: string, list: readonly Again[], size: number, target: number, have: number): number {
  const change = passChange(play, list, size);
  const short = openTurns(handOf(play, size).needles).size > 0;
  if (node.until !== null && (sense === 'unworked' || sense === 'between' || change === 0 || short))
    return passesToTurns(play, node, node.until, list, size, target);
  if (sense === 'markers') {
    const { hands } = tryOut(play, () => playAgain(play, list, [size], { start: 0, end: 0 }, (list[0]?.row ?? node) as Statement));
    const part = passesBetweenMarkers(handOf(play, size).needles, (hands[size] as Hand).needles, target);
    if (part === null) {
      handOf(play, size).needles.sure = false;
      return 1;
    }
    if (!part.exact) {
      met(
        play,
        {
          kind: 'targetMissed',
          span: node.until?.kind === 'count' ? node.until.count.span : node.span,
          numbers: { target, live: part.have, step: part.step },
          words: {},
        },
        size,
        node,
        null,
      );
      handOf(play, size).needles.sure = false;
    }
    return part.passes;
  }
  const goal = node.until;
  const needles = sense === 'section' && goal?.kind === 'count' ? needlesMeant(handOf(play, size).needles, goal.scope, target, change) : 1;
  const need = target * needles - have;
  if (need / change < 0 || need % change !== 0) {
    const passes = Math.max(0, need / change);
    met(
      play,
      {
        kind: need / change < 0 ? 'targetPassed' : 'targetMissed',
        span: node.until?.kind === 'count' ? node.until.count.span : node.span,
        numbers: { target, live: have, step: change },
        words: {},
      },
      size,
      node,
      null,
    );
    const hand = handOf(play, size);
    hand.needles.sure = false;
    return Math.floor(passes);
  }
  return need / change;
}

/** Passes among short rows: until every stitch is worked, or until a turn leaves `target` stitches. */
function passesToTurns(play: Play, node: RepeatRows, goal: Goal, list: readonly Again[], size: number, target: number | null): number {
  const { needles } = handOf(play, size);
  const tests = testsFor(goal, target, needles);
  if (tests === null) return 1;
  const lenient = play.lenient;
  play.lenient = goal.kind === 'allWorked';
  const remark: Statement = { type: 'remark', span: { start: 0, end: 0 } };
  const found = passesUntil(
    play,
    size,
    list.map((each) => () => playAgain(play, [each], [size], remark.span, remark)),
    signature,
    tests,
  );
  play.lenient = lenient;
  if (found.end === 'met') {
    if (found.rows > 0) play.partial = new Map([...(play.partial ?? []), [size, found.rows]]);
    return found.passes;
  }
  // The pass that cannot be worked is played, so that it is told where it stops.
  if (found.end === 'trouble' && goal.kind === 'allWorked') return found.passes + 1;
  const kind = found.end === 'still' ? 'noProgress' : 'targetMissed';
  const numbers: Record<string, number> = { passes: found.passes, live: live(needles) };
  if (target !== null) numbers['target'] = target;
  met(
    play,
    { kind, span: goal.kind === 'count' || goal.kind === 'marks' ? goal.count.span : node.span, numbers, words: {} },
    size,
    node,
    null,
  );
  return found.passes;
}

/** "Rows 5–8: Rep Rows 1 and 2 twice", "Row 4: As Row 2": the label's own length says how many rows are worked. */
export function playRowsOfLabel(play: Play, row: Row, sizes: readonly number[]): void {
  const { does, label } = row;
  if (does === null) return;
  if (play.depth > 8) return;
  play.depth += 1;
  const before = play.hands.map((hand) => live(hand.needles));
  // "Rnds 1–5: As Head": the rounds of those numbers.
  const ofPiece =
    does.type === 'refer' &&
    does.to === 'piece' &&
    does.name !== null &&
    does.rows.length === 0 &&
    does.until === null &&
    does.from === undefined &&
    label !== null &&
    label.name === null &&
    label.numbers.length > 0;
  if (does.type === 'repeatRows' || (does.type === 'refer' && (does.to === 'row' || ofPiece))) {
    const named: RowsNamed =
      does.type === 'repeatRows'
        ? does.rows
        : ofPiece
          ? { kind: 'numbers', count: null, numbers: label.numbers, name: null, of: does.name, mark: null, toMark: null }
          : { kind: 'numbers', count: null, numbers: does.rows, name: null, of: does.name, mark: null, toMark: null };
    const found = rowsNamed(play, named, handOf(play, sizes[0] as number), sizes[0] as number);
    if (found === null || found.missing !== null || found.list.length === 0) {
      for (const size of sizes) {
        met(
          play,
          { kind: 'rowMissing', span: does.span, numbers: found?.missing ? { row: found.missing } : {}, words: { name: named.name ?? '' } },
          size,
          row,
          labelWords(label),
        );
        handOf(play, size).needles.sure = false;
      }
      play.depth -= 1;
      return;
    }
    const { list } = found;
    const length = list.reduce((sum, each) => sum + each.times, 0);
    const rows = label === null || label.numbers.length === 0 ? null : label.numbers.length;
    const said = does.times;
    const passes = new Map<number, number>();
    for (const size of sizes) {
      const n = said === null ? null : sizeValue(said.count.values, size);
      const byLabel = rows === null ? null : rows / length;
      if (n !== null && byLabel !== null && n !== byLabel) {
        met(
          play,
          {
            kind: 'rangeDiffers',
            span: said?.count.span ?? does.span,
            numbers: { labelRows: rows ?? 0, named: length, times: n, rows: n * length },
            words: { label: labelWords(label) },
          },
          size,
          row,
          labelWords(label),
        );
      } else if (byLabel !== null && n === null && !Number.isInteger(byLabel)) {
        met(
          play,
          {
            kind: 'rangeDiffers',
            span: does.span,
            numbers: { labelRows: rows ?? 0, named: length, times: 0, rows: length },
            words: { label: labelWords(label) },
          },
          size,
          row,
          labelWords(label),
        );
      }
      passes.set(size, Math.max(1, Math.floor(byLabel ?? n ?? 1)));
    }
    const own = list.map((each) => ({ ...each, textSpan: row.span, label: labelWords(label, label?.numbers[0] ?? null) }));
    playPasses(play, own, passes, row.span, row);
  } else {
    const times = label === null ? 1 : Math.max(1, label.numbers.length);
    if (does.type === 'plain' || does.type === 'until')
      playPlainRows(play, sizes, times, { span: row.span, textSpan: row.span, node: row, label: labelWords(label), change: 0 });
    else playNested(play, does, sizes);
  }
  play.depth -= 1;
  for (const stated of row.stated) checkStated(play, stated, sizes, { before, node: row, label: labelWords(label) });
}

import { needlesMeant, passesBetweenMarkers } from './sections.ts';
import { playStatement } from './statements.ts';

function playNested(play: Play, statement: Statement, sizes: readonly number[]): void {
  playStatement(play, statement, sizes);
}
