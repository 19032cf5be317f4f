/** One sentence: a title, a label and its row, a declaration, an order, or words that go on with the row before. */
import { countSentence } from '../count-clauses.ts';
import { declaration, sizedMultiple } from '../declarations.ts';
import { adverbAt, clauseOrders, headingEnd } from '../introductions.ts';
import { labelAt } from '../phrases/labels.ts';
import { partBegins, statedAt, statedBegins, statementAt } from '../phrases/parser.ts';
import { sizesOf } from '../some-sizes.ts';
import {
  Colon,
  Comma,
  Count as CountToken,
  Dash,
  endOf,
  Fabric,
  FullStop,
  isA,
  type KnitToken,
  Mark,
  Name,
  Open,
  PlainStitch,
  Semicolon,
  Stitch,
  W,
  Word,
} from '../tokens.ts';
import { countsTold, exception, needless } from '../told-counts.ts';
import type { Label, RepeatRows } from '../tree.ts';
import { readBody } from './body.ts';
import { bracketedRows } from './bracketed-rows.ts';
import { readAtGoal, readEnding } from './goal-sentences.ts';
import { chartOrder, ordersAt } from './orders.ts';
import type { Passage } from './passage.ts';
import { introduced, readProse } from './prose.ts';
import { openSizeBlock } from './size-blocks.ts';

/** "As Back to **" behind a heading; "as Needle 1" and "as Row 2" are parts of a row. */
function refersToPiece(passage: Passage, rest: readonly KnitToken[]): boolean {
  const { text, base } = passage;
  const parsed = statementAt(rest, base, text)?.value;
  return (
    parsed?.type === 'refer' &&
    parsed.to !== 'row' &&
    !/\b(?:needles?|ndls?|dpns?|n\d)\b/i.test(text.slice(parsed.span.start - base, parsed.span.end - base))
  );
}

/** A mark that opens or closes a block of rows: rows follow it, or nothing does. */
function blockMarkAt(passage: Passage, at: number, to: number): boolean {
  const { text, base, tokens, emphasised } = passage;
  const rest = tokens.slice(at + 1, to);
  if (rest.every((token) => isA(token, FullStop, Mark))) return true;
  if (labelAt(tokens.slice(0, to), at + 1, base, text, emphasised(tokens[at + 1])) !== null) return true;
  const image = tokens[at]?.image;
  const statement = statementAt(rest, base, text);
  if (statement !== null) return true;
  return !rest.some((token, index) => isA(token, Mark) && token.image === image && index > 0) && image !== '*';
}

/** "Dec row." with neither colon nor stitches behind it: the named row is worked. */
function calledAt(passage: Passage, match: { readonly label: Label; readonly next: number }, at: number, to: number): boolean {
  const { text, base, tokens, emphasised } = passage;
  const { label } = match;
  if (
    match.next < to ||
    label.name === null ||
    label.numbers.length > 0 ||
    label.next !== null ||
    tokens.slice(at, to).some((token) => isA(token, Colon)) ||
    emphasised(tokens[at])
  )
    return false;
  if (isA(tokens[to], W.Work) && statementAt(tokens.slice(to), base, text) !== null) return true;
  return !isA(tokens[to], Stitch, PlainStitch, Mark, Open, W.Patt, W.Rib, W.Work, Fabric);
}

/** The row of that name, worked once. */
function calledRow(label: Label, end: number): RepeatRows {
  return {
    type: 'repeatRows',
    verb: 'work',
    rows: { kind: 'name', count: null, numbers: [], name: label.name, of: null, mark: null, toMark: null },
    times: { count: { type: 'count', values: [1], span: label.span }, sense: 'plain' },
    until: null,
    ending: null,
    schedule: [],
    step: null,
    inPlace: null,
    stated: [],
    span: { start: label.span.start, end },
  };
}

/** "*" or "**" before a block of rows or alone. */
function readBlockMark(passage: Passage, at: number, to: number): boolean {
  const { tokens, markBlock } = passage;
  const first = tokens[at];
  if (first === undefined || !isA(first, Mark) || !blockMarkAt(passage, at, to)) return false;
  markBlock(first);
  if (at + 1 < to && !tokens.slice(at + 1, to).every((token) => isA(token, FullStop, Mark))) readSentence(passage, at + 1, to, -1);
  else for (const mark of tokens.slice(at + 1, to)) if (isA(mark, Mark)) markBlock(mark);
  return true;
}

