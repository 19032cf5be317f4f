/**
 * Every word the grammar knows, in one tree of letters, so that the longest spelling wins at any place of the text.
 * A draft's own words and stitches lie in a second tree above the common one.
 */

import type { Sized } from './count.ts';
import { fabrics } from './fabrics.ts';
import type { Entry } from './lexicon/entry.ts';
import { lexicon } from './lexicon/index.ts';
import { numbersFit } from './lexicon/use.ts';
import { numberAt } from './numbers.ts';
import { type WordName, words } from './words.ts';

/** What a spelling stands for. */
export type Meaning =
  | { readonly is: 'stitch'; readonly entry: Entry; readonly spelling: string }
  | { readonly is: 'word'; readonly word: WordName }
  | { readonly is: 'fabric'; readonly fabric: string }
  | { readonly is: 'name'; readonly name: string };

export interface VocabularyMatch {
  readonly meaning: Meaning;
  readonly n: Sized | null;
  readonly nOffset: number;
  readonly nLength: number;
  readonly m: number | null;
  readonly length: number;
  /** From the draft's own words. */
  readonly own: boolean;
}

interface Letters {
  readonly next: Map<string, Letters>;
  slotN: Letters | null;
  slotM: Letters | null;
  meanings: Meaning[] | null;
}

export interface Vocabulary {
  readonly dialect: 'US' | 'UK' | null;
  readonly letters: Letters;
  readonly own: Letters | null;
  /** Stitches the draft defines itself, by name. */
  readonly stitches: ReadonlyMap<string, Entry>;
  /** Terms of the draft's abbreviation list in lower case, with what they mean there. */
  readonly defined: ReadonlyMap<string, string>;
}

function letters(): Letters {
  return { next: new Map(), slotN: null, slotM: null, meanings: null };
}

function add(tree: Letters, spelling: string, meaning: Meaning): void {
  let at = tree;
  const text = spelling.toLowerCase().trim();
  for (let index = 0; index < text.length; ) {
    const slot = /^\{([NM])(?::\w+)?\}/.exec(text.slice(index).toUpperCase());
    if (slot) {
      const which = slot[1] === 'N' ? 'slotN' : 'slotM';
      at[which] ??= letters();
      at = at[which];
      index += slot[0].length;
      continue;
    }
    const letter = /\s/.test(text[index] ?? '') ? ' ' : (text[index] ?? '');
    let next = at.next.get(letter);
    if (next === undefined) {
      next = letters();
      at.next.set(letter, next);
    }
    at = next;
    index += 1;
  }
  at.meanings ??= [];
  at.meanings.push(meaning);
}

/**
 * Spellings that the phrases of the grammar read themselves, because what they do depends on the words around them:
 * increases and decreases told as commands, casting on and off, holders, markers at rows.
 */
const told =
  /^(inc|dec|increase|decrease|co\b|cast|bo\b|bind|pick|knit up|pu&k|place|put|leave|set aside|k across|work \{N\} sts from|return \{N\}|join|w&t|wrap|turn|ds|mds|gsr|twin|german|shadow|pin|work \{n\} sts|patt \{n\}|sl next \{n\} sts onto|sl \{n\} sts to|buttonhole|keeping|work in patt|slide|i-cord|sl \{n\} sts back|edge st|work sts|rib|work even)/i;
