/**
 * What the words of a definition have the hands do, clause by clause, as the primitive moves of the lexicon.
 *
 * A clause that is not known ends the reading: a stitch is never guessed.
 */

import { clauses, type Doing } from './definition-clauses.ts';
import { matchAt, type Vocabulary } from './vocabulary.ts';

/** Words that say nothing the hands do. */
const silent =
  /(?:[,;.:&+/ ]+|(?:and|then|next|now|by|making|work|to|also|thus|again|carefully|on (?:the )?(?:left|right)[ -]?(?:hand)? ?needle|from (?:left|lh) needle|all|as follows|a |one (?=stitch)|(?:left|right|central|centred|centered|double|single)?[ -]?(?:leaning|slanting|slant) (?:decrease|increase|dec|inc|single decrease))(?![a-z]))/y;

/** Reads the clauses of a definition; null when one of them is not known. */
export function movesOf(text: string, vocabulary: Vocabulary): Doing | null {
  const doing: Doing = { moves: [], slipped: 0, since: 0, them: 0, back: 0, sinceYarnOver: 0, cable: [], certain: true };
  let at = 0;
  while (at < text.length) {
    if (text[at] === ' ') {
      at += 1;
      continue;
    }
    const known = matchAt(text, at, vocabulary, null);
    const stitch = known?.meaning.is === 'stitch' ? known : null;
    let done = false;
    for (const { pattern, does } of clauses) {
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
    if (stitch !== null && known !== null && stitch.meaning.is === 'stitch' && stitch.meaning.entry.moves !== '') {
      const { entry, spelling } = stitch.meaning;
      if (known.n !== null && known.n.length !== 1) return null;
      const n = known.n?.[0] ?? entry.literals?.[spelling]?.N ?? 1;
      const m = known.m ?? entry.literals?.[spelling]?.M ?? 1;
      doing.moves.push(`(${fillIn(entry.moves, n, m)})`);
      const yarnOver = entry.kind === 'yarnOver';
      if (yarnOver) doing.sinceYarnOver = 0;
      doing.since += 1;
      if (!yarnOver) doing.sinceYarnOver += 1;
      at += known.length;
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
