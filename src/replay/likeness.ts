/** How well a changed row goes with itself and with its neighbours: mirrored rows stay mirrored, motifs recur, numbers step evenly. */
import type { Sized } from '../../grammar/count.ts';
import { sizeValue } from '../../grammar/count.ts';
import { entryNamed } from '../../grammar/lexicon/index.ts';
import type { Step } from '../../grammar/tree.ts';
import type { Vocabulary } from '../../grammar/vocabulary.ts';
import type { SmallEdit } from './small-edits.ts';

interface Leaf {
  readonly name: string;
  readonly n: number;
}

/** Marks for an edit; only differences between edits of one row mean anything. */
export function likeness(
  vocabulary: Vocabulary,
  size: number,
  steps: readonly Step[],
  siblings: readonly (readonly Step[])[],
): (edit: SmallEdit) => number {
  const mirror = (name: string): string => (vocabulary.stitches.get(name) ?? entryNamed(name))?.mirror ?? name;
  const read = (list: readonly Step[]): Leaf[] => leaves(list, size);
  const neighbours = siblings.map(read);
  const exact = new Set(neighbours.map(printed));
  const pairs = new Set(neighbours.flatMap(pairsOf));
  const own = read(steps);
  const wasMirrored = mirrored(own, mirror);
  const ownPairs = new Set(pairsOf(own));
  return (edit) => {
    const now = read(edit.steps);
    let marks = 0;
    if (exact.has(printed(now))) marks += 2;
    const isMirrored = mirrored(now, mirror);
    if (isMirrored && !wasMirrored) marks += 2;
    if (!isMirrored && wasMirrored) marks -= 1;
    const fresh = [...new Set(pairsOf(now))].filter((pair) => !ownPairs.has(pair));
    marks -= fresh.filter((pair) => !pairs.has(pair)).length * 0.5;
    marks += series(own, now, neighbours);
    if (edit.values !== undefined) marks += Math.sign(unevenness(edit.values.was) - unevenness(edit.values.now));
    if (edit.kind === 'number') marks += Math.abs(edit.by) === 1 ? 1 : Math.abs(edit.by) === 2 ? 0.5 : 0;
    if (edit.kind === 'takeOut') marks -= 0.5;
    if (edit.plain === true) marks -= 0.5;
    return marks;
  };
}

/** Repeats within repeats that are written twice: deeper ones would double the row at every depth. */
const deepest = 4;

/** The stitches of a row in order; each repeat is written twice, which shows how its ends meet. */
function leaves(steps: readonly Step[], size: number, depth = 0): Leaf[] {
  return steps.flatMap((step): Leaf[] => {
    switch (step.type) {
      case 'work':
        return [{ name: step.stitch, n: step.n === null ? 1 : (sizeValue(step.n.values, size) ?? 0) }];
      case 'repeat': {
        if (step.form === 'run')
          return [{ name: 'run', n: step.extent?.kind === 'over' ? (sizeValue(step.extent.count.values, size) ?? 0) : 0 }];
        const inner = leaves(step.children, size, depth + 1);
        const ending = step.ending?.kind === 'then' ? leaves(step.ending.children, size, depth + 1) : [];
        const once = leaves(step.once, size, depth + 1);
        return [...inner, ...once, ...(depth < deepest ? inner : []), ...ending];
      }
      case 'bindOff':
      case 'castOn':
        return [{ name: step.type, n: sizeValue(step.count.values, size) ?? 0 }];
      case 'needlePart':
        return leaves(step.children, size, depth);
      case 'stated':
      case 'remark':
      case 'resolve':
      case 'change':
      case 'marker':
        return [];
      default:
        return [{ name: step.type, n: 1 }];
    }
  });
}

const printed = (row: readonly Leaf[]): string => row.map(({ name, n }) => `${name} ${n}`).join(',');
const shape = (row: readonly Leaf[]): string => row.map(({ name }) => name).join(',');

function pairsOf(row: readonly Leaf[]): string[] {
  return row.map(({ name }, index) => `${name}>${row[index + 1]?.name ?? ''}`);
}

/** Whether the row reads the same from both ends, with every lean turned over; neighbours of one name are one. */
function mirrored(row: readonly Leaf[], mirror: (name: string) => string): boolean {
  const merged: Leaf[] = [];
  for (const leaf of row) {
    const last = merged.at(-1);
    if (last !== undefined && last.name === leaf.name && leaf.name !== 'run') merged[merged.length - 1] = { ...leaf, n: last.n + leaf.n };
    else merged.push(leaf);
  }
  return (
    merged.length > 1 &&
    merged.every(({ name, n }, index) => {
      const other = merged[merged.length - 1 - index];
      return other !== undefined && other.n === n && mirror(name) === other.name;
    })
  );
}

/** A number that stands between those of the like rows before and behind, or equals them, goes with them. */
function series(own: readonly Leaf[], now: readonly Leaf[], neighbours: readonly (readonly Leaf[])[]): number {
  if (shape(own) !== shape(now)) return 0;
  const like = neighbours.filter((row) => shape(row) === shape(now));
  let marks = 0;
  now.forEach(({ n }, index) => {
    const was = own[index]?.n;
    if (was === n || was === undefined || like.length === 0) return;
    const values = like.map((row) => row[index]?.n ?? 0);
    if (values.includes(n) && !values.includes(was)) marks += 1;
    else if (!values.includes(n) && values.includes(was)) marks -= 1;
  });
  return Math.max(-1, Math.min(1, marks));
}

/** How uneven the steps from size to size are. */
function unevenness(values: Sized): number {
  const told = values.filter((value) => value !== null);
  const steps = told.slice(1).map((value, at) => value - (told[at] as number));
  return steps.slice(1).reduce((sum, step, at) => sum + Math.abs(step - (steps[at] as number)), 0);
}
