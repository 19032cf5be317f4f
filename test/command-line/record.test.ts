import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { folderWith, rowproof } from './play.ts';

const twoSlips = { 'old/a.md': '# A\n\nRow 1: SLIP.\n', 'old/b.md': '# B\n\nRow 1: SLIP.\n' };

test('a record is made once, then only new findings fail the run', async () => {
  const folder = folderWith(twoSlips);
  expect((await rowproof(['proof', 'old'], { folder })).status).toBe(1);
  const made = await rowproof(['proof', 'old', '--record', 'known.json', '--start-record'], { folder });
  expect([made.status, made.err]).toEqual([0, 'known.json: 2 findings recorded; from now on only new ones count.\n']);
  const again = await rowproof(['proof', 'old', '--record', 'known.json'], { folder });
  expect([again.status, again.err]).toEqual([0, 'known.json: 2 findings are known and not repeated.\n']);
  writeFileSync(join(folder, 'old/a.md'), '# A\n\nA note that moves the text.\n\nRow 1: SLIP.\n');
  expect((await rowproof(['proof', 'old', '--record', 'known.json'], { folder })).status).toBe(0);
  writeFileSync(join(folder, 'old/c.md'), '# C\n\nRow 1: SLIP.\n');
  expect((await rowproof(['proof', 'old', '--record', 'known.json'], { folder })).status).toBe(1);
});

test('the record grows shorter when a slip is put right, and never longer', async () => {
  const folder = folderWith(twoSlips);
  await rowproof(['proof', 'old', '--record', 'known.json', '--start-record'], { folder });
  const all = readFileSync(join(folder, 'known.json'), 'utf8');
  writeFileSync(join(folder, 'old/c.md'), '# C\n\nRow 1: SLIP.\n');
  await rowproof(['proof', 'old', '--record', 'known.json'], { folder });
  expect(readFileSync(join(folder, 'known.json'), 'utf8')).toBe(all);
  writeFileSync(join(folder, 'old/b.md'), '# B\n\nRow 1: K5.\n');
  const { err } = await rowproof(['proof', 'old', '--record', 'known.json'], { folder });
  expect(err).toBe('known.json: 1 finding is known and not repeated. 1 other is gone, and the record is shorter by as many.\n');
  expect(readFileSync(join(folder, 'known.json'), 'utf8').length).toBeLessThan(all.length);
  writeFileSync(join(folder, 'old/b.md'), '# B\n\nRow 1: SLIP.\n');
  expect((await rowproof(['proof', 'old', '--record', 'known.json'], { folder })).status).toBe(1);
});

test('a run over part of the drafts leaves the others in the record; drafts are known by their way from the record', async () => {
  const folder = folderWith(twoSlips);
  await rowproof(['proof', 'old', '--record', 'known.json', '--start-record'], { folder });
  const all = readFileSync(join(folder, 'known.json'), 'utf8');
  expect((await rowproof(['proof', 'a.md', '--record', '../known.json'], { folder: join(folder, 'old') })).status).toBe(0);
  expect(readFileSync(join(folder, 'known.json'), 'utf8')).toBe(all);
});

test.each([
  [['--record', 'none.json'], 'none.json: there is no such record; make it once with --start-record.'],
  [['--start-record'], '--start-record needs --record FILE to say where the record goes.'],
  [['--record', 'old/a.md'], 'old/a.md: it is no record of findings: it is not JSON.'],
  [
    ['--record', 'old/a.md', '--start-record'],
    'old/a.md: this record is there already and may only grow shorter; delete it if you mean to begin again.',
  ],
])('%j is refused in one line', async (words, sentence) => {
  const folder = folderWith(twoSlips);
  expect(await rowproof(['proof', 'old', ...words], { folder })).toEqual({ status: 2, out: '', err: `${sentence}\n` });
  expect(readFileSync(join(folder, 'old/a.md'), 'utf8')).toBe(twoSlips['old/a.md']);
  expect(existsSync(join(folder, 'none.json'))).toBe(false);
});

test('pages are written by the command line', async () => {
  const folder = folderWith({ 'a.md': '# A\n\nSizes S, M\n\nRow 1: SLIP.\n' });
  expect((await rowproof(['proof', 'a.md', '--format', 'html'], { folder })).out).toMatch(/^<!doctype html>/);
  expect((await rowproof(['tally', 'a.md', '--format', 'html'], { folder })).out).toContain('count sheet');
  expect((await rowproof(['tally', 'a.md', '--format', 'html', '--size', 'm'], { folder })).out).toContain('size M');
  expect(await rowproof(['tally', 'a.md', '--format', 'html', '--size', 'XL'], { folder })).toEqual({
    status: 2,
    out: '',
    err: 'There is no size "XL" in this draft; the sizes are S and M.\n',
  });
  expect((await rowproof(['tally', 'a.md', '--size', 'M'], { folder })).status).toBe(2);
});
