/**
 * The full stop behind an abbreviation, as old leaflets print it: "K. 2, * p. 1, k. 1; rep. from * to last 3 sts., p. 2 tog."
 * It ends no sentence and says nothing, so it is read as a blank. What follows decides; where a sentence may end, it stays.
 */

/** Words that leaflets shorten and print with a stop. */
const shortened = new Set(
  'alt approx beg cont dec foll inc in ins k p patt pat rep rem rnd rnds sl st sts tog tbl psso pwise kwise yfwd yrn won wl fwd bk no nos cm cms mm oz ozs yd yds m c f b t r l tw cr w con incl opp meas mult cn g'.split(
    ' ',
  ),
);
/** Those that never end a sentence: an order, a number or a describing word must follow. */
const leading = new Set('alt approx beg cont dec foll inc rep no nos k p sl m c tw cr'.split(' '));
const orders = new Set(['rep', 'beg', 'foll']);

const stop = /([A-Za-z]+)\.(?=(\s{0,3})(\S?))/g;
/** Whether the passage is printed in that manner at all. */
const dotted =
  /(?<![A-Za-z])(?:[Ss]ts?|[Rr]ep|[Bb]eg|[Dd]ec|[Ii]nc|[Pp]att|alt|tog|foll)\.(?=\s{1,3}[a-z]|\s?[,;])|(?<![A-Za-z])[KkPp]\.(?=\s?\d+(?!\d|st\b|nd\b|rd\b|th\b)|\s(?:to|across|until|rows?|every|all)\b)|(?<![A-Za-z])(?:ins?|cms?)\.(?=\s?[,;])|(?<=\d\s?)ins?\.(?=\s[a-z])/;
/** "No. 12 needles": the number of a needle, a ball or a chart, in every manner of printing. */
const numbered = /(?<![A-Za-z])([Nn]os?)\.(?=\s?\d)/g;
/** "15 sts incl. st on needle", "approx. 20 cm": shortened in every manner of printing. */
const shortenedAnywhere = /(?<![A-Za-z])(incl|excl|approx)\.(?=\s[a-z\d])/gi;
/** "w.fwd.", "wl.fwd.", "y.bk.": two short words, each with its stop. */
const yarnMoved = /(?<![A-Za-z.])(yn?|wl?|wn)\.(fwd|bk)\b\.?(?=\s?[,;:)\]*]|\s[a-z]|\s*$)/gi;
/** "t.b.l.": through the back of the loop, letter by letter. */
const throughLoop = /(?<![A-Za-z.])t\.\s?([bf])\.\s?l\.?(?![A-Za-z])/gi;
/** "K. 3rd row: …", "K. 3. row: …": what follows is the label of the next row. */
const ordinalRow = /^\s*\d+(?:(?:st|nd|rd|th)\b|\.\s*(?:rows?|rnds?|rounds?)\b)/i;

/** "Work 2 in. in k2, p2 rib", "until 15 in. from beg": the stop of a unit, in every manner of printing. */
const measured = /([\d½¼¾)\]]\s?(?:ins?|cms?|mm|ozs?|yds?))\.(?=\s{1,3}(?:[a-z([&–-]|\d+ (?:times|more|sts)\b)|\s?[,;)])/g;
/** "Rib 2 in.": inches, wherever a number stands before them and a stop behind. */
const inches = /(?<=[\d½¼¾)\]]\s?)[Ii]n(?=\.(?!\w))/g;

/** Places of the words "in" that are inches, as the stop behind them shows. */
export function inchesIn(text: string): ReadonlySet<number> {
  return text.includes('in.') || text.includes('In.') ? new Set([...text.matchAll(inches)].map((match) => match.index)) : none;
}

const none: ReadonlySet<number> = new Set();

/** The same text, as long as before, with a blank for every full stop that only shortens a word. */
export function withoutShorteningStops(text: string): string {
  if (!text.includes('.')) return text;
  const told = text
    .replace(numbered, '$1 ')
    .replace(measured, '$1 ')
    .replace(shortenedAnywhere, '$1 ')
    .replace(yarnMoved, (match, yarn: string, way: string) => `${yarn} ${way}`.padEnd(match.length))
    .replace(throughLoop, (match, way: string) => `t${way}l`.padEnd(match.length));
  if (!dotted.test(told)) return told;
  return told.replace(stop, (match: string, word: string, gap: string, next: string, at: number) => {
    const lower = word.toLowerCase();
    // … but "every foll. 4th row" goes on
    if (lower !== 'foll' && ordinalRow.test(told.slice(at + match.length, at + match.length + 16))) return match;
    if (!shortened.has(lower) || next === '') return match;
    const behind = told.slice(at + match.length + gap.length, at + match.length + gap.length + 3);
    // Before small letters, a star, a bracket or another mark the stop cannot end a sentence; "k2 sts. k1, p1" may.
    const goesOn = /[,;:)\]*(–—&½¼¾-]/.test(next) || (gap !== '' && /[a-z]/.test(next) && !/^[kp]\s?\d/.test(behind));
    // "patt. 33, cast off 18": a verb where it begins its clause
    const verb = (lower === 'patt' || lower === 'pat') && /(?:^|[:,;.*([])\s*$/.test(told.slice(Math.max(0, at - 4), at));
    // "cast off the rem. 30 sts": the word describes what its number counts
    const describes =
      lower === 'rem' &&
      /\d/.test(next) &&
      /\b(?:the|these|off|on|across|over|leave|slip|place)\s+$/i.test(told.slice(Math.max(0, at - 8), at));
    const leads = ((leading.has(lower) || verb) && /\d/.test(next)) || (orders.has(lower) && /[A-Z]/.test(next));
    // "moss st. 4, k. 14": so many stitches in that fabric
    const fabric =
      /^sts?$/.test(lower) &&
      /\b(?:moss|garter|seed|g) $/i.test(told.slice(Math.max(0, at - 8), at)) &&
      /^\s\d+\s?[,;]/.test(told.slice(at + match.length));
    return goesOn || describes || leads || fabric ? `${word} ` : match;
  });
}
