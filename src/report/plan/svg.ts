/** Squared paper as SVG. Every sign differs in shape, none in colour alone, so that it prints in black. */
import { html, type Markup, own } from '../html/markup.ts';
import type { ColumnRows, Drawn } from './fold.ts';
import { type PlanLine, widthOf } from './layout.ts';
import type { Run } from './trace.ts';

export interface Paper {
  /** Begins the id of every row. */
  readonly id: string;
  /** Begins the id of every pattern of the drawing; no other drawing of the page has it. */
  readonly pattern: string;
  /** Height of a square by its width: 1, or stitches per rows of the gauge. */
  readonly proportion: number;
  /** Where a row's own words stand: "#d0-L42". */
  readonly wordsOf: (line: PlanLine) => string;
  /** What is read out for a row. */
  readonly sayLine: (line: PlanLine) => string;
  /** Ids are given once, so that a second drawing of the same rows has none. */
  readonly named: boolean;
}

const labelWidth = 92;
const widest = 720;

const n = (value: number) => String(Math.round(value * 100) / 100);

interface Frame {
  readonly w: number;
  readonly h: number;
  /** Left end of the paper, in squares. */
  readonly left: number;
  readonly right: number;
  readonly width: number;
}

/** x of the right side of the square that lies `at` squares to the left of the edge. */
const xOf = (frame: Frame, at: number) => labelWidth + (frame.left - at) * frame.w;

/** A sheet with the lines from the lowest up; null where there is nothing to draw. */
export function planSvg(drawn: readonly Drawn[], columns: readonly ColumnRows[] | null, paper: Paper): Markup | null {
  const lines = drawn.flatMap((each) => (each.kind === 'line' || each.kind === 'even' ? [each.line] : []));
  if (lines.length === 0) return null;
  const left = Math.max(...lines.map((line) => line.right + widthOf(line)), 1);
  const right = Math.min(...lines.map((line) => line.right), 0);
  const w = Math.max(3, Math.min(16, widest / (left - right)));
  const h = Math.max(2.5, w * paper.proportion);
  const frame: Frame = { w, h, left, right, width: labelWidth * 2 + (left - right) * w };
  const heights = drawn.map((each) => (each.kind === 'line' ? Math.max(h, 3) : Math.max(16, h * 2)));
  const profile = columns === null ? 0 : 46;
  const total = heights.reduce((sum, each) => sum + each, 0) + profile + 8;
  let y = total - profile - 4;
  const parts: Markup[] = [];
  // A row that turns stands on several lines and is named on the first.
  const named = new Set<number>();
  const nameOnce = (entry: number): boolean => paper.named && !named.has(entry) && named.add(entry).has(entry);
  let lastLabel = Number.POSITIVE_INFINITY;
  drawn.forEach((each, index) => {
    const height = heights[index] as number;
    y -= height;
    // A label wants room; on low rows only every other one or so is printed.
    const withLabel = lastLabel - y >= 11 || each.kind !== 'line';
    if (withLabel) lastLabel = y;
    parts.push(
      each.kind === 'line'
        ? lineMarkup(each.line, frame, y, height, paper, withLabel, nameOnce)
        : bandMarkup(each, frame, y, height, paper, nameOnce),
    );
  });
  if (columns !== null) parts.push(profileMarkup(columns, frame, total - profile, profile));
  return html`<svg class="plan" viewBox="0 0 ${n(frame.width)} ${n(total)}" width="${n(frame.width)}" height="${n(total)}" role="group" aria-label="Squared paper, lowest row first"><defs>${patterns(paper, frame)}</defs>${parts}</svg>`;
}

function patterns(paper: Paper, { w, h }: Frame): Markup {
  const grid =
    w < 5
      ? ''
      : `<pattern id="${paper.pattern}-g" width="${n(w)}" height="${n(h)}" patternUnits="userSpaceOnUse" x="${labelWidth}"><path d="M0 0V${n(h)}" class="thin"/></pattern>`;
  return own(
    `${grid}<pattern id="${paper.pattern}-x" width="5" height="5" patternUnits="userSpaceOnUse"><path d="M0 5L5 0" class="hatch"/></pattern>`,
  );
}

