/** One row as squares: what each stitch of it takes from the row below and what it leaves, in the order of working. */
import type { Entry as LexiconEntry } from '../../../grammar/lexicon/entry.ts';
import { entryNamed } from '../../../grammar/lexicon/index.ts';
import type { Side, Step } from '../../../grammar/tree.ts';
import type { Proof } from '../../index.ts';
import { headOf, workMoment } from '../../replay/moments.ts';
import type { Moment } from '../../replay/play.ts';
import type { Hands } from '../../replay/work.ts';

export type SquareKind =
  | 'plain'
  | 'increase'
  | 'yarnOver'
  | 'decrease'
  | 'doubleDecrease'
  | 'crossing'
  | 'boundOff'
  | 'held'
  | 'castOn'
  | 'taken';

/** Squares of one kind side by side. */
export interface Run {
  readonly kind: SquareKind;
  /** Squares of this row; for stitches bound off or held, those of the row below. */
  n: number;
  /** Stitches of the row below they stand on. */
  takes: number;
  readonly lean: 'left' | 'right' | 'centre' | null;
}

/** One line of squares: a row, or the part of it up to a turn. */
export interface Line {
  readonly side: Side | null;
  /** Stitches that lie on the right needle before the first stitch is worked, and on the left one after the last. */
  readonly behind: number;
  readonly ahead: number;
  readonly runs: readonly Run[];
  /** Places of the markers passed, in stitches from the first worked one. */
  readonly markers: readonly number[];
  /** The line ends at a turn before the end of the row. */
  readonly turned: boolean;
  /** Stitches left for a second side: they wait, they are not done with. */
  readonly rest: boolean;
}

const flip = (side: Side | null): Side | null => (side === null ? null : side === 'RS' ? 'WS' : 'RS');

/**
 * Works the row once more and writes down its squares; a word where it cannot be worked to its end, or where only its net
 * is known ("told").
 */
