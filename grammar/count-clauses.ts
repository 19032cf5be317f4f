/**
 * Clauses that tell a count in words and order nothing, whole from one sign to the next.
 *
 *     giving 84 sts · 84 remain · you will end up with 84 sts · total stitches 84 · this leaves you with 84 sts · 22 rows in all
 *     2 sts made · an increase of 2 sts · 14 patt reps · 84 body sts · (+2)
 */
import {
  Close,
  Colon,
  Comma,
  Count,
  Dash,
  endOf,
  FullStop,
  isA,
  type KnitToken,
  Open,
  Other,
  Semicolon,
  Slash,
  Stitch,
  W,
} from './token-types.ts';
import type { Stated } from './tree.ts';

const T = '(?:sts?|stitch(?:es)?|loops?)';
const parts = 'front|fronts|back|body|sleeve|sleeves|gusset|instep|heel|sole|neck|yoke|thumb|hood|collar|band|shoulder|underarm|each side';
/** What may follow the number of a total and says no more than that it is one. */
const needle = 'on (?:your |both |all )*(?:(?:circular |working )?(?:needles?|ndls?|dpns?|circulars?)|hand)';
const point =
  'at this point|at (?:the )?end(?: of (?:this |the |last )?(?:row|rnd|round))?|after (?:this|last) (?:row|rnd|round)|when all \\w+ are (?:completed?|worked|done)';
const tail = `(?: (?:now|left|rem|remain|remains|remaining|in all|in total|total|altogether|all told|live|are left|still|${needle}|${point}))*`;
const about = '(?: (?:now|still|then|just|exactly|only|again|about|a|total of|a total of))*';
const may = '(?: (?:should|will|must|ought to|would|now|then|still|just|are|also))*';

interface Form {
  readonly pattern: RegExp;
  readonly what: Stated['what'] | 'none';
  /** The change told by the word in the first group. */
  readonly change?: boolean;
  /** Only where the clause stands by itself: in a bracket, or as a sentence. */
  readonly alone?: boolean;
}

const total = (source: string, more: Partial<Form> = {}): Form => ({
  pattern: new RegExp(`^(?:(?:and|so|then|now|check|here|thus|which|again) )*${source}$`),
  what: 'total',
  ...more,
});

const changed =
  "(inc|incs|inc'd|inc’d|increased?|increases|increasing|gained|made|added|dec|decs|dec'd|dec’d|decreased?|decreases|decreasing|lost)";

