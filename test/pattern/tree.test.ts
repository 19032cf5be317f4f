/** The instruction tree as unist nodes: what general tools for such trees make of it. */
import { readdirSync, readFileSync } from 'node:fs';
import type { Node } from 'unist';
import { inspectNoColor } from 'unist-util-inspect';
import { visit } from 'unist-util-visit';
import { describe, expect, it } from 'vitest';
import { instructionTree } from '../../src/tree.ts';

const folder = 'fixtures/clean';
const drafts = readdirSync(folder).filter((file) => file.endsWith('.md'));

describe('the instruction tree', () => {
  it('is printed by a general tool', () => {
    const printed = inspectNoColor(instructionTree('# Skerry Band\n\nCO 40 sts.\n\nRow 1 (RS): *K2, p2; rep from * to end.\n'));
    expect(printed).toContain('section[2] (1:3-1:14, 2-13)');
    expect(printed).toMatch(/row\[1\] \(5:1-5:\d+, 27-\d+\)/);
    expect(printed).toMatch(/repeat\[2\]/);
  });

  it.each(drafts)('%s: each node has its place, and lies inside the node above it', (file) => {
    const source = readFileSync(`${folder}/${file}`, 'utf8');
    const lines = source.split('\n');
    let nodes = 0;
    visit(instructionTree(source) as Node, (node, _index, parent) => {
      nodes += 1;
      const { start, end } = node.position ?? {};
      expect(start?.offset).toBeTypeOf('number');
      expect(end?.offset).toBeGreaterThanOrEqual(start?.offset ?? Number.NaN);
      expect(source.slice(0, start?.offset).split('\n').length).toBe(start?.line);
      expect((lines[(start?.line ?? 0) - 1] ?? '').slice((start?.column ?? 1) - 1)).toBe(source.slice(start?.offset).split('\n')[0]);
      // "N2: same as N1" has the steps of N1, where they stand.
      if (parent !== undefined && 'like' in parent) return 'skip';
      if (parent === undefined || (parent as Node).type === 'draft' || (parent as Node).type === 'section') return;
      expect(start?.offset).toBeGreaterThanOrEqual((parent as Node).position?.start.offset ?? Number.NaN);
      expect(end?.offset).toBeLessThanOrEqual((parent as Node).position?.end.offset ?? Number.NaN);
    });
    expect(nodes).toBeGreaterThan(20);
  });
});
