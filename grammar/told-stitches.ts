/**
 * Stitches told at length in the middle of a row, found in the text before it is cut into tokens: each becomes one token of
 * the stitch it tells. Words such as "knit into the front and back of the next st" would otherwise be read word by word.
 *
 *     purl into front and back of next st · k twice into first st · pick up the bar between sts and knit into back of it
 *     k2tog but leave on needle, k first st again, slip both off · p3tog leaving sts on needle, yo, p same 3 sts tog again
 */

/** A stitch told in words: where it stands, what the lexicon calls it, and the number in its name. */
export interface ToldStitch {
  readonly length: number;
  /** Name of the lexicon entry; null for words that say nothing by themselves. */
  readonly name: string | null;
  readonly n: number | null;
}

const numbers = ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];
const numeral = String.raw`(\d{1,2}|two|three|four|five|six|seven|eight|nine|ten)`;
const numberOf = (word: string | undefined): number => {
  const at = numbers.indexOf((word ?? '').toLowerCase());
  return at >= 0 ? at : Number(word);
};

const ST = String.raw`(?:sts?|stitch(?:es)?)\b\.?`;
const VERB = String.raw`(?:knit(?:ting)?|k|purl(?:ing)?|p|work(?:ing)?)`;
const INTO = String.raw`(?:into|in to|in|through|to)`;
const AND = String.raw`(?:,? ?(?:and|&|then)|,)+`;
/** The stitch it is worked into. "in each of the next 3 sts" and "of every st" stay outside: they say how often. */
const OF = String.raw`(?: (?:of|in|into) (?:the )?(?:very )?(?:(?:next|same|first|last|foll|following|centre|center|this|that) ){1,2}${ST}| of it\b)?`;
/** Before words that say how often it is done: the place is theirs. */
const EACH = String.raw`(?= (?:of|in|into) (?:the )?(?:each|every)\b)`;
const LEAVE = String.raw`(?:,? ?(?:but|and|,))? ?(?:leav(?:e|ing)|do not|don['’]t|without|keep(?:ing)?)\b[^,;.()*]{0,60}?(?:needle|off|drop(?:ping)?(?: (?:them|it|sts))?|slip(?:ping)? (?:them|it|sts))\b`;
const OFF = String.raw`(?:slip|sl|drop|let|take|slipping|dropping|letting|slide)\b[^,;.()*]{0,50}?(?:\boff\b(?: (?:the )?(?:left |lh )?needle)?(?: tog(?:ether)?)?|\bfall\b|\btog(?:ether)?\b)`;

const WRAPPING = String.raw`(?:wrap(?:ping|ped)?|winding|put(?:ting)?|throw(?:ing)?)(?: (?:the )?(?:yarn|wool|thread|cotton))?`;
const ROUND = String.raw`(?: (?:round|around|over)(?: (?:the )?(?:right |rh )?(?:needle|pin))?)?(?: (?:for|in|on) (?:each|every) ${ST})?`;
const oftenOf = (often: string | undefined, count: string | undefined): number =>
  /^twice$/i.test(often ?? '') ? 2 : /^thrice$/i.test(often ?? '') ? 3 : numberOf(count);

interface Form {
  readonly pattern: RegExp;
  readonly names: (match: RegExpExecArray) => { readonly name: string | null; readonly n?: number } | null;
}

const form = (source: string, names: Form['names']): Form => ({
  pattern: new RegExp(source.replaceAll(' ?', String.raw`\s{0,3}`).replaceAll(' ', String.raw`\s{1,3}`), 'iy'),
  names,
});
const purl = (word: string | undefined): boolean => /^p/i.test(word ?? '');

const leg = String.raw`(?:the )?(front|back)(?: loop| leg)?`;
/** "inc 1 by", "increase in next st by": the increase is told by what comes. */
const incBy = String.raw`(?:inc(?:reas(?:e|ing))?(?: (?:1|one|once))?(?: ${ST})?(?: ${INTO} (?:the )?(?:next|first|last|foll) ${ST})? by )?`;

