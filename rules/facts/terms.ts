/**
 * Which abbreviations a draft uses where it instructs, and which it explains. Stitches come from the instruction tree, the other
 * short words from the text of the instructions; what counts as an abbreviation is asked of the lexicon and the published lists.
 */
import { fabrics } from '../../grammar/fabrics.ts';
import { lexicon } from '../../grammar/lexicon/index.ts';
import type { Span } from '../../src/manuscript/manuscript.ts';
import type { Context } from '../rule.ts';
import { standardAbbreviation, standardAbbreviations } from '../tables/abbreviations.ts';
import { type Stretch, stretches } from './blocks.ts';
import { walkPattern } from './walk.ts';

export interface Use {
  /** As printed at its first use, without the number of stitches: `K2tog`, `w&t`, `k`. */
  readonly term: string;
  readonly span: Span;
  /** A way of working (a stitch, a turn, a marker move), or a short word of the language (`rep`, `foll`). */
  readonly sort: 'working' | 'word';
}

/** Units and yarn names that nobody explains, and short words that are also English. */
const neverAsked = new Set(['cm', 'mm', 'in', 'g', 'oz', 'yd', 'm', 'dk', 'ch', 'approx', 'incl']);
/** Of the language: a draft may leave several unexplained, and they are asked together. */
const shortWords = new Set(
  'alt beg bet bo bor cc co cont dec dpn foll inc k lh mc meas mult p patt prev rem rep rh rnd rs sl st tog ws'.split(' '),
);
/** Printed in capitals wherever they are abbreviations. */
const capitals = new Set(['bo', 'cc', 'co', 'lh', 'mc', 'rh', 'rs', 'ws']);

/** Words of plain English that also begin a stitch written out: "knit 2 together". They need no explanation. */
const plainWords: ReadonlySet<string> = new Set(
  [
    'pick pass insert lift bring take place return move drop catch wrap put draw using working make',
    ...lexicon.map((entry) => entry.words),
    ...standardAbbreviations.map((one) => one.meaning),
    ...fabrics.flatMap((fabric) => fabric.spellings),
  ]
    .join(' ')
    .toLowerCase()
    .split(/[^a-z]+/)
    .filter((word) => word.length > 2 && standardAbbreviation(word) === null),
);

/** `k5` is `k`, `sl1` is `sl`, `yo2` is `yo`; `k2tog`, `m1` and `C6B` are themselves. */
function bare(printed: string): string {
  const counted = /^([a-z]{1,3})\d[\d/]*$/i.exec(printed);
  if (counted === null || standardAbbreviation(printed) !== null) return printed;
  return standardAbbreviation(counted[1]!) === null ? printed : counted[1]!;
}

/** The name at the head of a stitch as printed: `ssk` of "ssk (last edging st)", `2/1 RC`, `C6B`. */
function nameOf(words: string): string | null {
  const crossing = /^\d\/\d(?:\/\d)?[ -]?[A-Z]{1,4}\b/i.exec(words);
  if (crossing !== null) return crossing[0];
  // "c. 6 f." in old leaflets, with its stops.
  const stopped = /^[A-Za-z]\.\s?\d{1,2}\s?[A-Za-z](?=\.|$)/.exec(words);
  if (stopped !== null) return stopped[0];
  // "wl.fwd." and "t.b.l.": one word with stops inside.
  const spaced = /^[A-Za-z]{1,6}\.[A-Za-z]{1,6}(?:\.[A-Za-z]{1,6})?(?=\W|$)/.exec(words);
  if (spaced !== null) return spaced[0];
  const name = /^[A-Za-z][A-Za-z0-9&+/'-]*/.exec(words)?.[0].replace(/[-/']+$/, '');
  if (name === undefined || plainWords.has(name.toLowerCase())) return null;
  return bare(name);
}

const wordCharacter = /[A-Za-z0-9&]/;

function scan(stretch: Stretch, add: (term: string, span: Span) => void): void {
  const text = stretch.text;
  let at = 0;
  while (at < text.length) {
    if (!wordCharacter.test(text[at]!)) {
      at += 1;
      continue;
    }
    let end = at;
    while (end < text.length && (wordCharacter.test(text[end]!) || (text[end] === '+' && text[end + 1] === 't'))) end += 1;
    const pair = /^\s(sts?)\b/.exec(text.slice(end, end + 5));
    const two = pair === null ? null : standardAbbreviation(`${text.slice(at, end)} st`);
    if (two !== null) end += pair![0].length;
    add(text.slice(at, end), { start: stretch.start + at, end: stretch.start + end });
    at = end;
  }
}

