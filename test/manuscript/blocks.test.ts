import { describe, expect, test } from 'vitest';
import { readManuscript } from '../../src/manuscript/read.ts';
import { blocksOf, hazardsOf, outline, tidy } from './reading.ts';

describe('places', () => {
  const draft = '## Cuff\n\nRow 1: K2\n\n1. P2\n\n| a | b |\n|---|---|\n| K2 | P2 |\n\n***\n';

  test('every block and cell is found at its own words', () => {
    const at = (start: number, end: number): string => draft.slice(start, end);
    const [heading, paragraph, item, , row, line] = readManuscript(draft).blocks;
    expect(at(heading?.start ?? 0, heading?.end ?? 0)).toBe('Cuff');
    expect(at(paragraph?.start ?? 0, paragraph?.end ?? 0)).toBe('Row 1: K2');
    expect(at(item?.start ?? 0, item?.end ?? 0)).toBe('P2');
    expect(row?.kind === 'tableRow' && row.cells.map((cell) => at(cell.start, cell.end))).toEqual(['K2', 'P2']);
    expect(at(line?.start ?? 0, line?.end ?? 0)).toBe('***');
  });

  test('a byte order mark moves every offset, and front matter is still found behind it', () => {
    const source = '\ufeff---\ntitle: Tern\n---\n\nRow 1: K2\n';
    const [front, paragraph] = readManuscript(source).blocks;
    expect(front?.kind === 'frontMatter' && front.text).toBe('title: Tern');
    expect(source.slice(paragraph?.start, paragraph?.end)).toBe('Row 1: K2');
  });

  test('a second byte order mark is a character of the text', () => {
    const source = '\ufeff\ufeffRow 1: K2';
    const [paragraph] = blocksOf(source, 'paragraph');
    expect(source.slice(paragraph?.start, paragraph?.end)).toBe('\ufeffRow 1: K2');
    expect(paragraph?.text).toBe(' Row 1: K2');
  });

  test('Windows line ends: the same words, a blank for each carriage return', () => {
    const source = 'Row 1: K2\r\nRow 2: P2\r\n\r\n1. K1\r\n2. P1\r\n';
    expect(blocksOf(source, 'paragraph').map(({ text }) => text)).toEqual(['Row 1: K2 \nRow 2: P2']);
    expect(blocksOf(source, 'item').map((item) => source.slice(item.start, item.end))).toEqual(['K1', 'P1']);
  });

  test('old line ends: a lone carriage return ends a line', () => {
    expect(outline('Row 1: K2\rRow 2: P2\r\r# Hem')).toEqual(['paragraph: Row 1: K2/Row 2: P2', 'heading: Hem']);
  });
});

describe('what belongs to Markdown is blanked', () => {
  test('quotation marks of a quote, on every line', () => {
    const [block] = blocksOf('> Row 1: K2,\n> p2.\n>> deeper\n', 'paragraph');
    expect(block?.text).toBe('Row 1: K2,\n  p2.');
    expect(block?.quoted).toBe(true);
    expect(outline('> > a\n> > b\nc')).toEqual(['paragraph: a/b/c']);
  });

  test('indents of a list', () => {
    const [item] = blocksOf('1. K2,\n   p2,\n\tk1.\n', 'item');
    expect(item?.text).toBe('K2,\n   p2,\n k1.');
  });

  test('lists in quotes in lists', () => {
    expect(outline('- a\n  > 1. K2\n  >    p2\n  > 2. P1\n\n  more\n')).toEqual([
      'item: a',
      'item 1: K2/p2',
      'item 2: P1',
      'paragraph: more',
    ]);
  });

  test('comments, also across blocks, but not in code', () => {
    expect(outline('K2 <!-- why? --> p2\n\n<!-- a\n\n- b\n\n# c\n\n-->\n\nK1')).toEqual(['paragraph: K2 p2', 'paragraph: K1']);
    expect(outline('```\n<!-- a\n```\n\nK1 --> p1')).toEqual(['fence: /<!-- a/', 'paragraph: K1 --> p1']);
    expect(outline('<!-- a\n-->\nRow 1: K2')).toEqual(['paragraph: Row 1: K2']);
  });

  test('quotes, blanks and written-out blanks', () => {
    const [block] = blocksOf('“4″” \u00a0K2\u2009p2\tk1’&nbsp;x\u200by', 'paragraph');
    expect(block?.text).toBe('"4""  K2 p2 k1\'      x y');
  });

  test('a line break tag ends a line', () => {
    expect(outline('| a |\n|---|\n| K2<br>P2<br />K1 |')).toEqual(['tableRow: a', 'tableRow: K2/P2/K1']);
  });
});

