/** The lexicon: every stitch this project knows. A new stitch is one more entry in the file of its family. */
import { brioche } from './brioche.ts';
import { cableNames } from './cable-names.ts';
import { cables } from './cables.ts';
import { castingOff } from './casting-off.ts';
import { castingOn } from './casting-on.ts';
import { decreases } from './decreases.ts';
import { doubleDecreases } from './double-decreases.ts';
import type { Entry } from './entry.ts';
import { increases } from './increases.ts';
import { knots } from './knots.ts';
import { made } from './made.ts';
import { markers } from './markers.ts';
import { passingOver } from './passing-over.ts';
import { plain } from './plain.ts';
import { shortRows } from './short-rows.ts';
import { slips } from './slips.ts';
import { twists } from './twists.ts';
import { wraps } from './wraps.ts';
import { yarnOvers } from './yarn-overs.ts';

export const lexicon: readonly Entry[] = [
  ...plain,
  ...slips,
  ...yarnOvers,
  ...made,
  ...increases,
  ...decreases,
  ...passingOver,
  ...doubleDecreases,
  ...cables,
  ...cableNames,
  ...twists,
  ...knots,
  ...brioche,
  ...wraps,
  ...shortRows,
  ...castingOn,
  ...castingOff,
  ...markers,
];

const byName = new Map(lexicon.map((entry) => [entry.name, entry]));

/** The entry of that name, or undefined. Names are exact: `k2tog`, `kNtog`, `N/M LC`. */
export function entryNamed(name: string): Entry | undefined {
  return byName.get(name);
}
