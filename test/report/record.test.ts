import { describe, expect, test } from 'vitest';
import type { Finding } from '../../rules/rule.ts';
import type { Proof } from '../../src/index.ts';
import { compare, readRecord, recordOf, recordText } from '../../src/report/record.ts';
import { at, finding, handMade } from './hand-made.ts';

const old = 'Body\nRow 1: K5. 6 sts.\nRow 2: P5. 6 sts.\n';

function proofOf(source: string, words: readonly (readonly [string, number, Partial<Finding>])[]): Proof {
  return handMade({
    source,
    sizes: ['S', 'M'],
    findings: words.map(([text, nth, given]) =>
      finding(at(source, text, nth), { section: 'Body', row: 'Row 1', sizes: [0], message: text, ...given }),
    ),
  });
}
const before = proofOf(old, [
  ['6 sts', 1, {}],
  ['6 sts', 2, { row: 'Row 2' }],
]);
const record = recordOf(before);
const counts = (proof: Proof) => {
  const compared = compare(proof, record);
  return [compared.fresh.length, compared.known.length, compared.left.length];
};

describe('a record of known findings', () => {
  test('knows the same draft', () => {
    expect(counts(before)).toEqual([0, 2, 2]);
  });

  test('knows them again when the text has moved, and under another heading', () => {
    expect(
      counts(
        proofOf(`A new note above.\n\n\n${old}`, [
          ['6 sts', 1, {}],
          ['6 sts', 2, { row: 'Row 2' }],
        ]),
      ),
    ).toEqual([0, 2, 2]);
    expect(
      counts(
        proofOf(old, [
          ['6 sts', 1, { section: 'Main body' }],
          ['6 sts', 2, { section: 'Main body', row: 'Row 3' }],
        ]),
      ),
    ).toEqual([0, 2, 2]);
  });

  test('what is new is new: other words, another rule, another size, one more of the same', () => {
    expect(counts(proofOf(old, [['P5', 1, {}]]))[0]).toBe(1);
    expect(counts(proofOf(old, [['6 sts', 1, { rule: 'row-numbers' }]]))[0]).toBe(1);
    expect(counts(proofOf(old, [['6 sts', 1, { sizes: [1] }]]))[0]).toBe(1);
    expect(
      counts(
        proofOf(`${old}Row 3: K5. 6 sts.\n`, [
          ['6 sts', 1, {}],
          ['6 sts', 2, { row: 'Row 2' }],
          ['6 sts', 3, { row: 'Row 3' }],
        ]),
      ),
    ).toEqual([1, 2, 2]);
  });

  test('only grows shorter: what is gone is no longer known', () => {
    const fixed = compare(proofOf(old, [['6 sts', 2, { row: 'Row 2' }]]), record);
    expect([fixed.fresh.length, fixed.known.length, fixed.left]).toEqual([0, 1, [record[1]]]);
    expect(compare(before, fixed.left).fresh.map((each) => each.row)).toEqual(['Row 1']);
  });

  const sized = (source: string, sizes: number[], numbers: [number[], number[]], text: string) =>
    proofOf(source, [[text, 1, { sizes, stated: numbers[0], replayed: numbers[1] }]]);

  test('a size that is put right leaves the others known, and the record forgets it', () => {
    const known = recordOf(
      sized(
        old,
        [0, 1],
        [
          [6, 6],
          [7, 8],
        ],
        '6 sts',
      ),
    );
    const compared = compare(sized(old, [1], [[6], [8]], '6 sts'), known);
    expect([compared.fresh.length, compared.known.length]).toEqual([0, 1]);
    expect(compared.left).toEqual([{ ...known[0], sizes: ['M'], numbers: [[6, 8]] }]);
  });

  test('a size that goes wrong beside a known one is new, and says what is known', () => {
    const known = recordOf(sized(old, [1], [[6], [8]], '6 sts'));
    // The words have changed with the other size: the numbers of this one tell that it is the same.
    const changed = old.replace('6 sts', '5 (6) sts');
    const {
      fresh,
      known: still,
      left,
    } = compare(
      sized(
        changed,
        [0, 1],
        [
          [5, 6],
          [7, 8],
        ],
        '5 (6) sts',
      ),
      known,
    );
    expect(fresh.map((each) => [each.sizes, each.stated, each.replayed, each.evidence])).toEqual([
      [[0], [5], [7], ['In size M it is known from the record.']],
    ]);
    expect(still.map((each) => each.sizes)).toEqual([[1]]);
    expect(left).toEqual(known);
  });

  test('a known size with another number is new', () => {
    const known = recordOf(sized(old, [1], [[6], [8]], '6 sts'));
    const changed = old.replace('6 sts', '5 (7) sts');
    expect(compare(sized(changed, [1], [[7], [8]], '5 (7) sts'), known)).toMatchObject({ known: [], left: [] });
  });

  test('is written in one order and read back', () => {
    const text = recordText({ 'b.md': record, 'a.md': record.slice(1), 'none.md': [] });
    expect(text).toBe(recordText({ 'a.md': record.slice(1), 'b.md': record }));
    expect(readRecord(text)).toEqual({ 'a.md': record.slice(1), 'b.md': record });
    expect(readRecord(recordText({}))).toEqual({});
  });

  test.each(['', '[]', '{"version":2,"drafts":{}}', '{"version":1,"drafts":{"a.md":[{}]}}', '{"version":1,"drafts":{"a.md":1}}'])(
    '%j is no record',
    (text) => {
      expect(typeof readRecord(text)).toBe('string');
    },
  );

  test('a draft named like a property of every object is a draft', () => {
    const text = recordText(Object.assign(Object.create(null), { ['__proto__']: record }) as never);
    const read = readRecord(text.replace('"drafts": {}', `"drafts": { "__proto__": ${JSON.stringify(record)} }`));
    expect(typeof read).not.toBe('string');
  });

  test('a thousand known findings are all found again', () => {
    const source = Array.from({ length: 1000 }, (_, row) => `Row ${row}: 6 sts.`).join('\n');
    const many = proofOf(
      source,
      Array.from({ length: 1000 }, (_, row) => ['6 sts', row + 1, { row: `Row ${row}` }] as const),
    );
    const known = recordOf(many);
    expect(compare(many, known).known).toHaveLength(1000);
  });
});
