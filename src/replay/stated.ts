/** Counts that the draft states, against the count the replay has made. */

import { sizeValue } from '../../grammar/count.ts';
import type { Row, Stated, Statement } from '../../grammar/tree.ts';
import type { Met } from './book.ts';
import { countsLoops } from './counted-loops.ts';
import { headBorder } from './edgings.ts';
import { live, setLive } from './needles.ts';
import { copyHand, type Hand, handOf, met, type Play, tryOut } from './play.ts';
import { markerSections } from './sections.ts';
import { remaining } from './short-rows.ts';
import { checkParts } from './stated-parts.ts';
import { playFrom } from './statements.ts';

export interface StatedWhere {
  /** Live stitches before the row or instruction that states. */
  readonly before: readonly number[];
  readonly node: Statement;
  readonly label: string | null;
  /** Rows worked by the instruction, per size. */
  readonly rows?: readonly number[];
}

const onNumbered = /^on n(?:dl)? ?\d$/i;

/** A number of stitches of a part of the work that is named between the number and the word. */
const ofPart =
  /\d[\d ()[\],:;/–-]*(?:thumb|gusset|heel|instep|sole|sleeve|body|front|back|neck|border|edging|centre|center|panel|hood|flap|tail|leg|finger) (?:sts?|stitch(?:es)?)\b/i;

/** How many statements ahead may vote on which of two counts is right. */
export const horizon = 14;

/** Checks one stated count in the sizes that state one. */
export function checkStated(play: Play, stated: Stated, sizes: readonly number[], where: StatedWhere): void {
  if (stated.what === 'rows') checkRows(play, stated, sizes, where);
  for (const size of sizes) {
    const value = sizeValue(stated.count.values, size);
    if (value === null) continue;
    const hand = handOf(play, size);
    switch (stated.what) {
      case 'total':
        if (stated.scope === null) checkTotal(play, stated, size, value, where);
        break;
      case 'increased':
      case 'decreased': {
        if (!hand.needles.sure) break;
        const change = live(hand.needles) - (where.before[size] ?? 0);
        const want = stated.what === 'increased' ? value : -value;
        if (change !== want)
          met(
            play,
            {
              kind: 'changeDiffers',
              span: stated.count.span,
              numbers: { stated: value, replayed: Math.abs(change), change, before: where.before[size] ?? 0, after: live(hand.needles) },
              words: { what: stated.what },
            },
            size,
            where.node,
            where.label,
          );
        // Either may be wrong: the next stated count settles it.
        if (change !== want) hand.needles.sure = false;
        break;
      }
      case 'rows':
        break;
      case 'left': {
        if (!hand.needles.sure) break;
        const { right, left } = hand.needles;
        const gap = left.marks.find((mark) => mark.kind === 'gap');
        const places = [right.n, left.n, gap?.at ?? -1, hand.held.at(-1)?.n ?? -1];
        if (!places.includes(value))
          met(
            play,
            {
              kind: 'leftDiffers',
              span: stated.count.span,
              numbers: { stated: value, replayed: Math.min(right.n, gap?.at ?? right.n) },
              words: {},
            },
            size,
            where.node,
            where.label,
          );
        break;
      }
      case 'worked':
        checkWorked(play, stated, size, value, where);
        break;
      case 'part':
        if (/\b(?:each|per)\b.*needle/i.test(stated.scope ?? '')) checkEachNeedle(play, stated, size, value, where);
        else if (/needle/i.test(stated.scope ?? '')) notePart(hand, stated, value);
        else if (onNumbered.test(stated.scope ?? '') && where.node.type === 'row')
          // "48 on N1, 30 on N2": a needle may be told twice in the round, so only how many there are is kept.
          hand.needles.spread = where.node.stated.filter((each) => onNumbered.test(each.scope ?? '')).length;
        else if (where.node.type === 'row' && endsWithBindOff(where.node)) checkSides(play, stated, size, value, where);
        checkParts(play, stated, size, where.node, where.label);
        break;
      case 'held': {
        const sets = hand.held.filter((set) => !set.used && set.idle !== true);
        if (sets.length > 0 && !sets.some((set) => set.n === value) && sets.reduce((sum, set) => sum + set.n, 0) !== value)
          met(
            play,
            {
              kind: 'heldDiffers',
              span: stated.count.span,
              numbers: { stated: value, replayed: (sets.at(-1) as { n: number }).n },
              words: { holder: sets.at(-1)?.name ?? '' },
            },
            size,
            where.node,
            where.label,
          );
        break;
      }
      default:
        break;
    }
  }
}

/** The row casts off and works to its end: what it states is what is on the needle now. */
function endsWithBindOff(row: Row): boolean {
  const steps = row.children.filter((step) => !['stated', 'remark', 'change'].includes(step.type));
  return (
    row.does === null &&
    steps.some((step) => step.type === 'bindOff') &&
    steps.every((step) => ['bindOff', 'work', 'repeat', 'marker'].includes(step.type))
  );
}