/** "Row 3:", "Next row (RS):" with what the row has, "Dec row." alone. */
function readLabelled(passage: Passage, at: number, to: number): boolean {
  const { text, base, tokens, emphasised, out, flush, openRow, attach } = passage;
  const label = labelAt(tokens.slice(0, to), at, base, text, emphasised(tokens[at]));
  if (label === null) return false;
  if (calledAt(passage, label, at, to)) {
    flush();
    out.push(calledRow(label.label, base + endOf(tokens[to - 1] as KnitToken)));
    return true;
  }
  const row = openRow(label.label, label.label.span.start);
  row.end = label.label.span.end;
  if (label.sizes !== undefined) row.sizes = sizesOf(label.sizes);
  readBody(passage, label.next, to, true);
  if (label.told !== undefined) statedAt(tokens.slice(label.told.from, label.told.to), base, text)?.value.forEach(attach);
  return true;
}

/** "With B: k1, *sl 1, k1": a colour, and the row worked in it. */
function coloured(passage: Passage, at: number, to: number): boolean {
  const { tokens } = passage;
  const end = tokens.findIndex((token, index) => index > at && index < Math.min(to, at + 6) && isA(token, Colon, Comma));
  return end > 0 && isA(tokens[end + 1], Stitch, PlainStitch, Mark, Open) && !tokens.slice(at, end).some((token) => isA(token, W.Needle));
}

/** The item of a numbered list: its number is the row's. */
function readNumbered(passage: Passage, at: number, to: number, index: number): boolean {
  const { base, options, tokens, openRow } = passage;
  const first = tokens[at];
  if (first === undefined || index !== 0 || typeof options.itemNumber !== 'number') return false;
  if (!isA(first, Stitch, Mark, Open) && !(isA(first, W.With) && coloured(passage, at, to))) return false;
  const start = base + first.startOffset;
  openRow(
    {
      type: 'label',
      unit: options.itemUnit ?? 'row',
      numbers: [options.itemNumber],
      numberSpan: null,
      lastBySize: null,
      andAll: null,
      next: null,
      name: null,
      side: null,
      sideSpan: null,
      span: { start, end: start },
    },
    start,
  );
  readBody(passage, at, to, true);
  return true;
}

/** A title in bold, alone or running into its first order: "**Cuff** CO 56 sts". */
function readTitle(passage: Passage, at: number, to: number): boolean {
  const { tokens, emphasised } = passage;
  const first = tokens[at];
  if (!emphasised(first)) return false;
  const whole =
    tokens.slice(at, to).every((token) => emphasised(token) || isA(token, FullStop, Colon)) &&
    !tokens.slice(at, to).some((token) => isA(token, CountToken, PlainStitch));
  if (whole) {
    declareTitle(passage, at, isA(tokens[to - 1], FullStop, Colon) ? to - 1 : to);
    return true;
  }
  if (!isA(first, Word, Name) || ordersAt(first)) return false;
  let end = at + 1;
  while (end < to && end < at + 5 && emphasised(tokens[end])) end += 1;
  const begins = isA(tokens[end], Colon, FullStop, Dash) ? end + 1 : end;
  if (
    begins >= to ||
    emphasised(tokens[end]) ||
    !ordersAt(tokens[begins]) ||
    tokens.slice(at, end).some((token) => isA(token, CountToken, Stitch, W.Row, W.Round))
  )
    return false;
  declareTitle(passage, at, end);
  readSentence(passage, begins, to, -1);
  return true;
}

function declareTitle(passage: Passage, at: number, end: number): void {
  const { text, base, tokens, out, flush } = passage;
  flush();
  const span = { start: base + (tokens[at] as KnitToken).startOffset, end: base + endOf(tokens[end - 1] as KnitToken) };
  const name = text.slice(span.start - base, span.end - base);
  out.push({ type: 'declare', what: 'title', name, multiple: null, count: null, span });
}