function lineMarkup(
  line: PlanLine,
  frame: Frame,
  y: number,
  height: number,
  paper: Paper,
  withLabel: boolean,
  nameOnce: (entry: number) => boolean,
): Markup {
  const id = nameOnce(line.entry) ? html` id="${paper.id}-e${line.entry}"` : null;
  const body = line.kind === 'torn' || line.kind === 'stopped' ? torn(line, frame, y, height) : squares(line, frame, y, height, paper);
  return html`<a href="${paper.wordsOf(line)}" tabindex="-1"${id} class="r"><title>${paper.sayLine(line)}</title>${body}${withLabel ? label(line, frame, y, height) : null}</a>`;
}

function label(line: PlanLine, frame: Frame, y: number, height: number): Markup {
  const short = shortLabel(line);
  // A row is named on the side from which it starts.
  const fromLeft = line.side === 'WS';
  const middle = n(y + height / 2 + 3.5);
  return fromLeft
    ? html`<text x="${n(labelWidth - 6)}" y="${middle}" text-anchor="end">${short}</text>`
    : html`<text x="${n(frame.width - labelWidth + 6)}" y="${middle}">${short}</text>`;
}

function shortLabel(line: PlanLine): string {
  const number = /^(?:Row|Rnd) (\d+)$/.exec(line.label)?.[1];
  const words = number ?? line.label;
  return words.length > 16 ? `${words.slice(0, 15)}…` : words;
}

function box(frame: Frame, from: number, count: number, y: number, height: number, shape: string, fill = ''): string {
  if (count <= 0) return '';
  return `<rect x="${n(xOf(frame, from + count))}" y="${n(y)}" width="${n(count * frame.w)}" height="${n(height)}" class="${shape}"${fill}/>`;
}

function squares(line: PlanLine, frame: Frame, y: number, height: number, paper: Paper): Markup {
  const { w } = frame;
  let out = '';
  const waits = (from: number, count: number): string => {
    if (count <= 0) return '';
    return `<path class="waits" d="M${n(xOf(frame, from))} ${n(y + height / 2)}H${n(xOf(frame, from + count))}"/>`;
  };
  out += waits(line.right, line.waitsRight);
  let at = line.right + line.waitsRight;
  const worked = line.runs.reduce((sum, run) => sum + run.n, 0);
  const gone = (run: Run) => run.kind === 'boundOff' || run.kind === 'held';
  // Squares first, in as few pieces as there are stretches; the signs go on top.
  let start = at;
  let open = 0;
  const flush = () => {
    out += box(frame, start, open, y, height, 'sq');
    if (w >= 5) out += box(frame, start, open, y, height, 'grid', ` fill="url(#${paper.pattern}-g)"`);
  };
  const signs: Record<string, string> = {};
  const sign = (name: string, path: string) => {
    signs[name] = (signs[name] ?? '') + path;
  };
  for (const run of line.runs) {
    if (gone(run)) {
      flush();
      out += box(
        frame,
        at,
        run.n,
        y,
        height,
        run.kind === 'held' ? 'held' : 'off',
        run.kind === 'held' ? ` fill="url(#${paper.pattern}-x)"` : '',
      );
      if (run.kind === 'boundOff') sign('edge', `M${n(xOf(frame, at))} ${n(y + 1)}H${n(xOf(frame, at + run.n))}`);
      start = at + run.n;
      open = 0;
    } else {
      open += run.n;
      signOf(run, frame, at, y, height, sign);
    }
    at += run.n;
  }
  flush();
  out += waits(at, line.waitsLeft);
  for (const place of line.markers) sign('thread', `M${n(xOf(frame, line.right + place))} ${n(y)}v${n(height)}`);
  if (line.turned && line.waitsLeft + line.waitsRight > 0) {
    const end = line.side === 'WS' ? line.right + line.waitsRight : line.right + line.waitsRight + worked;
    sign('turn', arrow(frame, end, y, height, line.side === 'WS'));
  }
  for (const name of Object.keys(signs).sort()) out += `<path class="${name}" d="${signs[name]}"/>`;
  return own(out);
}

