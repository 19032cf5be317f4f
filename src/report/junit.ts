/**
 * Findings as JUnit XML, for build servers. There is no official standard; this keeps to the elements and attributes that
 * the schemas in circulation share. One suite per draft; a finding at the gate fails, one below it passes with its words.
 */
import type { Finding, Level } from '../../rules/rule.ts';
import type { Proof } from '../index.ts';
import type { ReportInput, Unreadable } from './input.ts';
import { atGate } from './levels.ts';
import { inPlaceOrder, placeWords, printedPath, rangeOf } from './place.ts';
import { plural } from './plural.ts';
import { type Report, whole } from './report.ts';

export interface JunitOptions {
  readonly gate: Level;
}

/** Numbers and text of one draft. */
export interface Suite {
  readonly tests: number;
  readonly failures: number;
  readonly errors: number;
  readonly skipped: number;
  readonly xml: string;
}

/** The numbers of the whole run stand at the top, so nothing can be written before the last draft is there. */
export const junitReport = ({ gate }: JunitOptions): Report<Suite> => ({
  part: (proof) => proofSuite(proof, gate),
  assemble: ({ tool }) => {
    const suites: Suite[] = [];
    return {
      add: (suite) => {
        suites.push(suite);
        return '';
      },
      end: (unreadable) => {
        const all = [...suites, ...unreadable.map(unreadableSuite)];
        const sum = (key: 'tests' | 'failures' | 'errors') => all.reduce((total, suite) => total + suite[key], 0);
        const head = `<testsuites name="${xml(tool.name)}" tests="${sum('tests')}" failures="${sum('failures')}" errors="${sum('errors')}">`;
        return ['<?xml version="1.0" encoding="UTF-8"?>', head, ...all.map((suite) => suite.xml), '</testsuites>'].map(
          (line) => `${line}\n`,
        );
      },
    };
  },
});

export const proofJunit = (input: ReportInput, options: JunitOptions = { gate: 'error' }): string => whole(junitReport(options), input);

function proofSuite(proof: Proof, gate: Level): Suite {
  const path = printedPath(proof.path);
  const findings = inPlaceOrder(proof.findings);
  const failures = findings.filter((finding) => atGate(finding.level, gate)).length;
  const { notRead } = proof.pattern.reading;
  const standing = standingCases(proof, path);
  const skipped = (notRead.length > 0 ? 1 : 0) + standing.length;
  const counts = { tests: findings.length + 1 + standing.length, failures, errors: 0, skipped };
  return {
    ...counts,
    xml: [
      `  <testsuite name="${xml(path)}" tests="${counts.tests}" failures="${failures}" errors="0" skipped="${skipped}">`,
      readingCase(proof, path),
      ...findings.map((finding) => findingCase(proof, finding, path, gate)),
      ...standing,
      '  </testsuite>',
    ].join('\n'),
  };
}

/** Steps that were not read are skipped, not passed. */
function readingCase(proof: Proof, path: string): string {
  const { steps, read, notRead } = proof.pattern.reading;
  const open = `    <testcase classname="${xml(path)}" name="${xml(`${read} of ${plural(steps, 'step')} read`)}"`;
  if (notRead.length === 0) return `${open}/>`;
  const places = notRead.map((unread) => `line ${rangeOf(proof.manuscript, unread.span).line}: ${unread.text.trim()}`).join('\n');
  return [
    `${open}>`,
    `      <skipped message="${xml(`${plural(notRead.length, 'step')} not read and not checked`)}"/>`,
    `      <system-out>${xml(places)}</system-out>`,
    '    </testcase>',
  ].join('\n');
}

/** What is known from the record or let stand by the draft is not forgotten: it is skipped, with the reason. */
function standingCases(proof: Proof, path: string): string[] {
  const reasons = new Map((proof.withheld ?? []).map(({ finding, reason }) => [finding, `let stand by the draft: ${reason}`]));
  return inPlaceOrder([...reasons.keys(), ...(proof.known ?? [])]).map((finding) =>
    [
      `    <testcase classname="${xml(path)}" name="${xml(caseName(proof, finding))}">`,
      `      <skipped message="${xml(reasons.get(finding) ?? 'known from the record of findings')}"/>`,
      `      <system-out>${xml(`${finding.level}: ${finding.message}`)}</system-out>`,
      '    </testcase>',
    ].join('\n'),
  );
}

function caseName(proof: Proof, finding: Finding): string {
  const place = placeWords(proof, finding);
  return `${finding.rule}: ${place === '' ? '' : `${place}, `}line ${rangeOf(proof.manuscript, finding.span).line}`;
}

function findingCase(proof: Proof, finding: Finding, path: string, gate: Level): string {
  const { line } = rangeOf(proof.manuscript, finding.span);
  const name = caseName(proof, finding);
  const body = [
    `${path}, line ${line}`,
    finding.message,
    ...(finding.evidence ?? []),
    ...(finding.wouldFit ?? []).map((edit) => `Would fit: ${edit}`),
  ].join('\n');
  const answer = atGate(finding.level, gate)
    ? `<failure type="${xml(finding.level)}" message="${xml(finding.message)}">${xml(body)}</failure>`
    : `<system-out>${xml(`${finding.level}: ${body}`)}</system-out>`;
  return [`    <testcase classname="${xml(path)}" name="${xml(name)}">`, `      ${answer}`, '    </testcase>'].join('\n');
}

/** A draft that could not be read is an error of the run, not a failure of the draft. */
function unreadableSuite(draft: Unreadable): Suite {
  const path = printedPath(draft.path);
  return {
    tests: 1,
    failures: 0,
    errors: 1,
    skipped: 0,
    xml: [
      `  <testsuite name="${xml(path)}" tests="1" failures="0" errors="1" skipped="0">`,
      `    <testcase classname="${xml(path)}" name="the draft can be read">`,
      `      <error type="unreadable" message="${xml(draft.sentence)}"/>`,
      '    </testcase>',
      '  </testsuite>',
    ].join('\n'),
  };
}

const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&apos;' };

/** Whether XML 1.0 allows the character (section 2.2, production 2 Char). */
function isXmlCharacter(code: number): boolean {
  return (
    code === 0x9 ||
    code === 0xa ||
    code === 0xd ||
    (code >= 0x20 && code <= 0xd7ff) ||
    (code >= 0xe000 && code <= 0xfffd) ||
    code >= 0x10000
  );
}

/** Text for an element or an attribute: marks of XML escaped, characters that XML 1.0 does not allow left out. */
export function xml(text: string): string {
  let safe = '';
  for (const character of text) {
    if (isXmlCharacter(character.codePointAt(0) ?? 0)) safe += entities[character] ?? character;
  }
  return safe;
}
