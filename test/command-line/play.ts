/** A world and a library to play with: the command line is tested without the reader, the replay and the rules. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { onTestFinished } from 'vitest';
import type { Level } from '../../rules/rule.ts';
import { runCommandLine } from '../../src/command-line/cli.ts';
import type { World } from '../../src/command-line/world.ts';
import { playLibrary } from './play-library.ts';

/** A folder of its own with these files, gone when the test is over. */
export function folderWith(files: Readonly<Record<string, string | Uint8Array>>): string {
  const folder = mkdtempSync(join(tmpdir(), 'rowproof-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  for (const [path, content] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), content);
  }
  return folder;
}

export interface Outcome {
  readonly status: number;
  readonly out: string;
  readonly err: string;
}

export interface PlayOptions {
  readonly folder?: string;
  readonly input?: string | Uint8Array;
  readonly terminal?: boolean;
  readonly environment?: Readonly<Record<string, string>>;
  /** Milliseconds that pass between two looks at the clock. */
  readonly tick?: number;
}

export async function rowproof(words: readonly string[], options: PlayOptions = {}): Promise<Outcome> {
  const said = { out: '', err: '' };
  let clock = 0;
  const sink = (name: 'out' | 'err') => ({
    write: async (text: string) => {
      said[name] += text;
    },
    isTerminal: options.terminal === true,
    columns: options.terminal === true ? 80 : undefined,
  });
  const world: World = {
    out: sink('out'),
    err: sink('err'),
    input: async () => (typeof options.input === 'string' ? Buffer.from(options.input) : (options.input ?? new Uint8Array())),
    folder: options.folder ?? tmpdir(),
    environment: options.environment ?? {},
    now: () => {
      clock += options.tick ?? 0;
      return clock;
    },
  };
  const status = await runCommandLine(words, world, async () => playLibrary);
  return { status, ...said };
}

export const word: Readonly<Record<Level, string>> = { error: 'SLIP', query: 'ASK', style: 'TASTE' };
