/** The replay of one row as text for a person and as data. */
import type { Proof } from '../index.ts';
import { columns, cut, show, wrap } from './layout.ts';
import { hasSizes, printedPath, rangeOf } from './place.ts';
import { plural } from './plural.ts';
import type { RowReplay, RowReplayLine } from './row-replay.ts';
import { plainText, type TextOptions } from './text.ts';

const printed = (value: number | null) => (value === null ? '?' : String(value));

export function rowReplayText(proof: Proof, replay: RowReplay, options: TextOptions = plainText): string {
  const { width, paint } = options;
  const place = [
    replay.section,
    `${replay.label}${replay.side === null ? '' : ` (${replay.side})`}`,
    ...(hasSizes(proof) ? [`size ${replay.size}`] : []),
  ];
  const head = place
    .filter((word) => word !== '')
    .map(show)
    .join(' · ');
  const start =
    replay.before === null
      ? 'How many stitches stand on the needle before it is not known.'
      : replay.expected === undefined
        ? `Before it, ${plural(replay.before, 'stitch stands', 'stitches stand')} on the needle.`
        : `You begin with ${plural(replay.before, 'stitch', 'stitches')}; by the draft there should be ${printed(replay.expected)}.`;
  const stepWidth = Math.max(12, width - 40);
  const rows = replay.lines.map((line) => [
    cut(stepWords(line), stepWidth),
    printed(line.takes),
    printed(line.makes),
    printed(line.leftNeedle),
    printed(line.rightNeedle),
  ]);
  const { leftNeedle, rightNeedle } = replay.start ?? { leftNeedle: replay.before, rightNeedle: 0 };
  const startRow = ['(start)', '', '', printed(leftNeedle), printed(rightNeedle)];
  const table = columns([['you work', 'takes', 'makes', 'left needle', 'right needle'], startRow, ...rows], [0]);
  return `${[
    ...wrap(head, width).map((line) => paint.strong(line)),
    show(printedPath(proof.path)),
    ...(replay.text === undefined ? [] : wrap(show(replay.text), width, '  ')),
    ...wrap(start, width),
    '',
    ...table,
    '',
    ...wrap(
      replay.verdict === undefined ? `After the row: ${printed(replay.after)}. ${show(replay.outcome)}` : show(replay.outcome),
      width,
    ),
    ...remarks(replay).flatMap((sentence) => wrap(show(sentence), width, '  ')),
  ].join('\n')}\n`;
}

/** What is said below the table, one sentence or list each. */
export function remarks(replay: RowReplay): readonly string[] {
  const slips = replay.slips ?? [];
  return [
    ...(replay.assumed === undefined ? [] : [replay.assumed]),
    ...(replay.oneOff ?? []),
    ...(slips.length === 0 ? [] : [`To that count a single slip would lead: ${slips.join('; or ')}.`]),
    ...((replay.readings ?? []).length === 0 ? [] : ['It depends on how the words are read.']),
    ...(replay.readings ?? []),
    ...(replay.designer === undefined || replay.designer === '' ? [] : [replay.designer]),
  ];
}

/** "repeat 2 of 6: yo, k2tog (past marker A)", "repeats 3 to 12, the same". */
export function stepWords(line: RowReplayLine): string {
  const needle = line.needle === undefined ? '' : `${show(line.needle)}: `;
  const marker = line.marker === undefined ? '' : ` (${show(line.marker)})`;
  if (line.folded !== undefined && line.pass !== undefined) {
    return `${needle}… repeats ${line.pass} to ${line.pass + line.folded - 1}, the same${marker}`;
  }
  const pass =
    line.pass === undefined || line.of === 1
      ? ''
      : `repeat ${line.pass}${line.of === undefined || line.pass > 1 ? '' : ` of ${line.of}`}: `;
  return `${needle}${pass}${show(line.step)}${marker}`;
}

export function rowReplayJson(proof: Proof, replay: RowReplay): string {
  const document = {
    path: proof.path,
    size: replay.size,
    section: replay.section,
    row: replay.label,
    side: replay.side,
    before: replay.before,
    steps: replay.lines.map((line) => ({
      text: line.step,
      ...rangeOf(proof.manuscript, line.span),
      takes: line.takes,
      makes: line.makes,
      leftNeedle: line.leftNeedle,
      rightNeedle: line.rightNeedle,
      pass: line.pass ?? null,
      passes: line.folded ?? 1,
      marker: line.marker ?? null,
    })),
    after: replay.after,
    outcome: replay.outcome,
    verdict: replay.verdict ?? 'unknown',
    expected: replay.expected ?? null,
    assumed: replay.assumed ?? null,
    slips: replay.slips ?? [],
    readings: replay.readings ?? [],
    sizes: replay.sizes ?? { confirmed: [], notConfirmed: [], unknown: [] },
  };
  return `${JSON.stringify(document, null, 2)}\n`;
}
