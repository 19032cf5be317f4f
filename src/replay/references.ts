/** References from one piece to another: "as given for Back to **", "complete to match first side". */
import { sizeValue } from '../../grammar/count.ts';
import type { Goal, Refer, Shape, Statement, Until } from '../../grammar/tree.ts';
import { openBook } from './book.ts';
import { live, type Needles, setLive } from './needles.ts';
import { copyHand, deepest, handOf, met, newHand, type Play, shown, write } from './play.ts';
import { checkStated } from './stated.ts';
import { playFrom, playStatement } from './statements.ts';

function titleWords(title: string): string[] {
  return title
    .toLowerCase()
    .split(/[^a-z0-9]+/)
    .filter((word) => word !== '' && !['the', 'of', 'first', 'second'].includes(word))
    .map((word) => (word.length > 3 ? word.replace(/s$/, '') : word));
}

/** First and last section of the piece a name means. */
function pieceNamed(play: Play, name: string): { from: number; to: number } | null {
  const wanted = titleWords(name);
  if (wanted.length === 0) return null;
  const { sections } = play.pattern;
  const named: { section: number; words: number }[] = [];
  for (let section = play.section - 1; section >= 0; section -= 1) {
    const each = sections[section];
    if (each === undefined || each.kind !== 'piece') continue;
    const have = titleWords(each.title);
    if (wanted.every((word) => have.includes(word))) named.push({ section, words: have.length });
  }
  // "as for Back" means "Back" and not "Back panel", where both are told.
  const [found] = [...named].sort((a, b) => Number(a.words > wanted.length) - Number(b.words > wanted.length));
  if (found === undefined) return null;
  const own = sections[found.section]?.piece;
  let to = found.section + 1;
  while (to < sections.length && sections[to]?.piece === own && sections[to]?.kind !== 'piece' && to !== play.section) to += 1;
  return { from: found.section, to };
}

/** A stage of this piece that was told under a heading of its own: "Left side of neck". */
function stageNamed(play: Play, name: string): { from: number; to: number; section: number } | null {
  const wanted = titleWords(name);
  const { sections } = play.pattern;
  const piece = sections[play.section]?.piece;
  if (wanted.length === 0) return null;
  for (let section = play.section - 1; section >= 0; section -= 1) {
    const each = sections[section];
    if (each === undefined || each.piece !== piece || each.kind === 'piece') break;
    const have = titleWords(each.title);
    if (!wanted.every((word) => have.includes(word))) continue;
    const items = play.flow.map((item, index) => (item.section === section ? index : -1)).filter((index) => index >= 0);
    if (items.length > 0) return { from: items[0] as number, to: (items.at(-1) as number) + 1, section };
  }
  return null;
}

export function playRefer(play: Play, node: Refer, sizes: readonly number[]): void {
  if (play.depth > deepest) return;
  const before = play.hands.map(shown);
  const counts = play.hands.map((hand) => live(hand.needles));
  if (node.to === 'piece' && node.name !== null) {
    const named = pieceNamed(play, node.name);
    const stage = named === null ? stageNamed(play, node.name) : null;
    if (stage !== null && node.until?.goal != null && !/\b(?:side|half|shoulder|slope)\b/i.test(node.name))
      replayPiece(play, node, { from: stage.section, to: stage.section + 1 }, sizes, false);
    else if (stage !== null || (named === null && /\b(?:side|half|shoulder|slope)\b/i.test(node.name))) replaySide(play, sizes, stage);
    else if (named === null) {
      if (!sizes.every((size) => handOf(play, size).fresh)) for (const size of sizes) handOf(play, size).needles.sure = false;
      met(play, { kind: 'referenceMissing', span: node.span, numbers: {}, words: { name: node.name } }, sizes[0] ?? 0, node, null);
      return;
    } else if (node.part === undefined) replayPiece(play, node, named, sizes, broughtOn(play, named));
    else replayPart(play, node, node.part, named, sizes);
  } else if (node.to === 'side') replaySide(play, sizes, node.name === null ? null : stageNamed(play, node.name));
  else {
    if (node.to === 'chart' && toldInWords(play, node)) return;
    for (const size of sizes) handOf(play, size).needles.sure = false;
  }
  if (sizes.some((size) => !handOf(play, size).fresh))
    write(play, { label: 'As given before', span: node.span, textSpan: node.span, node, side: null, unit: 'step' }, sizes, before);
  for (const stated of node.stated) checkStated(play, stated, sizes, { before: counts, node, label: null });
}