const forms: readonly Form[] = [
  // one stitch worked twice, three times or more
  form(String.raw`(${VERB}) ${INTO} ${leg}(?:(?:${AND}|,) ?(?:again )?(?:${INTO} )?${leg}){3,6}${OF}`, ([whole]) => ({
    name: 'inc 1-to-N',
    n: (whole.match(/\b(?:front|back)\b/gi) ?? []).length,
  })),
  form(
    String.raw`${incBy}(${VERB})(?: ?1)?(?:${INTO}| ${INTO}) (?:both (?:the )?)?${leg}s? ?${AND} ?(?:again )?(?:${VERB} )?(?:${INTO} )?${leg}(?:${AND} ?(?:again )?(?:${VERB} )?(?:${INTO} )?${leg}(?: again)?)?(?: loops?)?(?:${OF}|${EACH})(?: before [^,;.()*]{0,40}off(?: (?:the )?(?:left )?needle)?)?`,
    ([whole, verb, first, second, third]) => {
      if (first === undefined || second === undefined || first === second) return null;
      // "k in back, front edge …": a comma alone joins no two legs of a stitch that is not named.
      if (third === undefined && !/(?:and|&|then)/i.test(whole) && !new RegExp(ST, 'i').test(whole)) return null;
      if (third !== undefined) return { name: purl(verb) ? 'pfbf' : 'kfbf' };
      return { name: purl(verb) ? 'pfb' : 'kfb' };
    },
  ),
  form(
    String.raw`(?:${VERB}|inc(?:rease)?) (twice|2 times|two times|three times|3 times|thrice) (?:${INTO} (?:the )?(?:same|next|first|last|foll|following|centre|center|this) ${ST}(?! of (?:next|every|each|foll))|(?=${INTO} (?:each|every)))`,
    ([whole, often]) => {
      const thrice = /^(?:th|3)/i.test(often ?? '');
      if (/^inc/i.test(whole)) return thrice ? null : { name: 'kfbf' };
      if (/^p/i.test(whole)) return { name: thrice ? 'pfbf' : 'pfb' };
      return { name: thrice ? 'kfbf' : 'kfb' };
    },
  ),
  form(
    String.raw`inc(?:rease)?(?: (?:1|one|once))?(?: ${ST})? (?:in|into) (?:the )?(?:first|centre|center) ${ST}(?! (?:of|on) (?:the )?(?:next|every|each|foll|\d))(?! ?(?:and|&) (?:in )?(?:the )?(?:last|first))`,
    () => ({ name: 'kfb' }),
  ),
  form(
    String.raw`inc(?:rease)?(?: (?:1|one|once))?(?: ${ST})?(?= (?:in|into) (?:each|every) (?:of (?:the )?(?:(?:next|first|last|foll) )?\d+ )?${ST})`,
    () => ({
      name: 'kfb',
    }),
  ),
  // the strand between two stitches
  form(
    String.raw`(?:(?:make|inc(?:rease)?) (?:1|one)(?: ${ST})?,? (?:by )?|m1 by )?(?:pick(?:ing)? up|lift(?:ing)?|rais(?:e|ing))(?: (?:and|&) (?:k|knit))? (?:the )?(?:horizontal |running )?(?:bar|strand|loop|thread|yarn)\b(?: (?:that|lies|lying|which|between|before|the|needles|two|sts?|stitch(?:es)?|last|next|just|and|worked|with|left|right|hand|needle|from|front|to|back|onto|in|of|lh|rh)\b)*?(?:${AND}|,) ?(knit|k|purl|p|work)(?:ting|ing)? (?:it(?: tbl| through (?:the )?back(?: loop)?)?\b|(?:it )?(?:into|in|through) (?:the )?back(?: (?:loop|leg))?(?: of (?:it|the (?:loop|strand|bar)|loop|strand|bar|this))?|(?:it )?tbl\b)(?! ?(?:tog|with))`,
    ([, verb]) => ({ name: purl(verb) ? 'M1P' : 'M1' }),
  ),
  form(
    String.raw`(?:(?:make|inc(?:rease)?) (?:1|one)(?: ${ST})?,? by |m1 by )(?:pick(?:ing)? up|lift(?:ing)?) (?:the )?(?:bar|strand|loop|thread)(?: (?:that|lies|lying|between|before|the|needles|two|sts?|stitch(?:es)?|last|next)\b)*(?= ?[,;.)*]|$)`,
    () => ({ name: 'M1' }),
  ),
  // two stitches out of their order
  form(
    String.raw`(k|knit|p|purl) ?(?:2|two) ?tog(?:ether)?${LEAVE},? ?(?:and |then )*(?:k|knit|p|purl)(?: (?:into|in))?(?: (?:the )?front of)? (?:the )?(?:first|1st)(?: ${ST})?(?: again| as well)?,? ?(?:and |then )*${OFF}`,
    ([, verb]) => ({ name: purl(verb) ? 'WS right twist' : 'RT' }),
  ),
  form(
    String.raw`(k|knit|p|purl)(?: ?(?:into|in))?(?: (?:the )?(front|back) of)? ?(?:the )?(?:second|2nd)(?: ${ST})?(?: on (?:the )?[^,;.()*]{0,16}needle)?( tbl| through (?:the )?back(?: of)?(?: (?:the )?loop)?| in (?:the )?back)?(?:${LEAVE})?,? ?(?:and |then )*(?:k|knit|p|purl)(?: (?:into|in))?(?: (?:the )?front of)? (?:the )?(?:first|1st)(?: ${ST})?(?: again| as usual| in (?:the )?(?:usual|normal) way)?,? ?(?:and |then )*${OFF}`,
    ([, verb, side, behind]) => {
      const left = side?.toLowerCase() === 'back' || behind !== undefined;
      if (purl(verb)) return { name: left ? 'WS left twist' : 'WS right twist' };
      return { name: left ? 'LT' : 'RT' };
    },
  ),
  form(
    String.raw`(?:miss|skip|pass(?: over)?)(?: (?:the )?(?:next|first))?(?: (?:1|one))?(?: ${ST})?,? ?(?:and |then )*(?:k|knit|p|purl) ?(?:into (?:the )?(?:front|back) of )?(?:the )?(?:next|second|2nd|foll)? ?(?:1|${ST})?( tbl| through (?:the )?back(?: loop)?| in (?:the )?back)?(?:${LEAVE})?,? ?(?:and |then )*(?:k|knit|p|purl) (?:into )?(?:the )?(?:missed|skipped|first|1st)(?: (?:one|${ST}))?(?:,? ?(?:and |then )*${OFF})?`,
    ([, behind]) => ({ name: behind === undefined ? 'RT' : 'LT' }),
  ),
  form(
    String.raw`(?:k|knit)(?: (?:into|in))?(?: (?:the )?(?:front|back) of)? ?(?:the )?(?:third|3rd)(?: ${ST})?(?: on (?:the )?[^,;.()*]{0,16}needle)?,? ?(?:and |then )*(?:(?:k|knit) )?(?:into )?(?:the )?(?:second|2nd)(?: ${ST})?,? ?(?:and |then )*(?:(?:k|knit) )?(?:into )?(?:the )?(?:first|1st)(?: ${ST})?,? ?(?:and |then )*${OFF}`,
    () => ({ name: 'Tw3' }),
  ),
  // several stitches held together, more than one loop made of them
  form(
    String.raw`(k|knit|p|purl) ?${numeral} ?tog(?:ether)?${LEAVE},? ?(?:and |then )*(?:(?:yo|yon|yrn|yfwd|yarn over)|(?:k|knit) (?:the )?(?:same|those|these)(?: ${numeral})?(?: ${ST})? tog(?:ether)?)\b,? ?(?:and |then )*(?:again )?(?:k|knit|p|purl) ?(?:the |into )*(?:same|those|these|them)?(?: ?${numeral})?(?: ${ST})? ?tog(?:ether)?(?: (?:again|once more))?(?: (?:in|into) (?:the )?same ${ST})?(?:,? ?(?:and |then )*${OFF})?`,
    ([, verb, count]) => {
      const n = numberOf(count);
      if (!purl(verb)) return { name: 'gather N into 3', n };
      return n === 3 ? { name: 'daisy st' } : null;
    },
  ),
  form(
    String.raw`(?:k|knit) ?${numeral} ?tog(?:ether)?${LEAVE},? ?(?:and |then )*(?:k|knit) (?:into )?(?:the )?(?:first|1st)(?: ${ST})?(?: again)?,? ?(?:and |then )*${OFF}`,
    ([, count]) => ({ name: 'gather N into 2', n: numberOf(count) }),
  ),
  form(String.raw`(knit|k|purl|p) (?:every|each) (?:2|two) ${ST} tog(?:ether)?`, ([, verb]) => ({
    name: purl(verb) ? 'pNtog' : 'kNtog',
    n: 2,
  })),
  form(String.raw`(?:take|taking) ${numeral}(?: ${ST})? tog(?:ether)?\b(?! (?:at|on|as) )`, ([, count]) => ({
    name: 'kNtog',
    n: numberOf(count),
  })),
  form(
    String.raw`(knit|k|purl|p) (?:the )?${numeral} (?:sts|stitches|loops) of (?:the |each )?(?:nupp|bobble|cluster|popcorn|group) tog(?:ether)?(?: as one)?`,
    ([, verb, count]) => ({ name: purl(verb) ? 'pNtog' : 'kNtog', n: numberOf(count) }),
  ),
  // long stitches
  form(
    String.raw`(knit|k|purl|p) ?(?:1|one),? ?[(]?${WRAPPING} (twice|thrice|(?:${numeral} times))${ROUND}[)]?`,
    ([, verb, often, count]) => ({ name: purl(verb) ? 'p1 wrapping N' : 'k1 wrapping N', n: oftenOf(often, count) }),
  ),
  form(String.raw`${WRAPPING} (?:twice|thrice|(?:${numeral} times))${ROUND}`, ([whole]) =>
    /round|over/i.test(whole) || /each|every/i.test(whole) ? { name: null } : null,
  ),
  form(
    String.raw`(?:slip|sl) ?${numeral}(?: ${ST})? (?:knitwise|kwise|purlwise|as if to knit)?,? ?(?:(?:one|1) (?:at a time|after (?:the other|another)|by one)|separately|individually|singly)?,? ?(?:and |then )*(?:(?:return|slip|put|place)(?: (?:them|both|these|the sts|sts))?(?: back)? (?:to|on|onto) (?:the )?(?:left|lh)(?:[- ]hand)?(?: needle)?,? ?(?:and |then )*)?(k|knit|p|purl)(?: (?:them|these|both|the (?:two|three|2|3) sts))? tog(?:ether)? (?:tbl|through (?:the )?(?:backs?|back of)(?: of)?(?: (?:the )?loops?)?)`,
    ([, count, verb]) => {
      const n = numberOf(count);
      if (n === 2) return { name: purl(verb) ? 'ssp' : 'ssk' };
      return n === 3 ? { name: purl(verb) ? 'sssp' : 'sssk' } : null;
    },
  ),
  form(
    String.raw`slip, slip, (knit|purl) (?:the |these |both |those )*(?:(?:two|2) )?(?:slipped )?(?:${ST} )?tog(?:ether)?(?: (?:tbl|through (?:the )?back(?: loops?)?))?`,
    ([, verb]) => ({ name: purl(verb) ? 'ssp' : 'ssk' }),
  ),
  form(String.raw`work (2|two|3|three) (?:sts|stitches) tog(?:ether)?\b(?! (?:as|in|at|on|with)\b)`, ([, count]) => ({
    name: 'kNtog',
    n: numberOf(count),
  })),
  // slipped stitches met again on the way back
  form(
    String.raw`(?:knit|k|purl|p|work) (?:all )?(?:the )?(?:same |knit |knitted |purled |k )?(?:sts|stitches)(?: (?:that were |which were )?(?:knitted|knit|worked|purled) (?:on|in) (?:the )?(?:previous|last) row)?,? ?(?:and )?(?:slip|sl) (?:all )?(?:the )?(?:same |slipped |sl )(?:sts|stitches)(?: (?:slipped|from) (?:on|in)? ?(?:the )?(?:previous|last) row)?(?: (?:purlwise|wyif|wyib|pwise))*(?:,? (?:with )?(?:the )?yarn (?:in|at|to) (?:the )?(?:front|back))?`,
    () => ({ name: 'work sts as they appear' }),
  ),
  form(
    String.raw`slipping (?:all )?(?:the )?(?:same |slipped )?(?:sts|stitches)(?: (?:that were |which were )?slipped (?:on|in) (?:the )?(?:previous|last) row)?(?: (?:again|purlwise|wyif|wyib))*(?:,? (?:with )?(?:the )?yarn (?:in|at|to) (?:the )?(?:front|back))?(?= ?[,;.]|$)`,
    () => ({ name: null }),
  ),
  // a dropped stitch let down
  form(
    String.raw`(?:unravel|ladder|let|run|pull)(?: (?:it|them|the st|sts))?(?: (?:run|ladder|unravel))?(?: down)? (?:to|as far as) (?:the )?[^,;.()*]{1,40}(?= ?[,;.]|$)`,
    () => ({ name: null }),
  ),
  // two balls at a colour change
  form(
    String.raw`(?:pick up|drop|carry|take up|bring up) (?:the )?(?:yarn |colou?r |strand of )?(?:[A-H]|MC|CC|(?:old|new|first|second|other) colou?r)\b(?![ -]?st)[^,;.()*]{0,40}(?= ?[,;.]|$)`,
    ([whole]) => (/\b(?:pick|drop|carry|take|bring)/.test(whole) && !/\d/.test(whole) ? { name: null } : null),
  ),
  form(String.raw`(?:thread|cotton) over(?: (twice|2 times|once))?(?= ?[,;.*]|$)`, ([, often]) =>
    /^(?:twice|2)/i.test(often ?? '') ? { name: 'yo N times', n: 2 } : { name: 'yo' },
  ),
  form(String.raw`take off (?:the )?(?:first|next) ${ST}`, () => ({ name: 'sl1p', n: 1 })),
  // how a stitch is slipped
  form(
    String.raw`(?:slip|sl|take off) ?(?:(\d{1,2}|one|two|three)(?: ${ST})?|(?:the )?(?:first|next|last) ${ST})? (?:as if to |as though to |as if you were going to )(k|knit|p|purl)\b(?: ?it)?(?! ?(?:\d|two|three|tog|them))`,
    ([, count, how]) => ({ name: purl(how) ? 'sl1p' : 'sl1k', n: count === undefined ? 1 : numberOf(count) }),
  ),
  form(String.raw`(?:slip|sl) (?:the )?first ${ST} (knitwise|purlwise|kwise|pwise|kw|pw)\b`, ([, how]) => ({
    name: purl(how) ? 'sl1p' : 'sl1k',
    n: 1,
  })),
  // what only leads up to the stitch told
  form(String.raw`(?:make|work) (?:a )?bobble(?: in (?:the )?next ${ST})? (?:as follows|thus|like this) ?:?(?= ?[([])`, () => ({
    name: null,
  })),
];

