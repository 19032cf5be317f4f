/** What small edits of a row would make it work, in the author's own words. */
import { fittingEdits } from '../src/replay/fitting-edits.ts';
import type { Observation } from '../src/replay/replay.ts';
import type { SmallEdit } from '../src/replay/small-edits.ts';
import type { Context, Edit } from './rule.ts';
import { excerpt } from './telling.ts';

export interface Offered {
  readonly fix?: Edit;
  readonly wouldFit?: readonly string[];
  readonly edits?: readonly Edit[];
  /** A sentence where too many would do. */
  readonly many?: string;
}

/** What can be offered for the row an observation was met in; nothing where the row cannot be tried with other words. */
export function offered(context: Context, met: Observation): Offered {
  const { source } = context.manuscript;
  const found = fittingEdits(context.pattern, context.replay, met, (span) => source.slice(span.start, span.end));
  if (found === null || found.all === 0) return {};
  if (found.edits.length === 0)
    return {
      many: `${found.complete ? '' : 'At least '}${found.all} small edits of the row would fit, for instance ${found.instances.map((edit) => wording(context, edit)).join(' or ')}; the row by itself does not show which is meant.`,
    };
  const edits = found.edits.map(({ span, text }) => ({ span, text }));
  const [only] = edits;
  const kind = found.edits[0]?.kind;
  return {
    wouldFit: found.edits.map((edit) => wording(context, edit)),
    edits,
    ...(found.all === 1 && found.complete && only !== undefined && kind !== 'exchange' && kind !== 'takeOut' && proven(context, met)
      ? { fix: only }
      : {}),
  };
}

/** Whether the slip must lie in the row itself: what follows says so, or a count that is right stands before it. */
function proven(context: Context, met: Observation): boolean {
  const fault = met.words['fault'];
  if (fault !== undefined) return fault === 'row';
  if (met.kind === 'changeDiffers') return true;
  const { node } = met;
  return (
    node !== null &&
    context.replay.entries.some(
      (entry) =>
        entry.section === met.section &&
        entry.span.end <= node.span.start &&
        entry.node.type === 'row' &&
        entry.node.stated.some((stated) => stated.what === 'total'),
    )
  );
}

const quoted = (text: string): string => `"${text.replace(/\s+/g, ' ').trim()}"`;

function wording(context: Context, edit: SmallEdit): string {
  const { source } = context.manuscript;
  const words = (span: Edit['span']): string => source.slice(span.start, span.end);
  switch (edit.kind) {
    case 'add':
      return edit.at === null
        ? `add ${quoted(edit.word ?? '')} at the head`
        : `add ${quoted(edit.word ?? '')} after ${excerpt(context, edit.at.span).replace(/[“”]/g, '"')}`;
    case 'takeOut':
      return `leave out ${quoted(edit.at === null ? '' : words(edit.at.span))}`;
    case 'exchange':
      return `${quoted(words(edit.span))} to ${quoted(edit.text)}`;
    case 'number': {
      const whole = edit.at?.span ?? edit.span;
      const was = words(whole);
      const inside = { start: edit.span.start - whole.start, end: edit.span.end - whole.start };
      if (inside.start < 0 || inside.end > was.length || was.length > 40) return `${quoted(words(edit.span))} to ${quoted(edit.text)}`;
      return `${quoted(was)} to ${quoted(was.slice(0, inside.start) + edit.text + was.slice(inside.end))}`;
    }
  }
}
