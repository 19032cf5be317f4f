/** Tools that a piece of knitting calls for, and the names that stand for the same tool. All common practice, no source. */
import { memory } from './certainty.ts';

export const toolsCertainty = memory;

/** Names in the first place stand for all behind them; any of a row serves. */
export const sameTool: readonly (readonly string[])[] = [
  ['stitch holder', 'spare needle', 'waste yarn', 'safety pin'],
  ['tapestry needle', 'wool needle', 'darning needle', 'yarn needle', 'blunt needle'],
  ['stitch marker', 'safety pin'],
  ['cable needle', 'double-pointed needle', 'spare needle'],
  ['crochet hook'],
  ['sewing needle'],
];

/** Whether `owned` can do the work of `wanted`. */
export const serves = (owned: string, wanted: string): boolean =>
  owned === wanted ||
  sameTool.some((row) => row[0] === wanted && row.includes(owned)) ||
  sameTool.some((row) => row.includes(wanted) && row[0] === 'tapestry needle' && row.includes(owned));

/** The smallest number of stitches that goes round a circular needle: the work must be as long as the needle, and can be stretched to it by about a tenth. */
export const circularStretch = 1.1;
/** How many times its own length of fabric a circular needle holds, pushed together. */
export const circularCrowding = 4;
/** Below this length in cm a circular needle cannot be had, and double-pointed needles or a long cable are used. */
export const shortestCircularCm = 23;
