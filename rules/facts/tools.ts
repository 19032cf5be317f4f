/** Tools: what the draft lists, what its instructions need, and where. */

import { entryNamed } from '../../grammar/lexicon/index.ts';
import type { Span } from '../../src/manuscript/manuscript.ts';
import type { Context } from '../rule.ts';
import { serves } from '../tables/tools.ts';
import { stretches } from './blocks.ts';
import { walkPattern } from './walk.ts';

export interface Need {
  /** In the singular, as the tools table names it. */
  readonly tool: string;
  readonly span: Span;
  /** The words that call for it. */
  readonly why: string;
}

/** Whether the draft lists things to have ready at all; without a list nothing can be missing from it. */
export const listsTools = ({ pattern }: Context): boolean => pattern.front.notions.length > 0;

export const listed = ({ pattern }: Context, tool: string): boolean =>
  (tool === 'double-pointed needle' && pattern.front.needles.some((needle) => needle.kind === 'doublePointed')) ||
  pattern.front.notions.some((notion) => serves(notion.name, tool) && !(tool === 'stitch holder' && notion.name === 'safety pin')) ||
  (tool === 'spare needle' && pattern.front.needles.some((needle) => needle.kind === 'spare' || needle.kind === 'doublePointed'));

/** The tool behind a holder as the instructions call it; null for what needs no listing. */
/** A spare needle holds as well as a holder, so it is asked for by its own name only. */
export function holderTool(words: string): string | null {
  if (/\bspare needles?\b/i.test(words)) return 'spare needle';
  if (/\bpins?\b/i.test(words)) return 'safety pin';
  if (/\b(?:waste|scrap|contrast(?:ing)?) yarn\b|\b(?:length|piece) of yarn\b|\bthread\b/i.test(words)) return 'waste yarn';
  return /\bholders?\b/i.test(words) ? 'stitch holder' : null;
}

/** First place of each tool the instructions cannot do without. */
export function needsOf(context: Context): readonly Need[] {
  const first = new Map<string, Need>();
  const source = context.manuscript.source;
  const add = (tool: string, span: Span, why: string): void => {
    const known = first.get(tool);
    if (known === undefined || span.start < known.span.start) first.set(tool, { tool, span, why });
  };
  walkPattern(context.pattern, (node) => {
    if (node.type === 'work') {
      const entry = context.pattern.vocabulary.stitches.get(node.stitch) ?? entryNamed(node.stitch);
      const own = context.pattern.vocabulary.defined.get(source.slice(node.span.start, node.span.end).toLowerCase().trim());
      // A draft's own way of working may do without the tool ("C4B without a cable needle").
      const without = own !== undefined && !/\bcn\b|cable needle/i.test(own);
      for (const tool of entry?.needs ?? [])
        if (!(tool === 'cable needle' && without)) add(tool, node.span, source.slice(node.span.start, node.span.end));
    }
    if (node.type === 'marker' && (node.op === 'place' || node.op === 'hang'))
      add('stitch marker', node.span, source.slice(node.span.start, node.span.end));
    if (node.type === 'hold') {
      const tool = holderTool(`${node.holder} ${source.slice(node.span.start, node.span.end)}`);
      if (tool !== null) add(tool, node.span, source.slice(node.span.start, node.span.end));
    }
  });
  for (const stretch of stretches(context)) {
    const match = stretch.role === 'work' ? /\b(?:dpns?|double[- ]pointed needles?)\b/i.exec(stretch.text) : null;
    if (match === null) continue;
    const start = stretch.start + match.index;
    add('double-pointed needle', { start, end: start + match[0].length }, match[0]);
  }
  for (const stretch of stretches(context)) {
    const match = stretch.role === 'work' ? /\b(?:graft(?:ed|ing)?|kitchener)\b/i.exec(stretch.text) : null;
    if (match === null) continue;
    const start = stretch.start + match.index;
    add('tapestry needle', { start, end: start + match[0].length }, match[0]);
  }
  for (const stretch of stretches(context)) {
    const match = stretch.role === 'work' ? /\bsew(?:ing)?\b[^.;]{0,40}?\b(buttons)\b|\b(buttonholes?)\b/i.exec(stretch.text) : null;
    if (match === null) continue;
    const words = match[1] ?? match[2]!;
    const start = stretch.start + match.index + match[0].length - words.length;
    add('button', { start, end: start + words.length }, words);
  }
  return [...first.values()].sort((a, b) => a.span.start - b.span.start);
}

/** Words that show that a listed thing is used: it is named again, or something is done that calls for it. */
const usedWords: Readonly<Record<string, RegExp>> = {
  'cable needle': /\bcn\b|\bcable/i,
  'stitch marker': /\bmark|\bpm\b|\bsm\b|\bm\b/i,
  'stitch holder': /\bhold|\bheld\b|\bwaiting\b/i,
  'waste yarn': /\b(?:waste|scrap|contrast)|\bprovisional|\bhold|\bheld\b|\blifeline/i,
  'crochet hook': /\bcrochet|\bhook|\bprovisional|\bchain|\bfringe|\btassel/i,
  button: /\bbutton|\beyes?\b/i,
  zip: /\bzip/i,
  elastic: /\belastic/i,
  ribbon: /\bribbon|\btie|\bthread/i,
  bead: /\bbead/i,
};

export interface Idle {
  readonly tool: string;
  readonly span: Span;
}

/** Things listed that no instruction could use. */
export function idleTools(context: Context): readonly Idle[] {
  const parts = stretches(context).filter((one) => one.role !== 'list');
  const needs = new Set(needsOf(context).map((need) => need.tool));
  return context.pattern.front.notions.flatMap((notion) => {
    const words = usedWords[notion.name];
    if (words === undefined || [...needs].some((tool) => serves(notion.name, tool))) return [];
    const elsewhere = parts.some((part) => {
      const own = part.start <= notion.span.start && notion.span.end <= part.end;
      return !own && words.test(part.text);
    });
    return elsewhere ? [] : [{ tool: notion.name, span: notion.span }];
  });
}
