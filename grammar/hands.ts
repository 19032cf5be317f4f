/**
 * Two needles and a pair of hands: carries out the primitive moves of a stitch and counts what left the left needle and
 * what came to the right one. The moves are those of the lexicon (`k+ kb`, `slk slk ret(2) kbt(2)`, `cnF(3) k×3 kcnF`).
 */

/** What a stitch did: stitches of the row taken, loops made, and the faces of the loops made in their order. */
export interface Handwork {
  readonly takes: number;
  readonly makes: number;
  readonly faces: readonly ('k' | 'p' | null)[];
  /** Worked loops that were given back and lie first on the left needle: they still have to come to the right one. */
  readonly givenBack: number;
}

interface Move {
  readonly name: string;
  readonly numbers: readonly number[];
}

type Loop = { readonly row: boolean; face: 'k' | 'p' | null; worked: boolean; kept: boolean };

/** Stitches that wait on each needle before the first move: more than any stitch takes. */
const waiting = 48;
/** Longest list of moves that is carried out; a stitch of more than this is not one. */
const mostMoves = 600;

/** A sum such as `2*N+M`, `(N-1)/2` or `3`, read from the left. Null when it is none. */
function reckon(text: string, n: number, m: number): number | null {
  let at = 0;
  const atom = (): number => {
    const sign = text[at];
    if (sign === '(') {
      at += 1;
      const value = sum();
      at += 1;
      return value;
    }
    if (sign === '-') {
      at += 1;
      return -atom();
    }
    if (sign === 'N' || sign === 'M') {
      at += 1;
      return sign === 'N' ? n : m;
    }
    let digits = '';
    while (/\d/.test(text[at] ?? '')) digits += text[at++];
    return digits === '' ? Number.NaN : Number(digits);
  };
  const product = (): number => {
    let value = atom();
    while (text[at] === '*' || text[at] === '/') value = text[at++] === '*' ? value * atom() : value / atom();
    return value;
  };
  const sum = (): number => {
    let value = product();
    while (text[at] === '+' || text[at] === '-') value = text[at++] === '+' ? value + product() : value - product();
    return value;
  };
  const value = sum();
  return at === text.length && Number.isFinite(value) ? value : null;
}

/** Index of the bracket that closes the one at `open`, or -1. */
function closing(text: string, open: number): number {
  let depth = 0;
  for (let at = open; at < text.length; at += 1) {
    if (text[at] === '(') depth += 1;
    else if (text[at] === ')' && --depth === 0) return at;
  }
  return -1;
}

/** The moves one by one, brackets and `×n` written out; null when the text is no list of moves. */
function unfold(text: string, n: number, m: number): Move[] | null {
  const out: Move[] = [];
  let at = 0;
  while (at < text.length) {
    if (text[at] === ' ') {
      at += 1;
      continue;
    }
    let group: Move[];
    if (text[at] === '(') {
      const close = closing(text, at);
      const inside = close < 0 ? null : unfold(text.slice(at + 1, close), n, m);
      if (inside === null) return null;
      group = inside;
      at = close + 1;
    } else {
      const word = /[A-Za-z]+@?\+?|-/y;
      word.lastIndex = at;
      const name = word.exec(text)?.[0];
      if (name === undefined) return null;
      at = word.lastIndex;
      const numbers: number[] = [];
      if (text[at] === '(') {
        const close = closing(text, at);
        if (close < 0) return null;
        const inside = text.slice(at + 1, close);
        // The bar of `pass(2/1)` parts two numbers; that of `cnF(N/2)` divides.
        for (const part of /^l?pass$/.test(name) ? inside.split('/') : [inside]) {
          const value = reckon(part.replaceAll(' ', ''), n, m);
          if (value === null) return null;
          numbers.push(value);
        }
        at = close + 1;
      }
      group = [{ name, numbers }];
    }
    let times = 1;
    if (text[at] === '×') {
      at += 1;
      const end = text[at] === '(' ? closing(text, at) + 1 : /[^\dNM]|$/.exec(text.slice(at))!.index + at;
      const value = reckon(text.slice(at, end).replaceAll(' ', ''), n, m);
      if (value === null || value < 0 || !Number.isInteger(value)) return null;
      times = value;
      at = end;
    }
    if (out.length + times * group.length > mostMoves) return null;
    for (let pass = 0; pass < times; pass += 1) out.push(...group);
  }
  return out;
}

