/** The commands. Each returns the exit status of the run. */

import type { Level } from '../../rules/rule.ts';
import { nearest } from '../house-style/nearest.ts';
import type { Proof } from '../index.ts';
import { errataJson, errataText } from '../report/errata.ts';
import { atGate, levels } from '../report/levels.ts';
import { hasSizes, listWords, printedPath, sizeIndex, withoutSizeSentence } from '../report/place.ts';
import type { Digest } from '../report/report.ts';
import { rowReplayJson, rowReplayText } from '../report/row-replay-report.ts';
import { ruleJson, ruleListText, rulePageText, rulesJson } from '../report/rules-report.ts';
import { proofOne } from './draft-work.ts';
import { findDrafts, readDraft } from './files.ts';
import { namesOf, type Order, proofFormats, tallyFormats, textOptionsOf } from './formats.ts';
import { houseStyles } from './house.ts';
import type { Library, LoadLibrary } from './library.ts';
import { gateOf, oneOf, stitchesOf } from './options.ts';
import { deliver, refuseDraftAsOutput } from './output.ts';
import { type RecordOptions, recordRun } from './record-file.ts';
import { type DraftOptions, type Ran, runDrafts } from './run-drafts.ts';
import { stop } from './stop.ts';
import { layoutOf } from './terminal.ts';
import type { World } from './world.ts';

export interface ReportOptions {
  readonly format: string;
  readonly output?: string;
  readonly color: boolean;
}
export interface ProofOptions extends ReportOptions, DraftOptions, RecordOptions {
  readonly gate: string;
}
export interface TallyOptions extends ReportOptions, DraftOptions {
  readonly size?: string;
  readonly formulas?: boolean;
}
export interface ErrataOptions extends ReportOptions, DraftOptions {}
export interface ReplayOptions extends ReportOptions, DraftOptions {
  readonly row: string;
  readonly size?: string;
  readonly from?: string;
}

/** 0: nothing at the gate or above; 1: findings there; 2: the run could not be made, wholly or for one draft. */
export type ExitStatus = 0 | 1 | 2;

const plainNames = ['text', 'json'] as const;

/** A run in which no draft instructs anything has checked nothing: that passes no gate. */
const nothingInAny = (digests: readonly Digest[]): boolean => digests.every(({ steps }) => steps === 0);

/** One unreadable draft among many makes the run fail, whatever was found in the others. */
function statusOf({ digests, unreadable }: Ran, gate: Level): ExitStatus {
  if (unreadable.length > 0 || nothingInAny(digests)) return 2;
  return digests.some(({ found }) => levels.some((level) => found[level] > 0 && atGate(level, gate))) ? 1 : 0;
}

export async function proofCommand(drafts: readonly string[], options: ProofOptions, world: World, load: LoadLibrary): Promise<ExitStatus> {
  const format = oneOf('--format', options.format, namesOf(proofFormats), 'proof');
  const gate = gateOf(options.gate);
  // The record is no draft and no report: neither may be written over by it, nor it by them.
  if (options.record !== undefined && options.output === options.record) throw stop('--record and --output name the same file.');
  const record = recordRun(options, world);
  const order = { ...orderOf('proof', format, options, world), gate };
  const ran = await runDrafts(drafts, { ...options, order, recordOf: record.recordOf }, world, await load());
  await record.finish(ran);
  await sayEmpty(ran, format, world);
  return statusOf(ran, gate);
}

export async function tallyCommand(drafts: readonly string[], options: TallyOptions, world: World, load: LoadLibrary): Promise<ExitStatus> {
  const format = oneOf('--format', options.format, namesOf(tallyFormats), 'tally');
  const { size } = options;
  if (size !== undefined && format !== 'html')
    throw stop('--size of "tally" makes the sheet for a test knitter, which is a page: give --format html with it.');
  if (options.formulas === true && format !== 'csv') throw stop('--formulas of "tally" is for a spreadsheet: give --format csv with it.');
  const order = {
    ...orderOf('tally', format, options, world),
    size: size ?? null,
    ...(options.formulas === true ? { formulas: true } : {}),
  };
  const before = size === undefined ? () => {} : (digests: readonly Digest[]) => refuseUnknownSize(digests, size);
  const ran = await runDrafts(drafts, { ...options, order, recordOf: () => null, before }, world, await load());
  if (size !== undefined) {
    const without = ran.digests.filter((digest) => sizeIndex(digest.sizes, size) < 0).map((digest) => printedPath(digest.path));
    if (without.length > 0) await world.err.write(`${withoutSizeSentence(without, size)}\n`);
  }
  await sayEmpty(ran, format, world);
  return ran.unreadable.length > 0 || nothingInAny(ran.digests) ? 2 : 0;
}

function orderOf(command: Order['command'], format: string, options: ReportOptions, world: World): Order {
  const toFile = options.output !== undefined;
  return { command, format, ...layoutOf(world, options.color, toFile), gate: 'error', base: world.folder, toFile, size: null };
}

