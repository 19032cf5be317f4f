/**
 * Colours named beside the stitches of a row: "k2 A, 1 B, 3 A", "knit 2 main colour, 1 pattern colour", "*2A, 1B; rep from *".
 * A number with a colour is so many stitches of the verb before it; the colour itself changes no count.
 */
import { numberAt } from './numbers.ts';

const named = String.raw`(?:[A-H]|MC|CC ?\d?|C\d|[Yy]arn [A-H]|(?:[Mm]ain|[Pp]attern|[Cc]ontrast(?:ing)?|[Bb]ackground|[Bb]ase|[Ff]irst|[Ss]econd|[Dd]ark|[Ll]ight) (?:colou?r|shade)|(?:white|black|blue|navy|red|green|gr[ae]y|yellow|cream|natural|brown|pink|orange|purple|teal|gold|rust|dark|light))`;
const beside = String.raw`\s?(?:sts? |stitch(?:es)? )?(?:in |with )?(?:colou?r )?`;

/** The colours of a draft: those every draft may name, and the short words it explains as a colour or a yarn of its own ("c1", "wh"). */
interface Palette {
  readonly colour: RegExp;
  readonly some: RegExp;
}

function paletteOf(names: readonly string[]): Palette {
  const all = [named, ...names.map((name) => `(?:${name}|${name.toUpperCase()})`)].join('|');
  return {
    colour: new RegExp(String.raw`${beside}(?:${all})(?![A-Za-z0-9])`, 'y'),
    some: new RegExp(String.raw`\d${beside}(?:${all})(?![A-Za-z0-9])`),
  };
}

const common = paletteOf([]);
const undefinedTerms: ReadonlyMap<string, string> = new Map();
const palettes = new WeakMap<ReadonlyMap<string, string>, Palette>();

function paletteFor(defined: ReadonlyMap<string, string>): Palette {
  const known = palettes.get(defined);
  if (known !== undefined) return known;
  const names = [...defined]
    .filter(
      ([term, meaning]) =>
        /^[a-z]{1,3}\d?$/.test(term) && !/^[kp]\d?$/.test(term) && /\b(?:colou?r|shade|yarn) ?(?:\d|[a-h]\b)/i.test(meaning),
    )
    .map(([term]) => term);
  const palette = names.length === 0 ? common : paletteOf(names);
  palettes.set(defined, palette);
  return palette;
}

const ends = /\s*(?:[,;*)\].]|$|\n|rep|and |to )/y;
const start = /[,*([;:]\s{0,2}(?=\d)|\b(?:and|k|p|K|P|knit|purl|Knit|Purl) ?(?=\d)/g;

export interface ColouredCount {
  /** Length of the number, in characters. */
  readonly length: number;
  /** The stitch the number is of; null where a verb stands beside it. */
  readonly verb: 'k' | 'p' | null;
}

export interface Colours {
  /** Numbers that stand for stitches, by their offset. */
  readonly counts: ReadonlyMap<number, ColouredCount>;
  /** Words that name a colour beside a number: where they begin, and where they end. */
  readonly words: ReadonlyMap<number, number>;
}

const none: Colours = { counts: new Map(), words: new Map() };

/**
 * Finds the stitches of a passage that are told by their colour alone.
 * @param defined the draft's abbreviations with their meanings
 */
export function coloursIn(text: string, sizes: number | null, defined: ReadonlyMap<string, string> = undefinedTerms): Colours {
  const { colour, some } = paletteFor(defined);
  if (!some.test(text)) return none;
  const counts = new Map<number, ColouredCount>();
  const words = new Map<number, number>();
  let verb: 'k' | 'p' = 'k';
  start.lastIndex = 0;
  for (let match = start.exec(text); match !== null; match = start.exec(text)) {
    const at = match.index + match[0].length;
    const own = /^(?:k|p)/i.exec(match[0])?.[0]?.toLowerCase();
    if (own !== undefined) verb = own === 'p' ? 'p' : 'k';
    if (/[:.]/.test(match[0])) verb = 'k';
    const number = numberAt(text, at, sizes);
    if (number === null || number.kind !== 'number') continue;
    colour.lastIndex = at + number.length;
    const found = colour.exec(text);
    if (found === null) continue;
    const end = colour.lastIndex;
    ends.lastIndex = end;
    if (!ends.test(text)) continue;
    const blank = found[0].length - found[0].trimStart().length;
    words.set(at + number.length + blank, end);
    if (own === undefined) counts.set(at, { length: number.length, verb });
    start.lastIndex = end;
  }
  // One such number may be of rows or of balls; a list, or a verb that begins it, is of stitches.
  return words.size >= 2 ? { counts, words } : none;
}
