/**
 * Sentences that declare and work no row: the stitches a pattern needs, and rows that form one.
 *
 *     Multiple of 8 + 3 sts · Worked over a multiple of 8 sts + 3 + 2 edge sts · any odd number of sts · Panel of 13 sts
 *     (patt rep = 12 sts and 16 rows) · These 4 rows form patt
 */
import { endOf, isA, type KnitToken, W } from './tokens.ts';
import type { Declare } from './tree.ts';

type Multiple = NonNullable<Declare['multiple']>;

const ST = String.raw`(?:sts?\b\.?|stitch(?:es)?\b)`;
/** What may stand before the number of stitches: "Worked over", "Stitch count is", "Requires", "Cast on". */
const prelude = String.raw`(?:(?:stitch )?multiple ?: ?|${ST} ?: ?|(?:this |your )?(?:stitch )?(?:patt(?:ern)?|lace|stitch count|st count|chart|panel|number of ${ST}|work(?:ed|s)?|cast on|co|requires?|needs?|uses?|is|are|has|you|must|will|for|for swatch|over|on|in the round|in rounds|in rnds|flat|back and forth|to be|must be|should be|be|this|with|and|the|a|an|[,:=(]) ?){0,9}`;
const multipleOf = new RegExp(
  String.raw`^${prelude}(?:(?:stitch )?(?:multiples?|mult\.?|multiple number) ?(?:of|is|[:=–—-])? ?|any (?:number|multiple) (?:of ${ST} )?(?:of|divisible by) |(?:number of ${ST} )?divisible by )(\d+)(?: ${ST})?`,
  'i',
);
/** "6 sts + 5", "rep of 6 sts + 5", "6-st repeat plus 5", "4n + 1": a multiple by its plus. */
const byPlus = new RegExp(
  String.raw`^(?:(?:st(?:itch)? |patt(?:ern)? )?rep(?:eat)?(?: of| is| ?[:=])? ?)?(\d+)(?:n|[- ]?${ST}(?: rep(?:eat)?)?) ?(?=(?:\+|plus) ?\d)`,
  'i',
);
const parity = new RegExp(String.raw`^${prelude}(?:any )?(odd|even) (?:number|no\.?) (?:of ${ST})`, 'i');
const any = new RegExp(String.raw`^${prelude}any number (?:of ${ST})(?! divisible)`, 'i');
const panel = new RegExp(
  String.raw`^(?:[a-z' -]{0,40}\()?(?:(?:cable |lace |stitch )?panel (?:of|over|is|on|worked over|=|,) ?(\d+)(?: ${ST})?|(\d+)[- ]?${ST} (?:wide )?(?:cable |lace )?panel|(?:(?:worked |work )?over|worked (?:from|on)) (?:a panel of )?(\d+) ${ST}(?! (?:in|to|rem)))`,
  'i',
);
const repeat = new RegExp(
  String.raw`^${prelude}(?:(?:st(?:itch)? |patt(?:ern)? )?rep(?:eat)? ?(?:of|=|is|:) ?|(?:a|an) |(?=\d+[- ]?${ST} rep))(\d+)[- ]?${ST}(?: rep(?:eat)?)?(?: and | by | x | × |[,;] ?|$)`,
  'i',
);
const more =
  /^(?:,? ?(?:\+|plus|and) ?(\d+)(?![\d½]| ?(?:rows?|rnds?|rounds?)\b)(?: (?:edge|extra|balancing|selvedge|selvage|more))?(?: (?:sts?\b\.?|stitch(?:es)?\b))?)/i;
/** "less 1", "minus 1" behind the multiple. */
const fewer = /^,? ?(?:less|minus) ?(\d+)\b/i;
const spelled = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];

/** Header words in one manner: numbers in digits, "with 3 over" as "plus 3", "uneven" as "odd", no bracket around what is added. */
function plainHeader(words: string): string {
  return words
    .replace(
      /\b(of|plus|and|over|with|\+) (one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)\b/gi,
      (_, before: string, number: string) => `${before} ${spelled.indexOf(number.toLowerCase()) + 1}`,
    )
    .replace(/,? ?\b(?:with|and|plus) (\d+)(?: (?:sts?|stitch(?:es)?))? (?:left )?over\b/gi, ' plus $1')
    .replace(/\buneven\b/gi, 'odd')
    .replace(/ ?[([] ?(plus|\+) ([^()[\]]*)[)\]]?/gi, ' $1 $2');
}

