/** Reading a passage of a draft into statements. Nothing is lost: what instructs and is not understood becomes `unread`. */
import { covered } from './cover.ts';
import { declaration, multipleIn } from './declarations.ts';
import { withHungMarkers } from './hung-markers.ts';
import { adverbAt, clauseOrders, headingEnd, placeEnd } from './introductions.ts';
import { labelAt } from './phrases/labels.ts';
import { listed } from './phrases/lists.ts';
import { type Parsed, partBegins, pickUpsAt, statedAt, statedBegins, statementAt, stepAt, triggerAt } from './phrases/parser.ts';
import { sizeBlockAt } from './phrases/sizes.ts';
import { settled } from './readings.ts';
import { sentencesOf } from './sentences.ts';
import { onThisRow, shapedRow, together } from './shaped-rows.ts';
import { splitRow } from './short-row-lists.ts';
import {
  Close,
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
  Ordinal,
  PlainStitch,
  Semicolon,
  SlipStitch,
  Stitch,
  tokensOf,
  W,
  Word,
} from './tokens.ts';
import { countsTold, exception, needless } from './told-counts.ts';
import type { AtSameTime, Declare, Label, Repeat, Row, Span, Stated, Statement, Step, Unread } from './tree.ts';
import type { Vocabulary } from './vocabulary.ts';

export interface ReadOptions {
  readonly vocabulary: Vocabulary;
  /** Names of the sizes, in order; null while they are not known. */
  readonly sizes: readonly string[] | null;
  /** Stretches in bold or italics, in offsets of the author's file. */
  readonly emphasis?: readonly Span[];
  /** The number before a list item, which may number a row. */
  readonly itemNumber?: number | null;
  readonly itemUnit?: 'row' | 'round';
  /** The label stands apart, as in a table: the whole passage is the row's text. */
  readonly label?: Label | null;
  /** How many sizes a list of numbers has here, where it is not the number of `sizes`: inside a block for two of them. */
  readonly sizeCount?: number;
}

const separators = [Comma, Semicolon, FullStop, Dash, Colon, W.And, W.Then];
/** Words that begin an order to the knitter. */
const orders =
  /^(slip|slipping|removing|remove|divide|distribute|arrange|rearrange|cut|draw|fold|mark|hang|slide|resume|return|repeat|set|sl|pass|drop|wrap|purl|knit|pm|sm|rm|undo|unpick|unzip|redistribute|insert|carefully|now|first|finally|next|dividing|separate|hold|thread|pull|push|rotate)$/;

function ordersAt(token: KnitToken | undefined): boolean {
  if (token === undefined) return false;
  if (isA(token, Word)) return orders.test(token.image.toLowerCase());
  return isA(
    token,
    Stitch,
    PlainStitch,
    Mark,
    Open,
    CountToken,
    Dash,
    Fabric,
    W.Work,
    W.Rep,
    W.Cont,
    W.Beg,
    W.Inc,
    W.Dec,
    W.CastOn,
    W.BindOff,
    W.PickUp,
    W.Place,
    W.Leaving,
    W.Return,
    W.Join,
    W.With,
    W.Change,
    W.Break,
    W.Turn,
    W.WrapTurn,
    W.Double,
    W.Graft,
    W.ThreeNeedle,
    W.FastenOff,
    W.Thread,
    W.Keep,
    W.Complete,
    W.As,
    W.Rs,
    W.Ws,
    W.Needle,
    W.Patt,
    W.Rib,
    W.Not,
    W.There,
    W.Then,
    W.Every,
    W.These,
    W.SameTime,
    W.Multiple,
    W.Holder,
    W.Last,
    W.Shaping,
    W.Reversing,
    W.Twin,
    W.Wrapped,
    W.InAll,
  );
}

/** "Follow Chart A to end of Row 16": an order by the chart it names. */
function chartOrder(tokens: readonly KnitToken[], at: number, to: number): boolean {
  return (
    /^(?:foll|follow|begin|commence|read)$/i.test(tokens[at]?.image ?? '') &&
    tokens.slice(at, Math.min(to, at + 8)).some((token) => /^charts?$/i.test(token.image))
  );
}

interface OpenRow {
  label: Label | null;
  steps: Step[];
  stated: Stated[];
  does: Statement | null;
  start: number;
  end: number;
}

const rowSteps = new Set(['work', 'intoOne', 'repeat', 'turn', 'needlePart', 'pullOver', 'pickUp']);

