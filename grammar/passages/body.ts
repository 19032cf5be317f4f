/** The words of a sentence behind its label: steps, statements, stated counts and what goes on at the same time. */
import { countClauseAt } from '../count-clauses.ts';
import { adverbAt, headingEnd } from '../introductions.ts';
import { type Parsed, pickUpsAt, statedAt, statedBegins, statementAt, stepAt, triggerAt } from '../phrases/parser.ts';
import { onThisRow, shapedRow, together } from '../shaped-rows.ts';
import { blockOf, ruledStatement, sizesOf } from '../some-sizes.ts';
import {
  Close,
  Colon,
  Comma,
  Count as CountToken,
  Dash,
  Equals,
  endOf,
  Fabric,
  FullStop,
  isA,
  type KnitToken,
  Mark,
  Open,
  PlainStitch,
  Semicolon,
  Sizes,
  Slash,
  Stitch,
  W,
} from '../tokens.ts';
import type { AtSameTime, Statement, Step } from '../tree.ts';
import { carriedAt } from './carried.ts';
import type { Passage } from './passage.ts';
import { type OpenRow, rowSteps } from './row.ts';

const separators = [Comma, Semicolon, FullStop, Dash, Colon, W.And, W.Then];

/** Index behind "cast off for armholes as follows:", which only says what comes; 0 when none stands at `from`. */
function introEnd(passage: Passage, from: number, to: number): number {
  const { tokens } = passage;
  if (!isA(tokens[from], W.BindOff, W.CastOn, W.Inc, W.Dec, W.Shaping)) return 0;
  for (let at = from + 1; at < Math.min(to, from + 10); at += 1) {
    if (isA(tokens[at], CountToken, Comma, Semicolon, FullStop, Stitch, Open)) return 0;
    if (isA(tokens[at], Colon)) return isA(tokens[at - 1], W.Foll) && at + 1 < to ? at + 1 : 0;
  }
  return 0;
}

/** "pick up 56 sts and knit 1 row", "…, then work 3 rows in garter st": rows behind the pass, no stitches of it. */
function rowsBegin(rest: readonly KnitToken[]): boolean {
  if (isA(rest[0], PlainStitch) && rest[0]?.payload?.values !== undefined) return isA(rest[1], W.Row, W.Round, W.Ridge);
  return (
    isA(rest[0], W.Work, W.Patt, W.Rib, Fabric, PlainStitch) && isA(rest[1], CountToken) && isA(rest[2], W.Row, W.Round, W.Ridge, W.More)
  );
}

/** Steps that bring stitches to the needle and work no row across others. */
const bringsOnly = new Set<Step['type']>(['pickUp', 'takeUp', 'castOn', 'change', 'join', 'remark', 'marker', 'stated']);

/** "pick up 70 sts round neck and work 25 cm in patt": the rows that follow are no part of the row that picks up. */
function rowsOfFabric(statement: Statement | undefined): boolean {
  return statement?.type === 'plain' || (statement?.type === 'until' && statement.fabric !== null && statement.goal.kind !== 'loose');
}