/** "Work the yoke chart, which is written out here": its rows stand behind the words and are worked there. */
function toldInWords(play: Play, node: Refer): boolean {
  const { start, end } = node.span;
  const words = play.text({ start, end: end + 80 }).split(/[.\n]/)[0] ?? '';
  if (!/\bwritten\b|\bin words\b|\bas follows\b|\b(?:given|set out|told|explained) (?:here|below)\b/i.test(words)) return false;
  const section = play.flow[play.at]?.section;
  for (const { section: own, statement } of play.flow.slice(play.at + 1, play.at + 4)) {
    if (own !== section) return false;
    if (statement.type === 'row') return statement.label !== null && statement.label.numbers[0] === 1;
    if (statement.type !== 'declare' && statement.type !== 'remark') return false;
  }
  return false;
}

/** Plays the other piece from its cast-on, silently, up to the place named; a stage of the same piece on the stitches in hand. */
function replayPiece(play: Play, node: Refer, named: { from: number; to: number }, sizes: readonly number[], anew = true): void {
  const { book, section, inline, at, ruled, trying } = play;
  const goal = node.until?.goal ?? null;
  const place = node.until?.place ?? (goal?.kind === 'count' ? goal.scope : null);
  const words = place === null ? [] : titleWords(place.replace(/\b(beginning|start|beg|of|shaping|shape|shapings)\b/g, ''));
  const kept = play.hands.map(copyHand);
  // "as for first square from 1st row": the stitches in hand go on from that place.
  if (anew && node.from === undefined) for (const size of sizes) play.hands[size] = { ...newHand(), held: handOf(play, size).held };
  let begun = node.from === undefined;
  // "Work as for Button Band, making buttonholes as follows": the rows told next belong to the piece, before its end.
  const goesOn = node.until === null && /\bbuttonholes?\b|\bas follows\b/i.test(play.text(node.span));
  play.book = openBook();
  play.trying = true;
  play.depth += 1;
  const done = new Set<number>();
  let entered = false;
  for (let item = 0; item < play.flow.length; item += 1) {
    const each = play.flow[item];
    if (each === undefined || each.section < named.from || each.section >= named.to) continue;
    const title = play.pattern.sections[each.section]?.title ?? '';
    const here = words.length > 0 && words.every((word) => titleWords(title).includes(word));
    // "until armhole shaping is completed": to the end of that stage
    if (node.until?.done === true) {
      if (entered && !here) break;
      entered = entered || here;
    } else if (goal === null && here && each.first) break;
    if (!begun) {
      begun = beginsAt(each.statement, node.from);
      if (!begun || each.statement.type === 'declare') continue;
    }
    const waiting = sizes.filter((size) => !done.has(size));
    if (waiting.length === 0) break;
    if (
      each.statement.type === 'declare' &&
      each.statement.what === 'blockMark' &&
      node.until?.mark !== null &&
      node.until?.mark !== undefined &&
      each.statement.name === node.until.mark
    )
      break;
    if (goesOn && isLast(each.statement) && live(handOf(play, waiting[0] as number).needles) > 0) break;
    playFrom(play, item, item + 1, waiting);
    if (node.castOn !== undefined && each.statement.type === 'castOn' && !entered) {
      entered = true;
      castOnOtherwise(play, node.castOn, waiting);
    }
    if (
      goal?.kind === 'measure' &&
      each.statement.type === 'until' &&
      each.statement.goal.kind === 'measure' &&
      reaches(each.statement, goal)
    )
      for (const size of waiting) done.add(size);
    if (goal?.kind === 'count' && (words.length === 0 || here)) {
      for (const size of waiting) if (live(handOf(play, size).needles) === sizeValue(goal.count.values, size)) done.add(size);
    }
  }
  play.depth -= 1;
  Object.assign(play, { book, section, inline, at, ruled, trying });
  for (const size of sizes) {
    // To a length the other piece never names: how far it goes is not known.
    if (goal?.kind === 'measure' && !done.has(size)) handOf(play, size).needles.sure = false;
    if (goal?.kind === 'count' && !done.has(size)) {
      const target = sizeValue(goal.count.values, size);
      met(
        play,
        {
          kind: 'targetMissed',
          span: goal.count.span,
          numbers: { target: target ?? 0, live: live(handOf(play, size).needles), step: 0 },
          words: { reference: node.name ?? '' },
        },
        size,
        node,
        null,
      );
      handOf(play, size).needles.sure = false;
    }
  }
  play.hands.forEach((hand, size) => {
    if (!sizes.includes(size)) play.hands[size] = kept[size] ?? hand;
  });
}