const forms: readonly Form[] = [
  total(`(?:you|we)(?:'ll|’ll)?${may} (?:have|end up with|be left with|left with|finish with|finish up with|get)${about} # ?${T}?${tail}`),
  total(`(?:count (?:your |all )?${T} ?:? )?there (?:should|must|will|ought to|are|is|were)(?: be)?${about} # ?${T}?${tail}`),
  total(
    `(?:this|that|it|which)(?: row| rnd| round)?${may} (?:gives?|makes?|leaves?|brings?|results? in|comes? to|amounts to)(?: you| us)?(?: (?:with|to|up to|at|total|count|st count|stitch count|back to))*${about} # ${T}${tail}`,
  ),
  total(
    `(?:giving|making|bringing|resulting|ending up|finishing up|so that|so you have|leaving you|leaving us)(?: you| us)?(?: (?:with|in|to|up to|at|total|count|st count|stitch count|back to|of))*${about} # ${T}${tail}`,
  ),
  total(`for a? ?total of # ${T}${tail}`),
  total(
    `(?:your )?(?:total(?: number of)?(?: ${T})?|${T} ?(?:count|ct)|(?:number|no) ?\\.? of ${T}|${T} on (?:your )?(?:needles?|ndls?)|total number)(?: (?:is|are|now|will|should|be|=|:))* # ?${T}?${tail}`,
  ),
  total(`(?:count|check|result|${T}) [:=] # ?${T}?${tail}`),
  total(`# (?:${T} )?(?:(?:should|will|must|now|still|be|are|is) )*(?:rem|remain|remains|remaining|left|are left|${needle})${tail}`),
  total(`# ${T}(?: (?:should|will|must|now|still|be))*${tail}`, { alone: true }),
  total(`# ${T} (?:${point})`),
  total(`(?:should|will|must) be # ${T}${tail}`),
  { pattern: new RegExp(`^(?:including|counting|incl) # (?:edge|selvedge|selvage|steek|seam|border|band) ${T}$`), what: 'none' },
  // changes
  {
    pattern: new RegExp(
      `^# (?:(?:extra|additional|new|more) )?${T}(?: (?:have|has|were|are|been|now))* ${changed}(?: (?:on|in) this (?:row|rnd|round)| this (?:row|rnd|round)| in all| in total| (?:at|on) (?:each|both|either) (?:ends?|sides?)| (?:each|every|per) (?:time|row|rnd|round|rep|repeat))?$`,
    ),
    what: 'total',
    change: true,
  },
  {
    pattern: new RegExp(`^(?:you (?:have )?(?:now )?|we (?:have )?(?:now )?)?${changed} (?:by )?(?:a total of )?# ${T}$`),
    what: 'total',
    change: true,
    alone: true,
  },
  { pattern: new RegExp(`^# ${changed}(?: (?:made|worked|in all|on this row|this row))*$`), what: 'total', change: true, alone: true },
  { pattern: new RegExp(`^(?:an? |total )*(increase|decrease) of # ?${T}?$`), what: 'total', change: true },
  { pattern: new RegExp(`^(?:your )?(?:${T} )?count (?:has |is |now )*${changed} by # ?${T}?$`), what: 'total', change: true },
  { pattern: new RegExp(`^# ${T} (?:more|extra)(?: than before)?$`), what: 'increased', alone: true },
  { pattern: new RegExp(`^# ${T} (?:fewer|less)(?: than before)?$`), what: 'decreased', alone: true },
  { pattern: new RegExp(`^\\+ # ?${T}?$`), what: 'increased', alone: true },
  // rows and repeats
  {
    pattern:
      /^# (?:rows?|rnds?|rounds?)(?: (?:have|has|been|were|are|now))* (?:worked|completed|complete|done|in all|total|in total|altogether)(?: (?:in all|in total|total|altogether|so far|in this way))?$/,
    what: 'rows',
  },
  {
    pattern:
      /^(?:you|we)(?: (?:should|will|now|have))* have (?:now )?(?:worked|completed|done) (?:a total of |total of )?# (?:rows?|rnds?|rounds?)(?: (?:in all|in total|altogether|so far))?$/,
    what: 'rows',
  },
  {
    pattern:
      /^# (?:full |complete )?(?:(?:patt|pattern|pat|stitch|lace|chart) )?(?:reps?|repeats?)(?: of (?:patt|pattern|chart|lace|rep))?(?: (?:worked|completed|done|in all|in total|total))?$/,
    what: 'repeats',
    alone: true,
  },
  // parts
  { pattern: new RegExp(`^# (${parts}) ${T}$`), what: 'part' },
  { pattern: new RegExp(`^# ${T} (${parts})$`), what: 'part' },
  { pattern: new RegExp(`^# ${T} (per (?:needle|side|section|front|sleeve))$`), what: 'part' },
  { pattern: new RegExp(`^# ${T} ((?:between|at|on) (?:each|every) (?:set|pair|side|end) ?(?:of (?:\\w+ ){0,2}\\w+)?)$`), what: 'part' },
  { pattern: new RegExp(`^# (?:${T} )?held (for (?:each )?(?:${parts}))$`), what: 'held' },
];

/** The words of some tokens in one line: numbers as "#", articles left out. */
function line(tokens: readonly KnitToken[]): string {
  return tokens
    .map((token) =>
      isA(token, Count) ? '#' : isA(token, Colon) ? ':' : isA(token, Dash) ? '–' : token.image.toLowerCase().replace(/\s+/g, ' '),
    )
    .join(' ')
    .replace(/\b(?:the|a|an) (?=\w)/g, '')
    .replace(/ {2,}/g, ' ')
    .trim();
}

/** Where or how often a change is made. */
const placed =
  /(?:(?:at|on) (?:each|both|either) (?:ends?|sides?)|(?:each|every) (?:time|row|rnd|round)|(?:each|every|per) (?:rep|repeat))$/;
const falls = /^(?:dec|lost)/;

/** Longest clause that tells a count, in tokens. */
const longest = 18;

function made(tokens: readonly KnitToken[], from: number, to: number, base: number, alone: boolean): Stated[] | null {
  const clause = tokens.slice(from, to);
  if (clause.length === 0 || clause.length > longest) return null;
  const numbers = clause.filter((token) => isA(token, Count));
  const [number] = numbers;
  if (number === undefined || numbers.length > 1 || clause.some((token) => isA(token, Stitch, Open))) return null;
  const words = line(clause);
  const span = { start: base + (clause[0] as KnitToken).startOffset, end: base + endOf(clause.at(-1) as KnitToken) };
  for (const form of forms) {
    if (form.alone && !alone) continue;
    const match = form.pattern.exec(words);
    if (match === null) continue;
    if (form.what === 'none') return [];
    const what = form.change ? (falls.test(match[1] ?? '') ? 'decreased' : 'increased') : form.what;
    const count = {
      type: 'count' as const,
      values: number.payload?.values ?? [1],
      span: { start: base + number.startOffset, end: base + endOf(number) },
    };
    const place = form.change ? placed.exec(words)?.[0] : what === 'part' || what === 'held' ? match[1] : undefined;
    const scope = place?.trim() ?? null;
    return [{ type: 'stated', count, what, scope, span }];
  }
  return null;
}

