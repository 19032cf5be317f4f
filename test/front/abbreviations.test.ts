import { describe, expect, it } from 'vitest';
import { read } from './draft.ts';

const key = (text: string) => read(`# Kelp\n\n## Abbreviations\n\n${text}\n`).front.abbreviations.map((one) => [one.term, one.meaning]);
const kp = [
  ['k', 'knit'],
  ['p', 'purl'],
];

// Ways to set a key in print: common practice, no single source.
const lists: readonly [string, string[][]][] = [
  ['k = knit; p = purl', kp],
  ['k = knit, p = purl', kp],
  ['k = knit. p = purl.', kp],
  ['k: knit. p: purl.', kp],
  ['k: knit; p: purl', kp],
  ['k - knit\np - purl', kp],
  ['k – knit. p – purl', kp],
  ['k—knit\np—purl', kp],
  ['- k – knit\n- p – purl', kp],
  ['- k: knit\n- p: purl', kp],
  ['- **k** knit\n- **p** purl', kp],
  ['* `k` = knit\n* `p` = purl'.replaceAll('`', ''), kp],
  ['**k** = knit; **p** = purl', kp],
  ['K, knit; P, purl'.replaceAll('K', 'k').replaceAll('P', 'p'), kp],
  ['k knit\np purl', kp],
  ['k knit · p purl', kp],
  ['k (knit), p (purl), st(s) (stitch(es))', [...kp, ['st(s)', 'stitch(es)']]],
  [
    'k knit, p purl, skpo slip 1, k1, pass slipped st over, st(s) stitch(es)',
    [...kp, ['skpo', 'slip 1, k1, pass slipped st over'], ['st(s)', 'stitch(es)']],
  ],
  [
    'K., knit; p., purl; tog., together; alt., alternate; c. 6 f., cable 6 front thus: slip next 3 sts. to a cable needle.',
    [
      ['K', 'knit'],
      ['p', 'purl'],
      ['tog', 'together'],
      ['alt', 'alternate'],
      ['c. 6 f', 'cable 6 front thus: slip next 3 sts. to a cable needle'],
    ],
  ],
  // terms in bold at the head of their lines, one meaning with a colon in it
  [
    '**brk** brioche knit: knit the st with its yarn over\n**k** knit\n**p** purl',
    [['brk', 'brioche knit: knit the st with its yarn over'], ...kp],
  ],
  // leaflets: dashes before the list, stops behind brackets and between letters
  [
    '— K., knit; p., purl; st(s)., stitch(es); st.st., stocking stitch (k. 1 row, p. 1 row); R.S., right side.'.replace('K', 'k'),
    [...kp, ['st(s)', 'stitch(es)'], ['st.st', 'stocking stitch (k. 1 row, p. 1 row)'], ['R.S', 'right side']],
  ],
  ['k **knit**\np **purl**', kp],
  ['K: knit\nP: purl'.toLowerCase(), kp],
  ['| Abbr. | Meaning |\n|---|---|\n| k | knit |\n| p | purl |', kp],
  ['| | |\n|---|---|\n| k | knit |\n| p | purl |', kp],
  ['| k | knit | p | purl |\n|---|---|---|---|\n| sl | slip | st | stitch |', [...kp, ['sl', 'slip'], ['st', 'stitch']]],
  [
    '| | |\n|---|---|\n| BO / CO | bind off / cast on |',
    [
      ['BO', 'bind off'],
      ['CO', 'cast on'],
    ],
  ],
  [
    'RS/WS = right side/wrong side',
    [
      ['RS', 'right side'],
      ['WS', 'wrong side'],
    ],
  ],
  [
    'm1 = make 1 (lift the bar, and knit it); p = purl',
    [
      ['m1', 'make 1 (lift the bar, and knit it)'],
      ['p', 'purl'],
    ],
  ],
  [
    'sk2p - slip 1, k2tog, pass over; 2 stitches decreased\np - purl',
    [
      ['sk2p', 'slip 1, k2tog, pass over; 2 stitches decreased'],
      ['p', 'purl'],
    ],
  ],
  [
    'w&t = wrap and turn: bring yarn to front, turn. WS = wrong side.',
    [
      ['w&t', 'wrap and turn: bring yarn to front, turn'],
      ['WS', 'wrong side'],
    ],
  ],
  [
    'st st = stocking stitch (k RS rows, p WS rows); WS = wrong side',
    [
      ['st st', 'stocking stitch (k RS rows, p WS rows)'],
      ['WS', 'wrong side'],
    ],
  ],
  ['C4F: slip 2 to cn and hold in front, k2, k2 from cn', [['C4F', 'slip 2 to cn and hold in front, k2, k2 from cn']]],
  [
    'rep – repeat. rnd(s) – round(s). st(s) – stitch(es)',
    [
      ['rep', 'repeat'],
      ['rnd(s)', 'round(s)'],
      ['st(s)', 'stitch(es)'],
    ],
  ],
];