function finish(open: OpenRow, between: (start: number, end: number) => string, vocabulary: Vocabulary): Statement[] {
  const span = { start: open.start, end: open.end };
  if (
    open.label === null &&
    open.does === null &&
    !open.steps.some((step) => rowSteps.has(step.type) || (step.type === 'takeUp' && step.worked))
  ) {
    // Orders that are no row: each stands for itself.
    const last = open.steps.at(-1);
    if (open.stated.length > 0) return [...open.steps, ...open.stated].sort((a, b) => a.span.start - b.span.start);
    return last === undefined ? [] : [...open.steps];
  }
  const steps = settled(
    listed(wholeRow(likeNeedles(open.steps)), (part) => between(part.start, part.end)),
    open.label?.side ?? null,
    vocabulary,
  );
  const row: Row = { type: 'row', label: open.label, children: steps, does: open.does, stated: open.stated, span };
  const [worked, orders] = behindCount(row);
  return [...splitRow(worked, between), ...orders];
}

const orderSteps: ReadonlySet<Step['type']> = new Set(['hold', 'join', 'change', 'takeUp']);

/** "K to end. 62 sts. Place on hold.": the count is the row's, and what is ordered behind it is no part of the row. */
function behindCount(row: Row): [Row, Step[]] {
  const counted = row.stated.at(-1)?.span;
  if (counted === undefined) return [row, []];
  const first = row.children.findLastIndex((step) => !orderSteps.has(step.type) || step.span.start < counted.end) + 1;
  const orders = row.children.slice(first);
  if (first === 0 || !orders.some((step) => step.type === 'hold')) return [row, []];
  return [{ ...row, children: row.children.slice(0, first), span: { start: row.span.start, end: counted.end } }, orders];
}

/** "N2: same as N1": the steps of the needle named. */
function likeNeedles(steps: readonly Step[]): Step[] {
  return steps.map((step, index) => {
    if (step.type !== 'needlePart' || step.like === undefined) return step;
    const model = steps.slice(0, index).find((each) => each.type === 'needlePart' && each.numbers?.includes(step.like as number));
    return model?.type === 'needlePart' ? { ...step, children: model.children } : step;
  });
}

/** "Knit." and "P." as the whole text of a row mean every stitch. */
function wholeRow(steps: readonly Step[]): Step[] {
  const worked = steps.filter((step) => rowSteps.has(step.type) && !(step.type === 'intoOne' && step.everywhere));
  const only = worked.length === 1 ? worked[0] : undefined;
  if (only?.type !== 'work' || only.n !== null || only.times !== undefined || (only.stitch !== 'k' && only.stitch !== 'p'))
    return [...steps];
  const run: Repeat = {
    type: 'repeat',
    form: 'run',
    verb: only.stitch,
    children: [only],
    extent: { kind: 'end' },
    once: [],
    ending: null,
    mark: null,
    markSpan: null,
    span: only.span,
  };
  return steps.map((step) => (step === only ? run : step));
}

/**
 * Reads the text of one block.
 * @param text masked text of the passage, as long as the author's
 * @param base offset of the passage in the author's file
 */
