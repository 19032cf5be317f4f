/** The count sheet as data; `schema/tally.schema.json` says the shape in full. */
import type { Proof } from '../index.ts';
import type { Entry } from '../replay/replay.ts';
import type { ReportInput } from './input.ts';
import { jsonItem, jsonList } from './json-list.ts';
import { rangeOf } from './place.ts';
import { type Report, whole } from './report.ts';

export const tallyJsonReport: Report<string> = {
  part: (proof) => {
    const rows = proof.replay.entries.map((entry) => rowDocument(proof, entry));
    return jsonItem({ path: proof.path, sizes: proof.pattern.sizes, rows }, 2);
  },
  assemble: () => jsonList('{\n  "drafts": ', 1, '\n}\n'),
};

export const tallyJson = (input: ReportInput): string => whole(tallyJsonReport, input);

function rowDocument(proof: Proof, entry: Entry) {
  const row = {
    section: sectionTitle(proof, entry),
    label: entry.label,
    line: rangeOf(proof.manuscript, entry.span).line,
    textLine: rangeOf(proof.manuscript, entry.textSpan).line,
    side: entry.side,
    times: entry.times,
  };
  if (entry.afterPerRepeat !== null) {
    const { perRepeat, plus } = entry.afterPerRepeat;
    return { ...row, afterPerRepeat: { perRepeat, plus } };
  }
  const skipped = (entry.skips ?? []).map((size) => proof.pattern.sizes[size] ?? '');
  return { ...row, before: entry.before, after: entry.after, ...(skipped.length === 0 ? {} : { skippedBy: skipped }) };
}

/** Heading an entry stands under; empty before the first heading. */
export function sectionTitle(proof: Proof, entry: Entry): string {
  return proof.pattern.sections[entry.section]?.title ?? '';
}

/** "multiple of 8 + 3", "multiple of 8", "multiple of 8 − 1": the count after a row that is given only by its multiple. */
export function multipleWords(count: { readonly perRepeat: number; readonly plus: number }): string {
  const over = count.plus === 0 ? '' : ` ${count.plus < 0 ? '−' : '+'} ${Math.abs(count.plus)}`;
  return `multiple of ${count.perRepeat}${over}`;
}