export interface CountClause {
  readonly stated: readonly Stated[];
  /** Index of the first token behind the clause. */
  readonly next: number;
}

const ends = [Comma, Semicolon, FullStop, Dash, Close];

/** The clause that begins at `at` and tells a count; null for any other. `alone`: nothing of an order stands before it in its sentence. */
export function countClauseAt(tokens: readonly KnitToken[], at: number, to: number, base: number, alone: boolean): CountClause | null {
  if (isA(tokens[at], Open)) return bracketAt(tokens, at, to, base);
  for (let end = at + 1; end <= Math.min(to, at + longest); end += 1) {
    const number = isA(tokens[end], Colon) && tokens.slice(at, end).some((token) => isA(token, Count));
    const shortens = isA(tokens[end], FullStop) && /^no$/i.test(tokens[end - 1]?.image ?? '');
    if (end < to && !number && (shortens || !isA(tokens[end], ...ends))) continue;
    const stated = made(tokens, at, end, base, alone);
    if (stated !== null) return { stated, next: end };
    if (end < to) return null;
  }
  return null;
}

/** "(84 sts; 42 each side)", "[+2]": a bracket all of whose clauses tell counts. */
function bracketAt(tokens: readonly KnitToken[], at: number, to: number, base: number): CountClause | null {
  const close = tokens[at]?.payload?.close ?? -1;
  if (close <= at || close >= to) return null;
  // "[-2]", "(– 2 sts)"
  const lone = tokens.slice(at + 1, close);
  if (isA(lone[0], Dash, W.Plus) && isA(lone[1], Count) && (lone.length === 2 || (lone.length === 3 && isA(lone[2], W.St)))) {
    const number = lone[1] as KnitToken;
    const span = { start: base + number.startOffset, end: base + endOf(number) };
    const count = { type: 'count' as const, values: number.payload?.values ?? [1], span };
    const what = isA(lone[0], Dash) ? 'decreased' : 'increased';
    return { stated: [{ type: 'stated', count, what, scope: null, span }], next: close + 1 };
  }
  const all: Stated[] = [];
  for (let from = at + 1; from < close; ) {
    if (isA(tokens[from], Comma, Semicolon, Dash, FullStop)) {
      from += 1;
      continue;
    }
    const clause = countClauseAt(tokens, from, close, base, true);
    if (clause === null) return null;
    all.push(...clause.stated);
    from = clause.next;
  }
  if (all.length === 0) return null;
  return { stated: all, next: close + 1 };
}

/** The counts of a sentence that tells nothing but counts; null for any other. `behind`: a row or an order stands before it. */
export function countSentence(
  tokens: readonly KnitToken[],
  from: number,
  to: number,
  base: number,
  behind: boolean,
): readonly Stated[] | null {
  const all: Stated[] = [];
  // "… k to end. (84)"
  const number = tokens[from + 1];
  if (behind && isA(tokens[from], Open) && isA(number, Count) && isA(tokens[from + 2], Close) && to <= from + 4) {
    const span = { start: base + (number as KnitToken).startOffset, end: base + endOf(number as KnitToken) };
    return [{ type: 'stated', count: { type: 'count', values: number?.payload?.values ?? [1], span }, what: 'total', scope: null, span }];
  }
  let at = from;
  while (at < to) {
    if (
      isA(tokens[at], Comma, Semicolon, Dash, Colon, FullStop, Slash) ||
      (isA(tokens[at], Other) && /^[<>|]$/.test(tokens[at]?.image ?? ''))
    ) {
      at += 1;
      continue;
    }
    const clause = countClauseAt(tokens, at, to, base, true) ?? pointed(tokens, at, to, base);
    if (clause === null) return null;
    all.push(...clause.stated);
    at = clause.next;
  }
  return all.length === 0 ? null : all;
}

/** "<84 sts>": the sign that closes it. */
function pointed(tokens: readonly KnitToken[], at: number, to: number, base: number): CountClause | null {
  const close = tokens.findIndex((token, index) => index > at && index < to && isA(token, Other) && /^[>|]$/.test(token.image));
  return close < 0 ? null : countClauseAt(tokens, at, close, base, true);
}
