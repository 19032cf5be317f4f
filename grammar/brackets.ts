/** Brackets: which belong together and what they hold, told by the words inside and around them. */
import type { TokenType } from 'chevrotain';
import {
  Close,
  Colon,
  Comma,
  Count,
  Fabric,
  FullStop,
  type Holds,
  isA,
  type KnitToken,
  Mark,
  Name,
  Open,
  Ordinal,
  PlainStitch,
  Semicolon,
  Stitch,
  TimesNumber,
  W,
  Word,
} from './token-types.ts';

const verbs = [W.Work, W.Patt, W.CastOn, W.BindOff, W.PickUp, W.Turn, W.WrapTurn, W.Rib];

/** Tells every opening bracket its partner and what the two hold. */
export function pairBrackets(tokens: readonly KnitToken[]): void {
  const open: number[] = [];
  tokens.forEach((token, index) => {
    if (isA(token, Open)) open.push(index);
    else if (isA(token, Close)) {
      const start = open.pop();
      if (start === undefined) return;
      const opening = tokens[start];
      if (opening)
        opening.payload = {
          ...opening.payload,
          close: index,
          holds: bareTotal(tokens, start, index)
            ? 'stated'
            : explainsFabric(tokens, start, index)
              ? 'remark'
              : holding(tokens.slice(start + 1, index)),
        };
    }
  });
}

/** "kfb around (16).", "rep from * (24)", "6 times [18]": a number alone behind the end of a round is its count. */
function bareTotal(tokens: readonly KnitToken[], open: number, close: number): boolean {
  if (lineTotal(tokens, open, close)) return true;
  if (close !== open + 2 || !isA(tokens[open + 1], Count) || !isA(tokens[open - 1], W.Around, W.Across, W.End, W.Times, TimesNumber, Mark))
    return false;
  if (isA(tokens[open - 1], W.Times) && !isA(tokens[open - 2], Count)) return false;
  return close + 1 >= tokens.length || isA(tokens[close + 1], FullStop, Semicolon, Comma);
}

/** "Rnd 6: (k3, kfb) x 6 [30]", "Rnd 5: knit [24]": a number alone in brackets behind the last stitch of a labelled row, with the next label or nothing behind it. */
function lineTotal(tokens: readonly KnitToken[], open: number, close: number): boolean {
  const behind = tokens[close + 1];
  if (close !== open + 2 || !isA(tokens[open + 1], Count)) return false;
  if (
    behind !== undefined &&
    !isA(behind, FullStop) &&
    !(isA(behind, W.Row, W.Round, Ordinal) && isA(tokens[close + 2], Count, W.Row, W.Round))
  )
    return false;
  const before = tokens[open - 1];
  // "k5 (6)" may be a list of sizes that breaks off.
  const square = tokens[open]?.image === '[';
  if (!square && (isA(before, Count) ? !/^[x×]$/i.test(tokens[open - 2]?.image ?? '') : /\d$/.test(before?.image ?? ''))) return false;
  if (!isA(before, Stitch, Close, Count, W.Patt, Name, Word, Fabric)) return false;
  for (let at = open - 1; at > 0 && at > open - 60; at -= 1) {
    if (isA(tokens[at], FullStop, Semicolon)) return false;
    if (isA(tokens[at], Colon)) return tokens.slice(Math.max(0, at - 8), at).some((token) => isA(token, W.Row, W.Round));
  }
  return false;
}

/** "garter st (knit every row)", "st st (k 1 row, p 1 row)": what the fabric is, told in a bracket behind it. */
function explainsFabric(tokens: readonly KnitToken[], open: number, close: number): boolean {
  if (!isA(tokens[open - 1], Fabric)) return false;
  const inside = tokens.slice(open + 1, close);
  return (
    inside.some((token) => isA(token, PlainStitch)) &&
    inside.some((token) => isA(token, W.Row, W.Round)) &&
    inside.every((token) =>
      isA(token, PlainStitch, W.Row, W.Round, W.Every, W.Each, W.All, Count, Comma, Semicolon, W.And, W.Then, W.Rs, W.Ws, W.On, W.Alt),
    )
  );
}

function holding(inside: readonly KnitToken[]): Holds {
  // "(1 st on right needle after casting off)": nothing is cast off in the bracket.
  const told = (at: number): boolean => isA(inside[at], W.BindOff, W.CastOn) && isA(inside[at - 1], W.After);
  const has = (...types: TokenType[]): boolean =>
    inside.some((token, at) => isA(token, ...types) && token.image.toLowerCase() !== 'worked' && !told(at));
  const first = inside[0];
  if (isA(first, W.Rs, W.Ws) && inside.length <= 4) return 'side';
  // What a decrease takes, how marks lie, what comes "per row": told about the stitches, not a count of them.
  if (
    !has(Stitch) &&
    (has(W.Gap) ||
      (isA(first, Count) &&
        isA(inside[1], W.In, W.For) &&
        isA(inside[2], W.Each) &&
        inside.length <= 7 &&
        first?.payload?.values?.[0] === 1) ||
      (isA(first, Count) && isA(inside[1], W.In) && isA(inside[2], W.Each)) ||
      (isA(first, Count) && isA(inside[1], W.St) && isA(inside[2], W.In) && isA(inside[3], W.Each)) ||
      (has(W.Wrapped) && !has(W.Each)) ||
      inside.some(
        (token, at) =>
          /^per$/i.test(token.image) &&
          isA(inside[at + 1], Count, W.Row, W.Round, W.Ridge, Word, Fabric) &&
          !isA(inside[at + 1], W.Needle) &&
          !/^(rep|repeat|side)$/i.test(inside[at + 1]?.image ?? '') &&
          !inside.some((each) => /^used$/i.test(each.image)),
      ))
  )
    return 'remark';
  const statedWord = has(W.St) || has(W.Row, W.Round, W.Ridge);
  if (has(Stitch) && !(statedWord && inside.every((token) => !isA(token, Stitch) || token.payload?.entry?.kind === 'marker'))) {
    return 'group';
  }
  if (has(Count, TimesNumber) && statedWord && !has(...verbs)) return 'stated';
  if (has(W.Cm, W.Mm, W.Inch) && has(Count)) return 'measure';
  if (has(...verbs) && (has(Count) || has(Mark))) return 'group';
  return 'remark';
}
