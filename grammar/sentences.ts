/** Cutting the tokens of a passage into sentences. A full stop ends one only where a knitter would stop. */
import {
  Close,
  Colon,
  Comma,
  Count,
  Dash,
  endOf,
  FullStop,
  isA,
  type KnitToken,
  Mark,
  Open,
  Ordinal,
  Semicolon,
  W,
  Word,
} from './tokens.ts';

/** Whether a star opened before `index` is named again behind it, so that the sentence runs on. */
function starOpen(tokens: readonly KnitToken[], from: number, index: number): boolean {
  let open: string | null = null;
  for (let at = from; at < index; at += 1) {
    if (!isA(tokens[at], Mark)) continue;
    const image = tokens[at]?.image ?? '';
    if (open === null && !isA(tokens[at - 1], W.From, W.Between, W.To)) open = image;
    else if (open === image) open = null;
  }
  if (open === null) return false;
  // The reference must come in the next sentence: "*K2, p2. Rep from * to end."
  for (let at = index + 1; at < Math.min(tokens.length, index + 4); at += 1) {
    if (isA(tokens[at], Mark) && tokens[at]?.image === open && isA(tokens[at - 1], W.From, W.Between)) return true;
  }
  return false;
}

/** Whether a row's label and its colon stand at `index`: "Rnd 2:", "Rows 5–8 (RS):", "3rd row:", "Increase row 2 (WS):". */
function labelAt(tokens: readonly KnitToken[], index: number): boolean {
  let at = index;
  // the name of the row
  if (isA(tokens[at], W.Inc, W.Dec, Word) && isA(tokens[at + 1], W.Row, W.Round) && isA(tokens[at + 2], Count)) at += 1;
  if (isA(tokens[at], Ordinal, W.Next) && isA(tokens[at + 1], W.Row, W.Round)) at += 2;
  else if (isA(tokens[at], W.Row, W.Round) && isA(tokens[at + 1], Count)) {
    at += 2;
    while (isA(tokens[at], Dash, W.And, W.To, Comma) && isA(tokens[at + 1], Count)) at += 2;
  } else return false;
  if (isA(tokens[at], Open) && tokens[at]?.payload?.close !== undefined) at = (tokens[at]?.payload?.close ?? at) + 1;
  return isA(tokens[at], Colon) || ((isA(tokens[at], Dash) || tokens[at]?.payload?.holds === 'side') && !isA(tokens[at + 1], Count));
}

/** Whether the words up to a colon only say what the rows behind it make. */
function heads(tokens: readonly KnitToken[], from: number, colon: number): boolean {
  return (
    !isA(tokens[from], W.Size) &&
    tokens.slice(from, colon).some((token) => isA(token, W.Foll, W.Only) || /^(?:thus|half|increases|decreases|so)$/i.test(token.image)) &&
    !tokens.slice(from, colon).some((token, at) => isA(token, Colon) || (isA(token, W.Row, W.Round) && isA(tokens[from + at + 1], Count)))
  );
}

/** "*K2, p2*. Rep from * to end": the star is shut just before the full stop and named again behind it, over the row. */
function starShut(tokens: readonly KnitToken[], from: number, index: number): boolean {
  const shut = tokens[index - 1];
  if (!isA(shut, Mark) || shut?.image.length !== 1) return false;
  const opened = tokens
    .slice(from, index - 1)
    .some((token, at) => isA(token, Mark) && token.image === shut.image && !isA(tokens[from + at - 1], W.From, W.Between, W.To));
  const named = tokens.slice(index + 1, index + 4).findIndex((token) => isA(token, Mark) && token.image === shut.image);
  if (!opened || named < 0) return false;
  let at = index + 2 + named;
  if (isA(tokens[at], W.To, W.And) && isA(tokens[at + 1], Mark)) at += 2;
  return (
    isA(tokens[at], W.Across, W.Around, FullStop) ||
    at >= tokens.length ||
    (isA(tokens[at], W.To) && isA(tokens[at + 1], W.End, W.Last, W.Marker, W.Bor))
  );
}

