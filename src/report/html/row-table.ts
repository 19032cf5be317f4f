/** One row step by step, as a table. */
import { plural } from '../plural.ts';
import type { RowReplay } from '../row-replay.ts';
import { remarks, stepWords } from '../row-replay-report.ts';
import { html, type Markup } from './markup.ts';

const printed = (value: number | null) => (value === null ? '?' : value);

export function rowTable(replay: RowReplay, withSize: boolean): Markup {
  const begin = replay.before === null ? 'the count before it is not known' : `${plural(replay.before, 'stitch', 'stitches')} before it`;
  const place = [replay.label, replay.side ?? '', withSize ? `size ${replay.size}` : ''].filter((word) => word !== '').join(', ');
  const { leftNeedle, rightNeedle } = replay.start ?? { leftNeedle: replay.before, rightNeedle: 0 };
  return html`<div class="scroll" tabindex="0" role="region" aria-label="${place}, step by step"><table class="row-replay"><caption>${place}: ${begin}</caption>
<thead><tr><th scope="col" class="t">you work</th><th scope="col">takes</th><th scope="col">makes</th><th scope="col">left needle</th><th scope="col">right needle</th></tr></thead>
<tbody><tr><th scope="row">(start)</th><td></td><td></td><td>${printed(leftNeedle)}</td><td>${printed(rightNeedle)}</td></tr>
${replay.lines.map((line) => html`<tr><th scope="row">${stepWords(line)}</th><td>${printed(line.takes)}</td><td>${printed(line.makes)}</td><td>${printed(line.leftNeedle)}</td><td>${printed(line.rightNeedle)}</td></tr>`)}</tbody></table></div>
<p>${replay.outcome}</p>${remarks(replay).map((sentence) => html`<p class="small">${sentence}</p>`)}`;
}
