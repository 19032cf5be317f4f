/** The forms in which a draft writes one thing: words of two dialects, labels, repeats and counts. */
import type { Span } from '../../src/manuscript/manuscript.ts';
import type { Context } from '../rule.ts';
import { wordPairs } from '../tables/dialect.ts';
import { stretches } from './blocks.ts';
import { walkPattern } from './walk.ts';

export interface Seen {
  readonly form: string;
  /** As printed. */
  readonly words: string;
  readonly span: Span;
}

const letter = /[A-Za-z-]/;

/** Every place where one of the words stands alone. */
function placesOf(context: Context, word: string): readonly Seen[] {
  const found: Seen[] = [];
  const capitals = word === word.toUpperCase();
  for (const stretch of stretches(context)) {
    if (stretch.role === 'heading' && capitals) continue;
    const text = capitals ? stretch.text : stretch.text.toLowerCase();
    for (let at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + word.length)) {
      if (letter.test(text[at - 1] ?? ' ') || letter.test(text[at + word.length] ?? ' ')) continue;
      const span = { start: stretch.start + at, end: stretch.start + at + word.length };
      found.push({ form: word, words: stretch.text.slice(at, at + word.length), span });
    }
  }
  return found;
}

/** Words that stand for the same thing on both sides of the ocean; names of garments and yarns belong to the author. */
const asked = wordPairs.filter(
  (pair) =>
    !pair.us.some((word) =>
      /^(?:fingering|worsted|bulky|sweater|vest|afghan|throw|skip|turtleneck|in the round|yarn over|every other row)/.test(word),
    ),
);

export interface Dialect {
  readonly us: readonly Seen[];
  readonly uk: readonly Seen[];
  /** Of a dangerous pair: the same words, another fabric. */
  readonly dangerous: readonly { readonly us: Seen; readonly uk: Seen; readonly note: string }[];
}

export function dialectOf(context: Context): Dialect {
  const us: Seen[] = [];
  const uk: Seen[] = [];
  const dangerous: Dialect['dangerous'][number][] = [];
  for (const pair of asked) {
    const american = pair.us.flatMap((word) => placesOf(context, word));
    const british = pair.uk.flatMap((word) => placesOf(context, word));
    if (pair.dangerous && american[0] !== undefined && british[0] !== undefined)
      dangerous.push({ us: american[0], uk: british[0], note: pair.note ?? '' });
    us.push(...american);
    uk.push(...british);
  }
  const inOrder = (one: Seen, other: Seen): number => one.span.start - other.span.start;
  return { us: us.sort(inOrder), uk: uk.sort(inOrder), dangerous };
}

/** How row labels are printed: "Row 5" or "5th row". */
export function labelForms(context: Context): readonly Seen[] {
  const source = context.manuscript.source;
  return context.pattern.rows.flatMap(({ label }): Seen[] => {
    if (label.numberSpan === null || label.numbers.length !== 1 || label.name !== null) return [];
    const words = source.slice(label.span.start, label.span.end).replace(/[*_:]/g, '').trim();
    const form = /^(?:row|rnd|round)\b/i.test(words) ? 'Row 1' : /^\d+(?:st|nd|rd|th)\b/i.test(words) ? '1st row' : null;
    return form === null ? [] : [{ form, words, span: label.span }];
  });
}

/** How repeats within a row are printed: "*…; rep from *" or "[…] 4 times". */
export function repeatForms(context: Context): readonly Seen[] {
  const found: Seen[] = [];
  const source = context.manuscript.source;
  walkPattern(context.pattern, (node) => {
    // A bracket a fixed number of times stands inside star repeats in most houses; only the two ways to fill a row compete.
    if (node.type !== 'repeat' || (node.form !== 'star' && node.form !== 'bracket') || node.extent === null || node.extent.kind === 'times')
      return;
    found.push({ form: node.form, words: source.slice(node.span.start, node.span.end), span: node.span });
  });
  return found;
}

/** How the count behind a row is printed: "— 84 sts", "(84 sts)", or "84 sts." as a sentence. */
export function countForms(context: Context): readonly Seen[] {
  const found: Seen[] = [];
  const source = context.manuscript.source;
  walkPattern(context.pattern, (node) => {
    if (node.type !== 'stated' || node.what !== 'total' || node.scope !== null) return;
    let at = node.span.start - 1;
    while (at >= 0 && /\s/.test(source[at]!)) at -= 1;
    const before = source[at] ?? '';
    const first = source[node.span.start] ?? '';
    const opens = /[([]/.test(before) || /[([]/.test(first);
    // "– (–, 108, 116) sts": the dash stands for a size that has no number
    const skipped = /^[—–-]\s?[([/,]/.test(source.slice(node.span.start, node.span.start + 3));
    const form =
      /[—–-]/.test(before) || (/[—–]/.test(first) && !skipped)
        ? 'dash'
        : opens
          ? 'bracket'
          : before === '.' || before === ':'
            ? 'sentence'
            : null;
    if (form !== null) found.push({ form, words: source.slice(node.span.start, node.span.end), span: node.span });
  });
  return found;
}

/** The rarer of the forms a draft mixes; null where it keeps to one, or where a house form is set and kept. */
export function minority(
  seen: readonly Seen[],
  wanted: string | null,
): { readonly odd: readonly Seen[]; readonly usual: string; readonly usualCount: number } | null {
  const counts = new Map<string, number>();
  for (const one of seen) counts.set(one.form, (counts.get(one.form) ?? 0) + 1);
  if (counts.size === 0) return null;
  const usual = wanted ?? [...counts].sort((one, other) => other[1] - one[1] || (one[0] < other[0] ? -1 : 1))[0]![0];
  const odd = seen.filter((one) => one.form !== usual);
  return odd.length === 0 ? null : { odd, usual, usualCount: counts.get(usual) ?? 0 };
}
