/** What the signs on the squared paper mean. */
import { html, type Markup, own } from './markup.ts';

const signs: readonly (readonly [string, string])[] = [
  ['<rect x="1" y="1" width="14" height="14" class="sq"/>', 'a stitch'],
  ['<rect x="1" y="1" width="14" height="14" class="sq"/><path class="loss" d="M4 13L12 3"/>', 'decrease that leans to the right'],
  ['<rect x="1" y="1" width="14" height="14" class="sq"/><path class="loss" d="M12 13L4 3"/>', 'to the left'],
  ['<rect x="1" y="1" width="14" height="14" class="sq"/><path class="loss two" d="M4 13L8 3L12 13M8 13V3"/>', 'double decrease'],
  [
    '<rect x="1" y="1" width="14" height="14" class="sq"/><path class="gain" d="M8 13L4 3M8 13L12 3"/>',
    'increase (with a stem: it leans to the arm)',
  ],
  ['<rect x="1" y="1" width="14" height="14" class="sq"/><circle class="hole" cx="8" cy="8" r="4"/>', 'yarn over'],
  ['<rect x="1" y="1" width="14" height="14" class="sq"/><path class="cross" d="M3 3L13 13"/>', 'stitches that cross'],
  ['<path class="waits" d="M0 8H16"/>', 'not worked in this row'],
  ['<path class="turn" d="M11 3l-7 5l7 5z"/>', 'turn, in the direction of work'],
  ['<rect x="1" y="1" width="14" height="14" class="off"/><path class="edge" d="M0 2H16"/>', 'bound off'],
  ['<rect x="1" y="1" width="14" height="14" class="sq"/><path class="start" d="M0 15H16"/>', 'cast on'],
  ['<rect x="1" y="1" width="14" height="14" class="sq"/><path class="taken" d="M0 15H16"/>', 'taken up'],
  ['<rect x="1" y="1" width="14" height="14" class="held" fill="none"/><path class="hatch" d="M1 9L9 1M4 15L15 4"/>', 'on hold'],
  ['<path class="thread" d="M8 0V16"/>', 'marker'],
  ['<path class="torn" d="M0 14L5 2L10 14L15 2"/>', 'not understood, or cannot be worked as printed'],
];

export const legend: Markup = html`<ul class="legend" aria-label="Signs">${signs.map(([shape, words]) => html`<li>${own(`<svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">${shape}</svg>`)} ${words}</li>`)}</ul>`;
