/** The file of known findings: read before a run is judged, made once, shortened when findings have gone. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, relative, resolve, sep } from 'node:path';
import type { ReportInput } from '../report/input.ts';
import { plural } from '../report/plural.ts';
import { compare, type Known, type Record as KnownRecord, readRecord, recordOf, recordText } from '../report/record.ts';
import { decode } from './decode.ts';
import { fileReason, stop } from './stop.ts';
import type { World } from './world.ts';

export interface RecordOptions {
  readonly record?: string;
  readonly startRecord?: boolean;
}

/**
 * The run with what is known set apart. With --start-record the file is made from what is found now; without it the file
 * must be there, and loses what is no longer found.
 */
export async function withRecord(input: ReportInput, options: RecordOptions, world: World): Promise<ReportInput> {
  const { record: name } = options;
  if (name === undefined) {
    if (options.startRecord === true) throw stop('--start-record needs --record FILE to say where the record goes.');
    return input;
  }
  const absolute = resolve(world.folder, name);
  const nameIn = (path: string) => (path === '-' ? path : relative(dirname(absolute), resolve(world.folder, path)).split(sep).join('/'));
  if (options.startRecord === true) {
    if (existsSync(absolute))
      throw stop(`${name}: this record is there already and may only grow shorter; delete it if you mean to begin again.`);
    const made: { [path: string]: readonly Known[] } = Object.create(null);
    for (const proof of input.proofs) made[nameIn(proof.path)] = recordOf(proof);
    save(absolute, name, made);
    const all = input.proofs.reduce((sum, proof) => sum + proof.findings.length, 0);
    await world.err.write(`${name}: ${plural(all, 'finding')} recorded; from now on only new ones count.\n`);
    return { ...input, proofs: input.proofs.map((proof) => ({ ...proof, findings: [], known: proof.findings })) };
  }
  const record = load(absolute, name);
  const left: { [path: string]: readonly Known[] } = Object.assign(Object.create(null), record);
  const proofs = input.proofs.map((proof) => {
    const path = nameIn(proof.path);
    const compared = compare(proof, record[path] ?? []);
    left[path] = compared.left;
    return { ...proof, findings: compared.fresh, known: compared.known };
  });
  await report(
    absolute,
    name,
    record,
    left,
    proofs.reduce((sum, proof) => sum + (proof.known?.length ?? 0), 0),
    world,
  );
  return { ...input, proofs };
}

async function report(absolute: string, name: string, record: KnownRecord, left: KnownRecord, known: number, world: World): Promise<void> {
  const size = (each: KnownRecord) => Object.values(each).reduce((sum, list) => sum + list.length, 0);
  const gone = size(record) - size(left);
  if (gone > 0) save(absolute, name, left);
  const shortened =
    gone > 0 ? ` ${plural(gone, 'other', 'others')} ${gone === 1 ? 'is' : 'are'} gone, and the record is shorter by as many.` : '';
  if (known + gone > 0)
    await world.err.write(`${name}: ${plural(known, 'finding is', 'findings are')} known and not repeated.${shortened}\n`);
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
