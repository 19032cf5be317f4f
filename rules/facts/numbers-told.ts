/** Numbers of things in sentences: "5 buttonholes in all", "eight buttons", "7 (8, 8) buttons". */
import type { Sized } from '../../grammar/count.ts';
import type { Span } from '../../src/manuscript/manuscript.ts';
import { numberLists } from '../../src/pattern/front/numbers.ts';
import type { Context } from '../rule.ts';
import { type Stretch, stretches } from './blocks.ts';

export interface Told {
  readonly values: Sized;
  readonly span: Span;
}

/** Numbers that stand before the thing, with at most three plain words between. */
export function numbersBefore(context: Context, things: RegExp, where: (stretch: Stretch) => boolean): readonly Told[] {
  const sizes = context.pattern.sizes.length;
  return stretches(context)
    .filter(where)
    .flatMap((stretch) =>
      numberLists(stretch.text, sizes > 1 ? sizes : null).flatMap((list) => {
        const after = stretch.text.slice(list.index + list.length, list.index + list.length + 48);
        const match = /^\s(?:[a-z-]+\s){0,3}?([a-z]+)\b/i.exec(after);
        if (match === null || !things.test(match[1]!) || /^\s(?:mm|cm|in|st|sts|stitch|rows?)\b/i.test(after)) return [];
        const first = stretch.start + list.index;
        return [{ values: list.values, span: { start: first, end: first + list.length + match[0].length } }];
      }),
    );
}