describe('lists', () => {
  test('lists are counted and know how deep they stand', () => {
    const items = blocksOf('- a\n  1. b\n  2. c\n- d\n\ntext\n\n1. e\n', 'item');
    expect(items.map(({ text, list, depth, number }) => [text, list, depth, number])).toEqual([
      ['a', 0, 0, null],
      ['b', 1, 1, 1],
      ['c', 1, 1, 2],
      ['d', 0, 0, null],
      ['e', 2, 0, 1],
    ]);
  });

  test('the marker is found', () => {
    const source = 'x\n\n10) K2\n11) P2';
    expect(blocksOf(source, 'item').map(({ marker }) => source.slice(marker.start, marker.end))).toEqual(['10)', '11)']);
  });

  test('an empty item is an item', () => {
    expect(outline('-\n- K2')).toEqual(['item: ', 'item: K2']);
  });

  test('an item that begins with a block of another kind', () => {
    expect(outline('- # Cuff\n- K2')).toEqual(['item: ', 'heading: Cuff', 'item: K2']);
  });
});

describe('tables', () => {
  const table = '| Row | Work |\n|:--|--:|\n| 1 | *K2, p2*; rep from * |\n| 2 | 10 \\| 12 |\n| 3 | |\n| 4 | **P** |\n';

  test('cells are the words between the pipes, stars and all', () => {
    expect(outline(table)).toEqual([
      'tableRow: Row | Work',
      'tableRow: 1 | *K2, p2*; rep from *',
      'tableRow: 2 | 10 | 12',
      'tableRow: 3 | ',
      'tableRow: 4 | P',
    ]);
  });

  test('the first row is the header, and tables are counted', () => {
    const rows = blocksOf(`${table}\ntext\n\n${table}`, 'tableRow');
    expect(rows.map(({ header }) => header)).toEqual([true, false, false, false, false, true, false, false, false, false]);
    expect(rows.map((row) => row.table)).toEqual([0, 0, 0, 0, 0, 1, 1, 1, 1, 1]);
  });

  test('an escaped pipe keeps its place', () => {
    const cell = blocksOf(table, 'tableRow')[2]?.cells[1];
    expect(cell?.text).toBe('10  | 12');
  });
});

describe('directives', () => {
  test('a directive on a line of its own, with label and attributes', () => {
    const source = 'K2\n\n::stet[as the **author** wants]{rule=count-mismatch loud}\n';
    const [directive] = blocksOf(source, 'directive');
    expect(directive?.name).toBe('stet');
    expect(tidy(directive?.label?.text ?? '')).toBe('as the author wants');
    expect(directive?.attributes).toEqual({ rule: 'count-mismatch', loud: '' });
    expect(source.slice(directive?.label?.start, directive?.label?.end)).toBe('as the **author** wants');
    expect(source.slice(directive?.start, directive?.end)).toBe('::stet[as the **author** wants]{rule=count-mismatch loud}');
  });

  test('sizes between bars', () => {
    const [directive] = blocksOf('::sizes[S | M | L]', 'directive');
    expect(directive?.label?.text).toBe('S | M | L');
  });

  test('a block of a directive opens with its line; its content follows', () => {
    const source = ':::note[Care]{tone=dry}\nWork loosely.\n\n1. K2\n:::\n\nP2';
    expect(outline(source)).toEqual(['directive: note', 'paragraph: Work loosely.', 'item 1: K2', 'paragraph: P2']);
    const [directive] = blocksOf(source, 'directive');
    expect(directive?.label?.text).toBe('Care');
    expect(source.slice(directive?.start, directive?.end)).toBe(':::note[Care]{tone=dry}');
  });

  test('no label is no label', () => {
    expect(blocksOf('::pin', 'directive')[0]?.label).toBe(null);
  });
});

describe('front matter and fences', () => {
  test('front matter is kept as typed, quotes included', () => {
    const source = '---\r\ntitle: “Tern”\r\nsizes: [S, M]\r\n---\r\nK2';
    const [front] = blocksOf(source, 'frontMatter');
    expect(front?.text).toBe('title: “Tern” \nsizes: [S, M]');
    expect(source.slice(front?.start, front?.end)).toBe('title: “Tern”\r\nsizes: [S, M]');
  });

  test('dashes further down are a separator', () => {
    expect(outline('K2\n\n---\na: 1\n---')).toEqual(['paragraph: K2', 'break', 'paragraph: a: 1', 'break']);
  });

  test('empty front matter', () => {
    expect(outline('---\n---\nK2')).toEqual(['frontMatter: ', 'paragraph: K2']);
  });

  test('a fence shows its content as typed', () => {
    const source = '- x\n\n  ~~~chart\n  *K2*\n  ~~~\n\nP2';
    const [fence] = blocksOf(source, 'fence');
    expect(fence?.text).toBe('        \n  *K2*\n     ');
    expect([fence?.language, fence?.closed]).toEqual(['chart', true]);
    expect(hazardsOf(source)).toEqual([]);
  });

  test('an unclosed fence keeps what it swallowed', () => {
    const [fence] = blocksOf('~~~\nRow 1: K2\n\nRow 2: P2', 'fence');
    expect(fence?.closed).toBe(false);
    expect(tidy(fence?.text ?? '')).toBe('/Row 1: K2//Row 2: P2');
  });
});
