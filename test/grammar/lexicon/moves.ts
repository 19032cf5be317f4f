/**
 * A second way to the counts of the lexicon: two needles and the hands. The moves of an entry are carried out one by
 * one on a left needle full of stitches, and what is missing there and new on the right needle is what the stitch takes
 * and makes. Nothing here reads `takes` or `makes`.
 *
 * The moves, left to right as they are worked; `×n` after a move or a bracket repeats it:
 *
 *     k p kb pb                one stitch worked and dropped (b: through the back)
 *     k+ p+ kb+ pb+            worked, the old stitch kept on the left needle
 *     k@+(n)                   a loop through the nth stitch, all kept
 *     kt(n) pt(n) kbt(n) …     n worked as one;  kt+(n) keeps them on
 *     off(n)                   n stitches that have been worked already leave the left needle
 *     kw(n) pw(n)              one stitch with n wraps: still one
 *     sl slk slt(n)            to the right needle, unworked
 *     ret(n)                   back to the left needle
 *     pass(a/b)                on the right needle, the a just behind the last b are lifted off
 *     lpass(a/b)               on the left needle, the a just behind the first b are lifted off
 *     yo yob loop              one loop from nothing
 *     bar below belowR         one borrowed loop onto the left needle
 *     cnF cnB cnS (n)          n to the cable needle in front, behind, or the second one
 *     kcnF pcnB kcnS …         all of it worked off
 *     drop  co(n) pick(n) join(n) hold(n) turn fasten
 *     both                     one stitch of each of two needles worked as one
 *     yf yb wrap tug bead dropw -   the yarn or a tool moves, no stitch does
 */
interface Loop {
  worked: boolean;
  /** Where it stood on the left needle before the stitch began; null for a loop that comes from elsewhere. */
  readonly from: number | null;
  /** Worked and still on the left needle: it must be let go before the stitch is done. */
  kept?: boolean;
}

export interface Outcome {
  readonly takes: number;
  readonly makes: number;
  /** Positions, on the left needle before the stitch, of the loops now on the right needle; null for loops from nothing. */
  readonly order: readonly (number | null)[];
  readonly onCableNeedle: number;
}

const ENOUGH = 60;
const SCREENS = ['F', 'B', 'S'] as const;

export function carryOut(moves: string, n: number, m: number, waiting = 0): Outcome {
  let left: Loop[] = Array.from({ length: ENOUGH }, (_, from) => ({ worked: false, from }));
  let right: Loop[] = Array.from({ length: ENOUGH }, () => ({ worked: true, from: null }));
  const cable: Record<string, Loop[]> = { F: Array.from({ length: waiting }, () => ({ worked: false, from: null })), B: [], S: [] };
  const first = left.length;
  const second = right.length;
  let turned = false;

  const shift = (needle: Loop[], count: number): Loop[] => {
    if (count < 0 || !Number.isInteger(count) || needle.length < count) throw new Error(`cannot take ${count}`);
    return needle.splice(0, count);
  };
  const at = (index: number): Loop => {
    const loop = left[index];
    if (loop === undefined) throw new Error('no stitch there');
    return loop;
  };
  const make = (from: number | null) => right.push({ worked: true, from });

  const one = (move: string, args: readonly number[]): void => {
    const count = args[0] ?? 1;
    const work = /^[kp]b?(t|w|@)?(\+)?$/.exec(move);
    if (work) {
      const kept = work[2] === '+';
      if (work[1] === '@') {
        const loop = at(count - 1);
        loop.worked = true;
        loop.kept = true;
        make(loop.from);
      } else {
        const used = work[1] === 't' ? count : 1;
        if (used < 1) throw new Error('nothing to work');
        for (let i = 0; i < used; i += 1) {
          at(i).worked = true;
          at(i).kept = kept;
        }
        make(at(used - 1).from);
        if (!kept) shift(left, used);
      }
      return;
    }
    const held = /^[kp]b?cn([FBS])$/.exec(move);
    if (held) {
      const needle = cable[held[1] ?? ''] ?? [];
      if (needle.length === 0) throw new Error('the cable needle is empty');
      for (const loop of needle.splice(0)) make(loop.from);
      return;
    }
    switch (move) {
      case 'cnF':
      case 'cnB':
      case 'cnS': {
        const needle = cable[move.slice(2)] ?? [];
        if (needle.length > 0) throw new Error('the cable needle is full');
        needle.push(...shift(left, count));
        return;
      }
      case 'off':
        if (shift(left, count).some((loop) => !loop.worked)) throw new Error('a stitch fell that was not worked');
        return;
      case 'sl':
      case 'slk':
        right.push(...shift(left, 1));
        return;
      case 'slt':
        right.push(...shift(left, count).reverse());
        return;
      case 'ret':
        for (let i = 0; i < count; i += 1) {
          const loop = right.pop();
          if (loop === undefined) throw new Error('nothing to give back');
          left.unshift(loop);
        }
        return;
      case 'pass':
      case 'lpass': {
        const [over = 1, under = 1] = args;
        const needle = move === 'pass' ? right : left;
        if (needle.length < over + under || over < 1 || under < 1) throw new Error('nothing to lift over');
        needle.splice(move === 'pass' ? needle.length - under - over : under, over);
        return;
      }
      case 'yo':
      case 'yob':
      case 'loop':
        make(null);
        return;
      case 'bar':
      case 'below':
      case 'belowR':
        left.unshift({ worked: false, from: null });
        return;
      case 'both':
        make(shift(left, 1)[0]?.from ?? null);
        return;
      case 'drop':
      case 'hold':
        shift(left, count);
        return;
      case 'co':
      case 'pick':
      case 'join':
        if (count < 0) throw new Error('fewer than none');
        for (let i = 0; i < count; i += 1) make(null);
        return;
      case 'turn':
        // What was worked last is met first, and what waited lies behind.
        [left, right] = [right.reverse(), left.reverse()];
        turned = !turned;
        return;
      case 'fasten':
        if (right.pop() === undefined) throw new Error('no loop to fasten');
        return;
      case 'yf':
      case 'yb':
      case 'wrap':
      case 'tug':
      case 'bead':
      case 'dropw':
      case '-':
        return;
      default:
        throw new Error(`no such move: ${move}`);
    }
  };

  for (const step of unfold(moves, n, m)) one(step.move, step.args);
  const [leftNow, rightNow] = turned ? [right, left] : [left, right];
  const keptOn = leftNow.some((loop) => loop.worked && loop.kept);
  if (keptOn) throw new Error('a stitch was worked and never let go');
  return {
    takes: first - leftNow.length,
    makes: rightNow.length - second,
    order: rightNow.slice(second).map((loop) => loop.from),
    onCableNeedle: SCREENS.reduce((sum, screen) => sum + (cable[screen]?.length ?? 0), 0),
  };
}

