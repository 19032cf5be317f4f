/** Findings as data. The shape is a promise to other programs: `schema/proof.schema.json` says it in full. */
import type { Edit, Finding, Level } from '../../rules/rule.ts';
import type { Proof } from '../index.ts';
import type { ReportInput } from './input.ts';
import { jsonItem, jsonList } from './json-list.ts';
import { inPlaceOrder, type Range, rangeOf, sizeNames } from './place.ts';
import { type Report, whole } from './report.ts';

interface DraftDocument {
  readonly path: string;
  readonly title: string;
  readonly sizes: readonly string[];
  readonly reading: {
    readonly steps: number;
    readonly read: number;
    readonly notRead: readonly { readonly line: number; readonly column: number; readonly text: string }[];
  };
  readonly findings: readonly FindingDocument[];
  /** Findings let stand; only where there are some. */
  readonly accepted?: readonly (FindingDocument & { readonly why: 'stet' | 'known'; readonly reason: string | null })[];
}

interface FindingDocument extends Range {
  readonly rule: string;
  readonly level: Level;
  readonly section: string | null;
  readonly row: string | null;
  readonly sizes: readonly string[];
  readonly message: string;
  readonly stated: number | readonly number[] | null;
  readonly replayed: number | readonly number[] | null;
  readonly fix: (Range & { readonly text: string }) | null;
  /** What speaks for it, one sentence each. */
  readonly evidence: readonly string[];
  /** Small changes that would each make the place work, in words and as changes of the text. */
  readonly edits: readonly (Range & { readonly text: string; readonly words: string })[];
}

export const jsonReport: Report<string> = {
  part: (proof) => jsonItem(draftDocument(proof), 2),
  assemble: ({ tool }) => jsonList(`{\n  "tool": ${jsonItem({ name: tool.name, version: tool.version }, 1)},\n  "drafts": `, 1, '\n}\n'),
};

export const proofJson = (input: ReportInput): string => whole(jsonReport, input);

function draftDocument(proof: Proof): DraftDocument {
  const { reading, sizes, title } = proof.pattern;
  return {
    path: proof.path,
    title,
    sizes,
    reading: {
      steps: reading.steps,
      read: reading.read,
      notRead: reading.notRead.map((unread) => {
        const { line, column } = rangeOf(proof.manuscript, unread.span);
        return { line, column, text: unread.text };
      }),
    },
    findings: inPlaceOrder(proof.findings).map((finding) => findingDocument(proof, finding)),
    ...acceptedDocuments(proof),
  };
}

function acceptedDocuments(proof: Proof): Pick<DraftDocument, 'accepted'> {
  const stets = new Map((proof.withheld ?? []).map(({ finding, reason }) => [finding, reason]));
  const all = inPlaceOrder([...stets.keys(), ...(proof.known ?? [])]);
  if (all.length === 0) return {};
  return {
    accepted: all.map((finding) => ({
      ...findingDocument(proof, finding),
      why: stets.has(finding) ? ('stet' as const) : ('known' as const),
      reason: stets.get(finding) ?? null,
    })),
  };
}

function findingDocument(proof: Proof, finding: Finding): FindingDocument {
  return {
    rule: finding.rule,
    level: finding.level,
    ...rangeOf(proof.manuscript, finding.span),
    section: finding.section,
    row: finding.row,
    sizes: sizeNames(proof, finding.sizes),
    message: finding.message,
    stated: finding.stated,
    replayed: finding.replayed,
    fix: finding.fix === null ? null : fixDocument(proof, finding.fix),
    evidence: finding.evidence ?? [],
    edits: (finding.edits ?? []).map((edit, at) => ({ ...fixDocument(proof, edit), words: finding.wouldFit?.[at] ?? edit.text })),
  };
}

function fixDocument(proof: Proof, fix: Edit): Range & { readonly text: string } {
  // The end of an edit is exact: a line end it replaces belongs to it.
  const from = proof.manuscript.place(fix.span.start);
  const to = proof.manuscript.place(fix.span.end);
  return { line: from.line, column: from.column, endLine: to.line, endColumn: to.column, text: fix.text };
}
