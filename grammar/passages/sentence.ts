/** One sentence: a title, a label and its row, a declaration, an order, or words that go on with the row before. */
import { declaration } from '../declarations.ts';
import { adverbAt, headingEnd } from '../introductions.ts';
import { labelAt } from '../phrases/labels.ts';
import { partBegins, statedBegins, statementAt } from '../phrases/parser.ts';
import {
  Colon,
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
  Stitch,
  W,
  Word,
} from '../tokens.ts';
import { countsTold, exception, needless } from '../told-counts.ts';
import type { Declare, Label } from '../tree.ts';
import { readBody } from './body.ts';
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

/** Reads one sentence; `index` is its place in the passage, -1 for a sentence within another. */
export function readSentence(passage: Passage, from: number, to: number, index: number): void {
  const { text, base, options, tokens, out, state, emphasised, flush, openRow, attach, markBlock } = passage;
  const at = openSizeBlock(passage, from, to);
  if (at >= to) return;
  const first = tokens[at];
  if (isA(first, Mark) && blockMarkAt(passage, at, to)) {
    markBlock(first as KnitToken);
    if (at + 1 < to && !tokens.slice(at + 1, to).every((token) => isA(token, FullStop, Mark))) readSentence(passage, at + 1, to, -1);
    else for (const mark of tokens.slice(at + 1, to)) if (isA(mark, Mark)) markBlock(mark);
    return;
  }
  const label = labelAt(tokens.slice(0, to), at, base, text, emphasised(first));
  if (label !== null && calledAt(passage, label, at, to)) {
    flush();
    const span = { start: label.label.span.start, end: base + endOf(tokens[to - 1] as KnitToken) };
    const count = { type: 'count' as const, values: [1], span: label.label.span };
    out.push({
      type: 'repeatRows',
      verb: 'work',
      rows: { kind: 'name', count: null, numbers: [], name: label.label.name, of: null, mark: null, toMark: null },
      times: { count, sense: 'plain' },
      until: null,
      ending: null,
      schedule: [],
      step: null,
      inPlace: null,
      stated: [],
      span,
    });
    return;
  }
  if (label !== null) {
    const row = openRow(label.label, label.label.span.start);
    row.end = label.label.span.end;
    readBody(passage, label.next, to, true);
    return;
  }
  const numbered = index === 0 && typeof options.itemNumber === 'number' && isA(first, Stitch, Mark, Open);
  if (numbered && first !== undefined) {
    openRow(
      {
        type: 'label',
        unit: options.itemUnit ?? 'row',
        numbers: [options.itemNumber as number],
        numberSpan: null,
        lastBySize: null,
        andAll: null,
        next: null,
        name: null,
        side: null,
        sideSpan: null,
        span: { start: base + first.startOffset, end: base + first.startOffset },
      },
      base + first.startOffset,
    );
    readBody(passage, at, to, true);
    return;
  }
  if (
    emphasised(first) &&
    tokens.slice(at, to).every((token) => emphasised(token) || isA(token, FullStop, Colon)) &&
    !tokens.slice(at, to).some((token) => isA(token, CountToken, PlainStitch))
  ) {
    flush();
    const last = tokens[to - 1] as KnitToken;
    const span = {
      start: base + (first as KnitToken).startOffset,
      end: base + endOf(isA(last, FullStop, Colon) ? (tokens[to - 2] as KnitToken) : last),
    };
    const title: Declare = {
      type: 'declare',
      what: 'title',
      name: text.slice(span.start - base, span.end - base),
      multiple: null,
      count: null,
      span,
    };
    out.push(title);
    return;
  }
  // "**Cuff** CO 56 sts": a heading in bold that runs into its first order
  if (emphasised(first) && isA(first, Word, Name) && !ordersAt(first)) {
    let end = at + 1;
    while (end < to && end < at + 5 && emphasised(tokens[end])) end += 1;
    const begins = isA(tokens[end], Colon, FullStop, Dash) ? end + 1 : end;
    if (
      begins < to &&
      !emphasised(tokens[end]) &&
      ordersAt(tokens[begins]) &&
      !tokens.slice(at, end).some((token) => isA(token, CountToken, Stitch, W.Row, W.Round))
    ) {
      flush();
      const span = { start: base + (first as KnitToken).startOffset, end: base + endOf(tokens[end - 1] as KnitToken) };
      out.push({
        type: 'declare',
        what: 'title',
        name: text.slice(span.start - base, span.end - base),
        multiple: null,
        count: null,
        span,
      });
      readSentence(passage, begins, to, -1);
      return;
    }
  }
  const declared = declaration(tokens, at, to, text, base);
  if (declared !== null) {
    flush();
    out.push(declared);
    return;
  }
  // "At each neck edge, dec 1 st …": the place stands before the command.
  const placed = isA(first, W.At, W.Each, W.On, W.Every, W.Alt, W.To, W.Matches) && statementAt(tokens.slice(at, to), base, text) !== null;
  const except = label === null ? exception(tokens, at, to, text, base) : null;
  if (except !== null) {
    flush();
    out.push(except);
    return;
  }
  const told = label === null ? countsTold(tokens, at, to, text, base) : null;
  if (told !== null) {
    told.stated.forEach(attach);
    if (told.next < to) readSentence(passage, told.next, to, -1);
    return;
  }
  if (first !== undefined && needless(text.slice(first.startOffset, first.startOffset + 60))) {
    const span = { start: base + first.startOffset, end: base + endOf(tokens[to - 1] as KnitToken) };
    if (state.open === null) out.push({ type: 'remark', span });
    return;
  }
  // "Front: As Back to **" is no needle called Front.
  const heading = headingEnd(tokens, at, to);
  const behind = tokens[heading];
  // A piece that is cast on or told by reference is no needle of that name.
  const piece =
    heading > 0 &&
    isA(tokens[heading - 1], Colon) &&
    (isA(behind, W.CastOn) ||
      (isA(behind, W.With) && tokens.slice(heading, to).some((token) => isA(token, W.CastOn))) ||
      refersToPiece(passage, tokens.slice(heading, to)));
  const headed =
    piece ||
    (heading > 0 &&
      !partBegins(tokens.slice(at, to), text) &&
      isA(tokens[heading - 1], Colon) &&
      (isA(behind, W.With) ||
        (isA(first, W.Turn, Fabric) && heading > at + 2) ||
        (isA(first, W.Work) && /^work(?:ing)?\s+(?:in\s+)?(?:the\s+)?short[- ]rows?\b/i.test(text.slice(first?.startOffset ?? 0))) ||
        (isA(first, W.Join, W.Place) && isA(tokens[heading], Stitch, Mark, Open) && heading <= at + 4) ||
        (/^divide$/i.test(first?.image ?? '') && labelAt(tokens.slice(0, to), heading, base, text, false) !== null)));
  if (
    headed ||
    (!ordersAt(first) &&
      !chartOrder(tokens, at, to) &&
      !statedBegins(tokens.slice(at, to)) &&
      !placed &&
      !partBegins(tokens.slice(at, to), text))
  ) {
    const begins = introduced(passage, at, to);
    if (begins < 0) {
      readProse(passage, at, to);
      return;
    }
    if (begins < to) readSentence(passage, begins, to, -1);
    return;
  }
  // "Now work Rows 2 and 3 only 5 times", "Then cont in rib": the adverb orders nothing.
  if (
    adverbAt(first) &&
    at + 1 < to &&
    isA(tokens[at + 1], W.CastOn, W.BindOff, W.PickUp, W.Work, W.Inc, W.Dec, W.Rep, W.Cont, W.Join, W.Place, W.Change, W.With) &&
    statementAt(tokens.slice(at + 1, to), base, text) !== null
  ) {
    readSentence(passage, at + 1, to, -1);
    return;
  }
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
