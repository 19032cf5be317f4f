/** Findings as SARIF 2.1.0 (OASIS), for services that show results beside the text. */
import type { Edit, Finding, Level, Rule } from '../../rules/rule.ts';
import type { Proof } from '../index.ts';
import type { Span } from '../manuscript/manuscript.ts';
import { fingerprint } from './fingerprint.ts';
import type { ReportInput, Unreadable } from './input.ts';
import { jsonArray, jsonItem, jsonList } from './json-list.ts';
import { levelHeading } from './levels.ts';
import { inPlaceOrder, rangeOf, sizePhrase } from './place.ts';
import { type Report, type Run, whole } from './report.ts';
import { draftUri } from './uri.ts';

const sarifLevel: Readonly<Record<Level, 'error' | 'warning' | 'note'>> = { error: 'error', query: 'warning', style: 'note' };

export interface SarifOptions {
  /** Absolute path of the folder the run was started in; paths below it become relative. */
  readonly base: string;
}

/** What one draft adds to a log, each entry as JSON text. */
export interface SarifPart {
  readonly results: readonly string[];
  readonly artifact: string;
  readonly notes: readonly string[];
}

/** Results are written as they come; what is known of the run as a whole follows them. `$schema` names the schema as OASIS publishes it. */
export const sarifReport = ({ base }: SarifOptions): Report<SarifPart> => ({
  part: (proof, index, run) => ({
    results: results(
      proof,
      index,
      sarifRules(run).map((rule) => rule.id),
      base,
    ).map((each) => jsonItem(each, 4)),
    artifact: jsonItem({ location: { uri: draftUri(proof.path, base) }, sourceLanguage: 'markdown' }, 4),
    notes: notReadNotes(proof, index, base).map((each) => jsonItem(each, 6)),
  }),
  assemble: (run) => {
    const written = jsonList(sarifHead(run), 3, '');
    const artifacts: string[] = [];
    const notes: string[] = [];
    return {
      add: (part, digest) => {
        artifacts.push(part.artifact);
        notes.push(...part.notes);
        return part.results.map((result) => written.add(result, digest)).join('');
      },
      end: (unreadable) => {
        const missing = unreadable.map((draft) => jsonItem(unreadableNote(draft, base), 6));
        return [
          ...written.end(unreadable),
          `,\n      "artifacts": ${jsonArray(artifacts, 3)},\n      "invocations": [\n        {\n`,
          `          "executionSuccessful": ${unreadable.length === 0},\n`,
          `          "toolExecutionNotifications": ${jsonArray([...missing, ...notes], 5)}\n        }\n      ]\n    }\n  ]\n}\n`,
        ];
      },
    };
  },
});

export const proofSarif = (input: ReportInput, options: SarifOptions = { base: '/' }): string => whole(sarifReport(options), input);

const sarifRules = ({ rules }: Run): readonly Rule[] => [...rules].sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));

function sarifHead(run: Run): string {
  const { tool } = run;
  const driver = {
    name: tool.name,
    version: tool.version,
    semanticVersion: tool.version,
    rules: sarifRules(run).map(ruleDescriptor),
  };
  const schema = 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json';
  return `{\n  "$schema": "${schema}",\n  "version": "2.1.0",\n  "runs": [\n    {\n      "tool": ${jsonItem({ driver }, 3)},\n      "columnKind": "utf16CodeUnits",\n      "results": `;
}

function unreadableNote(draft: Unreadable, base: string) {
  return {
    level: 'error',
    message: { text: draft.sentence },
    locations: [{ physicalLocation: { artifactLocation: { uri: draftUri(draft.path, base) } } }],
  };
}

function ruleDescriptor(rule: Rule) {
  const { id } = rule;
  const help = `${rule.meaning}\n\n${rule.reason}\n\nWrong:\n\n${rule.wrong.draft.trim()}\n\nRight:\n\n${rule.right.draft.trim()}`;
  const fenced = (draft: string) => `\`\`\`\`markdown\n${draft.trim()}\n\`\`\`\``;
  return {
    id,
    shortDescription: { text: rule.title },
    fullDescription: { text: rule.meaning },
    help: {
      text: help,
      markdown: `${rule.meaning}\n\n${rule.reason}\n\nWrong:\n\n${fenced(rule.wrong.draft)}\n\nRight:\n\n${fenced(rule.right.draft)}`,
    },
    defaultConfiguration: { enabled: rule.offByDefault !== true, level: sarifLevel[rule.level] },
    properties: { tags: [levelHeading[rule.level]] },
  };
}

