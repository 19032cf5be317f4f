import { readFileSync } from 'node:fs';
import Ajv from 'ajv';
import { describe, expect, test } from 'vitest';
import { rules } from '../../rules/index.ts';
import { proof, replayRow } from '../../src/index.ts';
import { proofJson } from '../../src/report/json.ts';
import { rowReplayJson } from '../../src/report/row-replay-report.ts';
import { ruleJson, rulesJson } from '../../src/report/rules-report.ts';
import { csvCell, tallyCsv, tallyFormulas } from '../../src/report/tally-csv.ts';
import { multipleWords, tallyJson } from '../../src/report/tally-json.ts';
import { tallyText } from '../../src/report/tally-text.ts';
import { at, cap, entry, finding, handMade, inputOf } from './hand-made.ts';

const schema = (name: string) => JSON.parse(readFileSync(new URL(`../../src/report/schema/${name}`, import.meta.url), 'utf8'));
const problems = (name: string, text: string) => {
  const validate = new Ajv.Ajv({ strict: true, strictRequired: false, allowUnionTypes: true }).compile(schema(name));
  validate(JSON.parse(text));
  return validate.errors ?? [];
};

describe('proof as JSON', () => {
  test('keeps to its schema', () => {
    expect(problems('proof.schema.json', proofJson(inputOf(cap, handMade({ source: '' }))))).toEqual([]);
  });

  test('the schema refuses a key that is not promised and a key that is missing', () => {
    const document = JSON.parse(proofJson(inputOf(cap)));
    expect(problems('proof.schema.json', JSON.stringify({ ...document, extra: 1 }))).not.toEqual([]);
    delete document.drafts[0].findings[0].fix;
    expect(problems('proof.schema.json', JSON.stringify(document))).not.toEqual([]);
  });

  test('what is let stand is named apart, and keeps to its schema', () => {
    const [first, second, third] = cap.findings;
    if (first === undefined || second === undefined || third === undefined) throw new Error('the cap has three findings');
    const text = proofJson(
      inputOf({ ...cap, findings: [third], withheld: [{ finding: first, reason: 'meant', span: first.span }], known: [second] }),
    );
    expect(problems('proof.schema.json', text)).toEqual([]);
    const [draft] = JSON.parse(text).drafts;
    expect(draft.findings).toHaveLength(1);
    expect(draft.accepted.map((each: { why: string; reason: string | null }) => [each.why, each.reason])).toEqual([
      ['known', null],
      ['stet', 'meant'],
    ]);
    expect(JSON.parse(proofJson(inputOf(cap))).drafts[0]).not.toHaveProperty('accepted');
  });

  test('findings come in the order of the draft with exact places', () => {
    const [draft] = JSON.parse(proofJson(inputOf(cap))).drafts;
    expect(draft.findings.map((each: { line: number }) => each.line)).toEqual([6, 7, 12]);
    expect(draft.findings[0]).toEqual({
      rule: 'count-mismatch',
      level: 'error',
      line: 6,
      column: 47,
      endLine: 6,
      endColumn: 49,
      section: 'Crown',
      row: 'Rnd 7',
      sizes: ['L'],
      message: '104 stitches are 13 repeats of 8, each leaves 7: after Rnd 7 there are 91 stitches, the draft says 92.',
      stated: 92,
      replayed: 91,
      fix: { line: 6, column: 47, endLine: 6, endColumn: 49, text: '91' },
      evidence: ['The next round needs a multiple of 7: 91 is one, 92 is not.'],
      edits: [],
    });
    expect(draft.reading).toEqual({ steps: 6, read: 5, notRead: [{ line: 8, column: 8, text: 'Work in the manner of the lamp room.' }] });
  });

  test('edits that would fit come with their places and in words', () => {
    const source = '# Tern Cloth\n\nCO 34 sts.\n\nRow 1 (RS): *K1, p2; rep from * to end.\n\nRow 2: Purl.\n\nBO all sts.\n';
    const [draft] = JSON.parse(proofJson(inputOf(proof(source)))).drafts;
    expect(draft.findings[0].edits).toContainEqual({ line: 5, column: 19, endLine: 5, endColumn: 20, text: '1', words: '"p2" to "p1"' });
  });

  test('columns count UTF-16 units', () => {
    const source = '🧶 5 sts';
    const [draft] = JSON.parse(proofJson(inputOf(handMade({ source, findings: [finding(at(source, '5'), {})] })))).drafts;
    expect(draft.findings[0]).toMatchObject({ column: 4, endColumn: 5 });
  });

  test('a line end at the end of a span does not carry it to the next line', () => {
    const source = 'Row 1: K5.\r\nRow 2: P5.\r\n';
    const [draft] = JSON.parse(proofJson(inputOf(handMade({ source, findings: [finding({ start: 0, end: 12 }, {})] })))).drafts;
    expect(draft.findings[0]).toMatchObject({ line: 1, endLine: 1, endColumn: 11 });
  });

  test('the order in which findings were found does not show', () => {
    const turned = { ...cap, findings: [...cap.findings].reverse() };
    expect(proofJson(inputOf(turned))).toBe(proofJson(inputOf(cap)));
  });
});