/** Words for two parts alike: "on each side", "each for front and back". */
const halves =
  /^(?:(?:on|at|for) )?(?:(?:each|either) (?:side|shoulder)|(?:each for |for each |for )(?:the )?(?:front and (?:the )?back|back and (?:the )?front))(?: of (?:the )?neck)?$/i;

/** "Cast off 70 sts, k to end. 30 sts remain for the bib", "k6, cast off 18, k to end. 6 sts remain on each side". */
function checkSides(play: Play, stated: Stated, size: number, value: number, where: StatedWhere): void {
  const hand = handOf(play, size);
  const scope = stated.scope ?? '';
  const sides = halves.test(scope) ? 2 : /^for (?:the )?(?:bib|back|front|flap|collar|tab|strap|yoke|thumb|heel)$/i.test(scope) ? 1 : 0;
  if (sides === 0 || !hand.needles.sure || hand.fresh) return;
  // "25 sts for each front and 46 sts for the back": the parts of one row, each with its own number
  if (sides === 1 && where.node.type === 'row' && where.node.stated.filter((each) => each.what === 'part').length > 1) return;
  if (sides === 1) {
    checkTotal(play, stated, size, value, where);
    return;
  }
  const have = live(hand.needles);
  if (value * sides !== have)
    met(
      play,
      {
        kind: 'partDiffers',
        span: stated.count.span,
        numbers: { stated: value * sides, needles: sides, replayed: have },
        words: { what: 'sides' },
      },
      size,
      where.node,
      where.label,
    );
}

/**
 * "28 (32, 36) rows worked" may speak of the rows of this instruction, with the pass before it, of the section or of the
 * piece; the meaning that holds in most sizes holds in all of them.
 */
function checkRows(play: Play, stated: Stated, sizes: readonly number[], where: StatedWhere): void {
  const told = sizes.flatMap((size) => {
    const value = sizeValue(stated.count.values, size);
    const worked = where.rows?.[size];
    const hand = handOf(play, size);
    return value === null || worked === undefined || worked === 0
      ? []
      : [{ size, value, meanings: [hand.setRows || worked, worked, hand.sectionRows, hand.rows, worked / 2] }];
  });
  const [first] = told;
  if (first === undefined) return;
  let meaning = 0;
  let most = 0;
  first.meanings.forEach((_, index) => {
    const holds = told.filter((each) => each.meanings[index] === each.value).length;
    if (holds > most) {
      most = holds;
      meaning = index;
    }
  });
  for (const { size, value, meanings } of told) {
    const rows = meanings[meaning] as number;
    if (rows !== value)
      met(
        play,
        { kind: 'rowsDiffer', span: stated.count.span, numbers: { stated: value, replayed: rows }, words: {} },
        size,
        where.node,
        where.label,
      );
  }
}

/** "On the last RS row you should knit 12 sts": what that row took from the left needle. */
function checkWorked(play: Play, stated: Stated, size: number, value: number, where: StatedWhere): void {
  if (!handOf(play, size).needles.sure) return;
  const side = /\brs\b|right side/i.test(stated.scope ?? '') ? 'RS' : /\bws\b|wrong side/i.test(stated.scope ?? '') ? 'WS' : null;
  if (!/\blast\b/i.test(stated.scope ?? '') || side === null) return;
  const row = play.book.entries.findLast(
    (entry) => entry.section === play.section && entry.side === side && entry.takes[size] !== null && entry.takes[size] !== undefined,
  );
  const worked = row?.takes[size];
  if (worked !== null && worked !== undefined && worked !== value)
    met(
      play,
      {
        kind: 'leftDiffers',
        span: stated.count.span,
        numbers: { stated: value, replayed: worked },
        words: { what: 'worked', row: row?.label ?? '' },
      },
      size,
      where.node,
      where.label,
    );
}

const needleNumbers: Readonly<Record<string, number>> = { two: 2, both: 2, three: 3, four: 4, five: 5 };

/** "31 sts on each of two needles": so many times the number of needles must be what is there. */
function checkEachNeedle(play: Play, stated: Stated, size: number, value: number, where: StatedWhere): void {
  const hand = handOf(play, size);
  const word = /\b(two|both|three|four|five|[2-5])\b/i.exec(stated.scope ?? '')?.[1]?.toLowerCase();
  const known = hand.needles.parts.length > 1 ? hand.needles.parts.length : hand.needles.spread;
  const needles = word === undefined ? known : (needleNumbers[word] ?? Number(word));
  if (needles === undefined || !hand.needles.sure || hand.fresh) return;
  const have = live(hand.needles);
  if (value * needles !== have)
    met(
      play,
      {
        kind: 'partDiffers',
        span: stated.count.span,
        numbers: { stated: value, needles, sum: value * needles, replayed: have },
        words: { what: 'each needle' },
      },
      size,
      where.node,
      where.label,
    );
}

function notePart(hand: Hand, stated: Stated, value: number): void {
  const name = (stated.scope ?? '').replace(/^(on|for) /i, '');
  const { parts } = hand.needles;
  const known = parts.find((part) => part.name.toLowerCase() === name.toLowerCase());
  if (known) known.n = value;
  else parts.push({ name, n: value });
}

