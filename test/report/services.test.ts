import { readFileSync } from 'node:fs';
import Ajv from 'ajv';
import { describe, expect, test } from 'vitest';
import type { ReportInput } from '../../src/report/input.ts';
import { proofJunit, xml } from '../../src/report/junit.ts';
import { proofSarif } from '../../src/report/sarif.ts';
import { draftUri } from '../../src/report/uri.ts';
import { at, cap, finding, handMade, inputOf } from './hand-made.ts';

const broken: ReportInput = { ...inputOf(cap), unreadable: [{ path: 'b.md', sentence: 'b.md: it is not a text file.' }] };
const sarifRun = (input: ReportInput, base = '/home/ann') => JSON.parse(proofSarif(input, { base })).runs[0];

/**
 * The schema of the SARIF committee at OASIS (2.1.0, revision rtm.5), as npm package @microsoft/jest-sarif 1.0.0-beta.0
 * ships it. It is written for draft 4 of JSON Schema; what differs for this schema is the name of two keys.
 */
function sarifProblems(text: string) {
  const { $schema: _draft, id: _id, ...schema } = JSON.parse(readFileSync(new URL('./sarif-2.1.0-rtm.5.json', import.meta.url), 'utf8'));
  const validate = new Ajv.Ajv({ strict: false, validateFormats: false, unicodeRegExp: false }).compile(schema);
  validate(JSON.parse(text));
  return validate.errors ?? [];
}

describe('SARIF', () => {
  test('keeps to the schema of OASIS', () => {
    expect(sarifProblems(proofSarif(inputOf()))).toEqual([]);
    expect(sarifProblems(proofSarif({ ...broken, proofs: [cap, handMade({ source: '' })] }, { base: '/home/ann' }))).toEqual([]);
    const log = JSON.parse(proofSarif(inputOf(cap)));
    log.runs[0].results[0].level = 'query';
    expect(sarifProblems(JSON.stringify(log))).not.toEqual([]);
  });

  test('what is let stand is in the log, suppressed, and keeps to the schema', () => {
    const [first, second, third] = cap.findings;
    if (first === undefined || second === undefined || third === undefined) throw new Error('the cap has three findings');
    const stetted = {
      ...cap,
      findings: [third],
      withheld: [{ finding: first, reason: 'the house allows it', span: first.span }],
      known: [second],
    };
    const text = proofSarif(inputOf(stetted));
    expect(sarifProblems(text)).toEqual([]);
    const results = JSON.parse(text).runs[0].results as { suppressions?: { kind: string }[]; baselineState?: string }[];
    expect(results.map((each) => [each.suppressions?.[0]?.kind, each.baselineState])).toEqual([
      [undefined, 'new'],
      ['external', 'unchanged'],
      ['inSource', 'new'],
    ]);
  });

  test('says version, columns and levels as the standard names them', () => {
    const log = JSON.parse(proofSarif(inputOf(cap)));
    expect(log.version).toBe('2.1.0');
    expect(log.runs[0].columnKind).toBe('utf16CodeUnits');
    expect(log.runs[0].results.map((result: { level: string }) => result.level)).toEqual(['error', 'warning', 'note']);
  });

  test('a result points at the words, its rule, its fix and what belongs to it', () => {
    const run = sarifRun(inputOf(cap));
    const [result] = run.results;
    expect(run.tool.driver.rules[result.ruleIndex].id).toBe(result.ruleId);
    expect(result.locations[0].physicalLocation).toEqual({
      artifactLocation: { uri: 'drafts/Skerry%20cap.md', index: 0 },
      region: { startLine: 6, startColumn: 47, endLine: 6, endColumn: 49 },
    });
    expect(result.fixes[0].artifactChanges[0].replacements[0].insertedContent.text).toBe('91');
    expect(result.relatedLocations).toHaveLength(2);
    expect(result.message.text).toContain('(size L)\nThe next round needs');
  });

  test('every rule of the house is described, a rule from elsewhere is named by its id alone', () => {
    const run = sarifRun(inputOf(cap));
    expect(run.tool.driver.rules.map((rule: { id: string }) => rule.id)).toEqual(['comma-before-times', 'count-mismatch']);
    const named = run.results.map((result: { ruleId: string; ruleIndex?: number }) => [result.ruleId, result.ruleIndex]);
    expect(named).toEqual([
      ['count-mismatch', 1],
      ['length-not-given', undefined],
      ['comma-before-times', 0],
    ]);
    expect(run.tool.driver.rules[1].help.text).toContain('9 sts.');
  });

  test('what was not read and what could not be read is said', () => {
    const [invocation] = sarifRun(broken).invocations;
    expect(invocation.executionSuccessful).toBe(false);
    expect(invocation.toolExecutionNotifications.map((note: { level: string }) => note.level)).toEqual(['error', 'note']);
  });

  test('the fingerprint stays when lines are put in above, and tells two equal findings apart', () => {
    const marks = (source: string) => {
      const findings = [1, 2].map((nth) => finding(at(source, '9 sts', nth), { section: 'Crown', row: 'Row 1' }));
      return sarifRun(inputOf(handMade({ source, findings }))).results.map(
        (result: { partialFingerprints: object }) => result.partialFingerprints,
      );
    };
    const before = marks('9 sts\n9 sts\n');
    expect(marks('New.\n\n9 sts\n\n9 sts\n')).toEqual(before);
    expect(before[0]).not.toEqual(before[1]);
  });

  test.each([
    ['drafts/a b.md', 'drafts/a%20b.md'],
    ['./drafts//a.md', 'drafts/a.md'],
    ['../a.md', '../a.md'],
    ['50%: größe#1?.md', '50%25%3A%20gr%C3%B6%C3%9Fe%231%3F.md'],
    ['/home/ann/drafts/a.md', 'drafts/a.md'],
    ['/elsewhere/a.md', 'file:///elsewhere/a.md'],
    ['C:\\drafts\\a.md', 'file:///C:/drafts/a.md'],
    ['a\\b.md', 'a%5Cb.md'],
    ['\ud800.md', '%EF%BF%BD.md'],
    ['-', 'standard-input'],
  ])('the path %s is the URI %s', (path, uri) => {
    expect(draftUri(path, '/home/ann')).toBe(uri);
  });
});