const latticeSource = 'Row 1: *K5, yo, k2tog; rep from *, k2.';
const lattice = handMade({
  path: '-',
  source: latticeSource,
  entries: [entry(at(latticeSource, latticeSource), { section: 9, side: 'RS', afterPerRepeat: { perRepeat: 8, plus: 3 } })],
});

describe('tally', () => {
  test('as JSON keeps to its schema, a row of a multiple included', () => {
    const text = tallyJson(inputOf(cap, lattice));
    expect(problems('tally.schema.json', text)).toEqual([]);
    const { drafts } = JSON.parse(text);
    expect(drafts[0].rows[1]).toEqual({
      section: 'Crown',
      label: 'Rnd 8',
      line: 7,
      textLine: 7,
      side: null,
      times: 2,
      before: [77, 84, 91],
      after: [77, 84, 91],
    });
    expect(drafts[1].rows[0]).toEqual({
      section: '',
      label: 'Row 1',
      line: 1,
      textLine: 1,
      side: 'RS',
      times: 1,
      afterPerRepeat: { perRepeat: 8, plus: 3 },
    });
  });

  test('the schema refuses a row with both kinds of count', () => {
    const document = JSON.parse(tallyJson(inputOf(lattice)));
    Object.assign(document.drafts[0].rows[0], { before: [1], after: [1] });
    expect(problems('tally.schema.json', JSON.stringify(document))).not.toEqual([]);
  });

  test('as a page', () => {
    expect(tallyText(inputOf(cap))).toBe(`Skerry Cap
drafts/Skerry cap.md
Stitches on the needle before and after every row. 5 of 6 steps read.

  line  row                                  S      M       L
Crown
     6  Rnd 7                            88→77  96→84  104→91
     7  Rnd 8                        ×2     77     84      91
     8  Rnd 9                             77→?   84→?    91→?

? stands where the count is not known.
`);
  });

  test('a size that does not work a row is told apart from a count that is not known', () => {
    const source =
      '# Cap\n\n**Sizes:** S (M, L)\n\nCO 40 (50, 60) sts.\n\nRow 1: Knit.\n\nSizes M and L only:\n\nRow 2: K1, m1, k to end.\n\nAll sizes:\n\nRow 3: Purl.\n';
    const made = proof(source);
    const row = JSON.parse(tallyJson(inputOf(made))).drafts[0].rows.find((each: { label: string }) => each.label === 'Row 2');
    expect(row.before).toEqual([null, 50, 60]);
    expect(row.skippedBy).toEqual(['S']);
    expect(problems('tally.schema.json', tallyJson(inputOf(made)))).toEqual([]);
    expect(tallyText(inputOf(made))).toContain('–  50→51  60→61');
    expect(tallyText(inputOf(made))).toContain('– stands where the size does not work the row.');
  });

  test('a page of many sizes is set in sheets that fit it', () => {
    const sizes = Array.from({ length: 12 }, (_, index) => `Size ${index + 1}`);
    const many = handMade({
      source: 'Row 1: K.',
      sizes,
      entries: [entry({ start: 0, end: 9 }, { before: sizes.map(() => 100), after: sizes.map(() => 108) })],
    });
    const lines = tallyText(inputOf(many)).split('\n');
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(80);
    for (const size of sizes) expect(lines.filter((line) => line.includes('line  row')).join(' ')).toContain(size);
  });

  test('a multiple is written as knitters write it', () => {
    expect([
      multipleWords({ perRepeat: 8, plus: 3 }),
      multipleWords({ perRepeat: 8, plus: 0 }),
      multipleWords({ perRepeat: 8, plus: -1 }),
    ]).toEqual(['multiple of 8 + 3', 'multiple of 8', 'multiple of 8 − 1']);
    expect(tallyText(inputOf(lattice))).toContain('multiple of 8 + 3');
  });
});

test('the rules as JSON keep to their schema, all of them and one', () => {
  expect(problems('rules.schema.json', rulesJson(rules))).toEqual([]);
  for (const rule of rules) expect(problems('rules.schema.json', ruleJson(rule))).toEqual([]);
  expect(problems('rules.schema.json', '{}')).not.toEqual([]);
});

