/**
 * Counts that a sentence tells in passing and orders nothing.
 *
 *     Every heel stitch has now been worked and 18 stitches remain · Needle 1 holds 24 sts, Needle 2 holds 28
 *     These 32 sts are the heel · On the last RS row you should knit 12 sts before turning
 */
import { Count as CountToken, endOf, isA, type KnitToken, Ordinal, PlainStitch, Semicolon, W } from './tokens.ts';
import type { Declare, Stated } from './tree.ts';

const ordinals: Readonly<Record<string, number>> = { first: 1, '1st': 1, second: 2, '2nd': 2, third: 3, '3rd': 3, fourth: 4, '4th': 4 };
const holds = /^(holds?|has|have|carries|carry|contains?|with|will|should)$/;

/** The stitches a needle is said to hold, from `at` on; null when no needle with its number stands there. */
function onNeedle(tokens: readonly KnitToken[], at: number, base: number): { stated: Stated; next: number } | null {
  let name: string | null = null;
  let next = at;
  const image = (index: number): string => tokens[index]?.image.toLowerCase() ?? '';
  if (isA(tokens[at], W.Needle) && isA(tokens[at + 1], CountToken)) {
    name = `needle ${tokens[at + 1]?.payload?.values?.[0] ?? ''}`;
    next = at + 2;
  } else if (image(at) === 'n' && isA(tokens[at + 1], CountToken)) {
    name = `needle ${image(at + 1)}`;
    next = at + 2;
  } else if (isA(tokens[at], Ordinal, W.First) && isA(tokens[at + 1], W.Needle)) {
    name = `needle ${tokens[at]?.payload?.values?.[0] ?? 1}`;
    next = at + 2;
  } else if (/^(front|back|instep|sole|heel)$/.test(image(at)) && (isA(tokens[at + 1], W.Needle) || holds.test(image(at + 1)))) {
    name = image(at);
    next = isA(tokens[at + 1], W.Needle) ? at + 2 : at + 1;
  }
  if (name === null) return null;
  const told = next;
  while (next < told + 4 && (holds.test(image(next)) || /^(now|hold)$/.test(image(next)))) next += 1;
  const number = tokens[next];
  if (next === told || number === undefined || !isA(number, CountToken)) return null;
  const end = isA(tokens[next + 1], W.St) ? next + 1 : next;
  const span = { start: base + (tokens[at] as KnitToken).startOffset, end: base + endOf(tokens[end] as KnitToken) };
  const count = {
    type: 'count' as const,
    values: number.payload?.values ?? [1],
    span: { start: base + number.startOffset, end: base + endOf(number) },
  };
  return { stated: { type: 'stated', count, what: 'part', scope: name, span }, next: end + 1 };
}

/**
 * The counts of the sentence `tokens[from, to)`, when it tells counts and orders nothing; null for any other sentence.
 * @param text masked text of the passage
 * @param base offset of the passage in the author's file
 */
