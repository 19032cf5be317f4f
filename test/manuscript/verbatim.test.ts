/** One line for each thing Markdown does inside lines or to rows: all of them must come through as one plain text. */
import { describe, expect, test } from 'vitest';
import { parseBlocks } from '../../src/manuscript/verbatim.ts';

describe('the parser leaves the line alone', () => {
  test.each([
    ['emphasis', '*K3*, **p3**, _k3_'],
    ['addresses', 'see <https://orrin.example> or <press@orrin.example>'],
    ['escapes', 'K3\\*, p3\\[1\\]'],
    ['entities', 'K3 &amp; p3 &#42;'],
    ['indented code', '    K3, p3'],
    ['code', 'K3, `p3`, k3'],
    ['definitions', '[M]: 90'],
    ['hard line ends', 'K3\\\np3'],
    ['tags alone on a line', '<div>'],
    ['tags', 'p to <marker>, sm'],
    ['images', 'K3 ![yo](2) times'],
    ['links', '[ssk, yo](4) times'],
    ['underlined headings', 'Row 3: K3\n==='],
    ['directives in a line', 'Row 3:k4, S:5[a]{b=c}'],
    ['footnotes', 'CO 90[^1] sts'],
  ])('%s', (_, line) => {
    const { children } = parseBlocks(line);
    expect(children.map(({ type }) => type)).toEqual(['paragraph']);
    const [paragraph] = children;
    const inside = paragraph && 'children' in paragraph ? paragraph.children : [];
    expect(inside.map((node) => [node.type, 'value' in node ? node.value : null])).toEqual([['text', line.trimStart()]]);
  });
});