/** Spellings that look told and are one stitch all the same. */
const kept =
  /^(work \{n\} sts into|inc in|inc 1 st in|increase in|inc next|inc into|inc in every|inc1[lr]$|inc-?[lr]$|inc by (?:knitting|backward)|inc 1 \(lifted|dec1[lr]$|dec 1 \(r\)|dec5to1|place bead|work sts as|pick up bar|pick up st \{n\} rows|wrap \{n\}|sl \{n\} sts to cn|place \{n\} sts on cn|slip next \{n\} sts to cable|place st back|sl \{n\} sts back to)/i;
/** A bracket that only remarks on the name before it: "ssk (dec)", "C2L (no cn)". */
const remarked = /^[^([]*[^([\s,] \([^()]*\)$/;

function spellingsOf(entry: Entry): readonly string[] {
  return entry.spellings.filter((spelling) => {
    const text = spelling.toLowerCase();
    if (entry.kind === 'marker' || entry.kind === 'castOn' || entry.kind === 'bindOff' || entry.kind === 'shortRow') return false;
    if (text.length === 1 && text !== 'k' && text !== 'p') return false;
    // Groups in brackets and stitches worked into one are read by the grammar, part by part.
    const bracket = (text.includes('(') || text.includes('[')) && !remarked.test(text);
    if (/ alternately /.test(text)) return true;
    if (bracket || (/\bin(to)? (next|same|each|double|one)\b/.test(text) && text.includes(','))) return false;
    return kept.test(text) || !told.test(text);
  });
}

let commonTree: Letters | null = null;

function commonLetters(): Letters {
  if (commonTree) return commonTree;
  const tree = letters();
  for (const [word, spellings] of Object.entries(words)) {
    for (const spelling of spellings) add(tree, spelling, { is: 'word', word: word as WordName });
  }
  for (const fabric of fabrics) for (const spelling of fabric.spellings) add(tree, spelling, { is: 'fabric', fabric: fabric.name });
  for (const entry of lexicon) for (const spelling of spellingsOf(entry)) add(tree, spelling, { is: 'stitch', entry, spelling });
  commonTree = tree;
  return tree;
}

export interface OwnWord {
  readonly spelling: string;
  readonly meaning: Meaning;
}

/** The vocabulary of one draft: the common words and those the draft brings. */
export function vocabularyOf(options: {
  readonly own?: readonly OwnWord[];
  readonly dialect?: 'US' | 'UK' | null;
  readonly defined?: ReadonlyMap<string, string>;
}): Vocabulary {
  const own = letters();
  const stitches = new Map<string, Entry>();
  for (const { spelling, meaning } of options.own ?? []) {
    if (spelling.trim() === '') continue;
    add(own, spelling, meaning);
    if (meaning.is === 'stitch') stitches.set(meaning.entry.name, meaning.entry);
  }
  return {
    dialect: options.dialect ?? null,
    letters: commonLetters(),
    own: (options.own ?? []).length > 0 ? own : null,
    stitches,
    defined: options.defined ?? new Map(),
  };
}

const wordLetterOfAnyScript = /[\p{L}\p{N}]/u;
function isWordLetter(letter: string): boolean {
  if (letter === '') return false;
  const code = letter.charCodeAt(0);
  return code < 128 ? (code >= 48 && code <= 57) || ((code | 32) >= 97 && (code | 32) <= 122) : wordLetterOfAnyScript.test(letter);
}
const blankOfAnyKind = /\s/;
function isBlank(letter: string): boolean {
  const code = letter.charCodeAt(0);
  return code < 128 ? code === 32 || (code >= 9 && code <= 13) : blankOfAnyKind.test(letter);
}
const isDigit = (letter: string | undefined): boolean => letter !== undefined && letter >= '0' && letter <= '9';
/** Longest spelling in characters; a bound on the walk. */
const longest = 120;

interface Found {
  meaning: Meaning;
  end: number;
  n: Sized | null;
  nOffset: number;
  nLength: number;
  m: number | null;
}

/** The value every size shares with a bound of the entry, or the first that breaks it. */
function fits({ meaning, n, m }: Found): boolean {
  if (meaning.is !== 'stitch') return true;
  const literal = meaning.entry.literals?.[meaning.spelling];
  const values = n === null ? [literal?.N] : n.filter((value) => value !== null);
  return values.every((value) => numbersFit(meaning.entry, value, m ?? literal?.M));
}

/**
 * Of the meanings of one spelling: a word of the trade first; then a name whose numbers are possible (`C3F` is no half and
 * half crossing); then the name written out, unless it is a member of a family that fits too (`k2tog` is `kNtog` with 2).
 */
function chosen(candidates: readonly Found[]): Found | null {
  const word = candidates.find((each) => each.meaning.is !== 'stitch');
  if (word !== undefined) return word;
  const possible = candidates.filter(fits);
  const among = possible.length > 0 ? possible : candidates;
  const family = among.find((each) => each.n !== null || each.m !== null);
  const exact = among.find((each) => each.n === null && each.m === null);
  if (exact === undefined || family === undefined) return among[0] ?? null;
  const name = family.meaning.is === 'stitch' ? family.meaning.entry.name : '';
  const member =
    exact.meaning.is === 'stitch' &&
    (exact.meaning.entry.name === name ||
      exact.meaning.entry.memberOf?.some((each) => each.family === name && (each.N === family.n?.[0] || family.n === null)));
  // A family that does not say how it leans or looks is the poorer name: "sl 1, k1, psso" is `skp`.
  const alike =
    exact.meaning.is === 'stitch' &&
    family.meaning.is === 'stitch' &&
    exact.meaning.entry.lean === family.meaning.entry.lean &&
    exact.meaning.entry.face === family.meaning.entry.face;
  return member && alike ? family : exact;
}

function walk(text: string, start: number, tree: Letters, sizes: number | null): Found | null {
  let best: Found[] = [];
  let bestEnd = -1;
  const seek = (at: Letters, index: number, n: Sized | null, nOffset: number, nLength: number, m: number | null): void => {
    if (index - start > longest + nLength) return;
    if (at.meanings !== null && index >= bestEnd) {
      const before = text[index - 1] ?? '';
      const after = text[index] ?? '';
      if (!(isWordLetter(before) && isWordLetter(after))) {
        if (index > bestEnd) best = [];
        bestEnd = index;
        for (const meaning of at.meanings) best.push({ meaning, end: index, n, nOffset, nLength, m });
      }
    }
    const character = (text[index] ?? '').toLowerCase();
    if (character === '') return;
    if (at.slotN !== null || at.slotM !== null) {
      const number = numberAt(text, index, sizes);
      if (number !== null && number.kind !== 'ordinal') {
        if (at.slotN !== null) seek(at.slotN, index + number.length, number.values, index, number.length, m);
        if (at.slotM !== null && number.values.length === 1)
          seek(at.slotM, index + number.length, n, nOffset, nLength, number.values[0] ?? null);
        if (number.kind === 'times') {
          const times = /\s*times?\b/iy;
          times.lastIndex = index + number.length;
          if (times.test(text) && at.slotN !== null) seek(at.slotN, times.lastIndex, number.values, index, number.length, m);
        } else {
          const times = /\s*times\b/iy;
          times.lastIndex = index + number.length;
          if (times.test(text) && at.slotN !== null && /wrap|yo|yarn|wind|turn/i.test(text.slice(start, index)))
            seek(at.slotN, times.lastIndex, number.values, index, number.length, m);
        }
      }
    }
    if (isBlank(character)) {
      let after = index;
      while (isBlank(text[after] ?? '')) after += 1;
      const next = at.next.get(' ');
      if (next !== undefined) seek(next, after, n, nOffset, nLength, m);
      // "k 5", "sl 1", "k2 tog": knitters put or leave out a space beside a number.
      if (/\d/.test(text[index - 1] ?? '') || /[\])]/.test(text[index - 1] ?? '') || /[\d–]/.test(text[after] ?? '') || at.slotN !== null) {
        if (at.slotN !== null || at.slotM !== null || at.next.size > 0) seek({ ...at, meanings: null }, after, n, nOffset, nLength, m);
      }
      return;
    }
    // "K. 2", "k. 2 tog.": old leaflets put a full stop behind every abbreviation.
    if (
      character === '.' &&
      index - start <= 3 &&
      !at.next.has('.') &&
      /[a-z]/i.test(text[index - 1] ?? '') &&
      /^\.\s?\d/.test(text.slice(index, index + 3))
    )
      seek({ ...at, meanings: null }, index + 1, n, nOffset, nLength, m);
    const gap = at.next.get(' ');
    if (gap !== undefined && (isDigit(character) || /[\d)\]]/.test(text[index - 1] ?? ''))) seek(gap, index, n, nOffset, nLength, m);
    const next = at.next.get(character);
    if (next !== undefined) seek(next, index + 1, n, nOffset, nLength, m);
  };
  seek(tree, start, null, 0, 0, null);
  return chosen(best);
}

/** The longest known spelling that begins at `index`; the draft's own words win over common ones of the same length. */
export function matchAt(text: string, index: number, vocabulary: Vocabulary, sizes: number | null): VocabularyMatch | null {
  const common = walk(text, index, vocabulary.letters, sizes);
  const own = vocabulary.own === null ? null : walk(text, index, vocabulary.own, sizes);
  const found = own !== null && (common === null || own.end >= common.end) ? own : common;
  if (found === null) return null;
  return {
    meaning: found.meaning,
    n: found.n,
    nOffset: found.nOffset,
    nLength: found.nLength,
    m: found.m,
    length: found.end - index,
    own: found === own,
  };
}
