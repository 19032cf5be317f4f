import Ajv from 'ajv';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { noHouse } from '../../src/house-style/house-style.ts';
import { nearest } from '../../src/house-style/nearest.ts';
import { readHouseStyle } from '../../src/house-style/read-house-style.ts';
import { houseStyleJsonSchema } from '../../src/house-style/schema.ts';

const whole = `# Orrin Light Press
rules:
  count-mismatch: query
  comma-before-times: off
terms: UK
tolerance:
  cm: 1
  queryPercent: 2.5
labels: 1st row
repeats: bracket
counts: sentence
`;
const rules = ['count-mismatch', 'comma-before-times'];

describe('a house style', () => {
  test('is read whole, and what it leaves out keeps its default', () => {
    expect(readHouseStyle(whole, rules)).toEqual({
      house: {
        rules: { 'count-mismatch': 'query', 'comma-before-times': 'off' },
        terms: 'UK',
        tolerance: { ...noHouse.tolerance, cm: 1, queryPercent: 2.5 },
        labels: '1st row',
        repeats: 'bracket',
        counts: 'sentence',
      },
      problems: [],
    });
  });

  test.each(['', '\n', '# nothing yet\n', '---\n', 'rules:\n', 'terms:\ntolerance:\n', '\ufeff'])('%j asks for nothing', (text) => {
    expect(readHouseStyle(text)).toEqual({ house: noHouse, problems: [] });
  });

  test.each([
    ['term: UK', 1, '"term" is no setting; the nearest is "terms".'],
    ['\n\ntolerance:\n  inch: 1', 4, '"inch" under "tolerance" is no setting; the nearest is "inches".'],
    ['colour: blue', 1, '"colour" is no setting; there are rules, terms, tolerance, labels, repeats, counts.'],
    ['terms: English', 1, '"terms" takes "US" or "UK".'],
    ['repeats: stars', 1, '"repeats" takes "star" or "bracket". The nearest is "star".'],
    ['terms: [UK]', 1, '"terms" takes "US" or "UK".'],
    ['tolerance:\n  cm: half', 2, '"cm" under "tolerance" takes a number, nought or more.'],
    ['tolerance:\n  cm: -1', 2, '"cm" under "tolerance" takes a number, nought or more.'],
    ['tolerance:\n  cm: .inf', 2, '"cm" under "tolerance" takes a number, nought or more.'],
    ['tolerance: 1', 1, '"tolerance" takes settings of its own below it: cm, inches, stitches, queryStitches, queryPercent.'],
    ['rules: off', 1, '"rules" takes a list of rules below it, each with its level, such as "count-mismatch: query".'],
    ['rules:\n  count-mismatch: warn', 2, '"count-mismatch" under "rules" takes "error" or "query" or "style" or "off".'],
    ['rules:\n  count-mismtach: off', 2, 'there is no rule "count-mismtach"; the nearest is "count-mismatch".'],
    ['rules:\n  zebra: off', 2, 'there is no rule "zebra"; the command "rowproof rules" lists them.'],
    ['terms: UK\nterms: US', 2, 'this setting is given twice; keep one.'],
    ['terms: "UK', 1, 'this cannot be read as YAML; look for a missing colon, quote or space on this line and the one before.'],
    ['- terms', 1, 'a house style is a list of settings such as "terms: UK", one a line.'],
    ['just words', 1, 'a house style is a list of settings such as "terms: UK", one a line.'],
    ['constructor: 1', 1, '"constructor" is no setting; there are rules, terms, tolerance, labels, repeats, counts.'],
  ])('%j has a problem on line %i', (text, line, message) => {
    const { house, problems } = readHouseStyle(text, rules);
    expect(house).toBeNull();
    expect(problems[0]).toEqual({ line, message });
  });

  test('every problem is told, not only the first', () => {
    expect(readHouseStyle('term: UK\nlabels: 2\n').problems).toHaveLength(2);
  });

  test('without a list of rules any rule may be named', () => {
    expect(readHouseStyle('rules:\n  __proto__: off\n').house?.rules).toEqual(Object.fromEntries([['__proto__', 'off']]));
  });

  test('the JSON Schema for editors agrees with the reader', () => {
    const agrees = new Ajv.Ajv({ strict: true }).compile(houseStyleJsonSchema());
    const drafts = [whole, 'terms: English', 'colour: blue', 'tolerance:\n  cm: -1', 'rules:\n  a: off', 'rules:\n  a: warn'];
    for (const text of drafts) expect([text, agrees(parse(text))]).toEqual([text, readHouseStyle(text).house !== null]);
  });
});

describe('the nearest word', () => {
  test.each([
    ['jsno', 'json'],
    ['SARIF', 'sarif'],
    ['txt', 'text'],
    ['x', null],
    ['', null],
    ['completely-other', null],
  ])('to %j is %j', (word, known) => {
    expect(nearest(word, ['text', 'json', 'sarif', 'junit'])).toBe(known);
  });

  test('a very long word costs no more than a short one', () => {
    expect(nearest('x'.repeat(1_000_000), ['text'])).toBeNull();
  });
});
