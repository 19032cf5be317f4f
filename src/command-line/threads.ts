/** Other threads that proof drafts at the same time. They pay where there are many drafts: each has to load and warm up first. */
import { statSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { parentPort, Worker, workerData } from 'node:worker_threads';
import type { Run } from '../report/report.ts';
import { version } from '../version.ts';
import { doJob, type Job, type Outcome } from './draft-work.ts';
import { type Order, reportOf } from './formats.ts';
import type { LoadLibrary } from './library.ts';
import { unforeseenSentence } from './stop.ts';
import type { World } from './world.ts';

export interface Helpers {
  readonly hands: readonly ((job: Job) => Promise<Outcome>)[];
  /** How many drafts may be begun before the oldest of them is written. */
  readonly ahead: number;
  end(): void;
}

/** Characters of draft that a thread must have before it to be worth its start. Measured; see the notes on costs. */
const leastForThread = 30_000;
const mostThreads = 8;

/** Threads for these drafts; null where one thread is quicker, or where the program is not a file of its own. */
export function threadsFor(jobs: readonly Job[], order: Order, world: World): Helpers | null {
  const { program } = world;
  if (program === undefined || jobs.length < 2) return null;
  const many = Math.min(mostThreads, availableParallelism(), jobs.length, Math.floor(sizeOf(jobs) / leastForThread));
  if (many < 2) return null;
  const given: Given = { order, drafts: jobs.length };
  const threads = Array.from({ length: many }, () => threadOf(program, given));
  return {
    hands: threads.map((thread) => thread.work),
    ahead: many * 8,
    end: () => {
      for (const thread of threads) thread.end();
    },
  };
}

function sizeOf(jobs: readonly Job[]): number {
  let size = 0;
  for (const { draft } of jobs) {
    try {
      if (draft.absolute !== null) size += statSync(draft.absolute).size;
    } catch {
      // Why it cannot be read is said by whoever reads it.
    }
  }
  return size;
}

interface Given {
  readonly order: Order;
  readonly drafts: number;
}

/** A thread that is lost over a draft is replaced with the next draft, and the draft is named. */
function threadOf(program: string, given: Given): { work(job: Job): Promise<Outcome>; end(): void } {
  let thread: Worker | null = null;
  let waiting: { readonly job: Job; readonly resolve: (outcome: Outcome) => void } | null = null;
  const settle = (outcome: Outcome) => {
    const { resolve } = waiting ?? { resolve: () => {} };
    waiting = null;
    resolve(outcome);
  };
  const lost = (error: unknown) => {
    thread = null;
    const path = waiting?.job.draft.path ?? '';
    settle({ path, sentence: `${path}: ${unforeseenSentence(error)}` });
  };
  const begin = (): Worker => {
    const begun = new Worker(program, { workerData: given });
    begun.on('message', settle);
    begun.on('error', lost);
    begun.on('exit', () => {
      if (thread === begun) lost(new Error('a thread ended before its draft was read'));
    });
    return begun;
  };
  return {
    work: (job) =>
      new Promise((resolve) => {
        waiting = { job, resolve };
        thread ??= begin();
        thread.postMessage(job);
      }),
    end: () => {
      const ended = thread;
      thread = null;
      void ended?.terminate();
    },
  };
}

/** The other end: does one job after the other until the thread is ended. */
export async function serve(load: LoadLibrary): Promise<void> {
  const port = parentPort;
  if (port === null) return;
  const { order, drafts } = workerData as Given;
  // Jobs sent before the reader is loaded wait in the port.
  const library = await load();
  const report = await reportOf(order);
  const run: Run = { tool: { name: 'rowproof', version }, rules: library.rules, drafts };
  port.on('message', (job: Job) => {
    // What cannot be handed over ends the thread, and the draft is named at the other end.
    void doJob(job, report, run, library).then((outcome) => port.postMessage(outcome));
  });
}
