/** Finds the house style that holds for a draft. */
import { readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { type HouseStyle, noHouse } from '../house-style/house-style.ts';
import { readHouseStyle } from '../house-style/read-house-style.ts';
import { decode } from './decode.ts';
import type { DraftFile } from './files.ts';
import { fileReason, stop } from './stop.ts';

const fileName = 'house-style.yaml';

/**
 * The house style for each draft: the file given with --house, or the nearest `house-style.yaml` in the draft's folder or
 * a folder above it. A file that cannot be used stops the run: a draft must not be judged by settings nobody chose.
 */
export function houseStyles(given: string | undefined, folder: string, ruleIds: readonly string[]): (draft: DraftFile) => HouseStyle {
  if (given !== undefined) {
    const absolute = resolve(folder, given);
    const text = textOf(absolute, given, false);
    const house = text === null ? noHouse : parse(text, given, ruleIds);
    return () => house;
  }
  const known = new Map<string, HouseStyle>();
  const houseOfFolder = (start: string): HouseStyle => {
    const before = known.get(start);
    if (before !== undefined) return before;
    const absolute = join(start, fileName);
    const name = relative(folder, absolute) || fileName;
    const text = textOf(absolute, name, true);
    const above = dirname(start);
    const house = text !== null ? parse(text, name, ruleIds) : above === start ? noHouse : houseOfFolder(above);
    known.set(start, house);
    return house;
  };
  return (draft) => houseOfFolder(draft.absolute === null ? folder : dirname(draft.absolute));
}

/** The text of the file; null where it may be missing and is. */
function textOf(absolute: string, name: string, mayBeMissing: boolean): string | null {
  let bytes: Uint8Array;
  try {
    bytes = readFileSync(absolute);
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (mayBeMissing && (code === 'ENOENT' || code === 'ENOTDIR' || code === 'EISDIR')) return null;
    throw stop(`${name}: ${fileReason(error) ?? 'it could not be read'}.`);
  }
  const decoded = decode(bytes);
  if ('reason' in decoded) throw stop(`${name}: ${decoded.reason}.`);
  return decoded.text;
}

function parse(text: string, name: string, ruleIds: readonly string[]): HouseStyle {
  const reading = readHouseStyle(text, ruleIds);
  if (reading.house !== null) return reading.house;
  const [first] = reading.problems;
  const more = reading.problems.length - 1;
  const rest = more === 0 ? '' : ` (and ${more} more ${more === 1 ? 'problem' : 'problems'} in this file)`;
  throw stop(`${name}, line ${first?.line ?? 1}: ${first?.message ?? 'this file cannot be used.'}${rest}`);
}