/** The arrow at a turn points the way the row was worked. */
function arrow(frame: Frame, at: number, y: number, height: number, toRight: boolean): string {
  const x = xOf(frame, at);
  const size = Math.min(6, Math.max(4, height * 0.7));
  const way = toRight ? 1 : -1;
  return `M${n(x)} ${n(y + height / 2 - size / 2)}l${n(way * size)} ${n(size / 2)}l${n(-way * size)} ${n(size / 2)}z`;
}

/** The signs of one run, each square its own. */
function signOf(run: Run, frame: Frame, at: number, y: number, height: number, sign: (name: string, path: string) => void): void {
  const { w } = frame;
  if (run.kind === 'castOn' || run.kind === 'taken') {
    sign(run.kind === 'castOn' ? 'start' : 'taken', `M${n(xOf(frame, at))} ${n(y + height - 1)}H${n(xOf(frame, at + run.n))}`);
    return;
  }
  if (run.kind === 'plain') return;
  const top = y + height * 0.15;
  const foot = y + height * 0.85;
  if (run.kind === 'crossing') {
    const from = xOf(frame, at + run.n) + w * 0.3;
    const to = xOf(frame, at) - w * 0.3;
    sign('cross', run.lean === 'right' ? `M${n(from)} ${n(foot)}L${n(to)} ${n(top)}` : `M${n(from)} ${n(top)}L${n(to)} ${n(foot)}`);
    return;
  }
  for (let square = 0; square < run.n; square += 1) {
    const middle = xOf(frame, at + square) - w / 2;
    const arm = w * 0.32;
    if (run.kind === 'yarnOver') {
      const radius = Math.max(1, Math.min(w, height) * 0.3);
      sign(
        'hole',
        `M${n(middle - radius)} ${n(y + height / 2)}a${n(radius)} ${n(radius)} 0 1 0 ${n(radius * 2)} 0a${n(radius)} ${n(radius)} 0 1 0 ${n(-radius * 2)} 0`,
      );
    } else if (run.kind === 'increase') {
      // A stem that opens upward, to the side it leans to.
      const stem = `M${n(middle)} ${n(foot)}V${n(top)}`;
      const leftArm = `M${n(middle)} ${n(foot)}L${n(middle - arm)} ${n(top)}`;
      const rightArm = `M${n(middle)} ${n(foot)}L${n(middle + arm)} ${n(top)}`;
      sign('gain', run.lean === 'left' ? stem + leftArm : run.lean === 'right' ? stem + rightArm : leftArm + rightArm);
    } else {
      const toRight = `M${n(middle - arm)} ${n(foot)}L${n(middle + arm)} ${n(top)}`;
      const toLeft = `M${n(middle + arm)} ${n(foot)}L${n(middle - arm)} ${n(top)}`;
      const centre = `M${n(middle - arm)} ${n(foot)}L${n(middle)} ${n(top)}L${n(middle + arm)} ${n(foot)}`;
      const path = run.lean === 'right' ? toRight : run.lean === 'left' ? toLeft : centre;
      sign(
        run.kind === 'doubleDecrease' ? 'loss two' : 'loss',
        run.kind === 'doubleDecrease' && run.lean !== 'right' && run.lean !== 'left' ? `${path}M${n(middle)} ${n(foot)}V${n(top)}` : path,
      );
    }
  }
}