export function traceRow(proof: Proof, moment: Moment): Line[] | 'unread' | 'stopped' | 'told' {
  const head = headOf(moment);
  const lines: Line[] = [];
  let runs: Run[] = [];
  let behind = head.right.n;
  let side = head.side;
  let rest = false;
  /** Where the row begins is seen at its first stitch: some rows begin without turning or coming round. */
  let begun = false;
  /** Stitches cast on to the left needle: they are not among those that wait there. */
  let castOnLeft = 0;
  const heads: { taken: number; made: number; off: number; left: number; right: number; held: number }[] = [];
  let inLeaf = 0;

  const add = (kind: SquareKind, n: number, takes: number, lean: Run['lean'] = null): void => {
    if (n <= 0) return;
    const last = runs.at(-1);
    if (kind === 'plain' && last?.kind === 'plain') {
      last.n += n;
      last.takes += takes;
    } else runs.push({ kind, n, takes, lean });
  };
  const markersOf = (hands: Hands): number[] => {
    const worked = hands.needles.right.marks.filter((mark) => mark.kind === 'marker' && mark.at >= behind).map((mark) => mark.at - behind);
    return [...new Set(worked)];
  };
  const flush = (hands: Hands, ahead: number, turned: boolean, markers: readonly number[]): void => {
    // Work that goes past the beginning of the round takes up stitches that lay behind it.
    const { left, right, mode } = hands.needles;
    const squares = runs.reduce((sum, run) => sum + (run.kind === 'boundOff' || run.kind === 'held' ? 0 : run.n), 0);
    const waiting = mode === 'round' ? Math.max(0, left.n + right.n - squares - ahead) : behind;
    lines.push({ side, behind: waiting, ahead, runs, markers, turned, rest });
    runs = [];
    behind = hands.needles.right.n;
    side = flip(side);
    rest = false;
    begun = true;
    castOnLeft = 0;
  };
  const markedBeforeTurn: number[][] = [];
  const begin = (step: Step, hands: Hands): void => {
    heads.push({
      taken: hands.taken,
      made: hands.made,
      off: hands.off,
      left: hands.needles.left.n,
      right: hands.needles.right.n,
      held: hands.held.length,
    });
    if (isRun(step)) inLeaf += 1;
    if (step.type === 'turn') markedBeforeTurn.push(markersOf(hands));
  };
  const end = (step: Step, hands: Hands): void => {
    const at = heads.pop();
    if (isRun(step)) inLeaf -= 1;
    if (at === undefined || inLeaf > 0) return;
    const takes = hands.taken - at.taken;
    const makes = hands.made - at.made;
    const fell = at.left - hands.needles.left.n;
    const grew = hands.needles.right.n - at.right;
    const brings = step.type === 'castOn' || step.type === 'pickUp' || step.type === 'takeUp';
    if (!begun && (brings ? grew > 0 : takes > 0 || makes > 0)) {
      begun = true;
      behind = hands.needles.right.n - (brings ? grew : makes);
      side = hands.needles.side;
    }
    switch (step.type) {
      case 'repeat':
        if (isRun(step)) add('plain', makes, takes);
        return;
      case 'work':
        addWork(add, lexiconEntry(proof, step.stitch), takes, makes);
        return;
      case 'intoOne':
        addPlainChange(add, takes, makes, 'increase');
        return;
      case 'evenly':
        // "Purl, decreasing 2 sts evenly": the plain stitches before it are those it is spread over.
        if (takes === 0 && runs.at(-1)?.kind === 'plain') {
          const plain = runs.pop() as Run;
          addEvenly(add, plain.takes, plain.n + makes);
        } else addEvenly(add, takes, makes);
        return;
      case 'pullOver':
        pullOver(runs, -makes);
        return;
      case 'castOn':
        add('castOn', Math.max(grew, -fell), 0);
        if (grew <= 0) castOnLeft += Math.max(0, -fell);
        return;
      case 'pickUp':
      case 'takeUp':
        add('taken', grew, 0);
        return;
      case 'join':
        if (grew < 0) leaveRight(runs, -grew, 'boundOff');
        return;
      case 'bindOff': {
        const off = hands.off - at.off;
        add('boundOff', off, off);
        if (takes > off) add('plain', takes - off, takes - off);
        return;
      }
      case 'hold':
        if (grew < 0) leaveRight(runs, -grew, 'held');
        else add('held', Math.max(0, fell), Math.max(0, fell));
        return;
      case 'turn': {
        if (step.not || step.quarter) return;
        if (step.holds !== null) {
          add('held', at.left, at.left);
          rest = true;
          return;
        }
        flush(hands, at.left, true, markedBeforeTurn.pop() ?? []);
        return;
      }
      default:
        return;
    }
  };
  const ended = workMoment(proof, moment, {
    watch: {
      begin,
      end,
      pass: () => {},
      between: () => {},
    },
  });
  if (ended.trouble !== null || ended.left > 0) return ended.trouble?.kind === 'unread' ? 'unread' : 'stopped';
  const { left, right } = ended.needles;
  if (runs.length === 0 && lines.length === 0) return [{ side, behind: right.n, ahead: left.n, runs, markers: [], turned: false, rest }];
  if (runs.length > 0) {
    const markers = right.marks.filter((mark) => mark.kind === 'marker' && mark.at >= behind).map((mark) => mark.at - behind);
    lines.push({ side, behind, ahead: Math.max(0, left.n - castOnLeft), runs, markers: [...new Set(markers)], turned: false, rest });
    // Where only the net of some steps is known the squares do not add up; then none are drawn.
    const squares = runs.reduce((sum, run) => sum + (run.kind === 'boundOff' || run.kind === 'held' ? 0 : run.n), 0);
    if (behind + squares + left.n - castOnLeft !== left.n + right.n) return 'told';
  }
  return lines;
}

/** The last stitches made leave the needle again. */
function leaveRight(runs: Run[], count: number, kind: 'held' | 'boundOff'): void {
  let rest = count;
  while (rest > 0) {
    const last = runs.at(-1);
    if (last === undefined) break;
    const taken = Math.min(rest, last.n);
    const share = last.n === taken ? last.takes : Math.min(last.takes, taken);
    last.n -= taken;
    last.takes -= share;
    if (last.n === 0) runs.pop();
    rest -= taken;
  }
  runs.push({ kind, n: count, takes: count, lean: null });
}

