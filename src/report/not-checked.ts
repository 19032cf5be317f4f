/** What a proof could not look at, beside the passages that were not read: said in every report, so that no gap is silent. */
import type { Proof } from '../index.ts';
import { hasSizes, listWords } from './place.ts';
import { plural } from './plural.ts';

/** A picture in the draft; charts come so. */
const picture = /!\[[^\]\n]{0,200}\]\([^)\n]{1,300}\)/g;

/** One sentence for each gap. */
export function gaps(proof: Proof): readonly string[] {
  const { gauges } = proof.pattern.front;
  const { entries } = proof.replay;
  const noStitches = gauges.every((gauge) => gauge.stitches === null);
  const noRows = gauges.every((gauge) => gauge.rows === null);
  const rows = entries.filter((entry) => entry.unit !== 'step' && entry.afterPerRepeat === null);
  const unknown = rows.filter((entry) => entry.after.every((count, size) => count === null && !skips(entry, size)));
  const sizes = proof.pattern.sizes.filter((_, size) => rows.length > 0 && rows.every((entry) => entry.after[size] === null));
  const pictures = [...proof.manuscript.source.matchAll(picture)].map((match) => proof.manuscript.place(match.index).line);
  return [
    ...(rows.length === 0
      ? []
      : noStitches
        ? ['No gauge was found, so no width and no length could be checked against the stitches.']
        : noRows
          ? ['The gauge gives no rows, so no length could be checked against the rows.']
          : []),
    ...(unknown.length > 0
      ? [`In ${plural(unknown.length, 'line')} of the count sheet the count is not known in any size, because of what was not read before.`]
      : []),
    ...(hasSizes(proof) && sizes.length > 0 && sizes.length < proof.pattern.sizes.length
      ? [`No count is known in ${sizes.length === 1 ? 'size' : 'sizes'} ${listWords(sizes)}.`]
      : []),
    ...(pictures.length > 0
      ? [
          `${plural(pictures.length, 'picture')} (${pictures.length === 1 ? 'line' : 'lines'} ${listWords(pictures.slice(0, 8).map(String))}): what a picture shows is never checked.`,
        ]
      : []),
    ...proof.manuscript.hazards.map((hazard) => `Line ${proof.manuscript.place(hazard.start).line}: ${hazard.message}`),
  ];
}

/** Whether the size does not work the line at all. */
export const skips = (entry: Proof['replay']['entries'][number], size: number): boolean => entry.skips?.includes(size) === true;
