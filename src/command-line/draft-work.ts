/** What is done with one draft: read, proofed, set against the record, and made into its part of the report. */
import type { HouseStyle } from '../house-style/house-style.ts';
import type { Proof } from '../index.ts';
import type { Unreadable } from '../report/input.ts';
import { compare, type Known, recordOf } from '../report/record.ts';
import { type Digest, digestOf, type Report, type Run } from '../report/report.ts';
import { type DraftFile, type DraftText, readDraft } from './files.ts';
import type { Library } from './library.ts';
import { unforeseenSentence } from './stop.ts';

/** One draft to be worked on; words and numbers only, so that another thread can be given it. */
export interface Job {
  readonly index: number;
  readonly draft: DraftFile;
  /** The text of standard input; a file is read by whoever does the work. */
  readonly source: string | null;
  readonly house: HouseStyle | null;
  /** What the record knows of the draft; "start" where the record is made now, null where there is none. */
  readonly record: readonly Known[] | 'start' | null;
}

export interface Done {
  readonly part: unknown;
  readonly digest: Digest;
  /** What the record keeps of the draft. */
  readonly record: readonly Known[] | null;
}

export type Outcome = Done | Unreadable;

export const isUnreadable = (outcome: Outcome): outcome is Unreadable => 'sentence' in outcome;

export async function doJob(job: Job, report: Report<unknown>, run: Run, library: Library): Promise<Outcome> {
  const text = job.source === null ? await readDraft(job.draft) : { ...job.draft, source: job.source };
  if ('sentence' in text) return text;
  const proof = proofOne(text, job.house, library);
  if ('sentence' in proof) return proof;
  try {
    const { proof: known, record } = besideRecord(proof, job.record);
    return { part: report.part(known, job.index, run), digest: digestOf(known), record };
  } catch (error) {
    return { path: job.draft.path, sentence: `${job.draft.path}: ${unforeseenSentence(error)}` };
  }
}

/** One draft that trips the program must not take the others with it. */
export function proofOne(text: DraftText, house: HouseStyle | null, library: Library): Proof | Unreadable {
  try {
    return library.proof(text.source, { path: text.path, ...(house === null ? {} : { house }) });
  } catch (error) {
    return { path: text.path, sentence: `${text.path}: ${unforeseenSentence(error)}` };
  }
}

function besideRecord(proof: Proof, record: Job['record']): { readonly proof: Proof; readonly record: readonly Known[] | null } {
  if (record === null) return { proof, record: null };
  if (record === 'start') return { proof: { ...proof, findings: [], known: proof.findings }, record: recordOf(proof) };
  const { fresh, known, left } = compare(proof, record);
  return { proof: { ...proof, findings: fresh, known }, record: left };
}
