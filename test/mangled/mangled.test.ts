/** Whatever becomes of a draft, it is proofed: no text ends the run, points outside itself or says what no person would. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runCommandLine } from '../../src/command-line/cli.ts';
import { loadLibrary } from '../../src/command-line/library.ts';
import { type Proof, proof } from '../../src/index.ts';
import { plainText, proofText } from '../../src/report/text.ts';
import { folderWith } from '../command-line/play.ts';
import { mangledDraft } from './mangle.ts';

const nightly = process.env['ROWPROOF_NIGHTLY'] === '1';
const runs = (few: number, many: number): { numRuns: number; seed?: number } => ({
  numRuns: nightly ? many : few,
  ...(nightly ? {} : { seed: 4_117 }),
});
const slow = nightly ? 7_200_000 : 120_000;

/** What is wrong with a proof, whatever the draft says. */
function amiss(text: string, made: Proof): string | null {
  for (const { rule, span, message } of made.findings) {
    if (span.start < 0 || span.end < span.start || span.end > text.length) return `${rule} points outside the draft`;
    if (message.trim() === '' || /\b(?:NaN|undefined|null|Infinity)\b|\[object/.test(message.replace(/["“].*?["”]/gs, '')))
      return `${rule} says: ${message}`;
  }
  return null;
}

test(
  'a mangled draft is proofed and reported',
  () => {
    fc.assert(
      fc.property(mangledDraft, (text) => {
        const made = proof(text);
        expect(amiss(text, made)).toBeNull();
        expect(proofText({ proofs: [made], unreadable: [], rules: [] } as never, plainText)).not.toBe('');
      }),
      runs(40, 4_000),
    );
  },
  slow,
);

test(
  'the same mangled draft is proofed alike twice',
  () => {
    fc.assert(
      fc.property(mangledDraft, (text) => {
        expect(proof(text).findings).toEqual(proof(text).findings);
      }),
      runs(5, 300),
    );
  },
  slow,
);

test(
  'the exit status says what was found, and nothing else',
  async () => {
    const folder = folderWith({});
    await fc.assert(
      fc.asyncProperty(mangledDraft, async (text) => {
        writeFileSync(join(folder, 'draft.md'), text);
        const read = Buffer.from(text).toString();
        let err = '';
        const world = {
          out: { write: async () => {}, isTerminal: false, columns: undefined },
          err: {
            write: async (words: string) => {
              err += words;
            },
            isTerminal: false,
            columns: undefined,
          },
          input: async () => new Uint8Array(),
          folder,
          environment: {},
          now: () => 0,
        };
        const status = await runCommandLine(['proof', 'draft.md'], world, loadLibrary);
        // A draft that is no text at all is refused in one sentence.
        if (status === 2) expect(err).toMatch(/draft\.md/);
        else expect(status).toBe(proof(read).findings.some(({ level }) => level === 'error') ? 1 : 0);
      }),
      runs(10, 600),
    );
  },
  slow,
);
