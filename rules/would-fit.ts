/** What small edits of a row would make it work, in the author's own words. */
import { type CastOnEdit, castOnEdits } from '../src/replay/cast-on-edits.ts';
import { type Fitting, fittingEdits } from '../src/replay/fitting-edits.ts';
import type { Observation } from '../src/replay/replay.ts';
import type { SmallEdit } from '../src/replay/small-edits.ts';
import type { Context, Edit } from './rule.ts';
import { excerpt, lineOf } from './telling.ts';

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
  const words = (span: Edit['span']): string => source.slice(span.start, span.end);
  const found = fittingEdits(context.pattern, context.replay, met, words);
  const castOn = castOnEdits(context.pattern, context.replay, met, words).slice(0, 2);
  if (found === null || found.all === 0) return withCastOn(context, {}, castOn);
  // A count that is not met speaks of its row first; a row that does not go up may as well have been begun with other stitches.
  const ofCount = met.kind === 'countDiffers' || met.kind === 'changeDiffers';
  return withCastOn(context, ofRow(context, met, found), ofCount ? [] : castOn);
}

/** At most so many edits are offered in all. */
const mostOffered = 3;

/** The row may be right and the number cast on wrong: then that is offered behind the edits of the row. */
function withCastOn(context: Context, row: Offered, castOn: readonly CastOnEdit[]): Offered {
  if (castOn.length === 0) return row;
  const { source } = context.manuscript;
  const { fix: _fix, ...rest } = row;
  const room = mostOffered - castOn.length;
  const line = lineOf(context, castOn[0]!.span);
  return {
    ...rest,
    wouldFit: [
      ...(row.wouldFit ?? []).slice(0, room),
      ...castOn.map(
        (edit) =>
          `${edit.setter.type === 'castOn' ? 'cast on' : 'pick up'} ${edit.count} instead of ${source.slice(edit.span.start, edit.span.end)} (line ${line})`,
      ),
    ],
    edits: [...(row.edits ?? []).slice(0, room), ...castOn.map(({ span, text }) => ({ span, text }))],
  };
}

function ofRow(context: Context, met: Observation, found: Fitting): Offered {
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
    case 'moveStar': {
      const moved = quoted(edit.at === null ? '' : words(edit.at.span));
      return edit.span.start === edit.at?.span.start ? `move the star before ${moved}` : `move the star behind ${moved}`;
    }
    case 'number': {
      const whole = edit.at?.span ?? edit.span;
      const was = words(whole);
      const inside = { start: edit.span.start - whole.start, end: edit.span.end - whole.start };
      if (inside.start < 0 || inside.end > was.length || was.length > 40) return `${quoted(words(edit.span))} to ${quoted(edit.text)}`;
      return `${quoted(was)} to ${quoted(was.slice(0, inside.start) + edit.text + was.slice(inside.end))}`;
    }
  }
}