/** Reads from one word to another, into the row that is open or as statements of their own. */
export function readBody(passage: Passage, from: number, to: number, labelled: boolean): void {
  const { text, base, tokens, out, state, flush, attach, addStep, markBlock } = passage;
  let at = from;
  let head = true;
  let again = false;
  while (at < to) {
    const rest = tokens.slice(at, to);
    if (isA(rest[0], ...separators) && !statedBegins(rest)) {
      at += 1;
      continue;
    }
    if (isA(rest[0], Sizes) && (state.open === null || state.open.steps.length === 0)) {
      at = readSomeSizes(passage, at, to);
      head = false;
      continue;
    }
    // "– 2 sts made", "… 84 sts", "/ 84 sts": the sign leads up to a count
    const lead = isA(rest[0], Dash, Equals, Slash) || /^(?:…|\.{3,4})$/.test(rest[0]?.image ?? '') ? 1 : 0;
    const counted = countClauseAt(tokens, at + lead, to, base, lead === 1 || isA(tokens[at - 1], Dash) || isA(rest[0], Open));
    if (counted !== null) {
      counted.stated.forEach(attach);
      at = counted.next;
      head = false;
      continue;
    }
    // "Rep row 4, ending p2": how the row ends otherwise than it did is not followed.
    if (again && isA(rest[0], W.Ending) && isA(rest[1], Stitch)) {
      const span = { start: base + (rest[0] as KnitToken).startOffset, end: base + endOf(tokens[to - 1] as KnitToken) };
      addStep({ type: 'unread', text: text.slice(span.start - base, span.end - base), span });
      return;
    }
    if (isA(rest[0], W.SameTime)) {
      at = readSameTime(passage, at + 1, to);
      head = false;
      continue;
    }
    const intro = introEnd(passage, at, to);
    if (intro > 0) {
      addStep({
        type: 'remark',
        span: { start: base + (rest[0] as KnitToken).startOffset, end: base + endOf(tokens[intro - 1] as KnitToken) },
      });
      at = intro;
      continue;
    }
    const onlyOrders = state.open === null || (!labelled && !state.open.steps.some((step) => rowSteps.has(step.type)));
    const brought =
      !labelled &&
      state.open !== null &&
      isA(tokens[at - 1], W.And, W.Then, Comma) &&
      isA(rest[0], W.Work, W.Rib, W.Patt, W.Cont, Fabric) &&
      state.open.steps.some((step) => step.type === 'pickUp' || step.type === 'castOn') &&
      state.open.steps.every((step) => bringsOnly.has(step.type)) &&
      rowsOfFabric(statementAt(rest, base, text)?.value);
    const goesOn =
      brought ||
      isA(rest[0], W.Cont, W.Complete) ||
      (!labelled && isA(tokens[at - 1], W.And, W.Then, Comma) && rowsBegin(rest)) ||
      (!labelled && isA(tokens[at - 1], Semicolon) && isA(rest[0], W.Work, W.Beg, W.Rep, W.Inc, W.Dec)) ||
      (isA(rest[0], PlainStitch) && isA(rest[1], W.Row, W.Round) && isA(tokens[at - 1], Semicolon));
    if ((head || onlyOrders || goesOn) && !isA(rest[0], Close)) {
      const parsed = statementAt(rest, base, text);
      // "Row 4: Rib as set." is a run over the row, not the fabric of rows to come.
      const fabricOnly =
        labelled &&
        parsed?.value.type === 'until' &&
        parsed.value.goal.kind === 'loose' &&
        parsed.value.goal.text === '' &&
        parsed.value.begin === null;
      if (parsed !== null && !fabricOnly) {
        if (labelled && state.open !== null && state.open.does === null && state.open.steps.every((step) => step.type === 'change')) {
          state.open.does = onThisRow(parsed.value);
          state.open.end = parsed.value.span.end;
        } else {
          flush();
          const before = head ? undefined : out.at(-1);
          const joined = before === undefined ? null : together(before, parsed.value);
          if (joined === null) out.push(parsed.value);
          else out.splice(out.length - 1, 1, ...joined);
        }
        at += parsed.eaten;
        head = false;
        again = parsed.value.type === 'repeatRows';
        continue;
      }
    }
    head = false;
    if (isA(rest[0], W.Inc, W.Dec) && state.open !== null) {
      const command = statementAt(rest, base, text);
      const row = state.open as OpenRow;
      if (command?.value.type === 'shape') {
        const shape = labelled ? onThisRow(command.value) : command.value;
        const shaped = shape.schedule.every((segment) => segment.kind === 'this')
          ? shapedRow(row, shape, { start: row.start, end: command.value.span.end })
          : null;
        if (shaped !== null) {
          row.does = shaped.does;
          row.steps = shaped.steps;
          row.end = command.value.span.end;
          at += command.eaten;
          continue;
        }
        if (command.value.schedule.length > 0) {
          flush();
          out.push(command.value);
          at += command.eaten;
          continue;
        }
      }
    }
    const carried = carriedAt(passage, at, to);
    if (carried !== null) {
      addStep(carried.step);
      at += carried.eaten;
      continue;
    }
    const told = statedAt(rest, base, text);
    if (told !== null) {
      told.value.forEach(attach);
      at += told.eaten;
      continue;
    }
    // "with waste yarn, provisionally cast on 40 sts"
    if (adverbAt(rest[0]) && isA(rest[1], W.CastOn, W.BindOff, W.PickUp)) {
      at += 1;
      continue;
    }
    const picked = pickUpsAt(rest, base, text);
    if (picked !== null) {
      picked.value.forEach(addStep);
      at += picked.eaten;
      continue;
    }
    if (isA(rest[0], Mark) && (rest[0]?.image !== '*' || rest.slice(1).every((token) => isA(token, FullStop)))) {
      const lone = stepAt(rest, base, text);
      if (lone?.value.type === 'unread') {
        markBlock(rest[0] as KnitToken);
        at += 1;
        continue;
      }
    }
    const parsed: Parsed<Step> | null = stepAt(rest, base, text);
    if (parsed === null) {
      const token = rest[0] as KnitToken;
      addStep({ type: 'remark', span: { start: base + token.startOffset, end: base + endOf(token) } });
      at += 1;
      continue;
    }
    if (parsed.value.type === 'stated') attach(parsed.value);
    else addStep(parsed.value);
    at += parsed.eaten;
  }
}

