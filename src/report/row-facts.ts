/** What lies on the needles at a line of the count sheet beside the count: rows since the cast-on, height, markers, held stitches. */
import { densities } from '../../rules/facts/gauges.ts';
import type { Proof } from '../index.ts';
import { headOf, momentsOf } from '../replay/moments.ts';
import type { Moment } from '../replay/play.ts';
import { rowsWorked } from './rows-worked.ts';

export interface RowFacts {
  /** Rows worked once the line is done: since the piece was begun, and in its section. */
  readonly rows: number;
  readonly rowsInSection: number;
  /** Height in cm at the gauge of the draft; null where it gives no rows. */
  readonly height: number | null;
  /** Stitches before each marker at the head of the row, in the order of working. */
  readonly markers: readonly number[];
  /** Sets of stitches that wait at the head of the row: "50 (left sleeve)". */
  readonly held: readonly string[];
}

/** More heads than this are not kept: markers and held stitches are then left out. */
const mostMoments = 30_000;

export function rowFacts(proof: Proof): (index: number, size: number) => RowFacts {
  const heads = new Map<string, Moment>();
  momentsOf(proof, (moment) => {
    if (heads.size < mostMoments) heads.set(`${moment.entry} ${moment.size}`, moment);
    return false;
  });
  const sizes = proof.pattern.sizes.map((_, size) => size);
  const worked = sizes.map((size) => rowsWorked(proof, size));
  const inSection = sizes.map((size) => rowsInSection(proof, size));
  const gauge = proof.pattern.front.gauges.find((each) => each.rows !== null);
  const perCm = gauge === undefined ? undefined : densities(gauge, 'rows', 'cm')[0]?.per;
  return (index, size) => {
    const rows = worked[size]?.[index] ?? 0;
    const head = heads.get(`${index} ${size}`);
    return {
      rows,
      rowsInSection: inSection[size]?.[index] ?? 0,
      height: perCm === undefined ? null : Math.round((rows / perCm) * 10) / 10,
      markers: head === undefined ? [] : markersOf(head),
      held: head === undefined ? [] : heldOf(head),
    };
  };
}

function rowsInSection(proof: Proof, size: number): number[] {
  let section = -1;
  let done = 0;
  return proof.replay.entries.map((entry) => {
    if (entry.section !== section) done = 0;
    section = entry.section;
    if (entry.unit !== 'step' && (entry.after[size] != null || entry.before[size] != null)) done += entry.times;
    return done;
  });
}

function markersOf(moment: Moment): number[] {
  const { left, right } = headOf(moment);
  const isMarker = (mark: { kind: string }) => mark.kind === 'marker';
  return [
    ...right.marks.filter(isMarker).map((mark) => mark.at),
    ...left.marks.filter(isMarker).map((mark) => right.n + left.n - mark.at),
  ].sort((a, b) => a - b);
}

const heldOf = ({ held }: Moment): string[] =>
  held.filter((set) => !set.used && set.n > 0).map((set) => (set.name === '' ? String(set.n) : `${set.n} (${set.name})`));