/** "As for Back, but cast on 4 sts more": the needles as they stand behind the cast-on of the other piece. */
function castOnOtherwise(play: Play, told: NonNullable<Refer['castOn']>, sizes: readonly number[]): void {
  for (const size of sizes) {
    const n = sizeValue(told.count.values, size);
    const { needles } = handOf(play, size);
    if (n === null) continue;
    const have = live(needles);
    needles.left.n = Math.max(0, told.sense === 'total' ? n : told.sense === 'more' ? have + n : have - n);
    needles.right.n = 0;
  }
}

/** "Shape armholes as given for Back": the stage of that name, from its heading to the next, on the stitches in hand. */
function replayPart(play: Play, node: Refer, part: string, named: { from: number; to: number }, sizes: readonly number[]): void {
  const words = titleWords(part.replace(/\b(shaping|shape|shapings|and)\b/g, ' '));
  const names = (title: string): boolean => words.length > 0 && words.every((word) => titleWords(title).some((each) => alike(each, word)));
  const items: number[] = [];
  let within = false;
  play.flow.forEach((each, item) => {
    if (each.section < named.from || each.section >= named.to) return;
    const { statement } = each;
    if (each.first) within = names(play.pattern.sections[each.section]?.title ?? '');
    if (statement.type === 'declare' && statement.what === 'title') {
      within = names(statement.name ?? '');
      return;
    }
    if (within) items.push(item);
  });
  if (items.length === 0) {
    for (const size of sizes) handOf(play, size).needles.sure = false;
    return;
  }
  const goal = node.until?.goal ?? null;
  const target = (size: number): number | null => (goal?.kind === 'count' ? sizeValue(goal.count.values, size) : null);
  const { book, section, inline, at, ruled, trying } = play;
  play.book = openBook();
  play.trying = true;
  play.depth += 1;
  for (const item of items) {
    const statement = play.flow[item]?.statement;
    const going = sizes.filter((size) => target(size) === null || live(handOf(play, size).needles) !== target(size));
    const had = play.hands.map((hand) => live(hand.needles));
    if (statement === undefined || going.length === 0) continue;
    playStatement(play, statement, going);
    for (const size of going)
      if (statement.type === 'shape') stopAt(handOf(play, size).needles, had[size] as number, target(size), statement);
  }
  play.depth -= 1;
  Object.assign(play, { book, section, inline, at, ruled, trying });
  for (const size of sizes) {
    const wanted = target(size);
    if (wanted !== null && live(handOf(play, size).needles) !== wanted) handOf(play, size).needles.sure = false;
  }
}

/** "until 78 sts rem": the shaping that would go on past the number stops there, if its steps come to it. */
function stopAt(needles: Needles, had: number, target: number | null, shape: Shape): void {
  const step = shape.place === 'bothEnds' ? 2 : 1;
  if (target !== null && had > target && live(needles) < target && (had - target) % step === 0) setLive(needles, target);
}

/** "armholes" and "armhole", "shoulders" and "shoulder": headings and orders differ in number. */
const alike = (a: string, b: string): boolean => a.replace(/s$/, '') === b.replace(/s$/, '');