/** What the draft says of itself: multiples, exceptions, counts told in words, things there is no need to do. */
function readTold(passage: Passage, at: number, to: number): boolean {
  const { text, base, tokens, out, state, flush, attach } = passage;
  // "Work short rows over the back neck as follows:" before the label of the first row
  if (
    (isA(tokens[to - 1], Colon) || (isA(tokens[to - 1], Semicolon) && isA(tokens[to - 2], W.Foll))) &&
    to < tokens.length &&
    !isA(tokens[at], W.Join, W.CastOn, W.PickUp, W.With, W.Place) &&
    !isA(tokens[at + 1], W.Join) &&
    !partBegins(tokens.slice(at, to), text) &&
    labelAt(tokens, to, base, text, false) !== null
  ) {
    flush();
    declareTitle(passage, at, to - 1);
    return true;
  }
  const counts = countSentence(tokens, at, to, base, state.open !== null || out.length > 0);
  if (counts !== null) {
    counts.forEach(attach);
    return true;
  }
  const said = declaration(tokens, at, to, text, base) ?? exception(tokens, at, to, text, base);
  if (said !== null) {
    flush();
    out.push(said);
    return true;
  }
  // "Broken Rib – odd number of sts": the name of the pattern before its header
  const heading = headingEnd(tokens, at, to);
  const header = heading > 0 && heading < to ? declaration(tokens, heading, to, text, base) : null;
  if (header?.what === 'multiple' || header?.what === 'panel') {
    declareTitle(passage, at, heading - 1);
    out.push(header);
    return true;
  }
  const sentence = { start: base + (tokens[at] as KnitToken).startOffset, end: base + endOf(tokens[to - 1] as KnitToken) };
  const own = text.slice(sentence.start - base, sentence.end - base);
  if (sizedMultiple(own)) {
    flush();
    out.push({ type: 'unread', text: own, span: sentence });
    return true;
  }
  const told = countsTold(tokens, at, to, text, base);
  if (told !== null) {
    told.stated.forEach(attach);
    if (told.next < to) readSentence(passage, told.next, to, -1);
    return true;
  }
  const first = tokens[at];
  if (first === undefined || !needless(text.slice(first.startOffset, first.startOffset + 60)) || clauseOrders(tokens, at, to)) return false;
  if (state.open === null)
    out.push({ type: 'remark', known: true, span: { start: base + first.startOffset, end: base + endOf(tokens[to - 1] as KnitToken) } });
  return true;
}

/** Whether words before a colon are a heading and no part of an order: "Front: As Back to **" is no needle called Front. */
function headed(passage: Passage, at: number, to: number): boolean {
  const { text, base, tokens } = passage;
  const first = tokens[at];
  const heading = headingEnd(tokens, at, to);
  if (heading <= 0 || !isA(tokens[heading - 1], Colon)) return false;
  const behind = tokens[heading];
  // A piece that is cast on or told by reference is no needle of that name.
  if (
    isA(behind, W.CastOn) ||
    (isA(behind, W.With) && tokens.slice(heading, to).some((token) => isA(token, W.CastOn))) ||
    refersToPiece(passage, tokens.slice(heading, to))
  )
    return true;
  if (partBegins(tokens.slice(at, to), text)) return false;
  return (
    isA(behind, W.With) ||
    (isA(first, W.Turn, Fabric) && heading > at + 2) ||
    (isA(first, W.Work) && /^work(?:ing)?\s+(?:in\s+)?(?:the\s+)?short[- ]rows?\b/i.test(text.slice(first?.startOffset ?? 0))) ||
    (isA(first, W.Join, W.Place) &&
      (isA(tokens[heading], Stitch, Mark, Open) || labelAt(tokens.slice(0, to), heading, base, text, false) !== null) &&
      heading <= at + 4) ||
    // "Work pocket flap: dec 1 st at each end …"
    (isA(first, W.Work) &&
      heading <= at + 5 &&
      ordersAt(behind) &&
      tokens.slice(at + 1, heading - 1).every((token) => isA(token, Word, Name))) ||
    (/^divide$/i.test(first?.image ?? '') &&
      (labelAt(tokens.slice(0, to), heading, base, text, false) !== null ||
        (isA(behind, PlainStitch) && !tokens.slice(at, heading).some((token) => isA(token, W.For, W.Needle)))))
  );
}

/** Whether an order begins with the first word; a place may stand before its command: "At each neck edge, dec 1 st …". */
function ordered(passage: Passage, at: number, to: number): boolean {
  const { text, base, tokens } = passage;
  const first = tokens[at];
  const rest = tokens.slice(at, to);
  // "As soon as work measures 20 cm, …" is a condition.
  if (isA(first, W.As) && /^soon$/i.test(tokens[at + 1]?.image ?? '')) return false;
  if (ordersAt(first) || chartOrder(tokens, at, to) || statedBegins(rest)) return true;
  const placed = isA(first, W.At, W.Each, W.On, W.Every, W.Alt, W.To, W.Matches, W.From, W.In) && statementAt(rest, base, text) !== null;
  return placed || partBegins(rest, text);
}

