/**
 * Abbreviations that patterns use, with the meaning in a few words and, where one stitch is worked, what it does to the
 * count. A base for "explained or not" and for the effect of an explanation; the draft's own definition always wins.
 */
import { type Certainty, memory, published } from './certainty.ts';

export interface StandardAbbreviation {
  readonly term: string;
  readonly meaning: string;
  /** Stitches made less stitches used; null where the term works no stitch. */
  readonly change: number | null;
  /** Must be defined by the draft: lists differ on what it is. */
  readonly ambiguous: boolean;
  readonly dialect: 'US' | 'UK' | null;
  readonly certainty: Certainty;
}

/** `count`: how many of ten published lists (handbooks, retailers, teachers, a stitch book) carry the term. */
const term = (
  text: string,
  meaning: string,
  change: number | null,
  count: number,
  extra: { readonly ambiguous?: boolean; readonly dialect?: 'US' | 'UK' } = {},
): StandardAbbreviation => ({
  term: text,
  meaning,
  change,
  ambiguous: extra.ambiguous ?? false,
  dialect: extra.dialect ?? null,
  certainty: count === 0 ? memory : published(`${count} of ten published abbreviation lists`),
});

export const standardAbbreviations: readonly StandardAbbreviation[] = [
  term('alt', 'every other', null, 6),
  term('approx', 'about', null, 6),
  term('beg', 'beginning', null, 9),
  term('bet', 'between', null, 1),
  term('BO', 'bind off', null, 6, { dialect: 'US' }),
  term('BOR', 'beginning of round', null, 0),
  term('CC', 'contrast colour', null, 8),
  term('ch', 'chain', null, 2),
  term('cm', 'centimetre', null, 4),
  term('cn', 'cable needle', null, 7),
  term('CO', 'cast on', null, 5),
  term('cont', 'continue', null, 8),
  term('dec', 'decrease', null, 9),
  term('DK', 'double knitting yarn', null, 0),
  term('dpn', 'double-pointed needle', null, 8),
  term('foll', 'following', null, 6),
  term('g', 'gram', null, 4),
  term('g st', 'garter stitch', null, 1, { dialect: 'UK' }),
  term('in', 'inch', null, 2),
  term('inc', 'increase', null, 10),
  term('incl', 'including', null, 2),
  term('k', 'knit', 0, 10),
  term('k1b', 'knit in the row below, or through the back loop', 0, 2, { ambiguous: true }),
  term('k2tog', 'knit two together', -1, 9),
  term('k3tog', 'knit three together', -2, 2),
  term('kfb', 'knit into front and back', 1, 7),
  term('kwise', 'as if to knit', null, 3),
  term('LH', 'left hand', null, 4),
  term('m', 'marker, or metre', null, 3, { ambiguous: true }),
  term('M1', 'make one from the bar', 1, 8),
  term('M1L', 'make one, leaning left', 1, 1),
  term('M1R', 'make one, leaning right', 1, 1),
  term('M1P', 'make one purlwise', 1, 2),
  term('MB', 'make bobble', 0, 0, { ambiguous: true }),
  term('MC', 'main colour', null, 8),
  term('mm', 'millimetre', null, 3),
  term('meas', 'measures', null, 3),
  term('mult', 'multiple', null, 2),
  term('oz', 'ounce', null, 4),
  term('p', 'purl', 0, 10),
  term('p2tog', 'purl two together', -1, 7),
  term('p3tog', 'purl three together', -2, 1),
  term('patt', 'pattern', null, 6),
  term('pfb', 'purl into front and back', 1, 4),
  term('pm', 'place marker', null, 7),
  term('prev', 'previous', null, 3),
  term('psso', 'pass slipped stitch over', -1, 9),
  term('p2sso', 'pass two slipped stitches over', -2, 3),
  term('pwise', 'as if to purl', null, 3),
  term('rem', 'remain', null, 8),
  term('rep', 'repeat', null, 9),
  term('RH', 'right hand', null, 4),
  term('rnd', 'round', null, 8),
  term('RS', 'right side', null, 10),
  term('S2KP', 'slip two together, knit one, pass both over', -2, 2),
  term('SKP', 'slip one, knit one, pass over', -1, 4),
  term('SK2P', 'slip one, knit two together, pass over', -2, 4),
  term('sl', 'slip', 0, 8),
  term('sm', 'slip marker', null, 4),
  term('rm', 'remove marker', null, 0),
  term('ssk', 'slip two knitwise, knit together', -1, 7),
  term('ssp', 'slip two knitwise, purl together through the back', -1, 1),
  term('sssk', 'slip three knitwise, knit together', -2, 0),
  term('st', 'stitch', null, 10),
  term('st st', 'stocking stitch', null, 7),
  term('tbl', 'through the back loop', null, 9),
  term('tog', 'together', null, 9),
  term('w&t', 'wrap and turn', 0, 2),
  term('WS', 'wrong side', null, 8),
  term('wyib', 'with yarn in back', null, 6),
  term('wyif', 'with yarn in front', null, 7),
  term('yb', 'yarn back', null, 3),
  term('yd', 'yard', null, 5),
  term('yf', 'yarn front, or a yarn over', null, 3, { ambiguous: true }),
  term('yfwd', 'yarn over between two knit stitches', 1, 3, { dialect: 'UK', ambiguous: true }),
  term('yo', 'yarn over', 1, 8),
  term('yrn', 'yarn over before a purl', 1, 2, { dialect: 'UK' }),
  term('yon', 'yarn over between purl and knit', 1, 2, { dialect: 'UK' }),
  term('yfrn', 'yarn over between knit and purl', 1, 1, { dialect: 'UK' }),
];

const byTerm = new Map(standardAbbreviations.map((one) => [one.term.toLowerCase(), one]));

/** The standard entry of a term, whatever its case: `K2tog` is `k2tog`. */
export const standardAbbreviation = (text: string): StandardAbbreviation | null => byTerm.get(text.toLowerCase()) ?? null;

/** Effect words in an explanation: "2 sts decreased", "1 st inc'd"; the number of stitches gained (+) or lost (−), or null. */
export function statedChange(meaning: string): number | null {
  const match =
    /\b(\d{1,2}|one|two|three|four)\s(?:sts?|stitch(?:es)?)\s(?:(decreased|dec'?d|dec)|(increased|inc'?d|inc|made))\b/i.exec(meaning) ??
    /\b(?:(decreases?|dec)|(increases?|inc))\s(\d{1,2}|one|two|three|four)\s(?:sts?|stitch(?:es)?)\b/i.exec(meaning);
  if (match === null) return null;
  const small: Readonly<Record<string, number>> = { one: 1, two: 2, three: 3, four: 4 };
  const numeral = match.find((part, i) => i > 0 && part !== undefined && (/^\d/.test(part) || part.toLowerCase() in small))!;
  const amount = small[numeral.toLowerCase()] ?? Number(numeral);
  return match.some((part, i) => i > 0 && /^dec/i.test(part ?? '')) ? -amount : amount;
}
