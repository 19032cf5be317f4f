/** What stands between a label and its row: the yarn it is worked in, or the first word of the row where no colon is printed. */
import { Colon, Comma, Count as CountToken, Dash, isA, type KnitToken, Name, Open, Ordinal, rowWords, Stitch, W, Word } from '../tokens.ts';

/** Index of the colon behind "with A:", ", using MC:", "in colour 2:"; `at` where no yarn stands before a colon. */
export function behindColour(tokens: readonly KnitToken[], at: number): number {
  const from = isA(tokens[at], Comma, Dash) ? at + 1 : at;
  if (!isA(tokens[from], W.With, W.In)) return at;
  for (let end = from + 1; end < from + 5; end += 1) {
    if (isA(tokens[end], Colon)) return end;
    if (!isA(tokens[end], Word, Name, W.Yarn, W.And, CountToken)) return at;
  }
  return at;
}

/** Whether the words at `at` work a row, so that the label before them needs no colon: "Row 2 P2, …", "Next row Cast off 4 sts, …". */
export function opensWork(tokens: readonly KnitToken[], at: number): boolean {
  const token = tokens[at];
  if (isA(token, Stitch, W.Work) || token?.image === '*') return true;
  if (isA(token, W.BindOff, W.CastOn, W.Inc, W.Dec)) return isA(tokens[at + 1], CountToken);
  if (isA(token, W.Patt, W.Rib)) return isA(tokens[at + 1], CountToken, W.To);
  if (isA(token, W.As)) return isA(tokens[at + 1], ...rowWords, Ordinal);
  return isA(token, Open) && token?.payload?.holds === 'group';
}