/** Whether the bracket closed at `index` holds a stated count. */
function closesCount(tokens: readonly KnitToken[], index: number): boolean {
  for (let at = index; at >= 0; at -= 1)
    if (isA(tokens[at], Open) && tokens[at]?.payload?.close === index) return tokens[at]?.payload?.holds === 'stated';
  return false;
}

/** Ranges `[from, to)` of tokens, one for each sentence; the full stop belongs to the sentence it ends. */
export function sentencesOf(tokens: readonly KnitToken[], text: string): { readonly from: number; readonly to: number }[] {
  const ranges: { from: number; to: number }[] = [];
  let from = 0;
  let depth = 0;
  for (let index = 0; index < tokens.length; index += 1) {
    const token = tokens[index] as KnitToken;
    if (isA(token, Open) && token.payload?.close !== undefined) depth += 1;
    else if (isA(token, Close)) depth = Math.max(0, depth - 1);
    // "…, turn; SR4: …": a label opens its row after a semicolon as well.
    if (depth === 0 && isA(token, Semicolon) && labelAt(tokens, index + 1)) {
      ranges.push({ from, to: index + 1 });
      from = index + 1;
      continue;
    }
    // A count in brackets at the end of a line closes its row; the next line begins anew.
    const behind = tokens[index + 1];
    if (
      depth === 0 &&
      isA(token, Close) &&
      behind !== undefined &&
      text.slice(endOf(token), behind.startOffset).includes('\n') &&
      /\p{Lu}/u.test(text[behind.startOffset] ?? '') &&
      closesCount(tokens, index)
    ) {
      ranges.push({ from, to: index + 1 });
      from = index + 1;
      continue;
    }
    // So does a label at the beginning of a line: lists of rounds end their lines with nothing, or with a count in square brackets.
    if (
      depth === 0 &&
      behind !== undefined &&
      !isA(token, FullStop) &&
      isA(behind, W.Row, W.Round, Ordinal, W.Next, W.Inc, W.Dec, Word) &&
      text.slice(endOf(token), behind.startOffset).includes('\n') &&
      labelAt(tokens, index + 1)
    ) {
      ranges.push({ from, to: index + 1 });
      from = index + 1;
      continue;
    }
    // "Work thumb increases as follows: Rnd 1: …", "Dec half: Row 1: …": a heading, then the label of the first row.
    if (depth === 0 && isA(token, Colon) && heads(tokens, from, index) && labelAt(tokens, index + 1)) {
      ranges.push({ from, to: index + 1 });
      from = index + 1;
      continue;
    }
    if (depth > 0 || !isA(token, FullStop)) continue;
    const next = tokens[index + 1];
    if (next !== undefined) {
      if (isA(next, FullStop, Comma, Semicolon)) continue;
      const gap = text.slice(endOf(token), next.startOffset);
      // "st.st", "k.1": no space, no end.
      if (gap === '' && !isA(next, Close)) continue;
      // An article is no token and may begin the sentence all the same: "…, k2. The border is worked …"
      const letter = gap.trimStart()[0] ?? text[next.startOffset] ?? '';
      // In small letters a sentence begins on a new line, or with a word of shorthand: "turn. sl1, p27, turn".
      if (
        /\p{Ll}/u.test(letter) &&
        !/\n/.test(gap) &&
        !/^(?:[kpr]\d|r \d|sl ?\d|(?:rep|work|join|turn|graft|then|next)\b)/.test(text.slice(next.startOffset, next.startOffset + 6))
      )
        continue;
      if (
        isA(next, W.Rep) &&
        isA(tokens[index + 2], W.From, W.Between, Mark) &&
        (starOpen(tokens, from, index) || starShut(tokens, from, index))
      )
        continue;
    }
    ranges.push({ from, to: index + 1 });
    from = index + 1;
  }
  if (from < tokens.length) ranges.push({ from, to: tokens.length });
  return ranges;
}
