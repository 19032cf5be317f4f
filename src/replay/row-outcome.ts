/** What came of a row, in the words of somebody who sits beside the knitter. */
import { type Sized, sizeValue } from '../../grammar/count.ts';
import type { Span } from '../../grammar/tree.ts';
import { plural } from '../report/plural.ts';
import type { RowVerdict } from '../report/row-replay.ts';
import type { RowEnd } from './moments.ts';
import { live } from './needles.ts';
import type { Moment } from './play.ts';

const stitches = (count: number) => plural(count, 'stitch', 'stitches');

/** The count the row itself states for this working; null where it states none. */
export function statedAfter(moment: Moment): number | null {
  if (!moment.inline) return null;
  const total = moment.row.stated.find((each) => each.what === 'total' && each.scope === null);
  return total === undefined ? null : sizeValue(total.count.values as Sized, moment.size);
}

export function verdictOf(moment: Moment, end: RowEnd): RowVerdict {
  if (end.trouble?.kind === 'unread' || end.trouble?.kind === 'tooLong' || !moment.needles.sure) return 'unknown';
  if (end.trouble !== null || end.left > 0) return 'stops';
  const stated = statedAfter(moment);
  return stated !== null && stated !== live(end.needles) ? 'differs' : 'fits';
}

/** One or two sentences. `words` gives the author's words at a place. */
export function outcomeOf(moment: Moment, end: RowEnd, words: (span: Span) => string): string {
  const sentence = outcomeSentence(moment, end, words);
  return moment.needles.sure ? sentence : `The count before it is not sure, so this is shown on ${live(moment.needles)}. ${sentence}`;
}

function outcomeSentence(moment: Moment, end: RowEnd, words: (span: Span) => string): string {
  if (end.trouble !== null) return troubleSentence(end, words);
  if (end.left > 0) return `The row does not come out: it leaves ${stitches(end.left)} unworked.`;
  const stated = statedAfter(moment);
  const after = live(end.needles);
  const turned = end.needles.left.n > 0 && end.needles.mode === 'flat' ? ` ${end.needles.left.n} of them are not worked in this row.` : '';
  if (stated !== null && stated !== after) return `The row fits and ends with ${stitches(after)}; the draft says ${stated}.${turned}`;
  return after === 0 && end.off > 0
    ? `The row fits; ${stitches(end.off)} are bound off.`
    : `The row fits and ends with ${stitches(after)}.${turned}`;
}

function troubleSentence(end: RowEnd, words: (span: Span) => string): string {
  const trouble = end.trouble;
  if (trouble === null) return '';
  const { numbers } = trouble;
  const at = `"${clip(words(trouble.span))}"`;
  const left = numbers['left'] ?? 0;
  const wanted = numbers['wanted'] ?? 0;
  switch (trouble.kind) {
    case 'unread':
      return `Here the words were not understood, so the row can be followed no further: ${at}.`;
    case 'tooFew': {
      const passes = numbers['passes'];
      if (passes !== undefined && numbers['takes'] !== undefined)
        return `The row runs short by ${wanted - left}: ${plural(passes, 'repeat')} of ${stitches(numbers['takes'])} take ${wanted}, and ${left} are on the left needle.`;
      if (trouble.words['place'] === 'run')
        return `The row runs short: at ${at} ${wanted} stitches should still be on the left needle, and ${left} are.`;
      return `The row runs short by ${wanted - left}: ${at} takes ${stitches(wanted)}, and ${left} are on the left needle.`;
    }
    case 'repeatDoesNotFit': {
      const { takes, room, over } = numbers;
      if (takes !== undefined && room !== undefined && over !== undefined && takes > 0) {
        const whole = Math.floor(room / takes);
        const come = `The repeat does not come out: it takes ${stitches(takes)} and has`;
        if (whole === 0) return `${come} only ${room}.`;
        return `${come} ${room}. ${plural(whole, 'whole repeat takes', 'whole repeats take')} ${whole * takes}; ${over} over, or ${takes - over} too few for one more.`;
      }
      return `The repeat does not come out: ${stitches(left)} are on the left needle where ${wanted} should be.`;
    }
    case 'nothingToPass':
      return `At ${at} there is no stitch on the right needle to pass over.`;
    case 'markerNotThere':
      return `At ${at} no marker lies ahead.`;
    case 'noGap':
      return `At ${at} no turn of an earlier row lies ahead.`;
    case 'tooLong':
      return `The row comes to more single steps than are worked here: ${at}.`;
    case 'noProgress':
      return `The repeat takes no stitch, so it would never end: ${at}.`;
    case 'leftOver':
      return `On this needle ${stitches(left)} are left unworked.`;
    default:
      return `The row cannot be worked on from ${at}.`;
  }
}

function clip(text: string): string {
  const plain = text.replace(/\s+/g, ' ').trim();
  return plain.length > 60 ? `${plain.slice(0, 58).trimEnd()}…` : plain;
}

const list = (names: readonly string[]) => (names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`);
const inSizes = (names: readonly string[]) => `in ${names.length === 1 ? 'size' : 'sizes'} ${list(names)}`;

/** Begun with another count: that the row can be worked says nothing where it ends elsewhere than the draft does. */
export function otherEnd(end: RowEnd, byTheDraft: number | null): string | null {
  const after = live(end.needles);
  if (end.trouble !== null || end.left > 0 || byTheDraft === null || after === byTheDraft) return null;
  return `The row can be worked and ends with ${stitches(after)}; by the draft it ends with ${byTheDraft}.`;
}

/**
 * "Confirmed in size L; not confirmed in sizes S and M, where the row works as printed." Where nothing was found there is
 * nothing to confirm: then it says where the row works.
 */
export function designerSentence(
  confirmed: readonly string[],
  notConfirmed: readonly string[],
  unknown: readonly string[],
  oneSize: boolean,
  somethingFound = true,
): string {
  if (!somethingFound && confirmed.length === 0) return worksSentence(notConfirmed, unknown, oneSize);
  if (oneSize) {
    if (confirmed.length > 0) return 'Confirmed: the row does not work as printed.';
    return unknown.length > 0
      ? 'Neither confirmed nor refuted: something before it or in it was not understood.'
      : 'Not confirmed: the row works as printed.';
  }
  const parts: string[] = [];
  if (confirmed.length > 0)
    parts.push(notConfirmed.length + unknown.length === 0 ? 'confirmed in every size' : `confirmed ${inSizes(confirmed)}`);
  if (notConfirmed.length > 0)
    parts.push(
      confirmed.length + unknown.length === 0
        ? 'not confirmed in any size: the row works as printed'
        : `not confirmed ${inSizes(notConfirmed)}, where the row works as printed`,
    );
  if (unknown.length > 0) parts.push(`cannot be told ${inSizes(unknown)}, because something before it or in it was not understood`);
  const sentence = parts.join('; ');
  return sentence === '' ? '' : `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.`;
}

function worksSentence(works: readonly string[], unknown: readonly string[], oneSize: boolean): string {
  const untold = 'because something before it or in it was not understood';
  if (works.length === 0)
    return unknown.length === 0
      ? ''
      : `Whether the row works as printed cannot be told${oneSize ? '' : ` ${inSizes(unknown)}`}, ${untold}.`;
  if (oneSize) return 'The row works as printed.';
  if (unknown.length > 0) return `The row works as printed ${inSizes(works)}; cannot be told ${inSizes(unknown)}, ${untold}.`;
  return works.length > 1 ? 'The row works as printed in every size that works it.' : `The row works as printed ${inSizes(works)}.`;
}
