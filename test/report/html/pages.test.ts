import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { escapeText, html } from '../../../src/report/html/markup.ts';
import { proofHtml } from '../../../src/report/html/proof-page.ts';
import { queriesText } from '../../../src/report/html/queries.ts';
import { sha256Base64 } from '../../../src/report/html/sha256.ts';
import { tallyHtml } from '../../../src/report/html/tally-page.ts';
import { testSheetHtml } from '../../../src/report/html/test-sheet.ts';
import { at, cap, finding, handMade, inputOf } from '../hand-made.ts';
import { attributes, inputWith, nestingProblems, proofOf, scarf, scarfFindings } from './documents.ts';

const kelp = proofOf(scarf, scarfFindings);
const pages: readonly (readonly [string, string])[] = [
  ['proof', proofHtml(inputWith(kelp))],
  ['proof of two drafts', proofHtml({ ...inputWith(kelp, cap), unreadable: [{ path: 'b.md', sentence: 'b.md: it is not a text file.' }] })],
  ['proof of an empty draft', proofHtml(inputOf(handMade({ source: '' })))],
  ['count sheet', tallyHtml(inputWith(kelp, cap))],
  ['sheet of a size', testSheetHtml(inputWith(kelp), 'M')],
];

describe.each(pages)('%s', (_name, text) => {
  test('every tag is closed in its place', () => {
    expect(nestingProblems(text)).toEqual([]);
  });

  test('no id stands twice, and every link leads to one', () => {
    const ids = attributes(text, 'id');
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
    const targets = attributes(text, 'href').filter((href) => href !== '#d0' && href !== '#d1');
    expect(targets.filter((href) => !href.startsWith('#') || !ids.includes(href.slice(1)))).toEqual([]);
    for (const name of ['aria-labelledby', 'aria-describedby', 'data-copy', 'data-folds']) {
      expect(attributes(text, name).filter((id) => !ids.includes(id))).toEqual([]);
    }
  });

  test('nothing is fetched, nothing stands in an attribute that runs', () => {
    const bare = text.replace(/<style>[\s\S]*?<\/style>/, '').replace(/<script>[\s\S]*?<\/script>/, '');
    expect(bare).not.toMatch(/ (?:src|srcset|style|on[a-z]+)=/);
    expect(bare).not.toMatch(/https?:/);
    expect(text).not.toMatch(/@import|@font-face|url\((?!#)/);
  });

  // Content Security Policy Level 3, 2.3.1: a hash source is the base64 of the digest of the element's text.
  test('the policy names the style and the script by their digests', () => {
    const policy = /Content-Security-Policy" content="([^"]*)"/.exec(text)?.[1] ?? '';
    for (const name of ['style', 'script']) {
      const content = new RegExp(`<${name}>([\\s\\S]*?)</${name}>`).exec(text)?.[1] ?? '';
      expect(policy).toContain(`${name}-src &#39;sha256-${createHash('sha256').update(content).digest('base64')}&#39;`);
    }
    expect(policy).toContain('default-src &#39;none&#39;');
  });

  test('headings go down by one step at most', () => {
    const levels = [...text.matchAll(/<h([1-6])/g)].map((match) => Number(match[1]));
    expect(levels[0]).toBe(1);
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    levels.forEach((level, index) => {
      if (index > 0) expect(level - (levels[index - 1] ?? 0)).toBeLessThanOrEqual(1);
    });
  });
});

describe('the editor’s page', () => {
  const [, text] = pages[0] ?? ['', ''];

  test('has the three blocks in their order and the findings in that of the draft', () => {
    const places = ['>Stops the knitter<', '>Questions to the author<', '>House style<'].map((words) => text.indexOf(words));
    expect(places.every((place) => place > 0)).toBe(true);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
  });

  test('shows the sum, the sizes affected and fine, the evidence and the edit', () => {
    expect(text).toContain('≠ 25');
    expect(text).toContain('Holds in size <strong>M</strong>. Nothing found here in S.');
    expect(text).toContain('Row 1 keeps the count.');
    expect(text).toContain('Change <del>25</del> to <ins>24</ins>');
  });

  test('marks the words at fault in the draft and notes the finding at the line', () => {
    expect(text).toContain('<mark class="error">20 (25)</mark>');
    expect(text).toMatch(/id="d0-L13"[^\n]*href="#d0-f1"/);
  });

  test('the words of the whole draft stand on the page, in their order', () => {
    const list = /<ol class="draft">([\s\S]*?)<\/ol>/.exec(text)?.[1] ?? '';
    const lines = [...list.matchAll(/<span class="tx[^"]*">([\s\S]*?)<\/span>(?=<span class="notes">|<\/li>)/g)].map((match) =>
      (match[1] ?? '').replace(/<[^>]*>/g, ''),
    );
    expect(lines).toEqual(scarf.trimEnd().split('\n').map(escapeText));
  });

  test('is the same for the same draft, and whatever order findings were found in', () => {
    expect(proofHtml(inputWith(proofOf(scarf, scarfFindings)))).toBe(text);
    expect(proofHtml(inputWith(proofOf(scarf, (source) => [...scarfFindings(source)].reverse())))).toBe(text);
  });

  test('a draft without findings is not called correct', () => {
    const none = proofHtml(inputWith(proofOf(scarf)));
    expect(none).toContain('No contradictions found');
    expect(none).not.toMatch(/\bcorrect\b/i);
  });
});

test('questions for a mail can each be answered by yes, no or a number', () => {
  const text = queriesText(kelp);
  expect(text).toBe(`Questions on Kelp Line Scarf

1. Body · Row 2 · size M (line 13)
   After Row 2 there are 24 stitches in size M, the draft says 25.
   Row 1 keeps the count.
   Shall I change "25" to "24"? (yes / no)

2. Body (line 19)
   Is the fabric named before?
   Which is meant?
     1 – stocking stitch
     2 – rib
   (1 / 2, or 0 for none of them)

What I hear nothing about I leave as it is.
`);
});

test.each([
  ['Which needle is meant?', '(the number, or the words in short)'],
  ['Two readings fit. Is the first meant?', '(yes / no)'],
  ['The row uses 40, there are 41.', 'Shall I leave it as it stands? (yes / no, or the number that is meant)'],
])('%s is asked so that a short answer will do', (message, ask) => {
  const asked = queriesText(proofOf(scarf, (source) => [finding(at(source, 'Row 2'), { level: 'query', message })]));
  expect(asked).toContain(`   ${message}\n   ${ask}\n`);
});

describe('markup', () => {
  test('everything put in is escaped, markup is not', () => {
    expect(html`<p title="${'"><script>'}">${'a & b'}${html`<b>${"it's"}</b>`}${[1, null, false, 'x']}</p>`.markup).toBe(
      '<p title="&quot;&gt;&lt;script&gt;">a &amp; b<b>it&#39;s</b>1x</p>',
    );
  });

  test('characters that no document may hold, or that turn the writing round, are replaced', () => {
    expect(escapeText('a\u0000b\u202ec\ud800d\ufeff')).toBe('a\ufffdb\ufffdc\ufffdd');
  });

  // Node's own implementation (OpenSSL) as the outside world; lengths around the block of 64 bytes.
  test('the digest is SHA-256', () => {
    for (const length of [0, 1, 55, 56, 63, 64, 65, 119, 120, 1000]) {
      const text = 'é'.repeat(length).slice(0, length);
      expect(sha256Base64(text)).toBe(createHash('sha256').update(text).digest('base64'));
    }
  });
});

describe('the count sheet', () => {
  const text = tallyHtml(inputWith(kelp));
  test('has before, used, made, after and stated for every size', () => {
    const row = /<tr id="d0-e2"[^>]*>([\s\S]*?)<\/tr>/.exec(text)?.[1] ?? '';
    expect([...row.matchAll(/<t[dh][^>]*>([^<]*)</g)].map((match) => match[1])).toEqual([
      '13',
      'Row 2',
      'WS',
      '',
      '20',
      '20',
      '20',
      '20',
      '20',
      '24',
      '24',
      '24',
      '24',
      '≠ 25',
    ]);
  });
});

describe('the sheet of a size', () => {
  const text = testSheetHtml(inputWith(kelp), 'M');
  test('has the counts to reach in that size and no other', () => {
    expect(text).toContain('<strong>24</strong>');
    expect(text).toContain('<strong>26</strong>');
    expect(text).not.toContain('<strong>20</strong>');
  });
  // 26 stitches at 20 to 10 cm are 13 cm wide; the tail of three to four widths and 15 cm, for the 24 cast on: 51 to 63 cm (rule of thumb, common practice).
  test('estimates yarn as ranges', () => {
    expect(text).toContain('51 to 63 cm');
  });
});