/** A draft with nothing in it has no findings; where the report is for a program, or nothing else was proofed, that is said beside it. */
async function sayEmpty({ digests }: Ran, format: string, world: World): Promise<void> {
  if (format === 'text' && !nothingInAny(digests)) return;
  for (const { path, steps } of digests)
    if (steps === 0) await world.err.write(`${printedPath(path)}: nothing in it instructs, so nothing was checked.\n`);
}

export async function replayCommand(draft: string, options: ReplayOptions, world: World, load: LoadLibrary): Promise<ExitStatus> {
  const format = oneOf('--format', options.format, plainNames, 'replay');
  const from = options.from === undefined ? undefined : stitchesOf('--from', options.from);
  const library = await load();
  const proof = await oneProof(draft, options, world, library);
  const size = options.size === undefined ? null : sizeNamed(proof, options.size);
  const replay = library.replayRow(proof, options.row, size, from);
  if (replay === null) throw stop(noRowSentence(proof, options.row));
  const text = format === 'json' ? rowReplayJson(proof, replay) : rowReplayText(proof, replay, textOptionsFor(options, world));
  await deliver(world, text, options.output);
  return 0;
}

/** Two versions of one draft, the older first. */
export async function errataCommand(
  older: string,
  newer: string,
  options: ErrataOptions,
  world: World,
  load: LoadLibrary,
): Promise<ExitStatus> {
  const format = oneOf('--format', options.format, plainNames, 'errata');
  if (older === '-' && newer === '-') throw stop('Only one of the two versions can come from standard input.');
  const library = await load();
  const was = await oneProof(older, options, world, library);
  const is = await oneProof(newer, options, world, library);
  const text = format === 'json' ? errataJson(was, is) : errataText(was, is, textOptionsFor(options, world).width);
  await deliver(world, text, options.output);
  return 0;
}

async function oneProof(given: string, options: ReportOptions & DraftOptions, world: World, library: Library): Promise<Proof> {
  const { drafts, unreadable } = findDrafts([given], world.folder);
  if (drafts.length > 1) throw stop(`${given}: a folder holds many drafts; name the file.`);
  const [draft] = drafts;
  if (draft === undefined) throw stop(unreadable[0]?.sentence ?? `${given}: it could not be read.`);
  refuseDraftAsOutput(options.output, drafts, world.folder);
  const houseFor = houseStyles(
    options.house,
    world.folder,
    library.rules.map((rule) => rule.id),
  );
  const text = await readDraft(draft, () => world.input());
  const proof = 'sentence' in text ? text : proofOne(text, houseFor(draft), library);
  if ('sentence' in proof) throw stop(proof.sentence);
  return proof;
}

const textOptionsFor = (options: ReportOptions, world: World) =>
  textOptionsOf(layoutOf(world, options.color, options.output !== undefined));

/** At least one of the drafts must have the size. */
function refuseUnknownSize(digests: readonly Digest[], given: string): void {
  if (digests.some((digest) => sizeIndex(digest.sizes, given) >= 0)) return;
  const names = [...new Set(digests.flatMap((digest) => digest.sizes))];
  throw stop(`There is no size "${given}" in ${digests.length === 1 ? 'this draft' : 'these drafts'}; the sizes are ${listWords(names)}.`);
}

function sizeNamed(proof: Proof, given: string): string {
  const { sizes } = proof.pattern;
  const exact = sizes[sizeIndex(sizes, given)];
  if (exact !== undefined) return exact;
  if (!hasSizes(proof)) throw stop(`This draft has one size only; leave out --size.`);
  throw stop(`There is no size "${given}" in this draft; its sizes are ${listWords(sizes)}.`);
}

function noRowSentence(proof: Proof, given: string): string {
  const names = [
    ...new Set(
      proof.replay.entries.flatMap((entry) => {
        const section = proof.pattern.sections[entry.section]?.title ?? '';
        return section === '' ? [entry.label] : [`${section} ${entry.label}`, entry.label];
      }),
    ),
  ];
  if (names.length === 0) return `There is no row "${given}": no row was found in this draft.`;
  const near = nearest(given, names);
  return near === null
    ? `There is no row "${given}" in this draft; "rowproof tally" lists its rows.`
    : `There is no row "${given}" in this draft; the nearest is "${near}".`;
}

export async function rulesCommand(id: string | undefined, options: ReportOptions, world: World, load: LoadLibrary): Promise<ExitStatus> {
  const format = oneOf('--format', options.format, plainNames, 'rules');
  const { rules } = await load();
  const text = textOptionsFor(options, world);
  if (id === undefined) {
    await deliver(world, format === 'json' ? rulesJson(rules) : ruleListText(rules, text), options.output);
    return 0;
  }
  const rule = rules.find((each) => each.id === id.toLowerCase());
  if (rule === undefined) {
    const near = nearest(
      id,
      rules.map((each) => each.id),
    );
    throw stop(`There is no rule "${id}"; ${near === null ? '"rowproof rules" lists them' : `the nearest is "${near}"`}.`);
  }
  await deliver(world, format === 'json' ? ruleJson(rule) : rulePageText(rule, text), options.output);
  return 0;
}
