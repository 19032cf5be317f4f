/** Where a report goes: standard output, or a file that is not a draft. */
import { closeSync, openSync, realpathSync, writeFileSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import type { DraftFile } from './files.ts';
import { fileReason, stop } from './stop.ts';
import type { World } from './world.ts';

/** A report that is written piece by piece. A file is opened with the first piece: a run that stops before it leaves none. */
export interface Outlet {
  write(text: string): Promise<void>;
  close(): void;
}

export function outletOf(world: World, output: string | undefined): Outlet {
  if (output === undefined)
    return {
      write: async (text) => {
        if (text !== '') await world.out.write(text);
      },
      close: () => {},
    };
  let file: number | null = null;
  return {
    async write(text) {
      if (text === '') return;
      try {
        file ??= openSync(resolve(world.folder, output), 'w');
        writeFileSync(file, text);
      } catch (error) {
        throw stop(`${output}: the report could not be written here; ${fileReason(error) ?? 'the system gave no reason'}.`);
      }
    },
    close: () => {
      if (file !== null) closeSync(file);
    },
  };
}

export async function deliver(world: World, text: string, output: string | undefined): Promise<void> {
  const outlet = outletOf(world, output);
  await outlet.write(text);
  outlet.close();
}

/** A report must never be written over a draft, whatever name or link leads there. */
export function refuseDraftAsOutput(output: string | undefined, drafts: readonly DraftFile[], folder: string): void {
  if (output === undefined) return;
  const target = realPath(resolve(folder, output));
  const hit = drafts.find((draft) => draft.absolute !== null && realPath(draft.absolute) === target);
  if (hit !== undefined) throw stop(`${output}: this is a draft of this run; name another file for the report.`);
}

/** The path with every link followed; for a file that is not there yet, that of its folder. */
function realPath(absolute: string): string {
  try {
    return realpathSync(absolute);
  } catch {
    try {
      return join(realpathSync(dirname(absolute)), basename(absolute));
    } catch {
      return absolute;
    }
  }
}