/** A run such as "k to last 3 sts" is one stretch, whatever steps it holds. */
function isRun(step: Step): boolean {
  return step.type === 'repeat' && step.form === 'run' && step.extent?.kind !== 'times';
}

function lexiconEntry(proof: Proof, name: string): LexiconEntry | undefined {
  return proof.pattern.vocabulary.stitches.get(name) ?? entryNamed(name);
}

type Add = (kind: SquareKind, n: number, takes: number, lean?: Run['lean']) => void;

function addWork(add: Add, entry: LexiconEntry | undefined, takes: number, makes: number): void {
  const lean = entry?.lean ?? null;
  if (entry?.kind === 'cable' || entry?.kind === 'twist') {
    if (takes === makes) add('crossing', makes, takes, lean);
    else addPlainChange(add, takes, makes, 'increase', lean);
    return;
  }
  if (entry?.kind === 'yarnOver') {
    for (let made = 0; made < makes; made += 1) add('yarnOver', 1, 0);
    return;
  }
  if (takes === makes) add('plain', makes, takes);
  else addPlainChange(add, takes, makes, 'increase', lean);
}

/** Spreads a gain or a loss over the squares that are made: the stitches that are only worked stay plain. */
function addPlainChange(add: Add, takes: number, makes: number, gain: 'increase' | 'yarnOver', lean: Run['lean'] = null): void {
  const net = makes - takes;
  if (net > 0) {
    add('plain', takes, takes);
    for (let made = 0; made < net; made += 1) add(gain, 1, 0, lean);
    return;
  }
  if (makes <= 0) {
    return;
  }
  // So many squares share the loss as evenly as they can: k2tog twice is two decreases, sk2p one double one.
  const each = Math.floor(-net / makes);
  let over = -net - each * makes;
  for (let made = 0; made < makes; made += 1) {
    const loss = each + (over > 0 ? 1 : 0);
    if (over > 0) over -= 1;
    if (loss === 0) add('plain', 1, 1);
    else add(loss > 1 ? 'doubleDecrease' : 'decrease', 1, 1 + loss, lean);
  }
}

/** "inc 6 sts evenly": where they stand is the knitter's choice; they are drawn where evenly would put them. */
function addEvenly(add: Add, takes: number, makes: number): void {
  const net = makes - takes;
  if (net === 0) {
    add('plain', makes, takes);
    return;
  }
  const places = Math.abs(net);
  const rest = net > 0 ? takes : makes - places;
  let done = 0;
  for (let place = 0; place < places; place += 1) {
    const until = Math.round(((place + 0.5) * rest) / places);
    add('plain', until - done, until - done);
    done = until;
    if (net > 0) add('increase', 1, 0);
    else add('decrease', 1, 2);
  }
  add('plain', rest - done, rest - done);
}

/** The last stitches made go over their neighbour: the neighbour becomes a decrease. */
function pullOver(runs: Run[], count: number): void {
  for (let time = 0; time < count; time += 1) {
    const last = runs.at(-1);
    if (last === undefined) return;
    if (last.n > 1 && last.kind === 'plain') {
      last.n -= 2;
      last.takes -= 2;
      if (last.n <= 0) runs.pop();
      runs.push({ kind: 'decrease', n: 1, takes: 2, lean: 'left' });
      continue;
    }
    const before = runs.at(-2);
    if (before === undefined || before.n < 1) return;
    runs.pop();
    before.n -= 1;
    const lost = Math.min(before.takes, 1);
    before.takes -= lost;
    if (before.n <= 0) runs.pop();
    const takes = last.takes + lost;
    runs.push({ kind: takes > 2 ? 'doubleDecrease' : 'decrease', n: last.n, takes, lean: last.kind === 'decrease' ? 'centre' : 'left' });
  }
}
