/** Words whose sense shows in their neighbours. */
import type { TokenType } from 'chevrotain';
import {
  Close,
  Colon,
  Comma,
  Count,
  Dash,
  Equals,
  Fabric,
  FullStop,
  isA,
  type KnitToken,
  Open,
  Ordinal,
  PlainStitch,
  W,
  Word,
} from './token-types.ts';

function retype(token: KnitToken, type: TokenType): void {
  token.tokenType = type;
  token.tokenTypeIdx = type.tokenTypeIdx ?? 0;
}

/** Words whose sense shows in their neighbours: "Rows 2 through 5" is a range; in "knit rib", "knit moss st" to knit is to work. */
export function retyped(tokens: readonly KnitToken[]): void {
  tokens.forEach((token, index) => {
    const next = tokens[index + 1];
    if (isA(token, Word) && /^(through|thru)$/i.test(token.image) && isA(tokens[index - 1], Count, Ordinal) && isA(next, Count, Ordinal))
      retype(token, W.To);
    // "Row 8 = Row 2."
    else if (
      isA(token, Equals) &&
      isA(tokens[index - 1], Count) &&
      tokens.slice(Math.max(0, index - 5), index).some((each) => isA(each, W.Row, W.Round)) &&
      isA(next, W.Row, W.Round) &&
      isA(tokens[index + 2], Count)
    )
      retype(token, W.As);
    // "First row: …", "First row.—…": the row by its place
    else if (
      isA(token, W.First) &&
      /^(?:row|rnd|round)$/i.test(next?.image ?? '') &&
      (isA(tokens[index + 2], Colon, Dash, Open) || (isA(tokens[index + 2], FullStop) && isA(tokens[index + 3], Dash))) &&
      (index === 0 || isA(tokens[index - 1], FullStop))
    ) {
      retype(token, Ordinal);
      token.payload = { ...token.payload, values: [1] };
    } else if (
      isA(token, PlainStitch) &&
      /^knit(ting)?$/i.test(token.image) &&
      (isA(next, Fabric, W.Patt, W.Rib) ||
        (isA(next, W.In) && isA(tokens[index + 2], Fabric, W.Patt) && !isA(tokens[index - 1], PlainStitch)))
    )
      retype(token, W.Work);
  });
}

/** "1. row:", "3.–6. Row:": the number with its stop is an ordinal, as printed in some countries. */
export function withNumberedRows(tokens: readonly KnitToken[]): readonly KnitToken[] {
  const out: KnitToken[] = [];
  tokens.forEach((token, index) => {
    const stop = out.at(-1);
    const number = out.at(-2);
    if (isA(token, W.Row, W.Round) && isA(stop, FullStop) && isA(number, Count) && !isA(tokens[index + 1], Count, Ordinal)) {
      const before = out.at(-3);
      const range = isA(before, Dash) && isA(out.at(-4), FullStop) && isA(out.at(-5), Count);
      const first = range ? out.at(-6) : before;
      if (first === undefined || isA(first, FullStop)) {
        out.pop();
        retype(number as KnitToken, Ordinal);
        if (range) {
          out.splice(-3, 1);
          retype(out.at(-3) as KnitToken, Ordinal);
        }
      }
    }
    out.push(token);
  });
  return out;
}

/** Words that say nothing where they stand: articles, and the "only" of "until only 5 sts are left". */
export function silent(token: KnitToken, before: readonly KnitToken[]): boolean {
  // "rows 1 to 8 inclusive"
  if (/^incl(?:usive)?$/i.test(token.image) && isA(before.at(-1), Count) && isA(before.at(-2), W.To, Dash)) return true;
  return isA(token, W.The) || (/^(?:only|just)$/i.test(token.image) && isA(before.at(-1), W.Until));
}

/** Takes back signs that the next token shows to be empty: "rep. from *", "(k1, p1)-8 times". */
export function closed(token: KnitToken, before: KnitToken[]): void {
  if (isA(token, W.From, W.Between) && isA(before.at(-1), FullStop) && isA(before.at(-2), W.Rep)) before.pop();
  if (isA(token, FullStop) && isA(before.at(-1), Comma)) before.pop();
  // "rep the 6-row patt"
  const dash = before.at(-1);
  if (
    isA(token, W.Row, W.Round) &&
    isA(dash, Dash) &&
    isA(before.at(-2), Count) &&
    isA(before.at(-3), W.Rep) &&
    token.startOffset === (dash?.startOffset ?? 0) + 1
  )
    before.pop();
  if (isA(token, W.Times) && isA(before.at(-1), Count) && isA(before.at(-2), Dash) && isA(before.at(-3), Close)) before.splice(-2, 1);
}
