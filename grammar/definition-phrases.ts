/**
 * What the words of a definition have the hands do, clause by clause, as the primitive moves of the lexicon.
 *
 * A clause that is not known ends the reading: a stitch is never guessed.
 */

import { clauses, type Doing } from './definition-clauses.ts';
import { knots } from './definition-knots.ts';
import { matchAt, type Vocabulary } from './vocabulary.ts';

/** What is worked twice is tried before the plain clauses that begin with the same words. */
const known: readonly (typeof clauses)[number][] = [...knots, ...clauses];

/** Words that say nothing the hands do. */
const silent =
  /(?:[,;.:&+/ ]+|(?:and|then|next|now|by|making|work|to|also|thus|again|carefully|on (?:the )?(?:left|right)[ -]?(?:hand)? ?needle|with (?:the )?(?:left|lh)[ -]?(?:hand)? ?needle(?: tip)?|(?:both|these (?:2|two)) (?:(?:knit|k|purl|p) )?(?:sts|stitches)|from (?:the )?(?:back|front)(?=,)|from (?:left|lh) needle|all|as follows|a |one (?=stitch)|(?:left|right|central|centred|centered|double|single)?[ -]?(?:leaning|slanting|slant) (?:decrease|increase|dec|inc|single decrease))(?![a-z]))/y;

/** Reads the clauses of a definition; null when one of them is not known. */
export function movesOf(text: string, vocabulary: Vocabulary): Doing | null {
  const doing: Doing = { moves: [], slipped: 0, since: 0, them: 0, back: 0, sinceYarnOver: 0, cable: [], certain: true };
  let at = 0;
  while (at < text.length) {
    if (text[at] === ' ') {
      at += 1;
      continue;
    }
    const named = matchAt(text, at, vocabulary, null);
    const stitch = named?.meaning.is === 'stitch' ? named : null;
    let done = false;
    for (const { pattern, does } of known) {
      pattern.lastIndex = at;
      const match = pattern.exec(text);
      if (match === null || match[0] === '') continue;
      if (stitch !== null && stitch.length > match[0].trimEnd().length) break;
      const before = doing.moves.length;
      if (!does(match, doing)) {
        doing.moves.length = before;
        continue;
      }
      at = pattern.lastIndex;
      done = true;
      break;
    }
    if (done) continue;
    if (stitch !== null && named !== null && stitch.meaning.is === 'stitch' && stitch.meaning.entry.moves !== '') {
      const { entry, spelling } = stitch.meaning;
      if (named.n !== null && named.n.length !== 1) return null;
      const n = named.n?.[0] ?? entry.literals?.[spelling]?.N ?? 1;
      const m = named.m ?? entry.literals?.[spelling]?.M ?? 1;
      doing.moves.push(`(${fillIn(entry.moves, n, m)})`);
      const yarnOver = entry.kind === 'yarnOver';
      if (yarnOver) doing.sinceYarnOver = 0;
      doing.since += 1;
      if (!yarnOver) doing.sinceYarnOver += 1;
      at += named.length;
      continue;
    }
    silent.lastIndex = at;
    if (silent.exec(text) === null) return null;
    at = silent.lastIndex;
  }
  return doing.moves.length > 0 ? doing : null;
}

/** The moves of an entry with its numbers put in for N and M. */
function fillIn(moves: string, n: number, m: number): string {
  return moves.replace(/\bN\b|(?<=[×(*/+-])N|N(?=[*/+)-])/g, String(n)).replace(/\bM\b|(?<=[×(*/+-])M|M(?=[*/+)-])/g, String(m));
}
