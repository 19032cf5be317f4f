/** What is known of a passage while it is read: its words, the statements so far, the row and the block of sizes that are open. */
import { endOf, type KnitToken } from '../tokens.ts';
import type { Label, Span, Stated, Statement, Step } from '../tree.ts';
import type { Vocabulary } from '../vocabulary.ts';
import { finish, type OpenRow } from './row.ts';

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

/** A block that rules for some sizes only. */
interface OpenBlock {
  readonly sizes: readonly number[] | null;
  readonly rest: boolean;
  /** Index of its first statement. */
  readonly from: number;
  readonly span: Span;
}

export interface Passage {
  readonly text: string;
  readonly base: number;
  readonly options: ReadOptions;
  readonly tokens: readonly KnitToken[];
  readonly sentences: readonly { readonly from: number; readonly to: number }[];
  readonly out: Statement[];
  /** Sentences that order nothing. */
  readonly prose: Span[];
  readonly state: {
    open: OpenRow | null;
    block: OpenBlock | null;
    /** Sentences that begin before this place of the text were read with their block. */
    skipTo: number;
  };
  /** Sizes that the blocks since the last "All sizes" named. */
  readonly named: Set<number>;
  readonly emphasised: (token: KnitToken | undefined) => boolean;
  /** Ends the row being read. */
  readonly flush: () => void;
  readonly openRow: (label: Label | null, start: number) => OpenRow;
  /** Puts a stated count where it belongs: to the row being read, else to the statement before it. */
  readonly attach: (stated: Stated) => void;
  readonly addStep: (step: Step) => void;
  readonly markBlock: (token: KnitToken) => void;
  /** Reads a stretch of the text by itself. */
  readonly readAlone: (text: string, base: number, options: ReadOptions) => Statement[];
}

export function openPassage(
  text: string,
  base: number,
  options: ReadOptions,
  tokens: readonly KnitToken[],
  sentences: Passage['sentences'],
  readAlone: Passage['readAlone'],
): Passage {
  const out: Statement[] = [];
  const state: Passage['state'] = { open: null, block: null, skipTo: 0 };
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
  return {
    text,
    base,
    options,
    tokens,
    sentences,
    out,
    prose: [],
    state,
    named: new Set(),
    emphasised,
    flush,
    openRow,
    attach,
    addStep,
    markBlock,
    readAlone,
  };
}
