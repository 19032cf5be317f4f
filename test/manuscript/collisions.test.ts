/**
 * Lines in which Markdown and knitting want the same characters. What stock Markdown does with each was seen by
 * running remark-parse 11 with gfm and directives; what must come out here is the author's instruction.
 */
import { describe, expect, test } from 'vitest';
import { blocksOf, hazardsOf, inType, outline, tidy, words } from './reading.ts';

describe('characters that stay as typed', () => {
  test.each([
    ['a pair of stars and one that points back', '*k3, p1*; rep from * to last st'],
    ['a star behind the comma', 'K4, *yo, ssk; rep from * to last 4 sts, k4.'],
    ['a bracket with its count in round brackets', '[ssk, yo](4) times'],
    ['brackets in brackets', '[p1, [yo, p1](2)](3) times'],
    ['an image', 'K3 ![yo](2) times'],
    ['a colon before a stitch', 'Row 3:k4, p4'],
    ['a colon after a blank', 'Row 3 :k4'],
    ['a list of sizes', 'S:7, M:8, L:9'],
    ['a ratio', 'tension 21:29'],
    ['an underscore inside a word', 'k2_tog_'],
    ['round brackets', '(p1, yo, p1)'],
    ['two tildes', '~~'],
    ['tildes around stitches', '~k2~ and ~~yo~~'],
    ['sizes', '7 (8, 9) sts'],
    ['angle brackets', '<7 sts>'],
    ['angle brackets that look like a tag', 'p to <marker>, sm'],
    ['sizes in angle brackets', '<S> 7 <M> 8'],
    ['a star inside a pair of double stars that is pointed to', '*k3, **yo, ssk** from **; rep from * to end'],
    ['double stars that only point', '**rep from ** to end'],
    ['a pair that would close at the wrong star', 'Row 3: P1, *k3, p1; rep from *, p1*.'],
    ['what looks like the definition of a link', '[M]: 90'],
    ['a reference with its definition', '[M1], k3\n[M1]: make one'],
    ['a footnote', 'CO 90[^1] sts'],
    ['a row between stars of two lines', '*Row 3: K3.\nRow 4: P3; rep from* 4 times'],
    ['backticks', 'K2, `p2`, k2'],
    ['an address', '<https://orrin.example>'],
    ['other entities', 'K2 &amp; p2 &#42;'],
    ['a star against a word', 'k2tog*2'],
    ['double stars at both ends of a reference', 'Work as for Back from ** to **.'],
    ['a repeat in double stars', 'K1, **k2, p2** 3 (4, 5) times, k1'],
    ['a repeat in stars with a number of times', 'Rnd 2: *knit to marker, yo* twice, knit'],
    ['a whole line between repeat marks', '*K3, p3*'],
    ['double stars from end to end', '**K3, *p1, k1; rep from * twice; rep from ** to end.'],
  ])('%s', (_, line) => {
    expect(words(line)).toBe(line.replace('\n', '/'));
    expect(inType(line)).toEqual([]);
  });
});

describe('rows that Markdown would make something else of', () => {
  test.each([
    ['underlined by dashes', 'Row 3: K2\n---', ['paragraph: Row 3: K2', 'break']],
    ['underlined by equals signs', 'Row 3: K2\n===', ['paragraph: Row 3: K2/===']],
    ['indented by four blanks', 'Row 3:\n\n    K2, p2', ['paragraph: Row 3:', 'paragraph: K2, p2']],
    ['under a tag', '<div>\nRow 3: K2\n</div>', ['paragraph: <div>/Row 3: K2/</div>']],
    ['three stars alone', '***', ['break']],
    ['a heading with a size', '## Size:XL', ['heading: Size:XL']],
    ['hard line ends', 'K2, p2  \nK1', ['paragraph: K2, p2/K1']],
    ['a backslash at the line end', 'K2, p2\\\nK1', ['paragraph: K2, p2/K1']],
    ['a number under a paragraph', 'Cuff\n2. K2', ['paragraph: Cuff/2. K2']],
    ['a box', '- [ ] K2', ['item: [ ] K2']],
    ['a count that looks like a list number', '90. sts remain', ['item 90: sts remain']],
    ['a directive in a sentence', 'K2 ::size[S] p2', ['paragraph: K2 ::size[S] p2']],
    ['colons with a blank', '::: note\nK2', ['paragraph: ::: note/K2']],
  ])('%s', (_, source, expected) => {
    expect(outline(source)).toEqual(expected);
  });
});

