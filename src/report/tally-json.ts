/** The count sheet as data; `schema/tally.schema.json` says the shape in full. */
import type { Proof } from '../index.ts';
import type { Entry } from '../replay/replay.ts';
import type { ReportInput } from './input.ts';
import { rangeOf } from './place.ts';

export function tallyJson(input: ReportInput): string {
  const drafts = input.proofs.map((proof) => ({
    path: proof.path,
    sizes: proof.pattern.sizes,
    rows: proof.replay.entries.map((entry) => rowDocument(proof, entry)),
  }));
  return `${JSON.stringify({ drafts }, null, 2)}\n`;
}

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
  return { ...row, before: entry.before, after: entry.after };
}

/** Heading an entry stands under; empty before the first heading. */
export function sectionTitle(proof: Proof, entry: Entry): string {
  return proof.pattern.sections[entry.section]?.title ?? '';
}

/** "8n + 3", "8n", "8n − 1": the count after a row that is given only by its multiple. */
export function multipleWords(count: { readonly perRepeat: number; readonly plus: number }): string {
  if (count.plus === 0) return `${count.perRepeat}n`;
  return `${count.perRepeat}n ${count.plus < 0 ? '−' : '+'} ${Math.abs(count.plus)}`;
}