describe('a key of abbreviations', () => {
  it.each(lists)('%s', (text, want) => {
    expect(key(text)).toEqual(want);
  });
  it.each([
    '**Abbreviations:** ',
    '**ABBREVIATIONS** ',
    'Abbreviations: ',
    '**Abbreviations.** ',
    'ABBREVIATIONS.—',
    'Abbreviations ',
    '**short forms** ',
  ])('is found behind %j', (label) => {
    expect(read(`# Kelp\n\n${label}k = knit; p = purl\n`).front.abbreviations.map((one) => [one.term, one.meaning])).toEqual(kp);
  });
  it('is found in notes', () => {
    expect(read('# Kelp\n\n## Notes\n\n**Abbreviations.** k = knit; p = purl\n').front.abbreviations).toHaveLength(2);
  });
  it('is no sentence about abbreviations', () => {
    expect(read('# Kelp\n\nAbbreviations are explained at the end.\n').front.abbreviations).toEqual([]);
  });
  it('is found below a bold title', () => {
    expect(read('# Kelp\n\n**ABBREVIATIONS**\n\n- k – knit\n- p – purl\n').front.abbreviations).toHaveLength(2);
  });
  it.each(['Special stitches', 'Special Abbreviations', 'Glossary', 'Stitch guide'])('is found below %s', (heading) => {
    expect(read(`# Kelp\n\n## ${heading}\n\nC4F: hold 2 in front, k2, k2 from cn.\n`).front.abbreviations.map((one) => one.term)).toEqual([
      'C4F',
    ]);
  });
  it('takes no row for a term', () => {
    expect(key('Row 1: K2, p2.\n\nMB: make bobble.')).toEqual([['MB', 'make bobble']]);
  });
});

describe('the forms of a term', () => {
  it.each([
    ['st(s)', ['st', 'sts']],
    ["dec('d)", ['dec', "dec'd"]],
    ['rnd(s)', ['rnd', 'rnds']],
    ['St st', ['St st']],
    ['k2tog', ['k2tog']],
    ['w&t', ['w&t']],
    ['skpo or skp', ['skpo', 'skp']],
    ['dpn(s)', ['dpn', 'dpns']],
    ['C4F/C4B', ['C4F', 'C4B']],
    ['2/2 LC', ['2/2 LC']],
  ])('%s', (term, forms) => {
    expect(read(`# K\n\n## Abbreviations\n\n${term} = something; k = knit\n`).front.abbreviations[0]?.forms).toEqual(forms);
  });
  it('each part of a pair has its own place', () => {
    const { front, words } = read('# K\n\n## Abbreviations\n\n| | |\n|---|---|\n| pm / sm | place marker / slip marker |\n');
    expect(front.abbreviations.map((one) => [words(one.span), words(one.meaningSpan)])).toEqual([
      ['pm', 'place marker'],
      ['sm', 'slip marker'],
    ]);
  });
});