/** A stitch may begin here: nothing, a separator, a bracket, a mark or a joining word stands before it. */
const before = /(?:^|[,;:.*†‡([–—-]|\b(?:and|then|by|row|rnd|round))\s*$/i;
const opens =
  /\b(?:knit|k|purl|p|work|inc|make|m1|pick|lift|rais|miss|skip|pass|take|taking|slip|sl|increas|wrapp|unravel|ladder|let|run|pull|drop|carry|bring|wind|putt|throw|thread|cotton)/gi;

/** The stitches told at length in a text, by the offset where each begins. */
export function toldStitchesIn(text: string): ReadonlyMap<number, ToldStitch> {
  const found = new Map<number, ToldStitch>();
  if (
    !/\b(?:into|in|through|bar|strand|loop|thread|skip|miss|missed|together|tog|as if|as though|bobble|first|slip\w*|sl|[A-H]|MC|CC|colou?r|over|unravel|ladder|wrap\w*|wind\w*|putting|throwing)\b/i.test(
      text,
    )
  )
    return found;
  let end = -1;
  for (const { index } of text.matchAll(opens)) {
    if (index < end || !before.test(text.slice(Math.max(0, index - 12), index))) continue;
    for (const { pattern, names } of forms) {
      pattern.lastIndex = index;
      const match = pattern.exec(text);
      if (match === null || match[0].length < 4) continue;
      const told = names(match);
      if (told === null) continue;
      // A full stop behind "st" may end the sentence.
      const length = match[0].replace(/[\s.]+$/, '').length;
      found.set(index, { length, name: told.name, n: told.n ?? null });
      end = index + length;
      break;
    }
  }
  return found;
}
