/** A list in a JSON document, written item by item in the same bytes as if the whole were written at once. */
import type { Assembly } from './report.ts';

const step = '  ';

/** A value as it stands `depth` levels deep. A line end within a text is never a line end of the JSON. */
export function jsonItem(value: unknown, depth: number): string {
  return JSON.stringify(value, null, 2).replaceAll('\n', `\n${step.repeat(depth)}`);
}

/** The items as list text of their own, `depth` levels deep. */
export function jsonArray(items: readonly string[], depth: number): string {
  if (items.length === 0) return '[]';
  const line = `\n${step.repeat(depth + 1)}`;
  return `[${line}${items.join(`,${line}`)}\n${step.repeat(depth)}]`;
}

/** A document of which one list grows; `before` ends where the list begins. */
export function jsonList(before: string, depth: number, after: string): Assembly<string> {
  let empty = true;
  const line = `\n${step.repeat(depth + 1)}`;
  return {
    add(item) {
      const lead = empty ? `${before}[` : ',';
      empty = false;
      return `${lead}${line}${item}`;
    },
    end: () => [empty ? `${before}[]${after}` : `\n${step.repeat(depth)}]${after}`],
  };
}
