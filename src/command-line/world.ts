/** What the command line touches: where it writes, what is piped into it, where it stands. Tests bring a world of their own. */

import { writeSync } from 'node:fs';
import { fileReason } from './stop.ts';

export interface Sink {
  /** Resolves when the text is written. A reader that has gone away is no fault of ours and is not an error. */
  write(text: string): Promise<void>;
  readonly isTerminal: boolean;
  /** Columns of the terminal, if it is one. */
  readonly columns: number | undefined;
}

export interface World {
  readonly out: Sink;
  readonly err: Sink;
  /** Everything on standard input. */
  input(): Promise<Uint8Array>;
  /** Absolute path of the folder the run was started in. */
  readonly folder: string;
  readonly environment: Readonly<Record<string, string | undefined>>;
  /** The file of the program, where it is one file that other threads can be given. */
  readonly program?: string;
  /** Milliseconds since some moment; only for deciding whether to show progress. */
  now(): number;
}

function sinkOf(stream: NodeJS.WriteStream): Sink {
  let gone = false;
  stream.on('error', (error: NodeJS.ErrnoException) => {
    gone = true;
    if (error.code !== 'EPIPE' && error.code !== 'ERR_STREAM_DESTROYED') failed(error);
  });
  return {
    write: (text) =>
      new Promise((resolve) => {
        if (gone || stream.destroyed) resolve();
        else stream.write(text, () => resolve());
      }),
    isTerminal: stream.isTTY === true,
    columns: stream.isTTY === true ? stream.columns : undefined,
  };
}

/** Output that cannot be written (a full disk behind a redirection) ends the run; an `error` event has no caller to throw to. */
function failed(error: NodeJS.ErrnoException): never {
  writeSync(2, `The report could not be written: ${fileReason(error) ?? 'the system gave no reason'}.\n`);
  process.exit(2);
}

async function readAll(stream: NodeJS.ReadStream): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  for await (const chunk of stream) chunks.push(typeof chunk === 'string' ? Buffer.from(chunk) : chunk);
  return Buffer.concat(chunks);
}

export function realWorld(): World {
  return {
    out: sinkOf(process.stdout),
    err: sinkOf(process.stderr),
    input: () => readAll(process.stdin),
    folder: process.cwd(),
    environment: process.env,
    now: () => performance.now(),
  };
}
