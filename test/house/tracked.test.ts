/** What is installed or built never comes into the repository: checked out over a real folder it would take its place. */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const root = join(import.meta.dirname, '..', '..');

test('nothing that is installed or built is tracked, not even as a link (mend with: git rm --cached node_modules)', () => {
  const listed = spawnSync('git', ['ls-files', 'node_modules', 'dist'], { cwd: root, encoding: 'utf8' });
  // Outside a checkout there is nothing to be tracked.
  expect(listed.status === 0 ? listed.stdout.trim() : '').toBe('');
});