export function readPassage(text: string, base: number, options: ReadOptions): Statement[] {
  const tokens = tokensOf(text, options.vocabulary, options.sizeCount ?? options.sizes?.length ?? null);
  const out: Statement[] = [];
  /** Sentences that order nothing. */
  const prose: Span[] = [];
  const state: { open: OpenRow | null } = { open: null };
  const emphasised = (token: KnitToken | undefined): boolean =>
    token !== undefined &&
    (options.emphasis ?? []).some((span) => base + token.startOffset >= span.start && base + token.startOffset < span.end);

  const flush = (): void => {
    if (state.open !== null) out.push(...finish(state.open, (start, end) => text.slice(start - base, end - base), options.vocabulary));
    state.open = null;
  };
  const openRow = (label: Label | null, start: number): OpenRow => {
    flush();
    const row: OpenRow = { label, steps: [], stated: [], does: null, start, end: start };
    state.open = row;
    return row;
  };

  /** Index behind "cast off for armholes as follows:", which only says what comes; 0 when none stands at `from`. */
  const introEnd = (from: number, to: number): number => {
    if (!isA(tokens[from], W.BindOff, W.CastOn, W.Inc, W.Dec, W.Shaping)) return 0;
    for (let at = from + 1; at < Math.min(to, from + 10); at += 1) {
      if (isA(tokens[at], CountToken, Comma, Semicolon, FullStop, Stitch, Open)) return 0;
      if (isA(tokens[at], Colon)) return isA(tokens[at - 1], W.Foll) && at + 1 < to ? at + 1 : 0;
    }
    return 0;
  };

  /** Puts a stated count where it belongs: to the row being read, else to the statement before it. */
  const attach = (stated: Stated): void => {
    if (state.open !== null && (state.open.steps.length > 0 || state.open.does !== null)) {
      state.open.stated.push(stated);
      state.open.end = stated.span.end;
      return;
    }
    const last = out.at(-1);
    if (last !== undefined && 'stated' in last && Array.isArray(last.stated)) {
      out[out.length - 1] = {
        ...last,
        stated: [...(last.stated as readonly Stated[]), stated],
        span: { start: last.span.start, end: stated.span.end },
      } as Statement;
      return;
    }
    out.push(stated);
  };

  const readBody = (from: number, to: number, labelled: boolean): void => {
    let at = from;
    let head = true;
    while (at < to) {
      const rest = tokens.slice(at, to);
      if (isA(rest[0], ...separators) && !statedBegins(rest)) {
        at += 1;
        continue;
      }
      if (isA(rest[0], W.SameTime)) {
        at = readSameTime(at + 1, to);
        head = false;
        continue;
      }
      const intro = introEnd(at, to);
      if (intro > 0) {
        addStep({
          type: 'remark',
          span: { start: base + (rest[0] as KnitToken).startOffset, end: base + endOf(tokens[intro - 1] as KnitToken) },
        });
        at = intro;
        continue;
      }
      const onlyOrders = state.open === null || (!labelled && !state.open.steps.some((step) => rowSteps.has(step.type)));
      const goesOn =
        isA(rest[0], W.Cont) ||
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
          continue;
        }
      }
      head = false;
      if (isA(rest[0], W.Inc, W.Dec) && state.open !== null) {
        const command = statementAt(rest, base, text);
        const row = state.open as OpenRow;
        if (command?.value.type === 'shape') {
          const shaped = command.value.schedule.every((segment) => segment.kind === 'this')
            ? shapedRow(row, command.value, { start: row.start, end: command.value.span.end })
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
  };

  const addStep = (step: Step): void => {
    if (state.open === null) {
      if (step.type === 'remark') {
        out.push(step);
        return;
      }
      openRow(null, step.span.start);
    }
    const row = state.open as unknown as OpenRow;
    row.steps.push(step);
    row.end = step.span.end;
  };

  /** "AT THE SAME TIME, when front measures 28 cm, shape neck": the rest of the sentence is a second track. */
  const readSameTime = (from: number, to: number): number => {
    const start = tokens[from - 1] as KnitToken;
    flush();
    let at = from;
    while (at < to && isA(tokens[at], ...separators)) at += 1;
    const trigger = triggerAt(tokens.slice(at, to), base, text);
    const kept = out.length;
    let begin = trigger === null ? at : at + trigger.eaten;
    while (begin < to && isA(tokens[begin], ...separators)) begin += 1;
    // "shape neck as follows: dec 1 st …"
    const heading = headingEnd(tokens, begin, to);
    readBody(heading > 0 && statementAt(tokens.slice(heading, to), base, text) !== null ? heading : begin, to, false);
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
  };

  if (options.label) {
    openRow(options.label, options.label.span.start);
    for (const { from, to } of sentencesOf(tokens, text)) readBody(from, to, true);
    flush();
    return covered(out, tokens, base, text, prose);
  }

  let inBlock: { sizes: readonly number[] | null; rest: boolean; from: number; span: Span } | null = null;
  /** Sizes that the blocks since the last "All sizes" named. */
  const named = new Set<number>();
  const closeBlock = (): void => {
    if (inBlock === null) return;
    flush();
    const children = out.splice(inBlock.from);
    out.push({
      type: 'sizeBlock',
      sizes: inBlock.sizes,
      ...(inBlock.rest ? { rest: true } : {}),
      children,
      span: { start: inBlock.span.start, end: children.at(-1)?.span.end ?? inBlock.span.end },
    });
    inBlock = null;
  };

  const sentences = sentencesOf(tokens, text).flatMap(({ from, to }) => {
    // "For sizes XS and S, work 6 rows; for sizes M and L, work 8 rows."
    const cuts: number[] = [];
    for (let at = from + 1; at + 1 < to; at += 1)
      if (
        isA(tokens[at], Semicolon) &&
        isA(tokens[at + 1], W.For, W.Size, W.All, Ordinal, W.Other) &&
        sizeBlockAt(tokens, at + 1, to, options.sizes ?? [], base) !== null
      )
        cuts.push(at + 1);
    return [from, ...cuts].map((begin, index) => ({ from: begin, to: cuts[index] ?? to }));
  });
  let skipTo = 0;
  /** "As Back to **" behind a heading; "as Needle 1" and "as Row 2" are parts of a row. */
  const refersToPiece = (rest: readonly KnitToken[]): boolean => {
    const parsed = statementAt(rest, base, text)?.value;
    return (
      parsed?.type === 'refer' &&
      parsed.to !== 'row' &&
      !/\b(?:needles?|ndls?|dpns?|n\d)\b/i.test(text.slice(parsed.span.start - base, parsed.span.end - base))
    );
  };
  /** A mark that opens or closes a block of rows: rows follow it, or nothing does. */
  const blockMarkAt = (at: number, to: number): boolean => {
    const rest = tokens.slice(at + 1, to);
    if (rest.every((token) => isA(token, FullStop, Mark))) return true;
    if (labelAt(tokens.slice(0, to), at + 1, base, text, emphasised(tokens[at + 1])) !== null) return true;
    const image = tokens[at]?.image;
    const statement = statementAt(rest, base, text);
    if (statement !== null) return true;
    return !rest.some((token, index) => isA(token, Mark) && token.image === image && index > 0) && image !== '*';
  };
  const markBlock = (token: KnitToken): void => {
    flush();
    out.push({
      type: 'declare',
      what: 'blockMark',
      name: token.image,
      multiple: null,
      count: null,
      span: { start: base + token.startOffset, end: base + endOf(token) },
    });
  };
  /** "Dec row." with neither colon nor stitches behind it: the named row is worked. */
  const calledAt = (match: { readonly label: Label; readonly next: number }, at: number, to: number): boolean => {
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
  };

  const readSentence = (from: number, to: number, index: number): void => {
    let at = from;
    const block = sizeBlockAt(tokens, at, to, options.sizes ?? [], base);
    if (block !== null) {
      flush();
      closeBlock();
      const { rest } = block;
      const others = (options.sizes ?? []).map((_, each) => each).filter((each) => !named.has(each));
      const ruled = rest && named.size > 0 ? others : block.sizes;
      if (ruled === null && !rest) named.clear();
      for (const each of ruled ?? []) named.add(each);
      inBlock = { sizes: ruled, rest, from: out.length, span: block.span };
      at = block.next;
      // "Sizes L and XL only: … next 2 (3) rows": a list as long as the sizes named, which only here is a list.
      if (ruled?.length === 2 && options.sizeCount === undefined && (options.sizes ?? []).length !== 2) {
        const start = tokens[at]?.startOffset ?? text.length;
        const end = sentences.find(
          (sentence) => sentence.from >= to && sizeBlockAt(tokens, sentence.from, sentence.to, options.sizes ?? [], base) !== null,
        );
        const stop = end === undefined ? text.length : (tokens[end.from] as KnitToken).startOffset;
        if (/\d\s*[([]\s*\d+\s*[)\]]/.test(text.slice(start, stop))) {
          out.push(...readPassage(text.slice(start, stop), base + start, { ...options, itemNumber: null, sizeCount: 2 }));
          skipTo = stop;
          return;
        }
      }
      if (at >= to) return;
    }
    const first = tokens[at];
    if (isA(first, Mark) && blockMarkAt(at, to)) {
      markBlock(first as KnitToken);
      if (at + 1 < to && !tokens.slice(at + 1, to).every((token) => isA(token, FullStop, Mark))) readSentence(at + 1, to, -1);
      else for (const mark of tokens.slice(at + 1, to)) if (isA(mark, Mark)) markBlock(mark);
      return;
    }
    const label = labelAt(tokens.slice(0, to), at, base, text, emphasised(first));
    if (label !== null && calledAt(label, at, to)) {
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
      readBody(label.next, to, true);
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
      readBody(at, to, true);
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
        readSentence(begins, to, -1);
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
    const placed =
      isA(first, W.At, W.Each, W.On, W.Every, W.Alt, W.To, W.Matches) && statementAt(tokens.slice(at, to), base, text) !== null;
    const except = label === null ? exception(tokens, at, to, text, base) : null;
    if (except !== null) {
      flush();
      out.push(except);
      return;
    }
    const told = label === null ? countsTold(tokens, at, to, text, base) : null;
    if (told !== null) {
      told.stated.forEach(attach);
      if (told.next < to) readSentence(told.next, to, -1);
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
        refersToPiece(tokens.slice(heading, to)));
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
      const begins = introduced(at, to);
      if (begins < 0) {
        readProse(at, to);
        return;
      }
      if (begins < to) readSentence(begins, to, -1);
      return;
    }
    // "Now work Rows 2 and 3 only 5 times", "Then cont in rib": the adverb orders nothing.
    if (
      adverbAt(first) &&
      at + 1 < to &&
      isA(tokens[at + 1], W.CastOn, W.BindOff, W.PickUp, W.Work, W.Inc, W.Dec, W.Rep, W.Cont, W.Join, W.Place, W.Change, W.With) &&
      statementAt(tokens.slice(at + 1, to), base, text) !== null
    ) {
      readSentence(at + 1, to, -1);
      return;
    }
    const labelled = state.open !== null && state.open.label !== null;
    // A sentence after a labelled row goes on with the row, unless it speaks of rows itself.
    const begun = state.open !== null && (state.open.steps.length > 0 || state.open.does !== null);
    if (labelled && begun && !isA(first, W.Turn) && statementAt(tokens.slice(at, to), base, text) !== null) {
      flush();
      readBody(at, to, false);
      return;
    }
    // "1st needle: … . 2nd needle: …": one round, a sentence for each needle.
    const nextNeedle = state.open?.steps.at(-1)?.type === 'needlePart' && partBegins(tokens.slice(at, to), text);
    if (!labelled && !nextNeedle) flush();
    readBody(at, to, labelled);
  };
  sentences.forEach(({ from, to }, index) => {
    if ((tokens[from]?.startOffset ?? 0) >= skipTo) readSentence(from, to, index);
  });
  flush();
  closeBlock();
  return withHungMarkers(covered(out, tokens, base, text, prose), (span) => text.slice(span.start - base, span.end - base));

  /**
   * Where the order of a sentence begins that opens with a heading, an adverb or a condition, which is read here; -1
   * when it gives no order. The whole length means that nothing is left to read.
   */
  function introduced(from: number, to: number): number {
    const rest = (begin: number): Span => ({
      start: base + (tokens[begin] as KnitToken).startOffset,
      end: base + endOf(tokens[to - 1] as KnitToken),
    });
    const orders = (at: number): boolean =>
      ordersAt(tokens[at]) || labelAt(tokens.slice(0, to), at, base, text, emphasised(tokens[at])) !== null;
    const heading = headingEnd(tokens, from, to);
    if (heading > 0 && orders(heading)) {
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
      out.push({
        type: 'until',
        verb: 'work',
        fabric: null,
        begin: null,
        of: null,
        goal: trigger.value.when,
        ending: trigger.value.ending,
        inside: [],
        stated: [],
        span,
      });
      return isA(tokens[after], Comma, Semicolon) ? after + 1 : after;
    }
    const place = placeEnd(tokens, from, to);
    if (place > 0 && place < to && orders(place) && (isA(tokens[place], W.Join) || clauseOrders(tokens, place, to))) return place;
    if (!clauseOrders(tokens, from, to)) return -1;
    flush();
    const span = rest(from);
    out.push({ type: 'unread', text: text.slice(span.start - base, span.end - base), span });
    return to;
  }

  /** A sentence that orders nothing may still state a count: "Every heel stitch has now been worked and 18 sts remain." */
  function readProse(from: number, to: number): void {
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
}

/** A label that stands apart from its row, as in the first column of a table; null when the words are no label. */
export function readLabel(text: string, base: number, options: Pick<ReadOptions, 'vocabulary' | 'sizes'>): Label | null {
  const tokens = tokensOf(text, options.vocabulary, options.sizes?.length ?? null);
  const match = labelAt(tokens, 0, base, text, true);
  return match !== null && match.next >= tokens.length ? match.label : null;
}

export { multipleIn };

/** Steps of a tree that count as instruction: leaves that do something, read or not. */
export function countSteps(statements: readonly Statement[]): { steps: number; notRead: Unread[] } {
  let steps = 0;
  const notRead: Unread[] = [];
  const visit = (node: Statement): void => {
    switch (node.type) {
      case 'remark':
      case 'stated':
        return;
      case 'unread':
        steps += 1;
        notRead.push(node);
        return;
      case 'row':
        if (node.does) visit(node.does);
        node.children.forEach(visit);
        return;
      case 'repeat':
      case 'intoOne':
      case 'needlePart':
        steps += node.type === 'repeat' ? 1 : 0;
        node.children.forEach(visit);
        if (node.type === 'repeat') {
          node.once.forEach(visit);
          node.ending?.children.forEach(visit);
        }
        return;
      case 'sizeBlock':
      case 'atSameTime':
        node.children.forEach(visit);
        return;
      case 'declare':
        return;
      default:
        steps += 1;
        if ('inside' in node && Array.isArray(node.inside)) (node.inside as readonly Statement[]).forEach(visit);
    }
  };
  statements.forEach(visit);
  return { steps, notRead };
}
