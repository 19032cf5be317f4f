import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Row } from '../../grammar/tree.ts';
import type { Section } from '../../src/pattern/pattern.ts';
import { fittingRepeats, rowLinear } from '../../src/replay/multiples.ts';
import { patternOf } from '../replay/work.ts';
import { castOn, complete, count, DoesNotFit, workAll } from './simple.ts';

const nightly = process.env['ROWPROOF_NIGHTLY'] === '1';
const most = 60;

/** Stitches after the row on that many, worked one by one; null where it does not fit. */
function brute(row: Row, start: number): number | null {
  const state = castOn(start);
  try {
    workAll(state, row.children, { loop: 'in', times: 'more' });
  } catch (error) {
    if (error instanceof DoesNotFit) return null;
    throw error;
  }
  return complete(state, row.children) ? count(state.left) + count(state.right) : null;
}

/** A multiple that the row agrees with: some passes of what it repeats, and what stands around them. */
function ownMultiple(text: string, passes: number): [number, number] {
  const takes = (words: string): number => {
    const row = (patternOf(`Row 1: ${words}.`, 1).sections[0] as Section).statements[0] as Row;
    const plenty = castOn(400);
    workAll(plenty, row.children, { loop: 'in', times: 'more' });
    return 400 - count(plenty.left);
  };
  const body = /\*(.*); rep/.exec(text)?.[1] ?? 'k1';
  const lead = /^(.*), \*/.exec(text)?.[1];
  const last = Number(/to last (\d+)/.exec(text)?.[1] ?? (text.includes('to last st') ? 1 : 0));
  return [Math.max(1, takes(body)) * ((passes % 3) + 1), (lead === undefined ? 0 : takes(lead)) + last];
}

const token = fc.constantFrom(
  'k1',
  'k2',
  'p3',
  'k4',
  'yo',
  'k2tog',
  'ssk',
  'sk2p',
  'kfb',
  'p2tog',
  'C4F',
  'yo twice',
  '(k1, yo, k1) in next st',
);
const list = fc.array(token, { minLength: 1, maxLength: 4 }).map((tokens) => tokens.join(', '));
const patternRow = fc
  .tuple(fc.option(list), list, fc.option(list), fc.integer({ min: 0, max: 8 }))
  .map(
    ([lead, body, tail, last]) =>
      `${lead === null ? '' : `${lead}, `}*${body}; rep from * to ${last === 0 ? 'end' : last === 1 ? 'last st' : `last ${last} sts`}${last > 0 ? `, ${tail ?? `k${last}`}` : ''}`,
  );

test(
  'a row told for every number of repeats is the row worked on each of them',
  () => {
    let proved = 0;
    let refused = 0;
    fc.assert(
      fc.property(
        patternRow,
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 0, max: 14 }),
        fc.boolean(),
        (text, anyOf, anyPlus, own) => {
          const [of, plus] = own ? ownMultiple(text, anyOf) : [anyOf, anyPlus];
          const pattern = patternOf(`Row 1: ${text}.`, 1);
          const row = (pattern.sections[0] as Section).statements[0] as Row;
          const { after, misfit } = rowLinear(pattern, row.children, { perRepeat: of, plus });
          if (after === null && misfit === null) return;
          const each = Array.from({ length: most }, (_, index) => brute(row, of * (index + 1) + plus));
          if (after !== null) {
            proved += 1;
            // The fewest repeats may be too few for the row's own edges.
            each.forEach((stitches, index) => {
              if (stitches !== null)
                expect(`${text} on ${of}·${index + 1}+${plus}: ${stitches}`).toBe(
                  `${text} on ${of}·${index + 1}+${plus}: ${after.perRepeat * (index + 1) + after.plus}`,
                );
            });
            expect(`${text} on ${of}n+${plus}: ${each.slice(30).every((stitches) => stitches !== null) ? 'fits' : 'does not fit'}`).toBe(
              `${text} on ${of}n+${plus}: fits`,
            );
            return;
          }
          refused += 1;
          expect(`${text} on ${of}n+${plus}: ${each.every((stitches) => stitches !== null) ? 'fits' : 'does not fit'}`).toBe(
            `${text} on ${of}n+${plus}: does not fit`,
          );
          if (misfit?.kind === 'repeatDoesNotFit' && misfit.room.perRepeat > 0 && each.some((stitches) => stitches !== null)) {
            const fits = fittingRepeats(misfit.room, misfit.takes);
            for (const n of fits) if (each[n - 1] === null && n > 20) expect(`${text} on ${of}·${n}+${plus}`).toBe('fits as promised');
          }
        },
      ),
      { numRuns: nightly ? 3_000 : 120, ...(nightly ? {} : { seed: 11 }) },
    );
    expect(proved).toBeGreaterThan(20);
    expect(refused).toBeGreaterThan(20);
  },
  nightly ? 3_600_000 : 60_000,
);
