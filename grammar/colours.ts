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

/** "MC k2, CC k2": the colour before its stitches. */
const colourFirst =
  /(?:[,*([;:]\s{0,2})((?:[A-H]|MC|CC ?\d?|C\d|white|black|blue|navy|red|green|gr[ae]y|yellow|cream|brown|pink|orange|purple|teal|gold|rust)) (?=(?:k|p|K|P) ?\d)/g;
/** A colour by its English name stands for nothing else before a stitch. */
const plainName = /^[a-z]{3,}$/;
/** "K: 1A, 3B": the verb of the numbers behind the colon. */
const verbBefore = /(?<![A-Za-z])([KkPp])(?=:\s?\d)/g;
/** A colour by the name the draft gives it, as printed beside numbers: "K1 Sand, * k 3 Sea, k 1 Sand". */
const namedByDraft = /(?<![A-Za-z])[KkPp] ?\d+ (?=([A-Z][a-z]{2,11})(?:\s?[,;*)\].]|$))/g;
const noColour = /^(?:Tog|Together|Sts?|Stitch|Stitches|Times|Row|Rows|Twice|Once|More|From|Through|Rib|And|Then|Purl|Knit|Wise|Turn)$/;
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

function colourBefore(text: string): boolean {
  colourFirst.lastIndex = 0;
  return colourFirst.test(text);
}

/** Names beside numbers of stitches that come again so: one alone may be anything. */
function ownColours(text: string): Map<number, number> {
  const found = [...text.matchAll(namedByDraft)].filter((match) => !noColour.test(match[1] ?? ''));
  const places = new Map<number, number>();
  for (const match of found)
    if (found.filter((each) => each[1] === match[1]).length > 1 || found.length > 2) {
      const at = match.index + match[0].length;
      places.set(at, at + (match[1] ?? '').length);
    }
  return places;
}

/**
 * Finds the stitches of a passage that are told by their colour alone.
 * @param defined the draft's abbreviations with their meanings
 */
export function coloursIn(text: string, sizes: number | null, defined: ReadonlyMap<string, string> = undefinedTerms): Colours {
  const { colour, some } = paletteFor(defined);
  const ownNames = ownColours(text);
  if (!some.test(text) && ownNames.size === 0 && !colourBefore(text)) return none;
  const counts = new Map<number, ColouredCount>();
  const words = new Map<number, number>();
  let sure = false;
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
  for (const [offset, end] of ownNames) words.set(offset, end);
  colourFirst.lastIndex = 0;
  for (const match of text.matchAll(colourFirst)) {
    const at = match.index + match[0].length - (match[1] ?? '').length - 1;
    words.set(at, at + (match[1] ?? '').length);
    sure ||= plainName.test(match[1] ?? '');
  }
  if (words.size >= 2)
    for (const match of text.matchAll(verbBefore))
      if (counts.has(match.index + 2) || counts.has(match.index + 3)) words.set(match.index, match.index + 1);
  // One such number may be of rows or of balls; a list, or a verb that begins it, is of stitches.
  return words.size >= 2 || sure ? { counts, words } : none;
}