function checkTotal(play: Play, stated: Stated, size: number, value: number, where: StatedWhere): void {
  const hand = handOf(play, size);
  const { needles } = hand;
  if (hand.fresh) return;
  const have = live(needles);
  // "6 edging sts": those of the edging, beside the stitches that wait.
  const border = headBorder(needles) || (needles.right.marks.find((mark) => mark.kind === 'border')?.at ?? 0);
  if (!needles.sure) {
    setLive(needles, value < border ? border + value : value);
    needles.sure = true;
    return;
  }
  if (have === value) {
    delete needles.passed;
    return;
  }
  // "32 heel sts" while the rest of the round waits: those between the turns.
  if (needles.suspended && remaining(needles, 'between').includes(value)) return;
  // "15 thumb sts": those between two markers.
  if (!needles.lost && ofPart.test(play.text(stated.span)) && markerSections(needles).includes(value)) return;
  if (border > 0 && have - border === value) return;
  if (value === 2 * have && strandsApart(play, stated)) {
    setLive(needles, value);
    return;
  }
  if (countsLoops(play, stated, size, value, where)) return;
  const numbers = { before: where.before[size] ?? 0, after: have, stated: value, replayed: have };
  const place = `${stated.span.start}|${size}`;
  const decision = play.decided.get(place);
  if (decision !== undefined) {
    setLive(needles, decision);
    return;
  }
  if (play.trying) {
    met(play, { kind: 'countDiffers', span: stated.count.span, numbers, words: { when: 'after' } }, size, where.node, where.label);
    if (play.depth > 0) return;
    return;
  }
  const [asMade, asStated] = [have, value].map((count) => votes(play, size, count));
  const fault =
    asMade === undefined || asStated === undefined || asMade.against === asStated.against
      ? 'tie'
      : asMade.against < asStated.against
        ? 'stated'
        : 'row';
  const evidence: string[] = [];
  if (fault === 'stated' && asStated?.first) evidence.push(voteWords(asStated.first, have, value));
  if (fault === 'row' && asMade?.first) evidence.push(voteWords(asMade.first, value, have));
  met(
    play,
    { kind: 'countDiffers', span: stated.count.span, numbers, words: { when: 'after', fault } },
    size,
    where.node,
    where.label,
    {},
    evidence,
  );
  play.decided.set(place, fault === 'row' ? value : have);
  if (fault === 'row') {
    setLive(needles, value);
    // What was put aside by the same row is in doubt with it.
    for (const set of hand.held) if (!set.used) set.sure = false;
  }
}

/** "Holding A and B together, cast on 36 sts. … treat every strand as a stitch, so that you have 72": double knitting begins so. */
function strandsApart(play: Play, stated: Stated): boolean {
  const before = play.book.entries.at(-1);
  if (before?.node.type !== 'castOn') return false;
  const { start, end } = before.node.span;
  const [castOn, between] = [play.text({ start: Math.max(0, start - 80), end }), play.text({ start: end, end: stated.span.end })];
  return (
    /\btogether\b|\bboth (?:yarns|colou?rs|strands)\b|\btwo (?:strands|colou?rs|yarns)\b/i.test(castOn) &&
    /\bstrands?\b|\bpairs?\b|\bloops?\b|\bof each colou?r\b|\bone (?:of|in) each\b/i.test(between)
  );
}

/** How many later lines speak against a count, looked at in this size alone. */
function votes(play: Play, size: number, count: number): { against: number; first: Met | null } {
  const result = tryOut(play, () => {
    play.hands = play.hands.map((hand, each) => (each === size ? copyHand(hand) : hand));
    setLive(handOf(play, size).needles, count);
    playFrom(play, play.at + 1, Math.min(play.flow.length, play.at + 1 + horizon), [size]);
  });
  const found = result.met.filter(
    (each) =>
      each.size === size &&
      each.certain &&
      each.kind !== 'readingNotDefault' &&
      each.kind !== 'readingsDiffer' &&
      each.kind !== 'nothingToWork',
  );
  return { against: new Set(found.map((each) => each.span.start)).size, first: found[0] ?? null };
}

/** What a later line says for one count and against another. */
function voteWords(later: Met, good: number, bad: number): string {
  const where = later.row ?? 'A later line';
  const { takes, wanted, stated } = later.numbers;
  if (later.kind === 'repeatDoesNotFit' && takes !== undefined && takes > 1)
    return `${where} repeats over ${takes} sts: ${good} sts fit, ${bad} do not.`;
  if (later.kind === 'tooFew' && wanted !== undefined) return `${where} can be worked on ${good} sts and not on ${bad}.`;
  if (later.kind === 'countDiffers' && stated !== undefined)
    return `${where} states ${stated} sts, which follow from ${good} and not from ${bad}.`;
  return `The lines that follow fit ${good} sts and not ${bad}.`;
}
