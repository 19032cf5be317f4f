/** Where short rows turn: the stitches that each turn leaves unworked, wedge by wedge and size by size, as the replay worked them. */
import type { Step } from '../../grammar/tree.ts';
import type { Entry } from '../../src/replay/replay.ts';
import type { Context } from '../rule.ts';
import { stepsOf } from '../tree-walk.ts';

export interface Place {
  readonly entry: Entry;
  readonly step: Step;
  /** Stitches that the turn leaves unworked; in a ring, stitches worked past the beginning of the round. */
  readonly rest: number;
  readonly live: number;
}

/** Short rows that follow each other: the turns at the end of right-side rows and those at the end of wrong-side rows. */
export interface Wedge {
  readonly section: number;
  readonly size: number;
  readonly rs: readonly Place[];
  readonly ws: readonly Place[];
  /** The turns are counted from the beginning of the round, which the rows cross. */
  readonly ring: boolean;
}

const isTurn = (step: Step): boolean => step.type === 'turn' && step.not !== true && step.quarter !== true && step.holds === null;

/** The turn with which a row ends before its end; null for a row without, undefined for one with several. */
function turnOf(steps: readonly Step[]): Step | null | undefined {
  const turns = stepsOf(steps).filter(isTurn);
  if (turns.length > 1) return undefined;
  const last = steps.filter((step) => step.type !== 'remark' && step.type !== 'stated' && step.type !== 'resolve').at(-1);
  return turns.length === 0 ? null : last === turns[0] ? last : undefined;
}

interface Open {
  rs: Place[];
  ws: Place[];
  /** Rows worked to their end since the last turn. */
  whole: number;
}

/** Every wedge of the draft, in every size. */
export function wedgesOf({ pattern, replay }: Context): readonly Wedge[] {
  const found: Wedge[] = [];
  pattern.sizes.forEach((_, size) => {
    let open: Open | null = null;
    let ahead = 0;
    let section = -1;
    const close = (): void => {
      if (open !== null && open.rs.length + open.ws.length > 1) found.push(wedge(section, size, open));
      open = null;
    };
    replay.entries.forEach((entry, index) => {
      const before = entry.before[size] ?? null;
      const after = entry.after[size] ?? null;
      if (before === null && after === null && entry.unit !== 'step') return;
      if (entry.section !== section) {
        close();
        if (pattern.sections[entry.section]?.piece !== pattern.sections[section]?.piece) ahead = 0;
        section = entry.section;
      }
      const steps = replay.steps?.get(index);
      const takes = entry.takes[size] ?? null;
      const turn = steps === undefined ? null : turnOf(steps);
      if (entry.unit === 'step' || before === null || after === null || takes === null || turn === undefined || entry.side === null) {
        close();
        ahead = 0;
        return;
      }
      const rest: number = before - ahead - takes;
      if (turn === null || rest === 0) {
        ahead = 0;
        if (open !== null) open.whole += 1;
        if (open !== null && open.whole > 1) close();
        return;
      }
      open = open ?? { rs: [], ws: [], whole: 0 };
      open.whole = 0;
      (entry.side === 'RS' ? open.rs : open.ws).push({ entry, step: turn, rest, live: after });
      ahead = rest;
    });
    close();
  });
  return found;
}

function wedge(section: number, size: number, { rs, ws }: Open): Wedge {
  const ring = ws.some((place) => place.rest < 0);
  const past = (places: readonly Place[], side: 'RS' | 'WS'): Place[] =>
    places.map((place) => ({ ...place, rest: side === 'RS' ? place.live - place.rest : -place.rest }));
  return ring ? { section, size, rs: past(rs, 'RS'), ws: past(ws, 'WS'), ring } : { section, size, rs, ws, ring };
}
