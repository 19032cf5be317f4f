/**
 * Words that only lead up to an order and say nothing that the order does not: they are passed over before the phrases are read.
 *
 *     Begin by casting on 45 sts · Shape armholes by casting off 5 sts · evenly increasing 6 sts · Cable cast on 8 sts
 *     While continuing armhole shaping, dec 1 st at neck edge
 */
import { Colon, Comma, Count, FullStop, isA, type KnitToken, Semicolon, TimesNumber, W, Word } from './tokens.ts';

/** Most words between "shape" and "by". */
const longestShape = 6;

const methods = /^(?:cable|thumb|knitted|provisional|tubular|crochet|e-wrap|long-tail|backward-loop|longtail|italian|german|picot)$/i;

/** Number of tokens from `at` on that only lead up to an order. */
function idleAt(tokens: readonly KnitToken[], at: number): number {
  const token = tokens[at];
  const ordersAt = (index: number): boolean => isA(tokens[index], W.CastOn, W.BindOff, W.Inc, W.Dec);
  const first = at === 0 || !isA(tokens[at - 1], Word, Count, W.To, W.Of, W.And);
  if (isA(token, W.Beg) && isA(tokens[at + 1], W.By) && isA(tokens[at + 2], W.CastOn)) return 2;
  if (isA(token, W.Evenly) && isA(tokens[at + 1], W.Inc, W.Dec) && isA(tokens[at + 2], Count)) return 1;
  if (isA(token, Word) && methods.test(token?.image ?? '') && isA(tokens[at + 1], W.CastOn) && isA(tokens[at + 2], Count) && first)
    return 1;
  if (/^shap(?:e|ing)$/i.test(token?.image ?? ''))
    for (let next = at + 1; next <= at + longestShape; next += 1) {
      if (isA(tokens[next], W.By)) return ordersAt(next + 1) && isA(tokens[next + 2], Count) ? next + 1 - at : 0;
      if (!isA(tokens[next], Word, W.Edge, W.Each, W.Centre, W.And, W.End)) return 0;
    }
  return 0;
}

/** Most words of "while continuing armhole shaping as set". */
const longestWhile = 10;

/**
 * "While continuing armhole shaping, dec 1 st at neck edge …": index of the comma behind the clause; -1 where there is none. The
 * clause says that two things go on at the same time, or only how the rows go on.
 */
function whileClause(tokens: readonly KnitToken[], at: number): number {
  if (!/^while$/i.test(tokens[at]?.image ?? '') || !/^(?:continuing|working|keeping|maintaining|still)$/i.test(tokens[at + 1]?.image ?? ''))
    return -1;
  for (let next = at + 2; next < at + longestWhile; next += 1) {
    if (isA(tokens[next], Comma)) return isA(tokens[next + 1], W.CastOn, W.BindOff, W.Inc, W.Dec, W.Work, W.Rep, W.Cont) ? next : -1;
    if (isA(tokens[next], Count, FullStop, Semicolon)) return -1;
  }
  return -1;
}

/** "The next row is worked as follows:": index of the colon, so that what is left is the row's label; 0 for other words. */
function nextRowWorked(tokens: readonly KnitToken[], at: number): number {
  if (!isA(tokens[at], W.Next) || !isA(tokens[at + 1], W.Row, W.Round) || (at > 0 && !isA(tokens[at - 1], FullStop))) return 0;
  let next = at + 2;
  while (next < at + 6 && (isA(tokens[next], W.Work, W.As, W.Measures) || /^(?:is|thus|so)$/i.test(tokens[next]?.image ?? ''))) next += 1;
  if (next === at + 2) return 0;
  if (isA(tokens[next], W.Foll) && isA(tokens[next - 1], W.As)) next += 1;
  return isA(tokens[next], Colon) ? next : 0;
}

/** "Work a decrease row as follows:": index behind the row word, so that what is left is the row's label; 0 for other words. */
function rowToldAsFollows(tokens: readonly KnitToken[], at: number): number {
  if (!isA(tokens[at], W.Work) || (at > 0 && !isA(tokens[at - 1], FullStop))) return 0;
  for (let next = at + 2; next < at + 5; next += 1)
    // "Work in short rows as follows" tells of several.
    if (isA(tokens[next], W.Row, W.Round) && !/s$/i.test(tokens[next]?.image ?? ''))
      return isA(tokens[next + 1], W.As) && isA(tokens[next + 2], W.Foll) && isA(tokens[next + 3], Colon) ? next + 1 : 0;
  return 0;
}

const shapes = (token: KnitToken): boolean => isA(token, W.Inc, W.Dec, W.Shaping) || /^shap/i.test(token.image);

/** The tokens without the words that only lead up to an order. */
export function withoutIdle(tokens: readonly KnitToken[]): KnitToken[] {
  const out: KnitToken[] = [];
  for (let at = 0; at < tokens.length; ) {
    const clause = whileClause(tokens, at);
    if (clause > 0) {
      const [first] = tokens.slice(at, at + 1);
      if (first !== undefined && tokens.slice(at, clause).some(shapes))
        out.push({ ...first, tokenType: W.SameTime, tokenTypeIdx: W.SameTime.tokenTypeIdx ?? 0 });
      at = clause + 1;
      continue;
    }
    const colon = nextRowWorked(tokens, at);
    if (colon > 0) {
      out.push(...tokens.slice(at, at + 2));
      at = colon;
      continue;
    }
    // "as soon as work measures 30 cm"
    if (isA(tokens[at], W.As) && /^soon$/i.test(tokens[at + 1]?.image ?? '') && isA(tokens[at + 2], W.As)) {
      out.push({ ...(tokens[at] as KnitToken), image: 'when', tokenType: Word, tokenTypeIdx: Word.tokenTypeIdx ?? 0 });
      at += 3;
      continue;
    }
    const row = rowToldAsFollows(tokens, at);
    if (row > 0) {
      out.push(...tokens.slice(at + 1, row));
      at = row + 2;
      continue;
    }
    // "Do this 12 times", "Do these 2 rounds 6 times"
    const word = tokens[at] as KnitToken;
    if (
      /^do$/i.test(word.image) &&
      (isA(tokens[at + 1], W.These) || (/^this$/i.test(tokens[at + 1]?.image ?? '') && isA(tokens[at + 2], Count, TimesNumber)))
    ) {
      out.push({ ...word, tokenType: W.Work, tokenTypeIdx: W.Work.tokenTypeIdx ?? 0 });
      at += 1;
      continue;
    }
    const idle = idleAt(tokens, at);
    if (idle === 0) out.push(tokens[at] as KnitToken);
    at += Math.max(1, idle);
  }
  return out;
}