export function countsTold(
  tokens: readonly KnitToken[],
  from: number,
  to: number,
  text: string,
  base: number,
): { readonly stated: readonly Stated[]; readonly next: number } | null {
  const first = tokens[from];
  if (first === undefined || to - from > 60) return null;
  const words = text
    .slice(first.startOffset, endOf(tokens[to - 1] as KnitToken))
    .toLowerCase()
    .replace(/\s+/g, ' ');
  const made = (number: KnitToken, what: Stated['what'], scope: string | null): Stated => {
    const start = base + (number.payload?.nOffset ?? number.startOffset);
    const span = { start, end: number.payload?.nLength === undefined ? base + endOf(number) : start + number.payload.nLength };
    // The whole sentence tells the count.
    const told = { start: base + first.startOffset, end: base + endOf(tokens[to - 1] as KnitToken) };
    return { type: 'stated', count: { type: 'count', values: number.payload?.values ?? [1], span }, what, scope, span: told };
  };
  const numbers = tokens
    .slice(from, to)
    .filter((token) => isA(token, CountToken) || (isA(token, PlainStitch) && token.payload?.values !== undefined));
  const all = (stated: readonly Stated[]): { stated: readonly Stated[]; next: number } => ({ stated, next: to });

  // "There are now 48 more sts than you began with": against a row long past, and no count of what there is.
  if (
    /^(?:there are|you (?:now )?have|this (?:gives|makes)) (?:now )?[\d ([\]),:;–-]+ ?(?:more|fewer|less|extra) (?:sts|stitches) than\b/.test(
      words,
    )
  )
    return all([]);
  const only = numbers.length === 1 ? numbers[0] : undefined;
  if (only !== undefined) {
    // "The round now counts 96 sts", "Work has 40 sts again", "That makes 112 sts on the needle altogether"
    if (
      /^(?:(?:the )?(?:round|rnd|row|work|piece|ring|needle) (?:now |again )?(?:has|counts|holds|contains|numbers|measures)|that (?:now )?(?:makes|gives)) (?:now |again )?[\d ([\]),:;–-]+ ?(?:sts|stitches)(?: (?:again|now|in all|altogether|in total|on (?:the )?needles?))*\.?$/.test(
        words,
      )
    )
      return all([made(only, 'total', null)]);
    // "Each needle now has 20 sts"
    if (/^(?:each|every) needle (?:should )?(?:now )?(?:has|have|holds?|carries) [\d ([\]),:;–-]+ ?(?:sts|stitches)\.?$/.test(words))
      return all([made(only, 'part', 'on each needle')]);
    // "This leaves 24 sts for the heel", "Half the sts, 32, are for the heel"
    const share =
      /^(?:this|that|which) leaves [\d ([\]),:;–-]+ ?(?:sts|stitches) (?:for|on|at) (?:the |each )?([a-z ]+?)\.?$/.exec(words) ??
      /^half (?:of )?(?:the )?(?:sts|stitches),? [\d ([\]),:;–-]+,? (?:are|is) (?:for )?(?:the )?([a-z ]+?)\.?$/.exec(words);
    if (share !== null) return all([made(only, 'part', share[1] ?? null)]);
    // "All sts have been worked off the heel, leaving 18 live sts"
    if (
      /\b(?:have|has) (?:now )?been\b.*\bleaving [\d ([\]),:;–-]+ ?(?:live )?(?:sts|stitches)\.?$/.test(words) &&
      !isA(first, W.Work, W.Rep, W.Cont)
    )
      return all([made(only, 'total', null)]);
  }
  // "You should have 12 sts on the first needle, 24 on the second and 12 on the third."
  const places = [...words.matchAll(/\d[\d ([\]),:;–-]*(?:sts |stitches )?on (?:the )?(first|second|third|fourth|1st|2nd|3rd|4th)\b/g)];
  if (places.length > 1 && places.length === numbers.length && /^(?:there|you|this|now)\b/.test(words) && /needle|ndl|dpn/.test(words))
    return all(numbers.map((number, place) => made(number, 'part', `needle ${ordinals[places[place]?.[1] ?? ''] ?? place + 1}`)));

  const needles: Stated[] = [];
  for (let at = from; at < to; ) {
    const found = onNeedle(tokens, at, base);
    if (found === null) at += 1;
    else {
      needles.push(found.stated);
      at = found.next;
    }
  }
  if (needles.length > 0) return all(needles);

  // "These 32 sts are the heel", "The first 30 sts form the instep."
  const part =
    /^(?:these|the (?:first|next|last|rem|remaining|other|centre|center)|first|next|last|rem(?:aining)?|other|centre|center) [\d ([\]),:;–-]+ ?(?:sts|stitches)[a-z ]*? (?:are|form|make|become|will be|will form|make up) (?:the |for |for the )?([a-z ]+?)(?:[.;,]|$| needle| sts| stitches)/.exec(
      words,
    );
  if (part && numbers[0] !== undefined && !/\bhold|holder|pattern|patt\b/.test(part[0])) {
    const clause = tokens.findIndex((token, at) => at > from && at < to - 1 && isA(token, Semicolon));
    const stated = made(numbers[0], 'part', part[1]?.trim() ?? null);
    const end = clause < 0 ? stated.span.end : base + endOf(tokens[clause] as KnitToken);
    return { stated: [{ ...stated, span: { start: stated.span.start, end } }], next: clause < 0 ? to : clause + 1 };
  }

  // "On the last RS row you should knit 12 sts before turning."
  const worked =
    /\b(?:should|will) (?:now )?(?:have )?(?:knit(?:ted)?|purl(?:led|ed)?|work(?:ed)?) (?:only |just |exactly )?[\d ([\]),:;–-]+ ?(?:sts|stitches|more sts)\b(.*?)\.?$/.exec(
      words,
    );
  if (worked && numbers.length === 1 && numbers[0] !== undefined) {
    const row = /\bon (the (?:last|first|next|final|\w+) (?:rs |ws )?(?:row|rnd|round|short row))/.exec(words)?.[1];
    return all([
      made(numbers[0], 'worked', [row, worked[1]?.trim()].filter((word) => word !== undefined && word !== '').join(' ') || null),
    ]);
  }

  // "10 (12, 14) sts lie between the double stitches."
  if (
    isA(first, CountToken) &&
    isA(tokens[from + 1], W.St) &&
    /^[\d ([\]),:;/–-]+ ?(?:sts|stitches) (?:lie|stand|are|remain|rem|are left|are now|now lie|should lie) between (?:the )?(?:two |last )?(?:ds|double|wraps|wrapped|turns|turning|twins|pins|gaps|yos|yarn)/.test(
      words,
    )
  )
    return all(numbers.map((number) => made(number, 'part', 'wrapped')));

  // "9 (10, 11) sts are wrapped at each side and 10 (12, 14) sts rem unwrapped in the centre."
  if (
    isA(first, CountToken) &&
    isA(tokens[from + 1], W.St) &&
    /^[\d ([\]),:;/–-]+ ?(?:sts|stitches) (?:are|have been) (?:now )?(?:wrapped|double|doubled|paired|unwrapped)\b/.test(words)
  )
    return all(numbers.map((number) => made(number, 'part', 'wrapped')));

  // "Every heel stitch has now been worked and 18 stitches remain."
  const rest =
    /\b(?:have|has|are|is|were)\b.*\b(?:and|so|leaving) (?:there are |you have )?[\d ([\]),:;–-]+ ?(?:[a-z]+ )?(?:sts|stitches)(?: (?:now )?(?:remain|rem|are left|left|live))?/.test(
      words,
    );
  const last = numbers.at(-1);
  if (
    rest &&
    !isA(first, W.Work, W.Rep, W.Cont) &&
    last !== undefined &&
    isA(tokens[tokens.indexOf(last) + 1], W.St, W.Rem) &&
    /\b(remain|rem|remaining|left)\b\.?$/.test(words)
  )
    return all([made(last, 'total', null)]);

  // "Do not work rem 28 sts."
  if (/^do not work (?:the )?(?:rem|remaining|last|other|next)\b/.test(words) && numbers.length === 1 && numbers[0] !== undefined)
    return all([made(numbers[0], 'left', null)]);
  return null;
}

