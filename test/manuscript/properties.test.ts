/** What holds for any text at all. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Block, Passage, Span } from '../../src/manuscript/manuscript.ts';
import { readManuscript } from '../../src/manuscript/read.ts';

const straight: Record<string, string> = Object.fromEntries([...'‘’‚‛′'].map((c) => [c, "'"]).concat([...'“”„‟″'].map((c) => [c, '"'])));

/** Pieces of drafts that have something to do with Markdown, and some with nothing. */
const piece = fc.constantFrom(
  ...'* ** *** _ __ + - 1. 2) 80. # ## > | |---| : :: ::: ::a ~~~ ``` --- === <!-- --> <br> &nbsp; \\ \\* \\| [ ] ( ) ](3) “ ” ’ “4″ 🧶 é \ufeff \u00a0 \u2009 \0 \u2028'.split(
    ' ',
  ),
  'Row 1:',
  'K2, p2',
  '; rep from * to end',
  'work as Back to **',
  '**Row 1 (RS):**',
  ':::note',
  '::stet[x]{rule=y}',
  ' ',
  '  ',
  '    ',
  '\t',
);
const lineEnds = fc.constantFrom('\n', '\n', '\n', '\r\n', '\n\n', '\r', '');
const nasty = fc
  .array(fc.tuple(piece, piece, piece, lineEnds), { maxLength: 24 })
  .map((lines) => lines.map((parts) => parts.join('')).join(''));
const anything = fc.oneof(
  nasty,
  fc.string({ unit: 'binary', maxLength: 120 }),
  nasty.map((text) => `\ufeff${text}`),
  nasty.map((text) => `---\na: “b”\n---\n${text}`),
);

function passagesOf(block: Block): readonly Passage[] {
  if (block.kind === 'tableRow') return block.cells;
  if (block.kind === 'directive') return block.label ? [block.label] : [];
  return block.kind === 'break' || block.kind === 'overlong' ? [] : [block];
}

function lies(span: Span, inside: Span): boolean {
  return inside.start <= span.start && span.start <= span.end && span.end <= inside.end;
}

/** Whether a character of a passage may stand for this character of the draft. */
function standsFor(shown: string, typed: string): boolean {
  if (shown === typed || shown === straight[typed] || shown === ' ') return true;
  return shown === '\n' && (typed === '\r' || typed === '<');
}

describe('any text', () => {
  test('is read without complaint, and every passage lies character for character over the draft', () => {
    fc.assert(
      fc.property(anything, (source) => {
        const { blocks } = readManuscript(source);
        for (const passage of blocks.flatMap(passagesOf)) {
          expect(lies(passage, { start: 0, end: source.length })).toBe(true);
          expect(passage.text.length).toBe(passage.end - passage.start);
          for (let at = 0; at < passage.text.length; at++) {
            expect(standsFor(passage.text[at] ?? '', source[passage.start + at] ?? '')).toBe(true);
          }
          for (const span of passage.emphasis) expect(lies(span, passage)).toBe(true);
        }
      }),
      { numRuns: 1500, seed: 20 },
    );
  });

  test('gives blocks and hazards in reading order, inside the draft, none over another', () => {
    fc.assert(
      fc.property(anything, (source) => {
        const { blocks, hazards } = readManuscript(source);
        let last = 0;
        for (const block of blocks) {
          expect(lies(block, { start: last, end: source.length })).toBe(true);
          last = block.end;
        }
        for (const hazard of hazards) expect(lies(hazard, { start: 0, end: source.length })).toBe(true);
        expect(hazards.map(({ start }) => start)).toEqual(hazards.map(({ start }) => start).sort((a, b) => a - b));
      }),
      { numRuns: 1000, seed: 21 },
    );
  });

  test('loses no letter or number of plain rows, whatever stands before them', () => {
    const row = fc.constantFrom('K2, *yo, k2tog; rep from * to end', 'Row 1:p2', '[k2, p2](3) times', '**Rnd 4:** *P2; rep from *');
    const before = fc.constantFrom('', '- ', '> ', '1. ', '# ', '  ', '    ', '> - ', '2) ');
    fc.assert(
      fc.property(fc.array(fc.tuple(before, row), { minLength: 1, maxLength: 12 }), (rows) => {
        const source = rows.map((parts) => parts.join('')).join('\n\n');
        const shown = readManuscript(source).blocks.flatMap(passagesOf);
        const letters = (text: string): string => text.replace(/[^A-Za-z0-9]/g, '');
        expect(shown.map(({ text }) => letters(text)).join('')).toBe(rows.map(([, words]) => letters(words)).join(''));
      }),
      { numRuns: 300, seed: 22 },
    );
  });

  test('is read to a depth of thirty quotations or lists; what stands deeper is kept as one passage that is not read', () => {
    const kinds = (text: string): string[] => readManuscript(text).blocks.map(({ kind }) => kind);
    expect(kinds(`${'> '.repeat(30)}K2`)).toEqual(['paragraph']);
    expect(kinds(`${'> '.repeat(31)}K2`)).toEqual(['overlong']);
    expect(kinds(`${'> '.repeat(6000)}K2`)).toEqual(['overlong']);
    expect(kinds(`${'- '.repeat(30)}K2`)).toHaveLength(30);
    expect(kinds(`${'- '.repeat(800)}K2`)).toEqual(['overlong']);
  });

  test('is read twice alike', () => {
    fc.assert(
      fc.property(nasty, (source) => {
        const { place: _, ...first } = readManuscript(source);
        const { place: __, ...second } = readManuscript(source);
        expect(second).toEqual(first);
      }),
      { numRuns: 100, seed: 23 },
    );
  });
});

describe('very many of one thing', () => {
  const shapes: [string, (n: number) => string][] = [
    ['stars', (n) => '*a'.repeat(n)],
    ['double stars', (n) => '**a '.repeat(n)],
    ['blanks', (n) => `* a${' '.repeat(n)}*`],
    ['comments', (n) => '<!-- '.repeat(n)],
    ['lines', (n) => 'Row 1: *K2, p2; rep from * to end\n'.repeat(n / 8)],
    ['items', (n) => '1. *K2, p2; rep from * to end\n'.repeat(n / 8)],
    ['backslashes', (n) => '\\'.repeat(n)],
  ];
  // A reader that goes back over its text for each of them would run out of the time a test has.
  test.each(shapes)('%s are read, and no character is lost', (_, shape) => {
    const source = shape(32_000);
    expect(readManuscript(source).source).toBe(source);
  });
});