const rows = /(\d+)[- ](?:rows?|rnds?|rounds?)\b/i;

/**
 * The multiple that the words name, or null: "multiple of 8 + 3", "a multiple of 10 sts and 8 rnds", "any odd number of sts".
 * Of a panel `of` is 0 and `plus` its width.
 */
export function multipleIn(words: string): Multiple | null {
  const text = words.replace(/\s+/g, ' ').trim().replace(/^[([]/, '').replace(/\)$/, '');
  const found = /\b(?:a )?(?:multiples?|mult|divisible|odd number|uneven number|even number|any number)\b/i.exec(text);
  if (found === null) return byPlus.test(text) ? declared(text) : null;
  return declared(text) ?? declared(text.slice(found.index));
}

function declared(words: string): Multiple | null {
  const text = plainHeader(words);
  const high = rows.exec(text);
  const height = high === null ? null : Number(high[1]);
  const match = multipleOf.exec(text) ?? byPlus.exec(text);
  if (match && !/^ ?[([]/.test(text.slice(match[0].length).replace(/^ ?[([](?=\D)/, ''))) {
    let plus = 0;
    let at = match[0].length;
    // "+ 3 + 2 edge sts": edge stitches add to what stands over.
    for (let next = more.exec(text.slice(at)); next !== null; next = more.exec(text.slice(at))) {
      at += next[0].length;
      const bothSides =
        /\b(?:edge|selvedge|selvage)\b/i.test(next[0]) && /^[^.,;]* (?:each|either|both) (?:side|end|edge)/i.test(text.slice(at));
      plus += Number(next[1]) * (bothSides ? 2 : 1);
    }
    plus += edges(text.slice(at));
    const of = Number(match[1]);
    const less = Number(fewer.exec(text.slice(at))?.[1] ?? 0);
    return { of, plus: less > 0 && of > 0 ? plus + of - (less % of) : plus, rows: height };
  }
  const oddEven = parity.exec(text);
  if (oddEven) {
    const over = more.exec(text.slice(oddEven[0].length))?.[1];
    return { of: 2, plus: (/odd/i.test(oddEven[1] ?? '') ? 1 : 0) + Number(over ?? 0), rows: height };
  }
  if (any.test(text)) return { of: 1, plus: 0, rows: height };
  return null;
}

/** Stitches of both edges in "with an edge stitch at each side", "plus 2 selvedge sts at each end". */
function edges(words: string): number {
  const told =
    /^,? ?(?:with|plus|and|\+) (an?|one|two|\d+) (?:edge|selvedge|selvage|border) (?:sts?|stitch(?:es)?)\b[^.]* (?:each|either|both) (?:side|end|edge)s?\b/i.exec(
      words,
    );
  if (told === null) return 0;
  const each = Number(told[1]);
  return 2 * (Number.isNaN(each) ? (/^two$/i.test(told[1] ?? '') ? 2 : 1) : each);
}

/** Reads a sentence that declares something, or null. */
export function declaration(tokens: readonly KnitToken[], from: number, to: number, text: string, base: number): Declare | null {
  const span = { start: base + (tokens[from] as KnitToken).startOffset, end: base + endOf(tokens[to - 1] as KnitToken) };
  const words = text.slice(span.start - base, span.end - base).replace(/\s+/g, ' ');
  if (words.length <= 160) {
    const header = headerIn(words);
    if (header !== null) return { type: 'declare', count: null, ...header, span };
  }
  // "Worked flat.", "Worked back and forth in rows."
  if (
    /^(?:this piece is |each piece is |the piece is )?(?:worked|knitted) (?:flat|back and forth|in rows|in (?:the )?rounds?|in one piece|sideways|top down|bottom up)(?: (?:in|on|from|and|with) [a-z -]{1,40})?\.?$/i.test(
      words,
    )
  )
    return { type: 'declare', what: 'rule', name: words.toLowerCase(), multiple: null, count: null, span };
  const forms =
    /^(?:these|the last|last|from)\b.*\brows?\b.*\b(?:form|forms|set|sets|are|make|makes|give|gives|establish|create)\b/i.test(words) ||
    (/^these \d+ (?:row|rnd|round)s? /i.test(words) && /form|set|patt/i.test(words));
  if (forms && isA(tokens[from], W.These, W.Last))
    return {
      type: 'declare',
      what: 'forms',
      name: /(?:form|forms|set|sets)(?: the)? ([\w ]+)/i.exec(words)?.[1] ?? null,
      multiple: null,
      count: null,
      span,
    };
  // "From 1st to 14th row forms patt", "This row sets position of patt"
  const told =
    words.length <= 160 &&
    !words.includes(':') &&
    /^(?:this (?:row|rnd|round)|from |rows? \d|\d)/i.test(words) &&
    /\b(?:rows?|rnds?|rounds?)\b[^.]*\b(?:forms?|sets?) /i.test(words);
  if (told)
    return {
      type: 'declare',
      what: 'forms',
      name: /(?:forms?|sets?)(?: the)? ([\w ]+)/i.exec(words)?.[1] ?? null,
      multiple: null,
      count: null,
      span,
    };
  if (
    isA(tokens[from], W.Rep, W.These) &&
    /(?:\bfor (?:the )?(?:patt(?:ern)?|rib(?:bing)?|[a-z]+ (?:st|patt|pattern|rib))|\bthroughout)\.?$/i.test(words)
  )
    return { type: 'declare', what: 'forms', name: null, multiple: null, count: null, span };
  return null;
}

/** Names that stitch patterns have, and pieces have not. */
const patternName =
  /^(?!(?:work|knit|purl|rep|rib|cont|cast|bind|place|slip)\b).*\b(?:panel|cable|lace|rib|stitch|patt(?:ern)?|edging|motif|braid|plait|twist|trellis|rope|insertion)(?: [a-z\d])?$/i;

/** "Multiple of 4 (6, 8) sts + 1": a multiple of its own for each size, which no pattern row is held against. */
export function sizedMultiple(words: string): boolean {
  return /^(?:worked over )?(?:an? )?(?:stitch )?mult(?:iple)?s?\b[^.;]{0,12}?\d+ ?[([]\d+[,:; ]/i.test(words);
}

/** A stitch-pattern header: "multiple of 8 + 3", "Cable panel (over 12 sts)", "(patt rep = 12 sts and 16 rows)". */
function headerIn(words: string): Pick<Declare, 'what' | 'name' | 'multiple'> | null {
  // "Broken Rib, multiple of 4 + 3"
  const behindComma = /^([A-Za-z0-9][\w' -]{1,40}?), ((?:multiples?|mult|odd|even|uneven|any) .*)$/i.exec(words);
  const titled = behindComma ?? /^([A-Za-z0-9][\w',&/ -]{1,40}?) ?[([](.+)[)\]][.:]?$/.exec(words);
  const inside = titled?.[2] ?? words.replace(/^[([]\s*/, '').replace(/[)\]]?[.:]?\s*[)\]]?$/, '');
  const name = titled?.[1]?.trim() ?? null;
  const text = plainHeader(inside.trim());
  const multiple = declared(text);
  if (multiple !== null) return { what: 'multiple', name, multiple };
  // "Lace Panel (15 sts)": as wide as its name has stitches
  const width = name !== null && patternName.test(name) ? /^(\d+) (?:sts?|stitch(?:es)?)(?: wide)?$/i.exec(text) : null;
  if (width) return { what: 'panel', name, multiple: { of: 0, plus: Number(width[1]), rows: null } };
  const height = rows.exec(text);
  const high = height === null ? null : Number(height[1]);
  const wide = panel.exec(text);
  if (wide && /^(?:[^()]*)$/.test(text) && !/\b(?:[kp]\d+|knit|purl|yo)\b/i.test(text.slice(wide[0].length)))
    return { what: 'panel', name, multiple: { of: 0, plus: Number(wide[1] ?? wide[2] ?? wide[3]), rows: high } };
  const again = repeat.exec(text);
  // Of "rep of 6 sts" only the repeat is known: what stands over is not said, and `name` says so.
  if (again && /\brep/i.test(text)) return { what: 'multiple', name: 'repeat', multiple: { of: Number(again[1]), plus: 0, rows: high } };
  return null;
}
