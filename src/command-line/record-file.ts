/** The file of known findings: read before a run is judged, made once, shortened when findings have gone. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, relative, resolve, sep } from 'node:path';
import { plural } from '../report/plural.ts';
import { type Known, type Record as KnownRecord, readRecord, recordText } from '../report/record.ts';
import { decode } from './decode.ts';
import type { Job } from './draft-work.ts';
import type { DraftFile } from './files.ts';
import type { Ran } from './run-drafts.ts';
import { fileReason, stop } from './stop.ts';
import type { World } from './world.ts';

export interface RecordOptions {
  readonly record?: string;
  readonly startRecord?: boolean;
}

/** The record of a run: what it knows of each draft, and what becomes of it. */
export interface RecordRun {
  recordOf(draft: DraftFile): Job['record'];
  /** Writes the file where it has to be written, and says what is known. */
  finish(ran: Ran): Promise<void>;
}

/**
 * With --start-record the file is made from what is found now; without it the file must be there, and loses what is no
 * longer found. It is looked at before any draft is read.
 */
export function recordRun(options: RecordOptions, world: World): RecordRun {
  const { record: name } = options;
  if (name === undefined) {
    if (options.startRecord === true) throw stop('--start-record needs --record FILE to say where the record goes.');
    return { recordOf: () => null, finish: async () => {} };
  }
  const absolute = resolve(world.folder, name);
  const nameIn = (path: string) => (path === '-' ? path : relative(dirname(absolute), resolve(world.folder, path)).split(sep).join('/'));
  const known = ({ digests }: Ran) => digests.reduce((sum, digest) => sum + digest.known, 0);
  if (options.startRecord === true) {
    if (existsSync(absolute))
      throw stop(`${name}: this record is there already and may only grow shorter; delete it if you mean to begin again.`);
    return {
      recordOf: () => 'start',
      finish: async (ran) => {
        save(absolute, name, withDrafts({}, ran, nameIn));
        await world.err.write(`${name}: ${plural(known(ran), 'finding')} recorded; from now on only new ones count.\n`);
      },
    };
  }
  const record = load(absolute, name);
  return {
    recordOf: ({ path }) => record[nameIn(path)] ?? [],
    finish: async (ran) => {
      const left = withDrafts(record, ran, nameIn);
      if (recordText(left) !== recordText(record)) save(absolute, name, left);
      const size = (each: KnownRecord) => Object.values(each).reduce((sum, list) => sum + list.length, 0);
      const gone = size(record) - size(left);
      const shortened =
        gone > 0 ? ` ${plural(gone, 'other', 'others')} ${gone === 1 ? 'is' : 'are'} gone, and the record is shorter by as many.` : '';
      if (known(ran) + gone > 0)
        await world.err.write(`${name}: ${plural(known(ran), 'finding is', 'findings are')} known and not repeated.${shortened}\n`);
    },
  };
}

/** The record with what is kept of the drafts of this run; drafts that were not looked at stay as they are. */
function withDrafts(record: KnownRecord, ran: Ran, nameIn: (path: string) => string): KnownRecord {
  const kept: { [path: string]: readonly Known[] } = Object.assign(Object.create(null), record);
  for (const [path, left] of ran.records) kept[nameIn(path)] = left;
  return kept;
}

function load(absolute: string, name: string): KnownRecord {
  let bytes: Uint8Array;
  try {
    bytes = readFileSync(absolute);
  } catch (error) {
    const missing = (error as NodeJS.ErrnoException).code === 'ENOENT';
    throw stop(
      `${name}: ${missing ? 'there is no such record; make it once with --start-record' : (fileReason(error) ?? 'it could not be read')}.`,
    );
  }
  const decoded = decode(bytes);
  const record = 'reason' in decoded ? decoded.reason : readRecord(decoded.text);
  if (typeof record === 'string') throw stop(`${name}: ${record}.`);
  return record;
}

function save(absolute: string, name: string, record: KnownRecord): void {
  try {
    writeFileSync(absolute, recordText(record));
  } catch (error) {
    throw stop(`${name}: the record could not be written here; ${fileReason(error) ?? 'the system gave no reason'}.`);
  }
}