/** Whether the piece brings its own stitches. A back and a front divided from one body are worked on the stitches in hand. */
function broughtOn(play: Play, named: { from: number; to: number }): boolean {
  const own = play.flow.filter((each) => each.section >= named.from && each.section < named.to).map((each) => each.statement);
  const first = own.find((statement) => statement.type !== 'declare' && statement.type !== 'remark' && statement.type !== 'change');
  const brings = (type: string): boolean => type === 'castOn' || type === 'pickUp' || type === 'takeUp' || type === 'join';
  if (own.some((statement) => statement.type === 'castOn' || statement.type === 'refer')) return true;
  return first === undefined || brings(first.type) || (first.type === 'row' && first.children.some((step) => brings(step.type)));
}

/** What ends a piece: its stitches are cast off or put aside. */
const isLast = (statement: Statement): boolean =>
  (statement.type === 'bindOff' && (statement.which === 'all' || statement.which === 'remaining')) ||
  (statement.type === 'hold' && (statement.which === 'these' || statement.which === 'remaining'));

const sameValues = (a: readonly (number | null)[], b: readonly (number | null)[]): boolean =>
  a.length === b.length && a.every((value, index) => value === b[index]);

/** Whether a stretch of the other piece goes to the length, or past it by the same measure with no shaping on the way. */
function reaches(stretch: Until, goal: Extract<Goal, { kind: 'measure' }>): boolean {
  if (stretch.goal.kind !== 'measure') return false;
  const { values, unit, of } = stretch.goal;
  if (sameValues(values, goal.values)) return true;
  return (
    stretch.inside.length === 0 &&
    unit === goal.unit &&
    of !== null &&
    of.replace(/s$/, '') === goal.of?.replace(/s$/, '') &&
    values.length === goal.values.length &&
    values.every((value, size) => value === null || value > (goal.values[size] ?? value))
  );
}

function beginsAt(statement: Statement, from: Refer['from']): boolean {
  if (statement.type === 'declare') return statement.what === 'blockMark' && from?.mark === statement.name;
  return statement.type === 'row' && from?.row !== null && from?.row !== undefined && statement.label?.numbers[0] === from.row;
}

/** The second side of a neck: what the first side was told, from its division to its end. */
function replaySide(play: Play, sizes: readonly number[], stage: { from: number; to: number } | null): void {
  let from = stage?.from ?? -1;
  let to = stage?.to ?? -1;
  if (stage !== null) {
    for (let item = stage.from; item < stage.to; item += 1) {
      const statement = play.flow[item]?.statement;
      if (statement !== undefined && divides(statement)) from = item + 1;
      if (statement !== undefined && item > from && joins(statement)) {
        to = item;
        break;
      }
    }
  }
  for (let item = play.at - 1; item >= 0 && stage === null; item -= 1) {
    const each = play.flow[item];
    if (each === undefined) break;
    if (to < 0 && joins(each.statement)) to = item;
    if (to >= 0 && divides(each.statement)) {
      from = item + 1;
      break;
    }
  }
  if (from < 0 || to < from) return;
  const { book, section, inline, at, ruled, trying } = play;
  play.book = openBook();
  play.trying = true;
  play.depth += 1;
  for (let item = from; item < to; item += 1) {
    const statement = play.flow[item]?.statement;
    if (statement !== undefined) playStatement(play, statement, sizes);
  }
  play.depth -= 1;
  Object.assign(play, { book, section, inline, at, ruled, trying });
}

function joins(statement: Statement): boolean {
  return (
    (statement.type === 'join' && statement.what === 'rejoin') ||
    (statement.type === 'row' && statement.children.some((step) => (step as Statement).type === 'join'))
  );
}

/** "K30, turn and leave rem sts on a holder", "Leave rem sts on a spare needle", "Work on these sts only": the second side waits from here. */
function divides(statement: Statement): boolean {
  if (statement.type === 'row')
    return statement.children.some(
      (step) =>
        (step.type === 'turn' && step.holds !== null) || (step.type === 'hold' && step.which === 'remaining') || step.type === 'only',
    );
  return (statement.type === 'hold' && statement.which === 'remaining') || (statement.type === 'only' && statement.which === 'these');
}
