/** Checks what was asked for before anything is read. Every refusal names the nearest thing that is known. */
import type { Level } from '../../rules/rule.ts';
import { nearest } from '../house-style/nearest.ts';
import { levels } from '../report/levels.ts';
import { listWords } from '../report/place.ts';
import { stop } from './stop.ts';

/** One of the words an option takes. `from` says what the word belongs to: "proof", "--gate". */
export function oneOf<Word extends string>(option: string, given: string, known: readonly Word[], from = ''): Word {
  const exact = known.find((word) => word === given.toLowerCase());
  if (exact !== undefined) return exact;
  const near = nearest(given, known);
  const hint = near === null ? '' : ` The nearest is "${near}".`;
  throw stop(`${option} takes ${listWords(known).replace(' and ', ' or ')}${from === '' ? '' : ` for "${from}"`}, not "${given}".${hint}`);
}

export function gateOf(given: string): Level {
  return oneOf('--gate', given, levels);
}

/** A whole number of stitches, nought or more. */
export function stitchesOf(option: string, given: string): number {
  if (!/^\d{1,6}$/.test(given)) throw stop(`${option} takes a number of stitches such as 45, not "${given}".`);
  return Number(given);
}
