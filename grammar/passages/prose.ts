/** Sentences that give no order of their own, or only behind a heading, an adverb or a condition. */
import { adverbAt, clauseOrders, headingEnd, placeEnd } from '../introductions.ts';
import { labelAt } from '../phrases/labels.ts';
import { goalAt, statedBegins, statementAt, stepAt, triggerAt } from '../phrases/parser.ts';
import {
  Colon,
  Comma,
  Count as CountToken,
  Dash,
  endOf,
  isA,
  type KnitToken,
  PlainStitch,
  Semicolon,
  SlipStitch,
  W,
  Word,
} from '../tokens.ts';
import type { EndSide, Goal, Span, Until } from '../tree.ts';
import { ordersAt } from './orders.ts';
import { holdsOrder } from './orders-within.ts';
import type { Passage } from './passage.ts';

/**
 * Where the order of a sentence begins that opens with a heading, an adverb or a condition, which is read here; -1
 * when it gives no order. The whole length means that nothing is left to read.
 */
export function introduced(passage: Passage, from: number, to: number): number {
  const { text, base, tokens, out, emphasised, flush } = passage;
  const rest = (begin: number): Span => ({
    start: base + (tokens[begin] as KnitToken).startOffset,
    end: base + endOf(tokens[to - 1] as KnitToken),
  });
  const orders = (at: number): boolean =>
    ordersAt(tokens[at]) || labelAt(tokens.slice(0, to), at, base, text, emphasised(tokens[at])) !== null;
  // "Tip: place a marker after every 20 sts": advice, whatever follows.
  if (/^(?:tip|hint)s?$/i.test(tokens[from]?.image ?? '') && isA(tokens[from + 1], Colon, Dash)) return -1;
  const heading = headingEnd(tokens, from, to);
  // "Steek: at centre front CO 7 sts", "Buttonhole: on RS, k3, …"
  const within = heading > 0 ? placeEnd(tokens, heading, to) : -1;
  if (heading > 0 && (orders(heading) || (within > 0 && within < to && (orders(within) || isA(tokens[within], Comma))))) {
    flush();
    const last = tokens[heading - 2] as KnitToken;
    const span = { start: base + (tokens[from] as KnitToken).startOffset, end: base + endOf(last) };
    out.push({ type: 'declare', what: 'title', name: text.slice(span.start - base, span.end - base), multiple: null, count: null, span });
    return heading;
  }
  if (
    adverbAt(tokens[from]) &&
    isA(tokens[from + 1], W.CastOn, W.BindOff, W.PickUp, SlipStitch, W.Work, W.Inc, W.Dec, PlainStitch, W.Rep, W.Cont, W.Join, W.Place)
  )
    return from + 1;
  const height = heightAt(passage, from, to);
  if (height !== null && orders(height.next)) {
    flush();
    out.push(untilGoal(height.goal, null, { start: rest(from).start, end: base + endOf(tokens[height.next - 1] as KnitToken) }));
    return height.next;
  }
  // "When work measures 30 cm, cast off 5 sts at beg of next 2 rows": the rows go on as set until then.
  const trigger = triggerAt(tokens.slice(from, to), base, text);
  const after = trigger === null ? -1 : from + trigger.eaten;
  if (
    trigger !== null &&
    trigger.value.when.kind !== 'loose' &&
    (isA(tokens[after], Comma, Semicolon) ? orders(after + 1) : isA(tokens[after], W.Inc, W.Dec, W.BindOff, W.CastOn))
  ) {
    flush();
    const span = { start: rest(from).start, end: base + endOf(tokens[after - 1] as KnitToken) };
    out.push(untilGoal(trigger.value.when, trigger.value.ending, span));
    const begins = isA(tokens[after], Comma, Semicolon) ? after + 1 : after;
    // "…, begin armhole shaping: BO 5 sts …"
    const behind = isA(tokens[begins], W.Beg, W.Shaping, Word) ? headingEnd(tokens, begins, to) : -1;
    return behind > 0 && orders(behind) ? behind : begins;
  }
  const place = placeEnd(tokens, from, to);
  if (place > 0 && place < to && orders(place) && (isA(tokens[place], W.Join) || clauseOrders(tokens, place, to))) return place;
  // "After joining, work 5 rnds", "Counting from right, pm after 20 sts"; "For a longer body, work more rounds"
  // only advises, and "After the repeats, k 1 row" tells what a table says.
  const told = isA(tokens[from], W.For) || (isA(tokens[from], W.After) && !/ing$/i.test(tokens[from + 1]?.image ?? ''));
  if (place > 0 && place < to && !told && orders(place) && plainlyOrders(passage, place, to)) return place;
  if (!clauseOrders(tokens, from, to)) return -1;
  flush();
  const span = rest(from);
  out.push({ type: 'unread', text: text.slice(span.start - base, span.end - base), span });
  return to;
}

