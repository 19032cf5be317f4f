/** Whether the draft is for a child, of what age, and which sentences speak of what can hurt one. */
import type { Span } from '../../src/manuscript/manuscript.ts';
import type { Context } from '../rule.ts';
import { type Stretch, stretches } from './blocks.ts';

export interface Child {
  /** Age in years of the youngest and the oldest size; null where the words only say baby or child. */
  readonly from: number | null;
  readonly to: number | null;
  readonly baby: boolean;
}

const childWords =
  /\b(?:bab(?:y|ies)|babe|infants?|newborns?|toddlers?|child(?:ren)?(?:'s)?|kids?|boys?|girls?|the very young|little ones?|layette|preemies?)\b/i;
const babyWords = /\b(?:bab(?:y|ies)|infants?|newborns?|preemies?|layette|cot|crib)\b/i;

function agesIn(text: string): readonly number[] {
  const ages: number[] = [];
  for (const match of text.matchAll(/(\d{1,2}(?:\s?[–-]\s?\d{1,2})?)\s?(months?|mos?|years?|yrs?)\b/gi)) {
    const values = match[1]!.split(/[–-]/).map(Number);
    for (const value of values) ages.push(/^mo/i.test(match[2]!) ? value / 12 : value);
  }
  return ages;
}

/** Null for adults, and where nothing says who it is for. */
export function childOf(context: Context): Child | null {
  const { pattern } = context;
  const sizeWords = [...pattern.sizes, ...pattern.front.measures.filter((one) => one.kind === 'toFit').map((one) => one.name)].join('; ');
  const ages = agesIn(sizeWords).filter((age) => age <= 16);
  const opening = [
    pattern.title,
    ...stretches(context)
      .filter((one) => one.role === 'front')
      .slice(0, 4)
      .map((one) => one.text),
  ].join('\n');
  const named =
    childWords.test(`${pattern.title}\n${sizeWords}`) || (childWords.test(opening) && !/\b(?:women|adults?|ladies|men)\b/i.test(opening));
  if (ages.length === 0 && !named) return null;
  return {
    from: ages.length > 0 ? Math.min(...ages) : null,
    to: ages.length > 0 ? Math.max(...ages) : null,
    baby: babyWords.test(opening) || (ages.length > 0 && Math.min(...ages) < 1),
  };
}

export interface Sentence {
  readonly text: string;
  readonly span: Span;
  readonly role: Stretch['role'];
}

/** The draft's sentences outside the abbreviation list, each with its place. */
export function sentencesOf(context: Context): readonly Sentence[] {
  return stretches(context)
    .filter((one) => one.role !== 'list')
    .flatMap((one) => {
      const found: Sentence[] = [];
      let start = 0;
      for (let at = 0; at <= one.text.length; at += 1) {
        const ends =
          at === one.text.length ||
          ((one.text[at] === '.' || one.text[at] === ';' || one.text[at] === '!') && /\s/.test(one.text[at + 1] ?? ' '));
        if (!ends) continue;
        const text = one.text.slice(start, at);
        const lead = text.length - text.trimStart().length;
        if (text.trim() !== '')
          found.push({ text: text.trim(), span: { start: one.start + start + lead, end: one.start + at }, role: one.role });
        start = at + 1;
      }
      return found;
    });
}

export const denies = (text: string): boolean =>
  /\b(?:no|not|never|nothing|none|without|don't|leave out|omit|instead of|avoid)\b/i.test(text);

/** Small parts are cautioned of wherever it says to fix them firmly, to test them, or to leave them off. */
export const fixesFirmly = (text: string): boolean =>
  /\b(?:firmly|securely|secure(?:d|ly)?|tug(?:ged|ging)?|very well|double(?:d)? thread|pull (?:test|hard)|small (?:parts?|child(?:ren)?)|under (?:the age of )?(?:three|3|36 months)|come (?:off|loose)|snap fasteners? instead)\b/i.test(
    text,
  );

/** A sentence that warns: it names the danger or the rules. */
export const warns = (text: string): boolean =>
  /\b(?:EN 14682|hazards?|chok(?:e|ing)|strangl(?:e|es|ed|ing)|strangulation|danger(?:ous)?|unsafe|safety|unattended|supervis|swallow(?:s|ed|ing)?|local (?:rules|regulations)|may not hang|can catch|get caught|be pulled off)\b/i.test(
    text,
  );