test('a row step by step as JSON keeps to its schema, whatever came of it', () => {
  const draft =
    '# Tam\n\n## Body\n\nCast on 20 sts.\n\nRow 1: *K2, m1; rep from * 3 times, pm, k to end.\n\nRow 2: P to m, sm, p3, k2tog.\n\nRow 3: Frobble.\n';
  const tam = proof(draft, { path: 'tam.md' });
  for (const [row, from] of [['Row 1'], ['Row 2'], ['Row 2', 9], ['Row 3'], ['cast on']] as const) {
    const replay = replayRow(tam, row, null, from);
    expect(replay).not.toBeNull();
    if (replay !== null) expect(problems('replay.schema.json', rowReplayJson(tam, replay))).toEqual([]);
  }
  expect(problems('replay.schema.json', '{}')).not.toEqual([]);
});

/** A reader of RFC 4180 that knows nothing of our writer. */
function readCsv(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let cell = '';
  let quoted = false;
  for (let index = 0; index < text.length; index += 1) {
    const character = text[index] ?? '';
    if (quoted) {
      if (character !== '"') cell += character;
      else if (text[index + 1] === '"') {
        cell += '"';
        index += 1;
      } else quoted = false;
    } else if (character === '"') quoted = true;
    else if (character === ',' || (character === '\r' && text[index + 1] === '\n')) {
      row.push(cell);
      cell = '';
      if (character === '\r') {
        rows.push(row);
        row = [];
        index += 1;
      }
    } else cell += character;
  }
  return rows;
}

