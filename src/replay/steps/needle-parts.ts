/** The needles of a round: how stitches lie on them, and steps told needle by needle. */
import type { Arrange, NeedlePart, Repeat, Step } from '../../../grammar/tree.ts';
import { countFor, type Hands, stopped, type Trouble } from '../hands.ts';
import { beginRow, forgetParts, live } from '../needles.ts';
import { workSteps } from '../work.ts';
import { fixedUse } from './use.ts';

/** "Needles 1 and 3: …; Needles 2 and 4: …": every needle by itself, in the order in which the round meets them. */
export function inNeedleOrder(steps: readonly Step[]): readonly Step[] {
  if (!steps.some((step) => step.type === 'needlePart' && (step.numbers?.length ?? 0) > 1)) return steps;
  const parts = steps.filter((step): step is NeedlePart => step.type === 'needlePart');
  if (parts.some((part) => (part.numbers?.length ?? 0) === 0)) return steps;
  const single = parts
    .flatMap((part) => (part.numbers ?? []).map((number): NeedlePart => ({ ...part, numbers: [number], needle: `Needle ${number}` })))
    .sort((a, b) => (a.numbers?.[0] ?? 0) - (b.numbers?.[0] ?? 0));
  const first = steps.findIndex((step) => step.type === 'needlePart');
  const rest = (from: number, to?: number): Step[] => steps.slice(from, to).filter((step) => step.type !== 'needlePart');
  return [...rest(0, first), ...single, ...rest(first)];
}

/** Needles that "on each needle" speaks of: those that are known, or as many as the words say. */
function needlesHeld(hands: Hands, step: NeedlePart): number | null {
  if (/\bboth\b/i.test(step.needle)) return 2;
  return hands.needles.parts.length > 1 ? hands.needles.parts.length : (hands.needles.spread ?? null);
}

/** One needle of a round: "end" and "last" are measured on it. Without its number only the net of its steps is known. */
export function workPart(hands: Hands, step: NeedlePart): Trouble | null {
  const { needles } = hands;
  beginRow(needles);
  // What lay on the needles is forgotten once the stitches are no longer as many.
  if (needles.right.n === 0 && needles.parts.reduce((sum, each) => sum + each.n, 0) !== needles.left.n) forgetParts(needles);
  if (step.each === true) {
    const count = needlesHeld(hands, step);
    for (const each of needles.parts.length === count ? [...needles.parts] : []) {
      const trouble = workPart(hands, { ...step, each: false, needle: each.name });
      if (trouble !== null) return trouble;
    }
    if (needles.parts.length === count) return null;
    const net = netOf(hands, step.children);
    if (net === null || (net !== 0 && count === null)) return stopped('unread', step.span);
    return workNet(hands, net * (count ?? 1));
  }
  const number = step.numbers?.length === 1 ? `needle ${step.numbers[0]}` : null;
  const part = needles.parts.find((each) => each.name.toLowerCase() === step.needle.toLowerCase() || each.name.toLowerCase() === number);
  if (part === undefined || part.n > needles.left.n) {
    const net = netOf(hands, step.children);
    return net === null ? stopped('unread', step.span) : workNet(hands, net);
  }
  const saved = hands.base;
  const startRight = needles.right.n;
  hands.base = needles.left.n - part.n;
  const trouble = workSteps(hands, step.children);
  if (trouble === null && needles.left.n !== hands.base) {
    const over = needles.left.n - hands.base;
    hands.base = saved;
    return stopped('leftOver', step.span, { left: over }, { needle: step.needle });
  }
  hands.base = saved;
  part.n = needles.right.n - startRight;
  return trouble;
}

function workNet(hands: Hands, net: number): null {
  const { needles } = hands;
  needles.right.n += net;
  hands.made += net;
  hands.divided = true;
  needles.begun = true;
  return null;
}

/** What steps add or take away, with runs counting nothing; null where a run repeats something that changes the count. */
function netOf(hands: Hands, steps: readonly Step[]): number | null {
  let net = 0;
  for (const step of steps) {
    if (step.type === 'repeat' && step.form === 'run') continue;
    // "*k3, p1; rep from * to end of needle": as many as it takes, and none gained or lost.
    const pass =
      step.type === 'repeat' && step.extent !== null && step.extent.kind !== 'times' && step.once.length === 0 && step.ending === null
        ? fixedUse(hands, step.children)
        : null;
    if (pass !== null && pass.takes === pass.makes) continue;
    const use = fixedUse(hands, [step]);
    if (use === null) return null;
    net += use.makes - use.takes;
  }
  return net;
}

/** How the stitches lie on the needles of a round; the numbers must add up to what there is. */
export function workArrange(hands: Hands, step: Arrange): Trouble | null {
  const { needles } = hands;
  const parts: { name: string; n: number }[] = [];
  for (const part of step.parts) {
    const n = countFor(hands, part.count.values);
    if (n !== null) parts.push({ name: part.name ?? `Needle ${parts.length + 1}`, n });
  }
  const each = step.perNeedle === null ? null : countFor(hands, step.perNeedle.values);
  const count = step.needles === null ? null : countFor(hands, step.needles.values);
  if (parts.length === 0 && each !== null && count !== null)
    for (let needle = 1; needle <= count; needle += 1) parts.push({ name: `Needle ${needle}`, n: each });
  if (count !== null) needles.spread = count;
  const sum = parts.reduce((total, part) => total + part.n, 0);
  const have = live(needles);
  if (parts.length > 1 && have > 0 && sum !== have) {
    hands.asides.push(stopped('partDiffers', step.span, { stated: sum, replayed: have }, { what: 'needles' }));
    hands.doubt = true;
  }
  needles.parts = sum === have ? parts : [];
  return null;
}

const ofNeedle = (step: Repeat): boolean =>
  step.children.some((child) => child.type === 'repeat' && child.extent?.kind === 'last' && child.extent.of === 'needle');

/** Needles that a round lies on, for a repeat that speaks of the end of the needle; null where it does not, or they are not known. */
export function needlesInRound({ needles }: Hands, step: Repeat): number | null {
  if (!ofNeedle(step) || needles.mode !== 'round') return null;
  const count = needles.parts.length > 1 ? needles.parts.length : (needles.spread ?? 0);
  return count > 1 ? count : null;
}

/**
 * "*K1, M1R, k to last st of needle, M1L, k1; rep from * once more": each pass is one needle of the round. What lies on them, or
 * equal shares where only their number is told; null where the steps do not speak of the needle or the round has begun.
 */
export function needleShares(hands: Hands, step: Repeat, passes: number): readonly number[] | null {
  const { needles } = hands;
  if (!ofNeedle(step) || passes < 2 || passes > 6 || step.once.length > 0) return null;
  beginRow(needles);
  if (needles.right.n > 0) return null;
  const have = needles.left.n - hands.base;
  const known = needles.parts.map((part) => part.n);
  if (known.length === passes && known.reduce((sum, n) => sum + n, 0) === have) return known;
  return have % passes === 0 ? Array.from({ length: passes }, () => have / passes) : null;
}