/** "…, for 3rd size only" behind an order, ", for 3rd size only cast off 2 sts …" before one: index behind what is ruled. */
function readSomeSizes(passage: Passage, at: number, to: number): number {
  const { text, base, tokens, out, state, flush } = passage;
  const token = tokens[at] as KnitToken;
  const span = { start: base + token.startOffset, end: base + endOf(token) };
  const values = token.payload?.values ?? [];
  // "…, for sizes L and XL only then in every foll 6th row": what follows is ruled
  if (at + 1 >= to || (isA(tokens[at + 1], ...separators) && !isA(tokens[at + 1], W.Then))) {
    const last = out.at(-1);
    if (state.open !== null) state.open.sizes = sizesOf(token);
    else if (last !== undefined)
      out[out.length - 1] = ruledStatement(last, values, span, isA(tokens[at - 1], Comma, Dash) || token.image.startsWith('('));
    return at + 1;
  }
  const next = tokens.findIndex((each, index) => index > at && index < to && isA(each, Sizes));
  const end = next < 0 ? to : next;
  flush();
  const kept = out.length;
  readBody(passage, at + 1, end, false);
  flush();
  const children = out.splice(kept);
  // "…, for sizes L and XL only then in every foll 6th row": an order that names sizes says something.
  if (
    children.every((child) => child.type === 'remark' || (child.type === 'row' && child.children.every((step) => step.type === 'remark')))
  ) {
    const orders = { start: base + (tokens[at + 1] as KnitToken).startOffset, end: base + endOf(tokens[end - 1] as KnitToken) };
    if (/\bevery\b|\balt|\brows?\b|\brnds?\b|\bsts?\b/i.test(text.slice(orders.start - base, orders.end - base)))
      children.splice(0, children.length, {
        type: 'unread',
        text: text.slice(orders.start - base, orders.end - base),
        span: orders,
      });
  }
  out.push(blockOf(sizesOf(token), children, { start: span.start, end: children.at(-1)?.span.end ?? span.end }));
  return end;
}

/** "AT THE SAME TIME, when front measures 28 cm, shape neck": the rest of the sentence is a second track. */
function readSameTime(passage: Passage, from: number, to: number): number {
  const { text, base, tokens, out, flush } = passage;
  const start = tokens[from - 1] as KnitToken;
  flush();
  let at = from;
  while (at < to && isA(tokens[at], ...separators)) at += 1;
  const trigger = triggerAt(tokens.slice(at, to), base, text);
  const kept = out.length;
  let begin = trigger === null ? at : at + trigger.eaten;
  // "Meanwhile, after 10 rows have been worked, dec 1 st …": when it begins is not understood, and the rest has no time without it.
  if (trigger === null && isA(tokens[at], W.After)) {
    const clause = tokens.findIndex((token, index) => index > at && index < to && isA(token, Comma));
    if (clause > 0 && tokens.slice(at, clause).some((token) => isA(token, CountToken))) {
      const span = { start: base + (tokens[at] as KnitToken).startOffset, end: base + endOf(tokens[clause - 1] as KnitToken) };
      out.push({ type: 'unread', text: text.slice(span.start - base, span.end - base), span });
      begin = clause;
    }
  }
  while (begin < to && isA(tokens[begin], ...separators)) begin += 1;
  // "shape neck as follows: dec 1 st …"
  const heading = headingEnd(tokens, begin, to);
  readBody(passage, heading > 0 && statementAt(tokens.slice(heading, to), base, text) !== null ? heading : begin, to, false);
  flush();
  const children = out.splice(kept);
  const node: AtSameTime = {
    type: 'atSameTime',
    when: trigger?.value.when ?? null,
    ending: trigger?.value.ending ?? null,
    children,
    span: { start: base + start.startOffset, end: base + endOf(tokens[to - 1] as KnitToken) },
  };
  out.push(node);
  return to;
}