/** Rows that go on as set up to a goal. */
export function untilGoal(goal: Goal, ending: EndSide | null, span: Span): Until {
  return { type: 'until', verb: 'work', fabric: null, begin: null, of: null, goal, ending, inside: [], stated: [], span };
}

/** "At 25 cm from beg, cast off …", "At a length of 30 cm cast off …": the goal, and where the order begins; null for other words. */
function heightAt(passage: Passage, from: number, to: number): { readonly goal: Goal; readonly next: number } | null {
  const { text, base, tokens } = passage;
  if (!isA(tokens[from], W.At, W.After)) return null;
  let number = from + 1;
  while (number < from + 5 && (isA(tokens[number], Word, W.Of, W.InAll) || /^(?:a|total)$/i.test(tokens[number]?.image ?? ''))) number += 1;
  if (!isA(tokens[number], CountToken) || !isA(tokens[number + 1], W.Cm, W.Inch, W.Mm, W.In)) return null;
  for (let end = number + 2; end < Math.min(to, number + 14); end += 1) {
    if (!isA(tokens[end], Comma, W.BindOff, W.CastOn, W.Inc, W.Dec, W.Work, W.Change) || isA(tokens[end - 1], W.From, W.Of)) continue;
    // "from cast on edge"
    if (isA(tokens[end], W.CastOn, W.BindOff) && isA(tokens[end + 1], W.Edge)) continue;
    const read = goalAt(tokens.slice(number, end), base, text);
    if (read?.value.kind !== 'measure') return null;
    return { goal: read.value, next: isA(tokens[end], Comma) ? end + 1 : end };
  }
  return null;
}

/** Rows by number, a marker, a chart: an order that needs no more to be known for one. */
function plainlyOrders(passage: Passage, from: number, to: number): boolean {
  const rest = passage.tokens.slice(from, to);
  const statement = statementAt(rest, passage.base, passage.text)?.value;
  if (statement?.type === 'plain' || statement?.type === 'repeatRows') return true;
  if (statement?.type === 'refer') return statement.to === 'chart';
  return statement === undefined && stepAt(rest, passage.base, passage.text)?.value.type === 'marker';
}

/** A sentence that orders nothing may still state a count: "Every heel stitch has now been worked and 18 sts remain." */
export function readProse(passage: Passage, from: number, to: number): void {
  const { text, base, tokens, out, prose, state, attach, flush } = passage;
  if (holdsOrder(tokens, from, to)) {
    flush();
    const span = { start: base + (tokens[from] as KnitToken).startOffset, end: base + endOf(tokens[to - 1] as KnitToken) };
    out.push({ type: 'unread', text: text.slice(span.start - base, span.end - base), span });
    return;
  }
  prose.push({ start: base + (tokens[from] as KnitToken).startOffset, end: base + endOf(tokens[to - 1] as KnitToken) });
  let found = false;
  for (let at = from; at < to; at += 1) {
    const rest = tokens.slice(at, to);
    const tells =
      (isA(rest[0], W.There) && statedBegins(rest)) ||
      (isA(rest[0], CountToken) &&
        statedBegins(rest) &&
        (isA(rest[2], W.Rem) ||
          isA(rest[3], W.Rem) ||
          (/^(in|on|at)$/.test(rest[2]?.image ?? '') &&
            /needle/.test(
              rest
                .slice(2, 9)
                .map((token) => token.image)
                .join(' '),
            ))));
    if (!tells) continue;
    const parsed = stepAt(rest, base, text);
    if (parsed?.value.type !== 'stated') continue;
    attach(parsed.value);
    found = true;
    at += parsed.eaten - 1;
  }
  if (!found) {
    const first = tokens[from] as KnitToken;
    const span = { start: base + first.startOffset, end: base + endOf(tokens[to - 1] as KnitToken) };
    if (state.open === null) out.push({ type: 'remark', span });
  }
}
