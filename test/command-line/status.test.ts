import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { folderWith, rowproof, word } from './play.ts';

const clean = '# Cap\n\nRow 1: Knit.\n';

describe('the exit status', () => {
  const drafts = {
    'clean.md': clean,
    'error.md': `Row 1: ${word.error}`,
    'query.md': `Row 1: ${word.query}`,
    'style.md': `Row 1: ${word.style}`,
  };

  test.each([
    ['clean.md', 'error', 0],
    ['clean.md', 'style', 0],
    ['error.md', 'error', 1],
    ['error.md', 'query', 1],
    ['query.md', 'error', 0],
    ['query.md', 'query', 1],
    ['query.md', 'style', 1],
    ['style.md', 'query', 0],
    ['style.md', 'style', 1],
    ['.', 'error', 1],
  ])('of proof %s at the gate %s is %i', async (path, gate, status) => {
    const folder = folderWith(drafts);
    expect(await rowproof(['proof', path, '--gate', gate], { folder })).toMatchObject({ status, err: '' });
  });

  test('is that of the gate error when no gate is named', async () => {
    const folder = folderWith(drafts);
    expect((await rowproof(['proof', 'query.md'], { folder })).status).toBe(0);
    expect((await rowproof(['proof', 'error.md'], { folder })).status).toBe(1);
  });

  test('of tally and replay does not depend on findings', async () => {
    const folder = folderWith(drafts);
    expect((await rowproof(['tally', 'error.md'], { folder })).status).toBe(0);
    expect((await rowproof(['replay', 'error.md', '--row', 'Row 1'], { folder })).status).toBe(0);
  });

  test.each(['text', 'json', 'sarif', 'junit'])('is the same in the format %s', async (format) => {
    const folder = folderWith(drafts);
    expect((await rowproof(['proof', 'error.md', '--format', format], { folder })).status).toBe(1);
    expect((await rowproof(['proof', 'clean.md', '--format', format], { folder })).status).toBe(0);
  });
});

