/** One row in one size, step by step with both needles' counts, for whoever must confirm a finding. */
import type { Row, Span, Statement } from '../../grammar/tree.ts';
import type { Proof } from '../index.ts';
import { plural } from '../report/plural.ts';
import type { RowReplay, RowReplayLine, RowVerdict } from '../report/row-replay.ts';
import { plainWords } from '../report/words.ts';
import { findEntries } from './find-row.ts';
import { firstChoice } from './hands.ts';
import { headOf, momentsOf, type RowEnd, workMoment } from './moments.ts';
import { emptyNeedles, live } from './needles.ts';
import type { Moment } from './play.ts';
import type { Entry } from './replay.ts';
import { choiceWords } from './row-choices.ts';
import { lineWriter } from './row-lines.ts';
import { designerSentence, otherEnd, outcomeOf, verdictOf } from './row-outcome.ts';
import { slipsFor } from './row-slips.ts';

/** Repeats of a stitch pattern that is given only by its multiple, where no count is asked for. */
const repeatsShown = 3;

/**
 * One row, stitch by stitch, for whoever must confirm a finding; null when the draft has no such row.
 * @param row the row as a reader names it: "Body 17", "Row 5", "Yoke: Dec Rnd"
 * @param size name of the size; null for the first size that works the row
 * @param from stitches the knitter really has before the row, where that is another count than the draft leads to
 */
export function replayRow(proof: Proof, row: string, size: string | null, from?: number): RowReplay | null {
  const named = size === null ? 0 : Math.max(0, proof.pattern.sizes.indexOf(size));
  const [index] = findEntries(proof, row, named);
  return index === undefined ? null : replayEntry(proof, index, size, from);
}

/** The same for one entry of the sheet. `known` are the heads of all rows, where they have been gathered before. */
export function replayEntry(proof: Proof, index: number, size: string | null, from?: number, known?: readonly Moment[]): RowReplay | null {
  const entry = proof.replay.entries[index];
  if (entry === undefined) return null;
  const sizeIndex = size === null ? firstSize(entry) : Math.max(0, proof.pattern.sizes.indexOf(size));
  const asked = (moment: Moment) => moment.entry === index || (moment.entry < index && moment.size === sizeIndex);
  const moments = known?.filter(asked) ?? momentsOf(proof, asked);
  const own = moments.filter((moment) => moment.entry === index);
  const multiple = own.length === 0 ? multipleMoment(proof, index, from) : null;
  const moment = multiple ?? own.find((each) => each.size === sizeIndex);
  if (moment === undefined) return told(proof, entry, sizeIndex);
  return worked(
    proof,
    { entry, moment, own: multiple === null ? own : [multiple], earlier: moments.filter((each) => each.entry < index) },
    from,
  );
}

function firstSize(entry: Entry): number {
  const at = entry.before.findIndex((count) => count !== null);
  return Math.max(0, at);
}

interface Asked {
  readonly entry: Entry;
  readonly moment: Moment;
  /** The same row in every size. */
  readonly own: readonly Moment[];
  /** Rows before it in this size. */
  readonly earlier: readonly Moment[];
}

function worked(proof: Proof, { entry, moment, own, earlier }: Asked, from: number | undefined): RowReplay {
  const words = (span: Span) => plainWords(proof.manuscript, span);
  const head = headOf(moment);
  const expected = moment.needles.sure ? live(head) : null;
  const other = from !== undefined && from !== live(head) ? from : undefined;
  const start = other === undefined ? head : headOf(moment, other);
  const writer = lineWriter(words);
  const end = workMoment(proof, moment, { watch: writer.watch, ...(other === undefined ? {} : { from: other }) });
  const given = other === undefined ? moment : { ...moment, needles: { ...moment.needles, sure: true } };
  const elsewhere = other === undefined ? null : otherEnd(end, endByTheDraft(proof, moment));
  const verdict = elsewhere === null ? verdictOf(given, end) : 'differs';
  const difference = other === undefined ? 0 : other - live(head);
  return {
    ...place(proof, entry, moment.size),
    before: other ?? expected,
    start: { leftNeedle: start.left.n, rightNeedle: start.right.n },
    lines: writer.lines(),
    after: end.trouble === null && end.left === 0 && (other !== undefined || moment.needles.sure) ? live(end.needles) : null,
    outcome: elsewhere ?? outcomeOf(given, end, words),
    verdict,
    ...designer(proof, entry, own),
    readings: otherReadings(proof, moment, other, words),
    ...(other === undefined
      ? { oneOff: oneOff(proof, moment, live(head), verdict, words) }
      : { expected, ...markersAssumed(moment, other, difference), slips: slipsFor(proof, sameStretch(earlier), difference, words) }),
  };
}