/** A spreadsheet in small: names of cells, plus, minus, and the one comparison that is used. */
function calculated(rows: readonly (readonly string[])[]): string[][] {
  const cell = (name: string): string => {
    const [, letters = '', digits = ''] = /^([A-Z]+)(\d+)$/.exec(name) ?? [];
    const column = [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
    return value(rows[Number(digits) - 1]?.[column] ?? '');
  };
  const value = (text: string): string => {
    if (!text.startsWith('=')) return text;
    const differs = /AND\(([A-Z]+\d+)<>"",[A-Z]+\d+<>([A-Z]+\d+)\)/.exec(text);
    if (differs !== null) return cell(differs[1] ?? '') !== '' && cell(differs[1] ?? '') !== cell(differs[2] ?? '') ? 'one' : '';
    return String(
      [...text.slice(1).matchAll(/([+-]?)([A-Z]+\d+)/g)].reduce(
        (sum, [, sign, name]) => sum + (sign === '-' ? -1 : 1) * Number(cell(name ?? '')),
        0,
      ),
    );
  };
  return rows.map((row) => row.map(value));
}

describe('tally as CSV', () => {
  test('of one draft has one line a row and five columns a size', () => {
    expect(tallyCsv(inputOf(cap))).toBe(
      [
        `draft,section,row,line,text line,side,times,${['S', 'M', 'L'].map((size) => `${size} before,${size} used,${size} made,${size} after,${size} stated`).join(',')},stated differs,after per repeat,${['S', 'M', 'L'].map((size) => `${size} rows since cast-on,${size} rows in section,${size} height in cm,${size} markers after,${size} held`).join(',')}`,
        'drafts/Skerry cap.md,Crown,Rnd 7,6,6,,1,88,88,77,77,,96,96,84,84,,104,104,91,91,,,,1,1,,,,1,1,,,,1,1,,,',
        'drafts/Skerry cap.md,Crown,Rnd 8,7,7,,2,77,77,77,77,,84,84,84,84,,91,91,91,91,,,,3,3,,,,3,3,,,,3,3,,,',
        'drafts/Skerry cap.md,Crown,Rnd 9,8,8,,1,77,,,,,84,,,,,91,,,,,,,4,4,,,,4,4,,,,4,4,,,',
        '',
      ].join('\r\n'),
    );
  });

  test('a stated count that differs is named by its size, in a column of its own', () => {
    const source = 'Row 1: K2, m1, k3. 6 (7) sts.';
    const stated = { type: 'stated', what: 'total', scope: null, count: { values: [6, 7] } };
    const node = { type: 'row', stated: [stated], span: at(source, source) };
    const proof = handMade({
      source,
      sizes: ['S', 'M'],
      entries: [entry(at(source, source), { node: node as never, before: [5, 7], after: [6, 8], takes: [5, 7], makes: [6, 8] })],
    });
    expect(readCsv(tallyCsv(inputOf(proof)))[1]?.slice(7, 19)).toEqual(['5', '5', '6', '6', '6', '7', '7', '8', '8', '7', 'M', '']);
    const narrow = readCsv(tallyCsv(inputOf(proof, proof)));
    expect(narrow[1]?.slice(7)).toEqual(['S', '1', '5', '5', '6', '6', '6', '', '']);
    expect(narrow[2]?.slice(7)).toEqual(['M', '1', '7', '7', '8', '8', '7', 'differs', '']);
  });

  const yoke = proof(
    '# Tam\n\nGauge: 20 sts and 28 rows = 10 cm in st st\n\n## Body\n\nCast on 20 sts.\n\nRow 1 (RS): K8, pm, k12.\nRow 2: Purl.\nRow 3: K1, m1, k to end. 21 sts.\nNext row (WS): Place first 6 sts on a holder for pocket, p to end. 15 sts.\nNext row: Knit.\n',
    { path: 'tam.md' },
  );

  test('rows since the cast-on, height at the gauge, markers and held stitches stand behind the counts', () => {
    const rows = readCsv(tallyCsv(inputOf(yoke)));
    const beside = (label: string) => rows.filter((row) => row[2] === label).map((row) => row.slice(-5))[0];
    expect(rows[0]?.slice(-5)).toEqual(
      ['rows since cast-on', 'rows in section', 'height in cm', 'markers after', 'held'].map((word) => `one ${word}`),
    );
    expect(beside('Row 2')).toEqual(['2', '2', '0.7', '12', '']);
    expect(beside('Row 3')).toEqual(['3', '3', '1.1', '8', '']);
    expect(rows.at(-1)?.slice(-1)[0]).toContain('6 (');
  });

  test('with formulas one number may be changed and the rest moves', () => {
    const rows = readCsv(tallyFormulas(inputOf(yoke)));
    const row = rows.findIndex((each) => each[2] === 'Row 3');
    const line = row + 1;
    expect(rows[row]?.slice(7, 13)).toEqual([
      `=K${line - 1}`,
      '20',
      '21',
      `=H${line}-I${line}+J${line}`,
      '21',
      `=IF(OR(AND(L${line}<>"",L${line}<>K${line})),"differs","")`,
    ]);
    // Worked out, the sheet says what the plain one says.
    expect(calculated(rows)).toEqual(readCsv(tallyCsv(inputOf(yoke))));
  });

  test('a total that is stated for many rows is held against the last of them', () => {
    const draft =
      '# Tam\n\n## Body\n\nCast on 9 sts.\n\nRow 1: K1, m1, k to end.\nRow 2: Purl.\n\nRows 3–8: Rep Rows 1 and 2 three times. 13 sts.\n';
    const rows = readCsv(tallyCsv(inputOf(proof(draft, { path: 'tam.md' }))));
    const line = rows.filter((row) => row[3] === '10').map((row) => [row[2], row[10], row[11], row[12]]);
    expect(line.at(-1)).toEqual(['Row 2', '13', '13', '']);
    expect(line.slice(0, -1).every(([, , stated, differs]) => stated === '' && differs === '')).toBe(true);
  });

  test('of several drafts has one line for every size of a row, and as few columns as ever', () => {
    const rows = readCsv(tallyCsv(inputOf(cap, lattice)));
    expect(rows[0]?.join(',')).toBe(
      'draft,section,row,line,text line,side,times,size,rows worked,before,used,made,after,stated,stated differs,after per repeat',
    );
    expect(new Set(rows.map((row) => row.length)).size).toBe(1);
    expect(rows.map((row) => row[7])).toEqual(['size', 'S', 'M', 'L', 'S', 'M', 'L', 'S', 'M', 'L', '']);
    expect(rows[6]?.slice(7)).toEqual(['L', '3', '91', '91', '91', '91', '', '', '']);
    expect(rows.at(-1)?.slice(7)).toEqual(['', '', '', '', '', '', '', '', 'multiple of 8 + 3']);
  });

  test('commas, quotes and line ends survive', () => {
    const label = 'Row "1", the\nfirst';
    const proof = handMade({ source: 'x', entries: [entry({ start: 0, end: 1 }, { label, before: [1], after: [2] })] });
    expect(readCsv(tallyCsv(inputOf(proof)))[1]?.[2]).toBe(label);
  });

  // The signs are those of the common advice on formula injection in spreadsheets (from memory).
  test('no text becomes a formula', () => {
    for (const sign of ['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠']) {
      expect(readCsv(`${csvCell(`${sign}1+1`)}\r\n`)[0]?.[0]).toBe(`'${sign}1+1`);
    }
    expect(csvCell(-3)).toBe('-3');
    expect(csvCell('Row 1 = RS')).toBe('Row 1 = RS');
  });
});
