/** The ways a row may be read, and what is said where they come to different counts. */
import type { Repeat, Row, Span, Step } from '../../grammar/tree.ts';
import { firstChoice, type RowChoice } from './hands.ts';
import { endRow, live } from './needles.ts';
import { handOf, met, type Play, tryOut } from './play.ts';
import type { ObservationKind } from './replay.ts';
import { attempt } from './row-attempt.ts';
import type { Call } from './rows.ts';
import { playFrom } from './statements.ts';
import { openList, rowReadings } from './steps/readings.ts';

/** Every way the row may be read, the likeliest first. */
export function choicesFor(steps: readonly Step[]): RowChoice[] {
  const open = rowReadings(steps);
  let choices: RowChoice[] = [firstChoice];
  if (open.times) choices = choices.flatMap((choice) => [choice, { ...choice, times: 'all' as const }]);
  if (open.loop) choices = choices.flatMap((choice) => [choice, { ...choice, loop: 'apart' as const }]);
  if (open.list) choices = choices.flatMap((choice) => [choice, { ...choice, list: 'other' as const }]);
  if (open.from) choices = choices.flatMap((choice) => [choice, { ...choice, from: 'turn' as const }]);
  if (open.names > 1)
    choices = choices.flatMap((choice) => Array.from({ length: Math.min(open.names, 3) }, (_, names) => ({ ...choice, names })));
  return choices.slice(0, 12);
}

/** More than one reading: says so where they differ, and where only an unusual one fits. */
export function noteReadings(
  play: Play,
  row: Row,
  sizes: readonly number[],
  choices: readonly RowChoice[],
  chosen: number,
  fits: readonly number[],
  call: Call,
  label: string,
): void {
  if (play.trying) return;
  const full = sizes.length * 2;
  // Two meanings of a stitch name that both fit are settled by custom; only how often and whose loop are questions.
  const fitting = choices.filter((choice, index) => fits[index] === full && choice.names === (choices[chosen] as RowChoice).names);
  const span = readingSpan(row.children) ?? row.span;
  if (chosen > 0 && fits[chosen] === full && fits[0] !== full) {
    for (const size of sizes)
      met(
        play,
        {
          kind: 'readingNotDefault',
          span,
          numbers: {},
          words: { reading: choiceWords(choices[chosen] as RowChoice, choices[0] as RowChoice, row.children) },
        },
        size,
        call.node,
        label,
      );
    return;
  }
  if (fitting.length < 2) return;
  const ends = fitting.map((choice) => sizes.map((size) => live(attempt(play, size, row, row.children, choice).needles)));
  const differs = ends.findIndex((counts) => counts.some((count, position) => count !== ends[0]?.[position]));
  if (differs < 0) return;
  // A later line that only the first of them fits has settled it.
  const against = (choice: RowChoice): number =>
    contradictions(play, sizes, () => {
      for (const size of sizes) {
        handOf(play, size).needles = attempt(play, size, row, row.children, choice).needles;
        endRow(handOf(play, size).needles);
      }
      playFrom(play, play.at + 1, Math.min(play.flow.length, play.at + 9), sizes);
    });
  if (against(fitting[differs] as RowChoice) > against(fitting[0] as RowChoice)) return;
  sizes.forEach((size, position) => {
    met(
      play,
      {
        kind: 'readingsDiffer',
        span,
        numbers: { first: ends[0]?.[position] ?? 0, second: ends[differs]?.[position] ?? 0 },
        words: {
          first: choiceWords(fitting[0] as RowChoice, fitting[differs] as RowChoice, row.children),
          second: choiceWords(fitting[differs] as RowChoice, fitting[0] as RowChoice, row.children),
        },
      },
      size,
      call.node,
      label,
    );
  });
}

/** What one reading makes of the words on which the other differs from it. */
export function choiceWords(choice: RowChoice, other: RowChoice, steps: readonly Step[]): string {
  if (choice.list !== other.list) {
    const whole = (listIn(steps)?.repeats === 'last') === (choice.list === 'other');
    return whole ? 'everything from the beginning of the list repeats' : 'only the last stitch of the list repeats';
  }
  if (choice.loop === 'apart') return 'the stitch left by the bind-off is not counted in what follows';
  if (choice.times === 'all') return 'the number of times counts the first working in';
  if (choice.names > 0) return 'another meaning of the stitch name';
  return 'the number of times comes on top of the first working';
}

function listIn(steps: readonly Step[]): Repeat | null {
  for (const step of steps) {
    if (step.type !== 'repeat') continue;
    if (openList(step)) return step;
    const inner = listIn([...step.children, ...step.once]);
    if (inner !== null) return inner;
  }
  return null;
}

function readingSpan(steps: readonly Step[]): Span | null {
  for (const step of steps) {
    if (step.type === 'repeat') {
      if (openList(step)) return step.span;
      if (step.extent?.kind === 'times' && step.extent.sense === 'plain' && step.extent.form === 'from') return step.extent.count.span;
      const inner = readingSpan([...step.children, ...step.once]);
      if (inner) return inner;
    }
    if (step.type === 'bindOff') return step.span;
    if ((step.type === 'work' || step.type === 'pullOver') && (step.readings?.length ?? 0) > 1) return step.span;
  }
  return null;
}

/** What is worth a question and contradicts nothing. */
const asked: ReadonlySet<ObservationKind> = new Set(['readingNotDefault', 'readingsDiffer', 'repeatNotWorked', 'nothingToWork']);

/** How the sizes stand after something is tried: used where a later line decides between two readings. */
export function contradictions(play: Play, sizes: readonly number[], action: () => void): number {
  const { met: found } = tryOut(play, action);
  return new Set(
    found
      .filter((each) => each.certain && sizes.includes(each.size) && !asked.has(each.kind))
      .map((each) => `${each.kind}|${each.span.start}|${each.size}`),
  ).size;
}
