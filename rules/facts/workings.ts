/** Every time a row was worked, by the place where the row stands in the draft. */
import { once } from '../../src/once.ts';
import type { Entry, Replay } from '../../src/replay/replay.ts';

const byPlace = once((replay: Replay): ReadonlyMap<number, readonly Entry[]> => {
  const places = new Map<number, Entry[]>();
  for (const entry of replay.entries) {
    const here = places.get(entry.textSpan.start);
    if (here === undefined) places.set(entry.textSpan.start, [entry]);
    else here.push(entry);
  }
  return places;
});

/** The lines of the count sheet for the row whose words begin at `start`, in the order of working; found once for a draft. */
export function workingsOf(replay: Replay, start: number): readonly Entry[] {
  return byPlace(replay).get(start) ?? [];
}
