/** Where the words of a row allow several readings. */
import type { Repeat, Step } from '../../../grammar/tree.ts';

/** "K2, k2tog to end": neither bracket nor star says what repeats, all of the list or its last stitch. */
export function openList(step: Repeat): boolean {
  return (
    step.form === 'list' &&
    step.said !== true &&
    step.children.length > 1 &&
    step.extent !== null &&
    step.extent.kind !== 'times' &&
    step.extent.kind !== 'goal'
  );
}

/** Whether some node of the row can be read in more than one way, and which. */
export function rowReadings(steps: readonly Step[]): { loop: boolean; times: boolean; list: boolean; from: boolean; names: number } {
  const found = { loop: false, times: false, list: false, from: false, names: 0 };
  const visit = (list: readonly Step[]): void => {
    list.forEach((step, index) => {
      if (
        step.type === 'bindOff' &&
        step.which !== 'all' &&
        step.which !== 'remaining' &&
        list
          .slice(index + 1)
          .some((next) => next.type === 'work' || (next.type === 'repeat' && (next.extent?.kind === 'over' || next.form !== 'run')))
      )
        found.loop = true;
      if (step.type === 'repeat') {
        if (step.extent?.kind === 'times' && step.extent.sense === 'plain' && step.extent.form === 'from') found.times = true;
        if (openList(step)) found.list = true;
        const next = list[index + 1];
        if (step.extent?.kind === 'last' && next?.type === 'turn' && next.not !== true) found.from = true;
        visit(step.children);
        visit(step.once);
      }
      if (step.type === 'work' || step.type === 'pullOver') found.names = Math.max(found.names, step.readings?.length ?? 0);
      if (step.type === 'needlePart' || step.type === 'intoOne') visit(step.children);
    });
  };
  visit(steps);
  return found;
}