/** Every abbreviation the instructions use, each once, at its first place. */
export function usesOf(context: Context): readonly Use[] {
  const first = new Map<string, Use>();
  const add = (term: string, span: Span, sort: Use['sort']): void => {
    const key = term.toLowerCase();
    const known = first.get(key);
    if (known === undefined || span.start < known.span.start) first.set(key, { term, span, sort: known?.sort ?? sort });
  };
  const source = context.manuscript.source;
  walkPattern(context.pattern, (node) => {
    if (node.type !== 'work') return;
    const name = nameOf(source.slice(node.span.start, node.span.end));
    if (name === null || neverAsked.has(name.toLowerCase())) return;
    add(name, { start: node.span.start, end: node.span.start + name.length }, shortWords.has(name.toLowerCase()) ? 'word' : 'working');
  });
  for (const stretch of stretches(context)) {
    if (stretch.role !== 'work') continue;
    // `m` alone may be metres; after these words it is a marker.
    const marker = /\b(?:to|before|past|after|slip|remove|reach|at|between|next|last|first)\s(m)\b/i.exec(stretch.text);
    if (marker !== null) {
      const at = stretch.start + marker.index + marker[0].length - 1;
      add('m', { start: at, end: at + 1 }, 'word');
    }
    scan(stretch, (printed, span) => {
      const one = standardAbbreviation(printed) ?? standardAbbreviation(printed.replace(/s$/, ''));
      if (one === null || one.ambiguous) return;
      const key = one.term.toLowerCase();
      if (neverAsked.has(key) || (one.change !== null && shortWords.has(key)) || plainWords.has(key)) return;
      if (capitals.has(key) && printed !== printed.toUpperCase()) return;
      add(one.term, span, shortWords.has(key) ? 'word' : 'working');
    });
  }
  // An explanation may itself need one: "slip 3 sts to cn". Other short words in it are understood from the words around them.
  for (const entry of context.pattern.front.abbreviations) {
    const text = source.slice(entry.meaningSpan.start, entry.meaningSpan.end);
    const tool = /\bcn\b/i.exec(text);
    const start = entry.meaningSpan.start + (tool?.index ?? 0);
    if (tool !== null) add(tool[0], { start, end: start + tool[0].length }, 'working');
  }
  return [...first.values()].sort((a, b) => a.span.start - b.span.start);
}

/** All terms the draft explains: in its list, by a directive, or in a sentence of its notes. */
export function explainedIn(context: Context): (term: string) => boolean {
  const known = new Set<string>();
  for (const entry of context.pattern.front.abbreviations) {
    for (const form of [...entry.forms, entry.term]) {
      const key = form
        .toLowerCase()
        .replace(/[()]|\.$/g, '')
        .trim();
      known.add(key).add(bare(key)).add(key.replace(/'?d$/, ''));
    }
  }
  for (const key of context.pattern.vocabulary.defined.keys()) known.add(key);
  const elsewhere = stretches(context).filter((one) => one.role !== 'heading');
  return (term) => {
    const key = term.toLowerCase();
    if ([key, `${key}s`, key.replace(/s$/, '')].some((one) => known.has(one))) return true;
    return elsewhere.some((one) => toldIn(one.text.toLowerCase(), key, one.role === 'list'));
  };
}

/** Whether the words before the bracket are those the letters stand for: "wrap and turn (" for `w&t`, never "Next row (" for `RS`. */
function namesIt(before: string, key: string): boolean {
  if (!/[a-z]\s?\($/.test(before)) return false;
  const words = before
    .split(/[^a-z]+/)
    .filter((word) => word !== '')
    .slice(-5);
  return (
    !/^(?:row|rnd|round)s?$/.test(words[words.length - 1] ?? '') && words.some((word) => word.length > key.length && word[0] === key[0])
  );
}

const workingVerb =
  /^(?:knit|purl|slip|wrap|work|make|yarn|insert|pick|lift|bring|pass|place|move|draw|take|put|increase|decrease|cast|bind|double|drop|turn|cross|with)/;

/** Whether the words in the bracket behind a term tell how it is worked or what it stands for: "ssk (slip, slip, …", never "ssk (last border st with …". */
const explainsIt = (first: string | undefined, key: string): boolean =>
  first !== undefined && (first[0] === key[0] || workingVerb.test(first)) && !/^(?:st|sts|stitch|stitches)$/.test(first);

/** "wrap and turn (w&t)", "MDS like this:", "w&t: bring the yarn …", "DS = …", "is called a DS". */
function toldIn(text: string, key: string, inList: boolean): boolean {
  for (let at = text.indexOf(key); at >= 0; at = text.indexOf(key, at + 1)) {
    if (wordCharacter.test(text[at - 1] ?? ' ')) continue;
    const after = text.slice(at + key.length, at + key.length + 24);
    const before = text.slice(Math.max(0, at - 20), at);
    if (/^s?\)/.test(after) && namesIt(text.slice(Math.max(0, at - 60), at), key)) return true;
    if (inList) continue;
    // "24 rnds = 10 cm" explains no round.
    if (!/\d\s?$/.test(before) && /^[s)]{0,2}\s?(?:=|means\b|like this|as follows|is worked|stands for)/.test(after)) return true;
    // "MB: (k1, p1) …" opens a line; "Rib rnd:" is a label.
    if (/^s?:\s/.test(after) && /(?:^|[\n.;]\s*)$/.test(before)) return true;
    if (/\b(?:called|named|known as)\s(?:an?\s|the\s)?["']?$/.test(before)) return true;
    if (explainsIt(/^\s\((?!\d)([a-z]{3,})[\s,]/.exec(after)?.[1], key) && !/\d/.test(after)) return true;
  }
  return false;
}