/** The count the draft itself leads to after the row; null where it is not sure or the row cannot be worked. */
function endByTheDraft(proof: Proof, moment: Moment): number | null {
  if (!moment.needles.sure) return null;
  const end = workMoment(proof, moment);
  return end.trouble === null && end.left === 0 ? live(end.needles) : null;
}

/** Where the markers lie on another count nobody has said: they are left where the draft has them, seen from the far end. */
function markersAssumed(moment: Moment, from: number, difference: number): Pick<RowReplay, 'assumed'> {
  const marks = (needles: ReturnType<typeof headOf>) => needles.left.marks.filter((mark) => mark.kind === 'marker').length;
  const all = marks(headOf(moment));
  if (all === 0) return {};
  const kept = marks(headOf(moment, from));
  const many = Math.abs(difference);
  const those = difference < 0 ? (many === 1 ? 'the missing stitch' : `the ${many} missing stitches`) : `the ${many} too many`;
  const place = `${those} ${many === 1 ? 'is' : 'are'} taken to be at the beginning of the row, before the first marker`;
  const lost = all - kept;
  return {
    assumed:
      lost === 0
        ? `Where your markers lie was not said: ${place}.`
        : `Where your markers lie was not said: ${place}, and there ${lost === 1 ? 'is' : 'are'} then no stitches for ${lost === all ? 'any marker' : plural(lost, 'marker')} to stand between.`,
  };
}

function place(proof: Proof, entry: Entry, size: number): Pick<RowReplay, 'size' | 'section' | 'label' | 'side' | 'text'> {
  return {
    size: proof.pattern.sizes[size] ?? '',
    section: proof.pattern.sections[entry.section]?.title ?? '',
    label: entry.label,
    side: entry.side,
    text: plainWords(proof.manuscript, entry.textSpan),
  };
}

/** Rows since the piece was begun: a slip in another piece cannot be the one. */
function sameStretch(earlier: readonly Moment[]): readonly Moment[] {
  const last = earlier.at(-1);
  return last === undefined ? earlier : earlier.filter((moment) => moment.piece === last.piece);
}

function designer(proof: Proof, entry: Entry, own: readonly Moment[]): Pick<RowReplay, 'sizes' | 'designer'> {
  const verdicts = own.map((moment) => ({
    name: proof.pattern.sizes[moment.size] ?? '',
    verdict: verdictOf(moment, workMoment(proof, moment)),
  }));
  const those = (...kinds: RowVerdict[]) => verdicts.filter((each) => kinds.includes(each.verdict)).map((each) => each.name);
  const sizes = { confirmed: those('stops', 'differs'), notConfirmed: those('fits'), unknown: those('unknown') };
  const oneSize = proof.pattern.sizes.length === 1;
  return { sizes, designer: designerSentence(sizes.confirmed, sizes.notConfirmed, sizes.unknown, oneSize, isFoundIn(proof, entry)) };
}

/** Whether something was found in the row, or in the words that have it worked. */
function isFoundIn(proof: Proof, { span, textSpan }: Entry): boolean {
  const within = (outer: Span, inner: Span) => inner.start < outer.end && outer.start < inner.end;
  return proof.findings.some((finding) => finding.level !== 'style' && (within(span, finding.span) || within(textSpan, finding.span)));
}