/** Each ends with status 2, nothing on standard output, and this sentence. */
const refusals: readonly (readonly [string, readonly string[], string])[] = [
  ['a missing file', ['proof', 'none.md'], 'none.md: there is no such file or folder.'],
  ['a path through a file', ['proof', 'clean.md/none.md'], 'clean.md/none.md: a part of that path is a file, not a folder.'],
  ['a folder without drafts', ['proof', 'empty'], 'empty: no draft was found in this folder; drafts are files that end in .md.'],
  ['a binary file', ['proof', 'binary.md'], 'binary.md: it is not a text file; save the draft as plain text or Markdown.'],
  ['invalid UTF-8', ['proof', 'latin.md'], 'latin.md: it is not saved as UTF-8 (first seen on line 2); save it as UTF-8 and try again.'],
  ['UTF-16', ['proof', 'wide.md'], 'wide.md: it is saved as UTF-16; save it as UTF-8 and try again.'],
  ['an unknown command', ['prof', 'clean.md'], 'There is no command "prof"; the nearest is "proof".'],
  ['a draft without a command', ['clean.md'], 'Say what to do with clean.md: rowproof proof clean.md.'],
  ['a word that is nothing', ['xyzzy'], 'There is no command "xyzzy"; there are proof, tally, replay, errata and rules.'],
  ['an unknown option', ['proof', 'clean.md', '--fromat', 'json'], 'rowproof proof has no option --fromat; the nearest is --format.'],
  [
    'an option far from all',
    ['rules', '--zebra'],
    'rowproof rules has no option --zebra; it has --output, --no-color, --format and --help.',
  ],
  ['an unknown option before the command', ['--versoin'], 'rowproof has no option --versoin; the nearest is --version.'],
  [
    'an option before the command',
    ['--gate', 'query', 'proof', 'clean.md'],
    'rowproof has no option --gate; it has --version, --no-color and --help.',
  ],
  ['an option without its value', ['proof', 'clean.md', '--format'], '--format wants something after it: --format <format>.'],
  [
    'an unknown format',
    ['proof', 'clean.md', '--format', 'jsn'],
    '--format takes text, json, sarif, junit or html for "proof", not "jsn". The nearest is "json".',
  ],
  [
    'a format of another command',
    ['tally', 'clean.md', '--format', 'sarif'],
    '--format takes text, json, csv or html for "tally", not "sarif".',
  ],
  [
    'an unknown gate',
    ['proof', 'clean.md', '--gate', 'errors'],
    '--gate takes error, query or style, not "errors". The nearest is "error".',
  ],
  ['no draft', ['proof'], 'Name a draft, a folder of drafts, or - for standard input: rowproof proof DRAFT.'],
  ['replay of no draft', ['replay', '--row', 'Row 1'], 'Name the draft and the row: rowproof replay DRAFT --row "Body 17".'],
  ['replay of no row', ['replay', 'clean.md'], 'Name the row: rowproof replay DRAFT --row "Body 17".'],
  [
    'a row without quotes',
    ['replay', 'clean.md', '--row', 'Row', '1'],
    'Replay works on one draft; a row of more than one word wants quotes: --row "Body 17".',
  ],
  ['an unknown row', ['replay', 'clean.md', '--row', 'Row 2'], 'There is no row "Row 2" in this draft; the nearest is "Row 1".'],
  [
    'a size of a draft without sizes',
    ['replay', 'clean.md', '--row', 'Row 1', '--size', 'M'],
    'This draft has one size only; leave out --size.',
  ],
  [
    'an unknown size',
    ['replay', 'sized.md', '--row', 'Row 1', '--size', 'XL'],
    'There is no size "XL" in this draft; its sizes are S and M.',
  ],
  [
    'a start that is no number',
    ['replay', 'clean.md', '--row', 'Row 1', '--from', '-3.5'],
    '--from takes a number of stitches such as 45, not "-3.5".',
  ],
  ['replay of a folder', ['replay', '.', '--row', 'Row 1'], '.: a folder holds many drafts; name the file.'],
  ['an unknown rule', ['rules', 'count-mismach'], 'There is no rule "count-mismach"; the nearest is "count-mismatch".'],
  ['two rules', ['rules', 'a', 'b'], 'rowproof rules takes fewer words than were given; "rowproof rules --help" shows how it is used.'],
  ['a missing house style', ['proof', 'clean.md', '--house', 'none.yaml'], 'none.yaml: there is no such file or folder.'],
  [
    'a broken house style',
    ['proof', 'clean.md', '--house', 'broken.yaml'],
    'broken.yaml, line 2: "tems" is no setting; the nearest is "terms". (and 1 more problem in this file)',
  ],
  ['a broken house style found upward', ['proof', 'press/cap/clean.md'], 'press/house-style.yaml, line 1: "terms" takes "US" or "UK".'],
  [
    'an output over the draft',
    ['proof', 'clean.md', '--output', './clean.md'],
    './clean.md: this is a draft of this run; name another file for the report.',
  ],
  [
    'an output in no folder',
    ['proof', 'clean.md', '--output', 'none/a.txt'],
    'none/a.txt: the report could not be written here; there is no such file or folder.',
  ],
  [
    'a draft that trips the program',
    ['proof', 'crash.md'],
    'crash.md: rowproof stopped: the needle broke. Please report this, with the draft if you may.',
  ],
];

describe('a run that cannot be made', () => {
  test.each(refusals)('%s', async (_, words, sentence) => {
    const folder = folderWith({
      'clean.md': clean,
      'sized.md': 'Sizes S, M\n\nRow 1: Knit.\n',
      'empty/notes.txt': 'no draft',
      'binary.md': new Uint8Array([0x23, 0x20, 0x00, 0x01, 0xff]),
      'latin.md': new Uint8Array([0x4b, 0x31, 0x0a, 0x4d, 0xfc, 0x74, 0x7a, 0x65]),
      'wide.md': new Uint8Array([0xff, 0xfe, 0x4b, 0x00]),
      'crash.md': 'CRASH',
      'broken.yaml': '# the press\ntems: UK\nlabels: 1\n',
      'press/house-style.yaml': 'terms: French\n',
      'press/cap/clean.md': clean,
    });
    expect(await rowproof(words, { folder })).toEqual({ status: 2, out: '', err: `${sentence}\n` });
    expect(readFileSync(join(folder, 'clean.md'), 'utf8')).toBe(clean);
  });

  test('no words at all: one sentence and how it is used', async () => {
    const { status, out, err } = await rowproof([]);
    expect([status, out]).toEqual([2, '']);
    expect(err).toMatch(/^Say what to do, for instance: rowproof proof DRAFT\.\n\nUsage: rowproof/);
  });

  test('no sentence carries words of programs', () => {
    for (const [, , sentence] of refusals)
      expect(sentence).not.toMatch(/ENOENT|undefined|null|exception|invalid|token|argument|\bat \w+ \(/i);
  });
});