describe('escapes', () => {
  test('an escaped star keeps its place and is a star', () => {
    const [block] = blocksOf('K2\\*, p2', 'paragraph');
    expect(block?.text).toBe('K2 *, p2');
  });

  test('escaped stars are never type', () => {
    expect(words('\\*K2, p2\\*; rep from \\* to end')).toBe('*K2, p2 *; rep from * to end');
    expect(inType('\\*\\*Row 1:\\*\\* K2')).toEqual([]);
  });

  test('an escape on a later line does not move its words', () => {
    expect(words('K2,\n  p2\\*, k1')).toBe('K2,/p2 *, k1');
    expect(words('K2,\n  p2,\\\n  k1')).toBe('K2,/p2,/k1');
    expect(words('K2,\n  p2 &amp; k1')).toBe('K2,/p2 &amp; k1');
  });

  test('a backslash before a letter stays', () => {
    expect(words('k2\\tog')).toBe('k2\\tog');
  });
});

describe('numbered rows', () => {
  const numbers = (source: string): (number | null)[] => blocksOf(source, 'item').map((item) => item.number);

  test.each([
    ['1. K2', [1]],
    ['3. P2', [3]],
    ['1. K2\n3. P2\n4. K1', [1, 3, 4]],
    ['7) K2\n8) P2', [7, 8]],
    ['1. K2\n1. P2\n1. K1', [1, 2, 3]],
    ['5. K2\n\n\n6. P2', [5, 6]],
    ['- K2\n- P2', [null, null]],
  ])('%j', (source, expected) => {
    expect(numbers(source)).toEqual(expected);
  });

  test('a gap that a page would close is a hazard at the number', () => {
    expect(hazardsOf('1. K2\n3. P2\n4. K1')).toEqual(['listNumbers 3.']);
    expect(hazardsOf('4. K2\n5. P2')).toEqual([]);
    expect(hazardsOf('1. K2\n1. P2\n1. K1')).toEqual([]);
    expect(hazardsOf('1. K2\n2. P2\n2. K1')).toEqual(['listNumbers 2.']);
  });
});

describe('a bullet that opens a repeat', () => {
  test.each([
    ['* K3, yo; rep from * across', '* K3, yo; rep from * across'],
    ['* K3, yo; rep between *s twice', '* K3, yo; rep between *s twice'],
    ['* K3, p2*; rep to end', '* K3, p2*; rep to end'],
    ['+ K3, rep from + to end', '+ K3, rep from + to end'],
    ['* **Rnd 3:** K3, yo; rep from * across', '* Rnd 3: K3, yo; rep from * across'],
    ['* K3; rep * to end', '* K3; rep * to end'],
  ])('%j', (source, expected) => {
    const [item] = blocksOf(source, 'item');
    expect(tidy(item?.text ?? '')).toBe(expected);
    expect(item?.start).toBe(0);
    expect(hazardsOf(source)).toContain(`preview ${source[0]}`);
  });

  test.each([
    ['* Row 3: *K3; rep from * to end.', 'Row 3: *K3; rep from * to end.'],
    ['* Row 3: K1, * K3, p1; rep from * to end.', 'Row 3: K1, * K3, p1; rep from * to end.'],
    ['* 2 stitch markers', '2 stitch markers'],
    ['* Rep from * once more.', 'Rep from * once more.'],
    ['- K3; rep from * to end', 'K3; rep from * to end'],
    ['+ a multiple of 8 + 3', 'a multiple of 8 + 3'],
  ])('%j stays a bullet', (source, expected) => {
    const [item] = blocksOf(source, 'item');
    expect(tidy(item?.text ?? '')).toBe(expected);
    expect(item?.start).toBe(2);
    expect(hazardsOf(source)).toEqual([]);
  });

  test('two such items are two instructions', () => {
    expect(outline('* K3, yo; rep from * across\n* P4; rep from * across')).toEqual([
      'item: * K3, yo; rep from * across',
      'item: * P4; rep from * across',
    ]);
  });
});

describe('what a page would hide', () => {
  test('a fence that is never closed', () => {
    expect(hazardsOf('Row 1: K2\n\n~~~\nRow 2: P2')).toEqual(['unclosedFence ~~~']);
    expect(hazardsOf('```\nRow 2: P2\n```')).toEqual([]);
    expect(hazardsOf('> ~~~\n> Row 2: P2\n> ~~~')).toEqual([]);
  });

  test('a block of a directive that is never closed', () => {
    expect(hazardsOf(':::note\nRow 2: P2')).toEqual(['unclosedContainer :::note']);
    expect(hazardsOf(':::note\nRow 2: P2\n:::')).toEqual([]);
    expect(hazardsOf('::::outer\n:::inner\nK2\n:::')).toEqual(['unclosedContainer ::::outer']);
    expect(outline(':::note\nRow 2: P2')).toEqual(['directive: note', 'paragraph: Row 2: P2']);
  });

  test('a comment that is never closed', () => {
    expect(hazardsOf('<!-- check this\n\nRow 2: P2')).toEqual(['preview <!--']);
    expect(hazardsOf('Row 1: K2 <!-- p2')).toEqual([]);
  });

  test('a count that a page takes for an address', () => {
    expect(hazardsOf('[k2tog, yo](3) times')).toEqual(['preview ](3)']);
    expect(hazardsOf('[our shop](https://orrin.example) and [k2tog, yo] (3) times')).toEqual([]);
  });
});