/** Readings of the same words that end elsewhere than the one shown. */
function otherReadings(proof: Proof, moment: Moment, from: number | undefined, words: (span: Span) => string): string[] {
  const begin = from === undefined ? {} : { from };
  const ends = (end: RowEnd) => `${end.trouble?.kind ?? ''}/${end.left}/${end.trouble === null ? live(end.needles) : ''}`;
  const shown = ends(workMoment(proof, moment, begin));
  const seen = new Set([shown]);
  const out: string[] = [];
  for (const choice of moment.choices) {
    const end = workMoment(proof, moment, { ...begin, choice });
    if (seen.has(ends(end))) continue;
    seen.add(ends(end));
    out.push(
      `If ${choiceWords(choice, moment.choice, moment.steps)}: ${outcomeOf({ ...moment, needles: { ...moment.needles, sure: true } }, end, words)}`,
    );
  }
  return out;
}

/** Where a count that is one off leads: what a knitter who is stuck may recognise. */
function oneOff(proof: Proof, moment: Moment, before: number, verdict: RowVerdict, words: (span: Span) => string): string[] {
  if (verdict !== 'fits' || before < 2) return [];
  const out: string[] = [];
  for (const count of [before - 1, before + 1]) {
    const end = workMoment(proof, moment, { from: count });
    if (end.trouble === null && end.left === 0) continue;
    out.push(`If you came into it with ${count}: ${outcomeOf({ ...moment, needles: { ...moment.needles, sure: true } }, end, words)}`);
  }
  return out;
}

/** An instruction that is not told stitch by stitch: one line, from the count before to the count after. */
function told(proof: Proof, entry: Entry, size: number): RowReplay {
  const before = entry.before[size] ?? null;
  const after = entry.after[size] ?? null;
  const shown = place(proof, entry, size);
  const line: RowReplayLine = {
    step: shown.text ?? '',
    span: entry.span,
    takes: entry.takes[size] ?? null,
    makes: entry.makes[size] ?? null,
    leftNeedle: 0,
    rightNeedle: after,
  };
  const rows = entry.unit === 'step' ? 'This is no row' : 'These rows are told in one sentence';
  const counts =
    before === null || after === null
      ? 'the count is not known here'
      : before === after
        ? `the count stays at ${after}`
        : `the count goes from ${before} to ${after}`;
  const works = proof.pattern.sizes.length > 1 && before === null && after === null ? ` Size ${shown.size} may not work it.` : '';
  return {
    ...shown,
    before,
    lines: [line],
    after,
    outcome: `${rows} and not stitch by stitch; ${counts}.${works}`,
    verdict: 'unknown',
    readings: [],
  };
}

/** A row of a stitch pattern that has only a multiple, on three repeats of it or on the count asked for. */
function multipleMoment(proof: Proof, index: number, from: number | undefined): Moment | null {
  const entry = proof.replay.entries[index];
  const section = entry === undefined ? undefined : proof.pattern.sections[entry.section];
  if (entry === undefined || section === undefined || section.multiple === null) return null;
  const row = rowOf(entry.node, section.statements);
  if (row === null) return null;
  const previous = proof.replay.entries
    .slice(0, index)
    .findLast((each) => each.section === entry.section && each.afterPerRepeat !== null)?.afterPerRepeat;
  const count = previous ?? { perRepeat: section.multiple.of, plus: section.multiple.plus };
  const needles = emptyNeedles();
  needles.left.n = from ?? count.perRepeat * repeatsShown + count.plus;
  needles.side = entry.side;
  needles.begun = true;
  return {
    entry: index,
    size: 0,
    row,
    steps: row.children,
    choice: firstChoice,
    choices: [firstChoice],
    needles,
    held: [],
    piece: section.title,
    number: null,
    inline: false,
  };
}

/** The row whose words are worked: its own, or those of the row it refers to. */
function rowOf(node: Statement, statements: readonly Statement[]): Row | null {
  if (node.type !== 'row') return null;
  if (node.does === null) return node;
  const numbers = node.does.type === 'refer' ? node.does.rows : node.does.type === 'repeatRows' ? node.does.rows.numbers : [];
  const found = statements.find(
    (each) =>
      each.type === 'row' && each.does === null && each.label !== null && numbers.some((number) => each.label?.numbers.includes(number)),
  );
  return found?.type === 'row' ? found : null;
}
