/**
 * Markdown's blocks only: headings, lists, quotations, tables, fences, directives and front matter are read as usual,
 * while everything Markdown does inside a line is off, so that the characters of an instruction stay as typed.
 *
 * Read in full, `*k2, p2*; rep from *` would lose two stars, `[k2tog, yo](3)` would become a link and `Row 1:k2` would
 * lose its stitch. Block shapes that would eat a row (a row underlined by `---`, a row indented by four spaces,
 * `[S]: 80`, a tag alone on its line) are off as well.
 */
import type { Root } from 'mdast';
import { gfmTableFromMarkdown } from 'mdast-util-gfm-table';
import { gfmTable } from 'micromark-extension-gfm-table';
import remarkDirective from 'remark-directive';
import remarkFrontmatter from 'remark-frontmatter';
import remarkParse from 'remark-parse';
import type { Processor } from 'unified';
import { unified } from 'unified';

/** Names of micromark 4. A name that changes there would switch its construct on again: the tests hold every one. */
const switchedOff = [
  'attention',
  'autolink',
  'characterEscape',
  'characterReference',
  'codeIndented',
  'codeText',
  'definition',
  'hardBreakEscape',
  'htmlFlow',
  'htmlText',
  'labelStartImage',
  'labelStartLink',
  'setextUnderline',
];

/** Directives on lines of their own; `:name` inside a sentence stays text (`Row 1:k2`, `S:5, M:6`). */
function blockDirectives(this: Processor): void {
  remarkDirective.call(this);
  const extensions = this.data().micromarkExtensions ?? [];
  const { flow } = extensions.pop() ?? {};
  if (flow) extensions.push({ flow });
}

function blocksOnly(this: Processor): void {
  const data = this.data();
  data.micromarkExtensions = [...(data.micromarkExtensions ?? []), { disable: { null: switchedOff } }, gfmTable()];
  data.fromMarkdownExtensions = [...(data.fromMarkdownExtensions ?? []), gfmTableFromMarkdown()];
}

const reader = unified().use(remarkParse).use(remarkFrontmatter, ['yaml']).use(blockDirectives).use(blocksOnly).freeze();

/** The tree of blocks. Offsets do not count a byte order mark at the start. */
export function parseBlocks(source: string): Root {
  return reader.parse(source);
}