/** An introduction with the orders behind it, or words that order nothing. */
function readIntroduced(passage: Passage, at: number, to: number): void {
  const begins = introduced(passage, at, to);
  if (begins < 0) readProse(passage, at, to);
  else if (begins < to) readSentence(passage, begins, to, -1);
}

/** "Now work Rows 2 and 3 only 5 times", "Then cont in rib": the adverb orders nothing. */
function readBehindAdverb(passage: Passage, at: number, to: number): boolean {
  const { text, base, tokens } = passage;
  const orders =
    adverbAt(tokens[at]) &&
    at + 1 < to &&
    isA(tokens[at + 1], W.CastOn, W.BindOff, W.PickUp, W.Work, W.Inc, W.Dec, W.Rep, W.Cont, W.Join, W.Place, W.Change, W.With) &&
    statementAt(tokens.slice(at + 1, to), base, text) !== null;
  if (orders) readSentence(passage, at + 1, to, -1);
  return orders;
}

/** Orders without a label: they go on with the row before, or stand by themselves. */
function readOrders(passage: Passage, at: number, to: number): void {
  const { text, base, tokens, state, flush } = passage;
  const first = tokens[at];
  const labelled = state.open !== null && state.open.label !== null;
  // A sentence after a labelled row goes on with the row, unless it speaks of rows itself.
  const begun = state.open !== null && (state.open.steps.length > 0 || state.open.does !== null);
  if (labelled && begun && !isA(first, W.Turn) && statementAt(tokens.slice(at, to), base, text) !== null) {
    flush();
    readBody(passage, at, to, false);
    return;
  }
  // "1st needle: … . 2nd needle: …": one round, a sentence for each needle.
  const nextNeedle = state.open?.steps.at(-1)?.type === 'needlePart' && partBegins(tokens.slice(at, to), text);
  if (!labelled && !nextNeedle) flush();
  readBody(passage, at, to, labelled);
}

/** "Now slip the sts …", "Finally, join …": where the order begins; the adverb orders nothing. */
function behindAdverb(passage: Passage, at: number, to: number): number {
  const { tokens, text } = passage;
  // "From here on work back and forth", "From this point, …"
  const from = /^from (?:here|now|this point)(?: on(?:wards?)?)?,? /i.exec(
    text.slice(tokens[at]?.startOffset ?? 0, (tokens[at]?.startOffset ?? 0) + 40),
  );
  if (from !== null && isA(tokens[at], W.From)) {
    const order = tokens.findIndex(
      (token, index) => index > at && token.startOffset >= (tokens[at] as KnitToken).startOffset + from[0].length,
    );
    return order > at && order < to && ordersAt(tokens[order]) ? order : at;
  }
  // "You'll be working back and forth over the 30 sts of N1 only"
  const told =
    /^(?:you|we)(?:'ll|’ll| will| are now| now) (?:now )?(?:be )?(?=work(?:ing)? (?:now )?(?:back and forth|backwards? and forwards?|to and fro|flat|in rows|only))/i.exec(
      text.slice(tokens[at]?.startOffset ?? 0, (tokens[at]?.startOffset ?? 0) + 80),
    );
  if (told !== null) {
    const order = tokens.findIndex(
      (token, index) => index > at && token.startOffset >= (tokens[at] as KnitToken).startOffset + told[0].length,
    );
    if (order > at && order < to && isA(tokens[order], W.Work)) return order;
  }
  if (!isA(tokens[at], Word, W.More) || !/^(?:now|finally|please|lastly|firstly|secondly|again|otherwise)$/i.test(tokens[at]?.image ?? ''))
    return at;
  const begins = isA(tokens[at + 1], Comma) ? at + 2 : at + 1;
  return begins < to && ordersAt(tokens[begins]) ? begins : at;
}

/** Reads one sentence; `index` is its place in the passage, -1 for a sentence within another. */
export function readSentence(passage: Passage, from: number, to: number, index: number): void {
  const at = behindAdverb(passage, openSizeBlock(passage, from, to), to);
  if (at >= to) return;
  const read =
    bracketedRows(passage, at, to) ||
    readBlockMark(passage, at, to) ||
    readLabelled(passage, at, to) ||
    readNumbered(passage, at, to, index) ||
    readTitle(passage, at, to) ||
    readEnding(passage, at, to) ||
    readAtGoal(passage, at, to, readSentence) ||
    readTold(passage, at, to);
  if (read) return;
  if (headed(passage, at, to) || !ordered(passage, at, to)) readIntroduced(passage, at, to);
  else if (!readBehindAdverb(passage, at, to)) readOrders(passage, at, to);
}
