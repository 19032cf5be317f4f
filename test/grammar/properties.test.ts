/** What holds for any words at all: reading never throws, loses nothing, and its cost follows the words. */
import { EmbeddedActionsParser } from 'chevrotain';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readPassage } from '../../grammar/read.ts';
import { tokensOf } from '../../grammar/tokens.ts';
import type { Span, Statement } from '../../grammar/tree.ts';
import { vocabularyOf } from '../../grammar/vocabulary.ts';

const vocabulary = vocabularyOf({});
const sizes = ['S', 'M', 'L'];
const base = 1000;
const readAt = (text: string): Statement[] => readPassage(text, base, { vocabulary, sizes });

const words = fc.constantFrom(
  ...'k2 p3 k k2tog ssk yo sl 1 wyif psso m1 kfb C4F 2/1 LPC inc dec MB * ** † rep repeat from to last end sts st 3 5 (6, 7) twice times more in all next and then , ; . : — ( ) [ ] { } Row Rnd 1 2–4 RS WS turn w&t pm sm m marker BO CO cast on off pick up holder needle until measures cm knit purl work patt rib as set chart A over across around every foll alt row rows rnds for neck each end beg with left right front back of the a an with together tog into same double drop dropping cn hold evenly only sizes size shape shaping complete to match leaving rem unworked florp zq3 ending omitting instead'.split(
    ' ',
  ),
  'rep from *',
  'to end',
  'to last 2 sts',
  'in next st',
  'Row 1 (RS):',
  'rep last 2 rows',
  '(k1, yo, k1)',
  '[k2, p2]',
  'work Row 3 of Chart B',
  'multiple of 6 sts + 1',
  'At the same time',
);
const phrases = fc.array(words, { maxLength: 40 }).map((list) => list.join(' '));
const anything = fc.oneof(
  { arbitrary: phrases, weight: 4 },
  { arbitrary: fc.string({ maxLength: 120, unit: 'binary' }), weight: 1 },
  { arbitrary: fc.string({ maxLength: 160 }), weight: 1 },
);

interface Node {
  readonly type: string;
  readonly span: Span;
}

/** Every node below a value, itself included, in the order of its fields. */
function nodes(value: unknown, found: Node[] = []): Node[] {
  if (Array.isArray(value)) for (const each of value) nodes(each, found);
  else if (value !== null && typeof value === 'object') {
    if ('type' in value && 'span' in value) found.push(value as Node);
    for (const each of Object.values(value)) nodes(each, found);
  }
  return found;
}

/** Spans of the smallest nodes that stand for words: a row and a block stand for nothing but their parts. */
function parts(statement: Statement): Span[] {
  switch (statement.type) {
    case 'row':
      return [
        ...(statement.label === null ? [] : [statement.label.span]),
        ...(statement.does === null ? [] : parts(statement.does)),
        ...statement.children.flatMap(parts),
        ...statement.stated.map((each) => each.span),
      ];
    case 'sizeBlock':
    case 'atSameTime': {
      const first = statement.children[0]?.span.start ?? statement.span.end;
      return [{ start: statement.span.start, end: first }, ...statement.children.flatMap(parts)];
    }
    default:
      return [statement.span];
  }
}

describe('any words', () => {
  test('reading never throws', () => {
    fc.assert(
      fc.property(anything, (text) => {
        readAt(text);
      }),
      { numRuns: 600 },
    );
  });

  test('every span lies inside the text, and what is below a node inside its text', () => {
    fc.assert(
      fc.property(anything, (text) => {
        for (const node of nodes(readAt(text))) {
          expect(node.span.start).toBeGreaterThanOrEqual(base);
          expect(node.span.end).toBeLessThanOrEqual(base + text.length);
          expect(node.span.end).toBeGreaterThanOrEqual(node.span.start);
        }
      }),
      { numRuns: 400 },
    );
  });

  test('statements and steps come in the order of the text', () => {
    fc.assert(
      fc.property(phrases, (text) => {
        const ordered = (list: readonly { readonly span: Span }[]): void => {
          for (let at = 1; at < list.length; at += 1) expect(list[at]?.span.start).toBeGreaterThanOrEqual(list[at - 1]?.span.start ?? 0);
        };
        const statements = readAt(text);
        ordered(statements);
        for (const node of nodes(statements)) if ('children' in node) ordered((node as unknown as { children: Node[] }).children);
      }),
      { numRuns: 300 },
    );
  });

  test('no word is lost', () => {
    fc.assert(
      fc.property(phrases, (text) => {
        const spans = readAt(text).flatMap(parts);
        const lost = tokensOf(text, vocabulary, sizes.length).filter(
          (token) =>
            /[\p{L}\p{N}]/u.test(token.image) &&
            !/^(?:and|then|and then|the|a|an|&)$/i.test(token.image) &&
            !spans.some((span) => base + token.startOffset >= span.start && base + token.startOffset < span.end),
        );
        expect(lost.map((token) => token.image)).toEqual([]);
      }),
      { numRuns: 400 },
    );
  });

  test('the same words are read the same', () => {
    fc.assert(
      fc.property(phrases, (text) => {
        expect(readAt(text)).toEqual(readAt(text));
      }),
      { numRuns: 60 },
    );
  });
});

describe('cost follows the words', () => {
  /** How often the parser looks at a token: the one measure of work that no clock disturbs. */
  function looks(text: string): number {
    const owner = Object.getPrototypeOf(EmbeddedActionsParser.prototype) as { LA: (ahead: number) => unknown };
    const plain = owner.LA;
    let count = 0;
    owner.LA = function counting(this: unknown, ahead: number): unknown {
      count += 1;
      return plain.call(this, ahead);
    };
    try {
      readAt(text);
    } finally {
      owner.LA = plain;
    }
    return count;
  }

  test('looks are counted', () => {
    expect(looks('Row 1: k2, p2.')).toBeGreaterThan(10);
  });

  test.each([
    ['a list of stitches', 'k2, p2, yo, k2tog, '],
    ['stars', '*k2, p2; rep from * 3 times more, '],
    ['nested brackets side by side', '[k1, (p1, k1) twice] 3 times, '],
    ['rows', 'Row 1: K2, p2 to end. '],
    ['open brackets', '( ['],
    ['open stars', '* ** '],
  ])('%s', (_, piece) => {
    const few = looks(piece.repeat(20));
    const many = looks(piece.repeat(80));
    expect(many).toBeLessThanOrEqual(few * 4.2 + 20);
  });

  test('deep nesting is read', () => {
    const deep = `Row 1: ${'['.repeat(60)}k1, p1${'] twice'.repeat(60)}.`;
    expect(nodes(readAt(deep)).filter((node) => node.type === 'repeat').length).toBe(60);
  });
});
