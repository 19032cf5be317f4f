/** The four commands. Each returns the exit status of the run. */

import { nearest } from '../house-style/nearest.ts';
import type { Proof } from '../index.ts';
import { atGate } from '../report/levels.ts';
import { hasSizes, listWords } from '../report/place.ts';
import { rowReplayJson, rowReplayText } from '../report/row-replay-report.ts';
import { ruleJson, ruleListText, rulePageText, rulesJson } from '../report/rules-report.ts';
import { findDrafts } from './files.ts';
import { type FormatOptions, namesOf, proofFormats, tallyFormats } from './formats.ts';
import type { Library } from './library.ts';
import { gateOf, oneOf, stitchesOf } from './options.ts';
import { deliver } from './output.ts';
import { type RecordOptions, withRecord } from './record-file.ts';
import { type DraftOptions, runDrafts } from './run-drafts.ts';
import { stop } from './stop.ts';
import { textOptions } from './terminal.ts';
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
}
export interface ReplayOptions extends ReportOptions, DraftOptions {
  readonly row: string;
  readonly size?: string;
  readonly from?: string;
}

/** 0: nothing at the gate or above; 1: findings there; 2: the run could not be made, wholly or for one draft. */
export type ExitStatus = 0 | 1 | 2;
export type LoadLibrary = () => Promise<Library>;

const plainNames = ['text', 'json'] as const;

function formatOptions(options: ReportOptions, world: World): FormatOptions {
  const toFile = options.output !== undefined;
  return { text: textOptions(world, options.color, toFile), gate: 'error', base: world.folder, toFile };
}

export async function proofCommand(drafts: readonly string[], options: ProofOptions, world: World, load: LoadLibrary): Promise<ExitStatus> {
  const format = oneOf('--format', options.format, namesOf(proofFormats), 'proof');
  const gate = gateOf(options.gate);
  const found = await runDrafts(drafts, options, world, await load());
  // The record is no draft and no report: neither may be written over by it, nor it by them.
  if (options.record !== undefined && options.output === options.record) throw stop('--record and --output name the same file.');
  const input = await withRecord(found, options, world);
  await deliver(world, await proofFormats[format](input, { ...formatOptions(options, world), gate }), options.output);
  if (input.unreadable.length > 0) return 2;
  return input.proofs.some((proof) => proof.findings.some((finding) => atGate(finding.level, gate))) ? 1 : 0;
}

export async function tallyCommand(drafts: readonly string[], options: TallyOptions, world: World, load: LoadLibrary): Promise<ExitStatus> {
  const format = oneOf('--format', options.format, namesOf(tallyFormats), 'tally');
  if (options.size !== undefined && format !== 'html')
    throw stop('--size of "tally" makes the sheet for a test knitter, which is a page: give --format html with it.');
  const input = await runDrafts(drafts, options, world, await load());
  const size = options.size === undefined ? undefined : sheetSize(input.proofs, options.size);
  await deliver(
    world,
    await tallyFormats[format](input, { ...formatOptions(options, world), ...(size === undefined ? {} : { size }) }),
    options.output,
  );
  return input.unreadable.length > 0 ? 2 : 0;
}

export async function replayCommand(draft: string, options: ReplayOptions, world: World, load: LoadLibrary): Promise<ExitStatus> {
  const format = oneOf('--format', options.format, plainNames, 'replay');
  const from = options.from === undefined ? undefined : stitchesOf('--from', options.from);
  if (findDrafts([draft], world.folder).drafts.length > 1) throw stop(`${draft}: replay works on one draft; name the file.`);
  const library = await load();
  const { proofs } = await runDrafts([draft], options, world, library);
  const [proof] = proofs;
  if (proof === undefined) throw stop(`${draft}: it could not be read.`);
  const size = options.size === undefined ? null : sizeNamed(proof, options.size);
  const replay = library.replayRow(proof, options.row, size, from);
  if (replay === null) throw stop(noRowSentence(proof, options.row));
  const text = format === 'json' ? rowReplayJson(proof, replay) : rowReplayText(proof, replay, formatOptions(options, world).text);
  await deliver(world, text, options.output);
  return 0;
}

/** The size as the drafts spell it; at least one of them has it. */
function sheetSize(proofs: readonly Proof[], given: string): string {
  const names = [...new Set(proofs.flatMap((proof) => proof.pattern.sizes))];
  const exact = names.find((name) => name === given) ?? names.find((name) => name.toLowerCase() === given.trim().toLowerCase());
  if (exact === undefined)
    throw stop(`There is no size "${given}" in ${proofs.length === 1 ? 'this draft' : 'these drafts'}; the sizes are ${listWords(names)}.`);
  return exact;
}

function sizeNamed(proof: Proof, given: string): string {
  const { sizes } = proof.pattern;
  const exact = sizes.find((name) => name === given) ?? sizes.find((name) => name.toLowerCase() === given.trim().toLowerCase());
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
  const { text } = formatOptions(options, world);
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