/**
 * Carries out the moves of a stitch. Null when the hands cannot do them: a move that is none, a needle with too little on
 * it, a stitch worked and never let go, stitches left on the cable needle, or a piece left the other way round.
 */
export function carryOut(moves: string, n = 1, m = 1): Handwork | null {
  const list = unfold(moves, n, m);
  if (list === null) return null;
  const row = (): Loop => ({ row: true, face: null, worked: false, kept: false });
  const before = (): Loop => ({ row: false, face: null, worked: true, kept: false });
  let left = Array.from({ length: waiting }, row);
  let right = Array.from({ length: waiting }, before);
  const cable: Record<string, Loop[]> = { F: [], B: [], S: [] };
  let turned = false;
  for (const { name, numbers } of list) {
    const count = numbers[0] ?? 1;
    if (!Number.isInteger(count) || count < 0) return null;
    const worked = /^([kp])b?(t|w|@)?(\+)?$/.exec(name);
    const off = /^([kp])b?cn([FBS])$/.exec(name);
    if (worked) {
      const face = worked[1] === 'p' ? 'p' : 'k';
      const used = worked[2] === 't' ? count : 1;
      const from = worked[2] === '@' ? count - 1 : 0;
      if (used < 1 || left.length < from + used) return null;
      for (let each = from; each < from + used; each += 1) {
        const loop = left[each] as Loop;
        loop.worked = true;
        loop.kept = worked[3] === '+' || worked[2] === '@';
      }
      right.push({ row: false, face, worked: true, kept: false });
      if (worked[3] !== '+' && worked[2] !== '@') left.splice(0, used);
    } else if (off) {
      const needle = cable[off[2] as string] as Loop[];
      if (needle.length === 0) return null;
      for (const _ of needle.splice(0)) right.push({ row: false, face: off[1] === 'p' ? 'p' : 'k', worked: true, kept: false });
    } else if (/^cn[FBS]$/.test(name)) {
      const needle = cable[name.slice(2)] as Loop[];
      if (needle.length > 0 || left.length < count) return null;
      needle.push(...left.splice(0, count));
    } else if (name === 'off') {
      if (left.splice(0, count).some((loop) => !loop.worked)) return null;
    } else if (name === 'sl' || name === 'slk' || name === 'slt') right.push(...left.splice(0, name === 'slt' ? count : 1).reverse());
    else if (name === 'ret') {
      for (let each = 0; each < count; each += 1) left.unshift(right.pop() as Loop);
    } else if (name === 'pass' || name === 'lpass') {
      const under = numbers[1] ?? 1;
      if (name === 'pass') right.splice(right.length - under - count, count);
      else left.splice(under, count);
    } else if (name === 'yo' || name === 'yob' || name === 'loop') right.push({ row: false, face: null, worked: true, kept: false });
    else if (name === 'bar' || name === 'below' || name === 'belowR') left.unshift({ row: false, face: null, worked: false, kept: false });
    else if (name === 'drop' || name === 'hold') left.splice(0, count);
    else if (name === 'co' || name === 'pick' || name === 'join')
      for (let each = 0; each < count; each += 1) right.push({ row: false, face: null, worked: true, kept: false });
    else if (name === 'turn') {
      [left, right] = [right.reverse(), left.reverse()];
      turned = !turned;
    } else if (!/^(?:yf|yb|wrap|tug|bead|dropw|-)$/.test(name)) return null;
  }
  if (turned || left.some((loop) => loop.kept) || Object.values(cable).some((needle) => needle.length > 0)) return null;
  const givenBack = left.findIndex((loop) => loop.row || loop.face === null);
  return {
    givenBack: Math.max(0, givenBack),
    takes: waiting - left.length,
    makes: right.length - waiting,
    faces: right.slice(waiting).map((loop) => loop.face),
  };
}