/** What is let stand is in the log as well, marked as suppressed, so that a service neither shows nor forgets it. */
function allFindings(proof: Proof): readonly Finding[] {
  return [...proof.findings, ...(proof.withheld ?? []).map((each) => each.finding), ...(proof.known ?? [])];
}

function suppressions(proof: Proof, finding: Finding) {
  const stet = (proof.withheld ?? []).find((each) => each.finding === finding);
  const known = proof.known?.includes(finding) === true;
  return {
    ...(stet === undefined ? {} : { suppressions: [{ kind: 'inSource', status: 'accepted', justification: stet.reason }] }),
    ...(known ? { suppressions: [{ kind: 'external', status: 'accepted', justification: 'Known from the record of the house.' }] } : {}),
    // Only a run that was given a record knows what is new.
    ...(proof.known === undefined ? {} : { baselineState: known ? 'unchanged' : 'new' }),
  };
}

function results(proof: Proof, draft: number, ruleIds: readonly string[], base: string) {
  const seen = new Map<string, number>();
  return inPlaceOrder(allFindings(proof)).map((finding) => {
    const key = fingerprint([finding.rule, finding.section ?? '', finding.row ?? '', wordsAt(proof, finding.span)]);
    const nth = (seen.get(key) ?? 0) + 1;
    seen.set(key, nth);
    return result(proof, finding, draft, ruleIds, base, `${key}:${nth}`);
  });
}

function result(proof: Proof, finding: Finding, draft: number, ruleIds: readonly string[], base: string, mark: string) {
  const also = finding.also ?? [];
  return {
    ruleId: finding.rule,
    ...(ruleIds.includes(finding.rule) ? { ruleIndex: ruleIds.indexOf(finding.rule) } : {}),
    level: sarifLevel[finding.level],
    message: { text: messageText(proof, finding) },
    locations: [{ ...location(proof, finding.span, draft, base), ...logical(finding) }],
    ...(also.length === 0
      ? {}
      : {
          relatedLocations: also.map((span, index) => ({
            id: index + 1,
            ...location(proof, span, draft, base),
            message: { text: 'This place belongs to the same finding.' },
          })),
        }),
    partialFingerprints: { 'rowproof/v1': mark },
    ...suppressions(proof, finding),
    ...(finding.fix === null ? {} : { fixes: [fix(proof, finding.fix, draft, base)] }),
  };
}

/** A viewer shows the message alone, so the sizes, the evidence and the edits that would fit go into it. */
function messageText(proof: Proof, finding: Finding): string {
  const sizes = sizePhrase(proof, finding.sizes);
  const lines = [
    sizes === '' ? finding.message : `${finding.message} (${sizes})`,
    ...(finding.evidence ?? []),
    ...(finding.fix === null ? (finding.wouldFit ?? []).map((edit) => `Would fit: ${edit}`) : []),
  ];
  return lines.join('\n');
}

const wordsAt = (proof: Proof, span: Span) => proof.manuscript.source.slice(span.start, span.end);

function region(proof: Proof, span: Span) {
  const { line, column, endLine, endColumn } = rangeOf(proof.manuscript, span);
  return { startLine: line, startColumn: column, endLine, endColumn };
}

function location(proof: Proof, span: Span, index: number, base: string) {
  return { physicalLocation: { artifactLocation: { uri: draftUri(proof.path, base), index }, region: region(proof, span) } };
}

/** Section and row, for viewers that group by them. */
function logical(finding: Finding) {
  const names = [finding.section, finding.row].filter((name) => name !== null && name !== '');
  if (names.length === 0) return {};
  return { logicalLocations: [{ name: names[names.length - 1], fullyQualifiedName: names.join(' / ') }] };
}

function fix(proof: Proof, edit: Edit, index: number, base: string) {
  const from = proof.manuscript.place(edit.span.start);
  const to = proof.manuscript.place(edit.span.end);
  const was = wordsAt(proof, edit.span);
  return {
    description: { text: was === '' ? `Add "${edit.text}"` : `Change "${was}" to "${edit.text}"` },
    artifactChanges: [
      {
        artifactLocation: { uri: draftUri(proof.path, base), index },
        replacements: [
          {
            deletedRegion: { startLine: from.line, startColumn: from.column, endLine: to.line, endColumn: to.column },
            insertedContent: { text: edit.text },
          },
        ],
      },
    ],
  };
}

/** What was not read is part of the answer: a service must not take silence for a check. */
function notReadNotes(proof: Proof, index: number, base: string) {
  return proof.pattern.reading.notRead.map((unread) => ({
    level: 'note',
    message: { text: `Not read and not checked: ${unread.text.trim()}` },
    locations: [location(proof, unread.span, index, base)],
  }));
}
