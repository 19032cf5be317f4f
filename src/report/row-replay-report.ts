/** The replay of one row as text for a person and as data. */
import type { Proof } from '../index.ts';
import { columns, cut, show, wrap } from './layout.ts';
import { hasSizes, printedPath, rangeOf } from './place.ts';
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
      : `Before it, ${replay.before} stitches stand on the needle.`;
  const stepWidth = Math.max(12, width - 40);
  const rows = replay.lines.map((line) => [
    cut(stepWords(line), stepWidth),
    printed(line.takes),
    printed(line.makes),
    printed(line.leftNeedle),
    printed(line.rightNeedle),
  ]);
  const startRow = ['(start)', '', '', printed(replay.before), '0'];
  const table = columns([['you work', 'takes', 'makes', 'left needle', 'right needle'], startRow, ...rows], [0]);
  return `${[
    ...wrap(head, width).map((line) => paint.strong(line)),
    show(printedPath(proof.path)),
    ...wrap(start, width),
    '',
    ...table,
    '',
    ...wrap(`After the row: ${printed(replay.after)}. ${show(replay.outcome)}`, width),
  ].join('\n')}\n`;
}

function stepWords(line: RowReplayLine): string {
  const pass = line.pass === undefined ? '' : `repeat ${line.pass}: `;
  const marker = line.marker === undefined ? '' : ` (${show(line.marker)})`;
  return `${pass}${show(line.step)}${marker}`;
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
      marker: line.marker ?? null,
    })),
    after: replay.after,
    outcome: replay.outcome,
  };
  return `${JSON.stringify(document, null, 2)}\n`;
}