/** A row that was not understood: a line torn through. */
function torn(line: PlanLine, frame: Frame, y: number, height: number): Markup {
  const from = xOf(frame, line.right + widthOf(line));
  const to = xOf(frame, line.right);
  const step = 8;
  let path = `M${n(from)} ${n(y + height)}`;
  let up = true;
  for (let x = from + step; x < to; x += step) {
    path += `L${n(x)} ${n(up ? y : y + height)}`;
    up = !up;
  }
  return own(`<path class="torn" d="${path}"/>`);
}

/** A stretch that stands for many rows: a band with a cut through it. */
function bandMarkup(
  each: Exclude<Drawn, { kind: 'line' }>,
  frame: Frame,
  y: number,
  height: number,
  paper: Paper,
  nameOnce: (entry: number) => boolean,
): Markup {
  const words = bandWords(each);
  const first = each.kind === 'even' ? each.line : each.kind === 'again' ? each.first : each.lines[0];
  if (first === undefined) return own('');
  const right = each.kind === 'even' ? each.line.right : frame.right;
  const width = each.kind === 'even' ? widthOf(each.line) : frame.left - frame.right;
  const from = xOf(frame, right + width);
  const to = xOf(frame, right);
  const mid = y + height / 2;
  const shape =
    each.kind === 'even'
      ? `<rect x="${n(from)}" y="${n(y)}" width="${n(to - from)}" height="${n(height)}" class="sq"/><path class="cut" d="M${n(from - 4)} ${n(mid + 2)}l4 -4l4 4M${n(to - 4)} ${n(mid + 2)}l4 -4l4 4"/>`
      : `<path class="brace" d="M${n(from)} ${n(y + 3)}V${n(y + height - 3)}M${n(to)} ${n(y + 3)}V${n(y + height - 3)}"/>`;
  const ids = each.lines.map((line) => line.entry).filter(nameOnce);
  const anchors = ids.map((entry) => html`<g id="${paper.id}-e${entry}"></g>`);
  return html`<a href="${paper.wordsOf(first)}" tabindex="-1" class="r band"><title>${words}</title>${anchors}${own(shape)}<text x="${n(Math.max((from + to) / 2, labelWidth + 60))}" y="${n(mid + 3.5)}" text-anchor="middle" class="on">${words}</text></a>`;
}

export function bandWords(each: Exclude<Drawn, { kind: 'line' }>): string {
  if (each.kind === 'even') return `${each.rows} ${each.line.unit === 'round' ? 'rounds' : 'rows'} even`;
  if (each.kind === 'again') return `these ${each.block} rows ${each.times === 1 ? 'once' : `${each.times} times`} more`;
  return `${each.rows} more rows are not drawn`;
}

/** The rows in each column as a step line with its numbers: the wedge. */
function profileMarkup(columns: readonly ColumnRows[], frame: Frame, y: number, height: number): Markup {
  const most = Math.max(...columns.map((column) => column.rows), 1);
  const foot = y + height - 16;
  let path = '';
  let words = '';
  let lastText = Number.NEGATIVE_INFINITY;
  for (const column of [...columns].reverse()) {
    const from = xOf(frame, column.from + column.columns);
    const to = xOf(frame, column.from);
    const top = foot - (column.rows / most) * (height - 22);
    path += `${path === '' ? 'M' : 'L'}${n(from)} ${n(top)}H${n(to)}`;
    const centre = (from + to) / 2;
    if (centre - lastText >= 14) {
      words += `<text x="${n(centre)}" y="${n(foot + 11)}" text-anchor="middle">${column.rows}</text>`;
      lastText = centre;
    }
  }
  const first = xOf(frame, frame.left);
  return own(
    `<g class="profile"><title>Rows in each column</title><path d="M${n(first)} ${n(foot)}H${n(xOf(frame, frame.right))}" class="thin"/><path d="${path}" class="step"/>${words}<text x="${n(frame.width - labelWidth + 6)}" y="${n(foot + 11)}">rows</text></g>`,
  );
}
