/**
 * A schematic in words: what the counts of each piece come to at the gauge of the draft, beside what it prints, and the yarn
 * that so many stitches take. A check, not a drawing for knitters: plain fabric, flat, no trim, no shaping of the outline.
 */
import { densities } from '../../rules/facts/gauges.ts';
import { yarnForStitches } from '../../rules/tables/loop-length.ts';
import type { Proof } from '../index.ts';
import type { Gauge } from '../pattern/front/front-matter.ts';

export interface PieceMeasures {
  readonly title: string;
  readonly inRounds: boolean;
  /** Per size, in cm; null where it is not known. */
  readonly begins: readonly (number | null)[];
  readonly widest: readonly (number | null)[];
  readonly ends: readonly (number | null)[];
  /** Height of the rows that are counted; null where a length is told by a measure, or the gauge has no rows. */
  readonly height: readonly (number | null)[];
}

export interface YarnOfSizes {
  readonly stitches: readonly number[];
  readonly metres: readonly { readonly low: number; readonly high: number }[];
}

export interface AtGauge {
  readonly gauge: Gauge;
  readonly words: string;
  readonly pieces: readonly PieceMeasures[];
  /** Null where stitches of the whole are not known. */
  readonly yarn: YarnOfSizes | null;
}

const half = (value: number): number => Math.round(value * 2) / 2;

/** Null where the draft gives no gauge or works nothing. */
export function atGauge(proof: Proof): AtGauge | null {
  const gauge = proof.pattern.front.gauges.find((each) => each.stitches !== null);
  const sts = gauge === undefined ? undefined : densities(gauge, 'stitches', 'cm')[0];
  if (gauge === undefined || sts === undefined) return null;
  const rows = densities(gauge, 'rows', 'cm')[0]?.per ?? null;
  const sizes = proof.pattern.sizes.map((_, size) => size);
  const numbers = [...new Set(proof.pattern.sections.flatMap((section) => (section.piece === null ? [] : [section.piece])))];
  const pieces = numbers.flatMap((piece): PieceMeasures[] => {
    const entries = proof.replay.entries.filter(
      (entry) => proof.pattern.sections[entry.section]?.piece === piece && entry.afterPerRepeat === null,
    );
    if (!entries.some((entry) => entry.unit !== 'step')) return [];
    const title = proof.pattern.sections.find((section) => section.piece === piece && section.title !== '')?.title ?? '';
    const counts = (size: number) => entries.flatMap((entry) => entry.after[size] ?? []).filter((count) => count > 0);
    const cm = (pick: (list: readonly number[]) => number | undefined) =>
      sizes.map((size) => {
        const count = pick(counts(size));
        return count === undefined ? null : half(count / sts.per);
      });
    const open = entries.some(
      (entry) =>
        entry.unit !== 'step' &&
        ((entry.node.type === 'until' && entry.node.goal.kind !== 'count') ||
          (entry.node.type === 'repeatRows' && entry.node.until !== null && entry.node.until.kind !== 'count')),
    );
    return [
      {
        title,
        inRounds: entries.some((entry) => entry.unit === 'round'),
        begins: cm((list) => list[0]),
        widest: cm((list) => (list.length === 0 ? undefined : Math.max(...list))),
        ends: cm((list) => list.at(-1)),
        height: sizes.map((size) =>
          open || rows === null
            ? null
            : half(entries.reduce((sum, entry) => sum + (entry.unit !== 'step' && entry.after[size] != null ? entry.times : 0), 0) / rows),
        ),
      },
    ];
  });
  return pieces.length === 0
    ? null
    : { gauge, words: sts.words, pieces, yarn: yarnOf(proof, sts.per * 10, rows === null ? null : rows * 10) };
}

/** Every stitch worked, as far as the rows are counted; how often each piece is made is taken from its heading. */
function yarnOf(proof: Proof, stitches: number, rows: number | null): YarnOfSizes | null {
  const open = proof.replay.entries.some(
    (entry) =>
      entry.afterPerRepeat !== null ||
      (entry.node.type === 'until' && entry.node.goal.kind !== 'count' && entry.node.goal.kind !== 'rows') ||
      (entry.node.type === 'repeatRows' && entry.node.until !== null && entry.node.until.kind !== 'count'),
  );
  if (open || proof.pattern.reading.notRead.length > 0) return null;
  const all = proof.pattern.sizes.map((_, size) =>
    proof.replay.entries.reduce((sum, entry) => {
      const times = proof.pattern.sections[entry.section]?.times ?? 1;
      return sum + (entry.unit === 'step' ? 0 : (entry.after[size] ?? 0) * entry.times * times);
    }, 0),
  );
  return all.every((count) => count === 0) ? null : { stitches: all, metres: all.map((count) => yarnForStitches(stitches, rows, count)) };
}
