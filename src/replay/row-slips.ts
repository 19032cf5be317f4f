/** Which single slip in the rows before would have given the count the knitter really has. */
import { entryNamed } from '../../grammar/lexicon/index.ts';
import type { Repeat, Span, Step, Work } from '../../grammar/tree.ts';
import type { Proof } from '../index.ts';
import type { Hands } from './hands.ts';
import { workMoment } from './moments.ts';
import type { Moment } from './play.ts';

/** Rows looked back. */
const farthest = 8;
const mostSlips = 4;

interface Change {
  readonly span: Span;
  readonly kind: 'yarnOver' | 'increase' | 'decrease';
  readonly net: number;
}

/** `rows` are the rows of the same size before the one in question, the nearest last. */
export function slipsFor(proof: Proof, rows: readonly Moment[], difference: number, words: (span: Span) => string): string[] {
  if (difference === 0) return [];
  const near = rows.slice(-farthest).reverse();
  const single: string[] = [];
  const whole: string[] = [];
  for (const moment of near) {
    const entry = proof.replay.entries[moment.entry];
    if (entry === undefined) continue;
    const { changes, repeats } = changesOf(proof, moment);
    for (const sentence of changes
      .filter((change) => change.net === -difference)
      .map((change) => changeSentence(change, entry.label, words))) {
      if (!single.includes(sentence)) single.push(sentence);
    }
    for (const repeat of repeats) {
      const passWords = words(repeat.span).replace(/\s+/g, ' ').trim();
      if (repeat.net === difference) single.push(`one repeat too many of "${passWords}" in ${entry.label}`);
      else if (repeat.net === -difference) single.push(`one repeat too few of "${passWords}" in ${entry.label}`);
    }
    const before = entry.before[moment.size];
    const after = entry.after[moment.size];
    if (before == null || after == null || before === after || entry.times > 1) continue;
    if (before - after === difference) whole.push(`${entry.label} left out`);
    else if (after - before === difference) whole.push(`${entry.label} worked twice`);
  }
  const loose =
    difference === -1
      ? ['a stitch dropped or knitted together with its neighbour']
      : difference === 1
        ? ['an extra loop, where the yarn was laid over the needle']
        : [];
  return [...new Set([...single, ...whole])].slice(0, mostSlips).concat(loose);
}

function changeSentence(change: Change, label: string, words: (span: Span) => string): string {
  const name = words(change.span).replace(/\s+/g, ' ').trim();
  if (change.kind === 'yarnOver') return `a yarn over missed in ${label}`;
  if (change.kind === 'increase') return `an increase ("${name}") missed in ${label}`;
  return `a decrease ("${name}") forgotten in ${label}`;
}

/** Every stitch of the row that changes the count, once each, and the repeats that have a number. */
function changesOf(proof: Proof, moment: Moment): { changes: Change[]; repeats: { span: Span; net: number }[] } {
  const changes: Change[] = [];
  const repeats: { span: Span; net: number }[] = [];
  const heads: { taken: number; made: number }[] = [];
  const passes = new Map<Repeat, { taken: number; made: number }>();
  workMoment(proof, moment, {
    watch: {
      begin: (_step: Step, hands: Hands) => {
        heads.push({ taken: hands.taken, made: hands.made });
      },
      end: (step: Step, hands: Hands) => {
        const head = heads.pop();
        if (head === undefined) return;
        const net = hands.made - head.made - (hands.taken - head.taken);
        if (step.type === 'work' && net !== 0) changes.push({ span: step.span, kind: kindOf(proof, step, net), net });
        if (step.type === 'intoOne' && net !== 0) changes.push({ span: step.span, kind: net > 0 ? 'increase' : 'decrease', net });
      },
      between: () => {},
      pass: (step: Repeat, pass: number, _passes: number | null, hands: Hands) => {
        if (step.extent?.kind !== 'times') return;
        const head = passes.get(step);
        if (pass === 1) passes.set(step, { taken: hands.taken, made: hands.made });
        else if (pass === 2 && head !== undefined) {
          const net = hands.made - head.made - (hands.taken - head.taken);
          const last = step.children.at(-1);
          if (net !== 0 && last !== undefined)
            repeats.push({ span: { start: step.children[0]?.span.start ?? last.span.start, end: last.span.end }, net });
        }
      },
    },
  });
  return { changes, repeats };
}

function kindOf(proof: Proof, step: Work, net: number): Change['kind'] {
  const entry = proof.pattern.vocabulary.stitches.get(step.stitch) ?? entryNamed(step.stitch);
  if (entry?.kind === 'yarnOver') return 'yarnOver';
  return net > 0 ? 'increase' : 'decrease';
}