/** "There is no need to pick up the wraps", "Do not hide wraps in garter st": advice about marks that orders nothing. */
export function needless(words: string): boolean {
  // What rows and wedges look like, told of the whole piece.
  if (
    /^(?:every|each) (?:(?:rs|ws|right-side|wrong-side|short) )?(?:row|rnd|round|wedge|section|triangle|square|strip|panel|repeat|pair) (?:of rows )?(?:stops|ends|begins|starts|adds|grows|is|has|will|gets|turns|brings|takes)\b/i.test(
      words,
    )
  )
    return true;
  // "The pattern repeats every 8 rows", "Run a lifeline through all sts before you begin"
  if (/^(?:the )?(?:[a-z]+ )?(?:patt|pattern|chart|lace|motif) repeats (?:itself )?(?:every|after|over)\b/i.test(words)) return true;
  if (/^(?:now )?(?:thread|run|insert|put in|place|add) (?:a |another |your )?(?:lifeline|safety line)\b/i.test(words)) return true;
  // "Read chart from right to left on RS rows", "WS rows are not charted; purl the purls": how charts are read
  if (
    /^(?:read|follow) (?:the |all )?charts? (?:rows )?(?:from )?(?:right to left|left to right|bottom|the bottom|the right|the left)\b/i.test(
      words,
    )
  )
    return true;
  if (
    /^(?:ws|rs|wrong[- ]side|right[- ]side|even|odd|even-numbered|odd-numbered) (?:rows|rnds|rounds) are not (?:charted|shown|given|drawn)\b/i.test(
      words,
    )
  )
    return true;
  // "Cut 20 lengths of yarn for the fringe"
  if (/^cut (?:\d+|[a-z]+) (?:lengths?|strands?|pieces?|ends?)\b/i.test(words)) return true;
  // Sewing and embroidery work no stitch of the fabric.
  if (
    /^(?:(?:with|using) [a-z ]{1,30}, )?(?:now |then )?(?:embroider|sew|stitch on|work (?:\w+ )?(?:whiskers|eyes?|a nose|a mouth|french knots?|blanket stitch|chain stitch|back ?stitch|duplicate stitch|satin stitch|swiss darning|cross stitch)|swiss[- ]darn|duplicate[- ]stitch)\b/i.test(
      words,
    )
  )
    return true;
  return /^(?:there(?:'s| is) no need|it is not necessary|it isn't necessary|no need|you (?:do not|don't) (?:need|have)|(?:do not|don't) (?:pick up|hide|work) (?:the )?wraps|wraps (?:do not|don't|need not))\b/i.test(
    words,
  );
}

/**
 * A sentence that makes an exception and works no stitch itself: "Do not CO after Wedge 9", "Keep Needle 2 in patt, and
 * knit every stitch on Needles 1 and 3 except where told to decrease"; "Turn the heel" as a heading. Null for any other.
 */
export function exception(tokens: readonly KnitToken[], from: number, to: number, text: string, base: number): Declare | null {
  const first = tokens[from];
  const last = tokens[to - 1];
  if (first === undefined || last === undefined || to - from > 80) return null;
  const words = text.slice(first.startOffset, endOf(last)).replace(/\s+/g, ' ').replace(/\.$/, '');
  const span = { start: base + first.startOffset, end: base + endOf(last) };
  const made = (what: Declare['what']): Declare => ({
    type: 'declare',
    what,
    name: words.toLowerCase(),
    multiple: null,
    count: null,
    span,
  });
  if (/^turn(?:ing)? (?:the )?(?:heel|toe|hem)(?: (?:as follows|as foll))?:?$/i.test(words)) return made('title');
  if (
    /^(?:do not|don't) (?:co|cast on|bo|bind off|cast off|turn|inc|dec|join|rep|repeat)\b[^,;]* (?:after|before|until|in|on|at) (?:the )?(?:last |final |first )?(?:wedge|section|square|triangle|strip|repeat|rep|panel|tier|motif)\b[^,;]*$/i.test(
      words,
    )
  )
    return made('rule');
  // "The 5 sts at front edge are kept in moss st throughout."
  if (
    /^(?:the |these |first |last |centre |center )*\d+ (?:[a-z]+ )?(?:sts|stitches)\b[^.;]*\b(?:are|is) (?:kept|always|to be kept)\b/i.test(
      words,
    )
  )
    return made('rule');
  // "Work the first and last 4 sts in garter st throughout."
  if (
    /^(?:always )?(?:work|knit|keep|slip)(?:ing)? (?:(?:the|first|last|outer|border|and|these|\d{1,3}|sts?|stitch(?:es)?|at|each|both|ends?|edges?|sides?|of|every|row) )+in (?:[a-z0-9]+,? ){1,6}(?:throughout|at all times|on every row|on all rows)$/i.test(
      words,
    )
  )
    return made('rule');
  // "Leave sts on the needle and do not bind off."
  if (
    /^leave (?:the |these |those |all |rem |remaining |live |body |back |front |sleeve )*(?:sts|stitches|them) on (?:the |your |this )?(?:[a-z]+ )?needles?(?:[,;]? (?:and )?(?:(?:do not|don't) (?:bind|cast|fasten) off|(?:knit|work|make) (?:the )?(?:sleeves?|body|fronts?|back)))?$/i.test(
      words,
    )
  )
    return made('rule');
  if (/^(?:work|knit) (?:in )?(?:the )?(?:foll(?:owing)? )?stripes?(?: sequence| pattern)? as foll(?:ows|owing)?: \d/i.test(words))
    return made('rule');
  // "The two purl sts are the seam sts and are purled on every round."
  if (
    /^(?:the |these |first |last |centre |center )*(?:(?:\d+|one|two|three|four|five|six|eight|ten) )?(?:[a-z]+ )?(?:sts?|stitch(?:es)?) (?:is|are) (?:(?:the |your )?(?:[a-z]+ )?(?:seam|edge|border|band|selvedge|selvage|steek)\b|(?:always |each )?(?:knit(?:ted)?|purl(?:led|ed)?|slipped)\b)/i.test(
      words,
    )
  )
    return made('rule');
  // "The last st of every odd row is knitted together with one st of the border."
  if (
    /^(?:the )?(?:first|last) (?:[a-z]+ )?(?:st|stitch) of (?:every|each|all)\b[^.;]*\bis (?:always )?(?:knit(?:ted)?|purled|worked) tog(?:ether)? with\b/i.test(
      words,
    )
  )
    return made('rule');
  if (/^keep(?:ing)?\b/i.test(words) && /\bexcept (?:where|when|as|for|on)\b/i.test(words)) return made('rule');
  return null;
}
