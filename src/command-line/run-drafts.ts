/** Reads and proofs the drafts of a run, one after the other. */
import type { HouseStyle } from '../house-style/house-style.ts';
import type { Proof } from '../index.ts';
import type { ReportInput, Unreadable } from '../report/input.ts';
import { version } from '../version.ts';
import { type DraftFile, findDrafts, readDraft } from './files.ts';
import { houseStyles } from './house.ts';
import type { Library } from './library.ts';
import { refuseDraftAsOutput } from './output.ts';
import { stop, unforeseenSentence } from './stop.ts';
import { progressLine } from './terminal.ts';
import type { World } from './world.ts';

export interface DraftOptions {
  readonly house?: string;
  readonly output?: string;
}

/**
 * Every draft of the run. One that cannot be read is said on standard error and the others are still proofed; a run in
 * which none can be read stops.
 */
export async function runDrafts(given: readonly string[], options: DraftOptions, world: World, library: Library): Promise<ReportInput> {
  const found = findDrafts(given, world.folder);
  refuseDraftAsOutput(options.output, found.drafts, world.folder);
  const houseFor = houseStyles(
    options.house,
    world.folder,
    library.rules.map((rule) => rule.id),
  );
  const houses = found.drafts.map(houseFor);
  const unreadable: Unreadable[] = [...found.unreadable];
  const proofs: Proof[] = [];
  const progress = progressLine(world);
  for (const [index, draft] of found.drafts.entries()) {
    await progress.step(index + 1, found.drafts.length, draft.path);
    const result = await proofOne(draft, houses[index], world, library);
    if ('sentence' in result) unreadable.push(result);
    else proofs.push(result);
  }
  await progress.clear();
  if (proofs.length === 0 && unreadable.length === 1 && unreadable[0] !== undefined) throw stop(unreadable[0].sentence);
  for (const { sentence } of unreadable) await world.err.write(`${sentence}\n`);
  if (proofs.length === 0) throw stop('None of the drafts could be read.');
  return { tool: { name: 'rowproof', version }, proofs, rules: library.rules, unreadable };
}

async function proofOne(draft: DraftFile, house: HouseStyle | undefined, world: World, library: Library): Promise<Proof | Unreadable> {
  const read = await readDraft(draft, world);
  if ('sentence' in read) return read;
  try {
    return library.proof(read.source, { path: draft.path, ...(house === undefined ? {} : { house }) });
  } catch (error) {
    // One draft that trips the program must not take the others with it.
    return { path: draft.path, sentence: `${draft.path}: ${unforeseenSentence(error)}` };
  }
}
