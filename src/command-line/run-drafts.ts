/** Reads and proofs the drafts of a run and writes the report as it grows. */
import type { Unreadable } from '../report/input.ts';
import type { Known } from '../report/record.ts';
import type { Digest, Run } from '../report/report.ts';
import { version } from '../version.ts';
import { type Done, doJob, isUnreadable, type Job, type Outcome } from './draft-work.ts';
import { type DraftFile, findDrafts, readDraft } from './files.ts';
import { type Order, reportOf } from './formats.ts';
import { houseStyles } from './house.ts';
import { inOrder } from './in-order.ts';
import type { Library } from './library.ts';
import { type Outlet, outletOf, refuseDraftAsOutput } from './output.ts';
import { stop } from './stop.ts';
import { progressLine } from './terminal.ts';
import { type Helpers, threadsFor } from './threads.ts';
import type { World } from './world.ts';

export interface DraftOptions {
  readonly house?: string;
  readonly output?: string;
}

/** What is known of a finished run; its report is written. */
export interface Ran {
  readonly digests: readonly Digest[];
  readonly unreadable: readonly Unreadable[];
  /** What the record keeps, by the path of the draft. */
  readonly records: ReadonlyMap<string, readonly Known[]>;
}

export interface RunOptions extends DraftOptions {
  readonly order: Order;
  /** What the record knows of a draft; see `Job`. */
  readonly recordOf: (draft: DraftFile) => Job['record'];
  /** Looks at what was found before the report is finished, and may stop the run. */
  readonly before?: (digests: readonly Digest[]) => void;
}

/**
 * Every draft of the run. One that cannot be read is said on standard error and the others are still proofed; a run in
 * which none can be read stops.
 */
export async function runDrafts(given: readonly string[], options: RunOptions, world: World, library: Library): Promise<Ran> {
  const found = findDrafts(given, world.folder);
  refuseDraftAsOutput(options.output, found.drafts, world.folder);
  const houseFor = houseStyles(
    options.house,
    world.folder,
    library.rules.map((rule) => rule.id),
  );
  const report = await reportOf(options.order);
  const run: Run = {
    tool: { name: 'rowproof', version },
    rules: library.rules,
    drafts: found.drafts.length + found.unreadable.length,
  };
  const jobs: Job[] = found.drafts.map((draft, index) => ({
    index,
    draft,
    source: null,
    house: houseFor(draft) ?? null,
    record: options.recordOf(draft),
  }));
  const assembly = report.assemble(run);
  const outlet = outletOf(world, options.output);
  const digests: Digest[] = [];
  const records = new Map<string, readonly Known[]>();
  const unreadable: Unreadable[] = [...found.unreadable];
  const keep = async ({ part, digest, record }: Done) => {
    digests.push(digest);
    if (record !== null) records.set(digest.path, record);
    await outlet.write(assembly.add(part, digest));
  };
  const here = (job: Job) => doJob(job, report, run, library);
  await allOf(jobs, here, options.order, world, async (outcome) => {
    if (isUnreadable(outcome)) unreadable.push(outcome);
    else await keep(outcome);
  });
  if (digests.length === 0 && unreadable.length === 1 && unreadable[0] !== undefined) throw stop(unreadable[0].sentence);
  for (const { sentence } of unreadable) await world.err.write(`${sentence}\n`);
  if (digests.length === 0) throw stop('None of the drafts could be read.');
  options.before?.(digests);
  await finish(outlet, assembly.end(unreadable));
  return { digests, unreadable, records };
}

async function finish(outlet: Outlet, pieces: readonly string[]): Promise<void> {
  for (const piece of pieces) await outlet.write(piece);
  outlet.close();
}

/** Hands the outcomes over in the order of the drafts. */
async function allOf(
  jobs: readonly Job[],
  here: (job: Job) => Promise<Outcome>,
  order: Order,
  world: World,
  hand: (outcome: Outcome) => Promise<void>,
): Promise<void> {
  const progress = progressLine(world);
  const readable = await Promise.all(jobs.map((job) => withInput(job, world)));
  const helpers: Helpers | null = threadsFor(jobs, order, world);
  const work = async (job: Job | Unreadable): Promise<Outcome> => ('sentence' in job ? job : here(job));
  const hands =
    helpers === null ? [work] : helpers.hands.map((help) => async (job: Job | Unreadable) => ('sentence' in job ? job : help(job)));
  try {
    let done = 0;
    const outcomes = inOrder(readable, hands, helpers === null ? 1 : helpers.ahead);
    for (;;) {
      await progress.step(done + 1, jobs.length, jobs[done]?.draft.path ?? '');
      const next = await outcomes.next();
      if (next.done === true) break;
      await hand(next.value);
      done += 1;
    }
  } finally {
    helpers?.end();
    await progress.clear();
  }
}

/** Standard input can be read here only. */
async function withInput(job: Job, world: World): Promise<Job | Unreadable> {
  if (job.draft.absolute !== null) return job;
  const text = await readDraft(job.draft, () => world.input());
  return 'sentence' in text ? text : { ...job, source: text.source };
}