/** Well-formedness by hand: every element opened is closed in order, and no bare mark is left in text. */
function elementsOf(document: string): string[] {
  const open: string[] = [];
  const seen: string[] = [];
  const rest = document.replace(/<(\/?)([a-z-]+)((?: [a-z]+="[^"<]*")*)(\/?)>/g, (_, close, name, _attributes, alone) => {
    if (close === '/') expect(open.pop()).toBe(name);
    else {
      seen.push(name);
      if (alone !== '/') open.push(name);
    }
    return '';
  });
  expect(open).toEqual([]);
  expect(rest.replace('<?xml version="1.0" encoding="UTF-8"?>', '')).not.toMatch(/[<>]|&(?!(amp|lt|gt|quot|apos);)/);
  return seen;
}
const count = (document: string, name: string) => elementsOf(document).filter((each) => each === name).length;

describe('JUnit', () => {
  test('a finding at the gate fails, one below it passes with its words', () => {
    const atError = proofJunit(inputOf(cap), { gate: 'error' });
    expect(count(atError, 'failure')).toBe(1);
    expect(atError).toContain('<testsuite name="drafts/Skerry cap.md" tests="4" failures="1" errors="0" skipped="1">');
    expect(count(proofJunit(inputOf(cap), { gate: 'query' }), 'failure')).toBe(2);
    expect(count(proofJunit(inputOf(cap), { gate: 'style' }), 'failure')).toBe(3);
  });

  test('steps that were not read are skipped, not passed', () => {
    expect(count(proofJunit(inputOf(cap)), 'skipped')).toBe(1);
    expect(count(proofJunit(inputOf(handMade({ source: 'x', steps: 3 }))), 'skipped')).toBe(0);
  });

  test('a draft that could not be read is an error', () => {
    const document = proofJunit(broken);
    expect(count(document, 'error')).toBe(1);
    expect(document).toContain('<testsuites name="rowproof" tests="5" failures="1" errors="1">');
  });

  test('text of the draft cannot break the document', () => {
    const source = 'Row <1>: "K&P" \u0000\u001b\ufffe\ud800 5.';
    const proof = handMade({
      path: '<&">\u0007.md',
      source,
      findings: [finding(at(source, '5'), { message: ']]> \'"<&> \u0001', row: '<"' })],
    });
    const document = proofJunit(inputOf(proof));
    elementsOf(document);
    expect(document).not.toMatch(/[^\P{Cc}\t\n\r]|[\ufffe\uffff]/u);
  });

  // XML 1.0, 2.2: Char ::= #x9 | #xA | #xD | [#x20-#xD7FF] | [#xE000-#xFFFD] | [#x10000-#x10FFFF]
  test('the characters XML allows stay', () => {
    expect(xml('\t\n\r é🧶\ufffd')).toBe('\t\n\r é🧶\ufffd');
    expect(xml('\u0000\u0008\u000b\u001f\ufffe\uffff\udfff')).toBe('');
  });
});
