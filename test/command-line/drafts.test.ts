import { mkdirSync, readdirSync, readFileSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { version } from '../../src/version.ts';
import { folderWith, rowproof, word } from './play.ts';

const paths = (out: string) => JSON.parse(out).drafts.map((draft: { path: string }) => draft.path);
const json = ['--format', 'json'];

describe('drafts', () => {
  test('of a folder come in the order of the bytes of their path, whatever the folder above is called', async () => {
    const folder = folderWith({
      'd/b.md': '',
      'd/B.md': '',
      'd/a/z.md': '',
      'd/a.md': '',
      'd/é.MD': '',
      'd/c.txt': '',
      'd/node_modules/x.md': '',
      'd/.git/y.md': '',
      'd/.drafts/q.md': '',
    });
    const expected = ['d/.drafts/q.md', 'd/B.md', 'd/a.md', 'd/a/z.md', 'd/b.md', 'd/é.MD'];
    expect(paths((await rowproof(['proof', 'd', ...json], { folder })).out)).toEqual(expected);
    expect(paths((await rowproof(['proof', 'd/', ...json], { folder })).out)).toEqual(expected);
    expect(paths((await rowproof(['proof', '.', ...json], { folder: join(folder, 'd') })).out)).toEqual(
      expected.map((path) => path.slice(2)),
    );
  });

  test('named twice are read once, in the order of the words', async () => {
    const folder = folderWith({ 'a.md': '', 'b.md': '', 'c.txt': 'K1.' });
    expect(paths((await rowproof(['proof', 'c.txt', 'b.md', '.', './a.md', ...json], { folder })).out)).toEqual(['c.txt', 'b.md', 'a.md']);
  });

  test('behind links: a circle of folders ends, a link to a draft is a draft', async () => {
    const folder = folderWith({ 'a.md': '', 'd/b.md': '' });
    symlinkSync('..', join(folder, 'd/up'));
    symlinkSync('../a.md', join(folder, 'd/c.md'));
    expect(paths((await rowproof(['proof', 'd', ...json], { folder })).out)).toEqual(['d/b.md', 'd/c.md']);
  });

  test('a folder that is called like a draft is a folder', async () => {
    const folder = folderWith({ 'd/b.md': '' });
    mkdirSync(join(folder, 'd/not.md'));
    expect(paths((await rowproof(['proof', 'd', ...json], { folder })).out)).toEqual(['d/b.md']);
  });

  test('from standard input', async () => {
    const { out, status } = await rowproof(['proof', '-', ...json], { input: `Row 1: ${word.error}` });
    expect([status, paths(out)]).toEqual([1, ['-']]);
    expect((await rowproof(['proof', '-'], { input: 'Row 1.' })).out).toMatch(/^standard input\n/);
    expect(await rowproof(['proof', '-'], { input: new Uint8Array([0]) })).toMatchObject({
      status: 2,
      err: 'standard input: it is not a text file; save the draft as plain text or Markdown.\n',
    });
  });

  test('an empty one alone passes no gate: nothing was checked', async () => {
    const folder = folderWith({ 'a.md': '' });
    expect(await rowproof(['proof', 'a.md'], { folder })).toEqual({
      status: 2,
      out: 'a.md\nThe draft is empty: there is nothing to check.\n\nNothing was checked.\n',
      err: 'a.md: nothing in it instructs, so nothing was checked.\n',
    });
    expect((await rowproof(['proof', 'a.md', ...json], { folder })).status).toBe(2);
    expect((await rowproof(['tally', 'a.md'], { folder })).status).toBe(2);
  });

  test('an empty one is named beside a report for programs, so that no green light hides it', async () => {
    const folder = folderWith({ 'a.md': '', 'b.md': 'Row 1.' });
    for (const format of ['json', 'sarif', 'junit', 'html'])
      expect(await rowproof(['proof', '.', '--format', format], { folder })).toMatchObject({
        status: 0,
        err: 'a.md: nothing in it instructs, so nothing was checked.\n',
      });
  });

  test('without the size of a test sheet are named, and the others get theirs', async () => {
    const folder = folderWith({ 'a.md': '# A\n\nSizes S, M\n\nRow 1.', 'b.md': '# B\n\nRow 1.' });
    const { status, out, err } = await rowproof(['tally', '.', '--format', 'html', '--size', 'm'], { folder });
    expect([status, err]).toEqual([0, 'b.md has no size m, so there is no sheet of it.\n']);
    expect(out).toContain('<p>B has no size m, so there is no sheet of it.</p>');
    expect(out).toContain('<h1>A, size M: sheet for the test knitter</h1>');
  });

  test('a byte order mark stays with the text', async () => {
    const folder = folderWith({ 'a.md': `\ufeff${word.error}` });
    expect(JSON.parse((await rowproof(['proof', 'a.md', ...json], { folder })).out).drafts[0].findings[0].column).toBe(2);
  });

  test('5 MB of prose get their answer', async () => {
    const folder = folderWith({ 'long.md': 'The lamp was lit and the wind went round to the west.\n'.repeat(95_000) });
    expect(await rowproof(['proof', 'long.md', ...json], { folder })).toMatchObject({ status: 0, err: '' });
  });

  test('one that cannot be read is said and the others are still proofed', async () => {
    const folder = folderWith({ 'a.md': 'Row 1.', 'b.md': new Uint8Array([0]), 'c.md': 'CRASH', 'd.md': `Row 1 ${word.error}` });
    const { status, out, err } = await rowproof(['proof', 'a.md', 'none.md', 'b.md', 'c.md', 'd.md', ...json], { folder });
    expect(status).toBe(2);
    expect(paths(out)).toEqual(['a.md', 'd.md']);
    expect(err.split('\n')).toEqual([
      'none.md: there is no such file or folder.',
      'b.md: it is not a text file; save the draft as plain text or Markdown.',
      'c.md: rowproof stopped: the needle broke. Please report this, with the draft if you may.',
      '',
    ]);
  });

  test('when none can be read the run stops', async () => {
    const { status, out, err } = await rowproof(['proof', 'x.md', 'y.md'], { folder: folderWith({}) });
    expect([status, out]).toEqual([2, '']);
    expect(err.trimEnd().split('\n')).toHaveLength(3);
  });
});

describe('the house style', () => {
  const levelOf = async (folder: string, ...words: string[]) =>
    JSON.parse((await rowproof(['proof', ...words, ...json], { folder })).out).drafts.map(
      (draft: { findings: { level: string }[] }) => draft.findings[0]?.level,
    );

  test('is the nearest one upward from each draft', async () => {
    const folder = folderWith({
      'house-style.yaml': 'rules:\n  count-mismatch: query\n',
      'a.md': word.error,
      'press/house-style.yaml': 'rules:\n  count-mismatch: style\n',
      'press/deep/er/b.md': word.error,
    });
    expect(await levelOf(folder, '.')).toEqual(['query', 'style']);
  });

  test('given by --house holds for every draft', async () => {
    const folder = folderWith({ 'house-style.yaml': 'terms: wrong', 'mine.yaml': 'rules:\n  count-mismatch: style\n', 'a.md': word.error });
    expect(await levelOf(folder, 'a.md', '--house', 'mine.yaml')).toEqual(['style']);
  });

  test('of standard input is sought from the folder of the run', async () => {
    const folder = folderWith({ 'house-style.yaml': 'rules:\n  count-mismatch: query\n' });
    expect((await rowproof(['proof', '-'], { folder, input: word.error })).status).toBe(0);
  });
});

describe('the report', () => {
  test('goes into a file and nowhere else, and no draft is touched', async () => {
    const folder = folderWith({ 'a.md': `Row 1 ${word.error}` });
    expect(await rowproof(['proof', 'a.md', '--output', 'a.json', ...json], { folder })).toEqual({ status: 1, out: '', err: '' });
    expect(paths(readFileSync(join(folder, 'a.json'), 'utf8'))).toEqual(['a.md']);
    expect(readFileSync(join(folder, 'a.md'), 'utf8')).toBe(`Row 1 ${word.error}`);
    expect(readdirSync(folder).sort()).toEqual(['a.json', 'a.md']);
  });

  test('is never written over a draft that a link leads to', async () => {
    const folder = folderWith({ 'd/a.md': 'Row 1.' });
    symlinkSync('d/a.md', join(folder, 'report.txt'));
    expect((await rowproof(['proof', 'd', '--output', 'report.txt'], { folder })).status).toBe(2);
    expect(readFileSync(join(folder, 'd/a.md'), 'utf8')).toBe('Row 1.');
  });

  test('CSV has a byte order mark in a file and none in a pipe', async () => {
    const folder = folderWith({ 'a.md': 'Row 1.' });
    const { out } = await rowproof(['tally', 'a.md', '--format', 'csv'], { folder });
    await rowproof(['tally', 'a.md', '--format', 'csv', '--output', 'a.csv'], { folder });
    expect(out).toMatch(/^draft,/);
    expect(readFileSync(join(folder, 'a.csv'), 'utf8')).toBe(`\ufeff${out}`);
  });

  test.each([
    ['proof', 'text'],
    ['proof', 'json'],
    ['proof', 'sarif'],
    ['proof', 'junit'],
    ['tally', 'text'],
    ['tally', 'json'],
    ['tally', 'csv'],
  ])('of %s in %s is the same bytes twice', async (command, format) => {
    const folder = folderWith({ 'b.md': `Row 1 ${word.error} ${word.query}`, 'a.md': `Row 1 ${word.style}` });
    const first = await rowproof([command, '.', '--format', format], { folder });
    expect(first.out).not.toBe('');
    expect(await rowproof([command, '.', '--format', format], { folder })).toEqual(first);
  });
});

describe('on a terminal', () => {
  const folder = () => folderWith({ 'a.md': `Row 1 ${word.error}`, 'b.md': 'Row 1.' });
  const coloured = /\p{Cc}\[31m/u;

  test('colour is used', async () => {
    expect((await rowproof(['proof', 'a.md'], { folder: folder(), terminal: true })).out).toMatch(coloured);
  });

  test.each([
    ['--no-color', ['--no-color'], { terminal: true }],
    ['--no-color before the command', ['--no-color'], { terminal: true, first: true }],
    ['NO_COLOR', [], { terminal: true, environment: { NO_COLOR: '1' } }],
    ['a dumb terminal', [], { terminal: true, environment: { TERM: 'dumb' } }],
    ['a pipe', [], {}],
    ['a file', ['--output', 'x.txt'], { terminal: true }],
  ])('%s turns it off', async (_, words, options) => {
    const where = folder();
    const { out } = await rowproof('first' in options ? [...words, 'proof', 'a.md'] : ['proof', 'a.md', ...words], {
      folder: where,
      ...options,
    });
    expect(words[0] === '--output' ? readFileSync(join(where, 'x.txt'), 'utf8') : out).toMatch(/^[^\p{Cc}]+\n/u);
    expect(out).not.toMatch(coloured);
  });

  test('an empty NO_COLOR asks for nothing (no-color.org)', async () => {
    expect((await rowproof(['proof', 'a.md'], { folder: folder(), terminal: true, environment: { NO_COLOR: '' } })).out).toMatch(coloured);
  });

  test('a run of more than a second shows how far it is and wipes it', async () => {
    const { err } = await rowproof(['proof', '.'], { folder: folder(), terminal: true, tick: 1500 });
    expect(err).toContain('Draft 2 of 2: b.md');
    expect(err.endsWith('\r\u001b[K')).toBe(true);
    expect((await rowproof(['proof', '.'], { folder: folder(), terminal: true, tick: 1 })).err).toBe('');
    expect((await rowproof(['proof', '.'], { folder: folder(), tick: 1500 })).err).toBe('');
  });
});

describe('the other commands', () => {
  test('replay shows the row on both needles', async () => {
    const folder = folderWith({ 'a.md': 'Sizes S, M\n\nRow 1: K.' });
    expect(await rowproof(['replay', 'a.md', '--row', 'Row 1', '--size', 'm', '--from', '7'], { folder })).toEqual({
      status: 0,
      err: '',
      out: `Body · Row 1 (RS) · size M
a.md
Before it, 7 stitches stand on the needle.

you work                          takes  makes  left needle  right needle
(start)                                                   7             0
k2                                    2      2            5             2
repeat 1: k3, m1 (marker passed)      3      4            2             6

After the row: 8. The row fits.
`,
    });
  });

  test('replay as JSON', async () => {
    const folder = folderWith({ 'a.md': 'Row 1: K.' });
    const document = JSON.parse((await rowproof(['replay', 'a.md', '--row', 'Row 1', ...json], { folder })).out);
    expect(document).toMatchObject({
      path: 'a.md',
      size: 'one',
      row: 'Row 1',
      before: 5,
      after: 6,
      steps: [{ text: 'k2', line: 1, column: 1, pass: null }, { pass: 1 }],
    });
  });

  test('rules lists them and shows one with its examples', async () => {
    expect((await rowproof(['rules'])).out).toContain('  count-mismatch      The stated count');
    const page = (await rowproof(['rules', 'count-mismatch'])).out;
    expect(page).toContain('    Row 1: K2, k2tog, k to end. 10 sts.\n');
    expect(page).toContain('    Row 1: K2, k2tog, k to end. 9 sts.\n');
    expect(JSON.parse((await rowproof(['rules', ...json])).out).rules).toHaveLength(2);
    expect(JSON.parse((await rowproof(['rules', 'comma-before-times', ...json])).out)).toMatchObject({
      id: 'comma-before-times',
      offByDefault: true,
    });
  });

  test('help and version are no failure', async () => {
    expect(await rowproof(['--version'])).toEqual({ status: 0, out: `${version}\n`, err: '' });
    for (const words of [
      ['--help'],
      ['-h'],
      ['help'],
      ['help', 'proof'],
      ['proof', '--help'],
      ['tally', '--help'],
      ['replay', '--help'],
      ['rules', '--help'],
    ]) {
      const { status, out, err } = await rowproof(words);
      expect([status, err]).toEqual([0, '']);
      expect(out).toMatch(/^Usage: rowproof/);
    }
  });
});
