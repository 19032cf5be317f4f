/** One piece from its cast-on: the count after every row, and what an editor is told of it. */
import { expect, test } from 'vitest';
import { proof } from '../../../src/index.ts';

export interface Case {
  readonly name: string;
  /** The lines of the piece; a line that begins with "#" makes them a draft of their own. */
  readonly lines: readonly string[];
  /** Count after each row that is worked, as many times as it is worked; the last of them where one number is given. */
  readonly after: number | readonly (number | null)[] | null;
  /** Level and rule of each finding. */
  readonly said: readonly string[];
  /** Words that the one finding must hold. */
  readonly words?: string;
}

/** Words of the one dialect beside those of the other, and ways of decreasing, are no matter here. */
const besides = /mixed-(?:terms|forms)|method-left-open/;

export function work(lines: readonly string[]): {
  readonly after: readonly (number | null)[];
  readonly said: readonly string[];
  readonly words: string;
} {
  const own = lines[0]?.startsWith('#') === true;
  const { replay, findings } = proof(`${own ? '' : '# Tern Cloth\n\n'}${lines.join('\n\n')}\n`);
  const rows = replay.entries.filter((entry) => entry.unit !== 'step');
  const told = findings.filter((each) => !besides.test(each.rule));
  return {
    after: rows.flatMap((entry) => Array.from({ length: entry.times }, () => entry.after[0] ?? null)),
    said: told.map((each) => `${each.level} ${each.rule}`),
    words: told.map((each) => each.message).join(' '),
  };
}

export function check(cases: readonly Case[]): void {
  test.each(cases)('$name', ({ lines, after, said, words }) => {
    const found = work(lines);
    expect(Array.isArray(after) ? found.after : found.after.at(-1)).toEqual(after);
    expect(found.said).toEqual(said);
    if (words !== undefined) expect(found.words).toContain(words);
  });
}