interface Step {
  readonly move: string;
  readonly args: readonly number[];
}

/** The moves one by one, brackets and repeats written out. */
function unfold(moves: string, n: number, m: number): Step[] {
  let rest = moves;
  const take = (pattern: RegExp): RegExpExecArray | null => {
    const found = pattern.exec(rest);
    if (found) rest = rest.slice(found[0].length);
    return found;
  };
  /** The text up to the bracket that closes the one just opened. */
  const inside = (): string => {
    let depth = 1;
    for (let i = 0; i < rest.length; i += 1) {
      if (rest[i] === '(') depth += 1;
      if (rest[i] === ')') depth -= 1;
      if (depth === 0) {
        const text = rest.slice(0, i);
        rest = rest.slice(i + 1);
        return text;
      }
    }
    throw new Error(`open bracket in ${moves}`);
  };
  const out: Step[] = [];
  while (rest !== '') {
    if (take(/^ +/)) continue;
    let group: Step[];
    if (take(/^\(/)) group = unfold(inside(), n, m);
    else {
      const word = take(/^(-|[A-Za-z]+@?\+?)/)?.[0];
      if (word === undefined) throw new Error(`cannot read the moves from "${rest}"`);
      const passing = word === 'pass' || word === 'lpass';
      const args = take(/^\(/)
        ? inside()
            .split(passing ? '/' : ',')
            .map((text) => reckon(text, n, m))
        : [];
      group = [{ move: word, args }];
    }
    let times = 1;
    if (take(/^×/)) times = take(/^\(/) ? reckon(inside(), n, m) : reckon(take(/^(\d+|N|M)/)?.[0] ?? '?', n, m);
    if (times < 0 || !Number.isInteger(times)) throw new Error(`cannot repeat ${times} times`);
    for (let i = 0; i < times; i += 1) out.push(...group);
  }
  return out;
}

/** Sums with brackets and whole halves, worked out apart from the library's own reader of formulas. */
export function reckon(text: string, n: number, m: number): number {
  let rest = text.replaceAll(' ', '');
  const eat = (sign: string) => {
    if (!rest.startsWith(sign)) return false;
    rest = rest.slice(1);
    return true;
  };
  const atom = (): number => {
    if (eat('(')) {
      const value = sum();
      if (!eat(')')) throw new Error(`open bracket in ${text}`);
      return value;
    }
    if (eat('-')) return -atom();
    if (eat('N')) return n;
    if (eat('M')) return m;
    const digits = /^\d+/.exec(rest)?.[0];
    if (digits === undefined) throw new Error(`cannot reckon ${text}`);
    rest = rest.slice(digits.length);
    return Number(digits);
  };
  const product = (): number => {
    let value = atom();
    for (;;) {
      if (eat('*')) value *= atom();
      else if (eat('/')) value /= atom();
      else return value;
    }
  };
  const sum = (): number => {
    let value = product();
    for (;;) {
      if (eat('+')) value += product();
      else if (eat('-')) value -= product();
      else return value;
    }
  };
  const value = sum();
  if (rest !== '') throw new Error(`cannot reckon ${text}`);
  return value;
}
