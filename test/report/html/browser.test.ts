/**
 * The pages in a real browser: Debian's Chromium, or the one that CHROMIUM names. Without a browser these tests are skipped
 * and say so.
 */
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import axe from 'axe-core';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { proofHtml } from '../../../src/report/html/proof-page.ts';
import { tallyHtml } from '../../../src/report/html/tally-page.ts';
import { testSheetHtml } from '../../../src/report/html/test-sheet.ts';
import { at, finding } from '../hand-made.ts';
import { inputWith, proofOf, scarf, scarfFindings } from './documents.ts';

const places = [process.env.CHROMIUM, '/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];
const browserPath = places.find((path) => path !== undefined && existsSync(path));
if (browserPath === undefined) console.warn('No Chromium was found (set CHROMIUM to its path): the pages were not tried in a browser.');

const hostile = `# <script>hacked=1</script><img src=x onerror="hacked=1">

Sizes: <b>S</b> ("M' onload=hacked=1)

## </style><script>hacked=1</script>

Cast on 20 (24) sts. <svg onload=hacked=1> javascript:hacked=1 </title></textarea></pre><!--

Row 1 (RS): K2, *yo, k2tog; rep from * to last 2 sts, k2. "><iframe src="https://orrin.example/"></iframe>

Row 2: Purl. 20 (25) sts. <a href="javascript:hacked=1">x</a> \u202eesrever\u202c ]]>
`;

const hostileProof = proofOf(
  hostile,
  (source) => [
    finding(at(source, '20 (25)'), {
      rule: '"><script>hacked=1</script>',
      section: '</style><script>hacked=1</script>',
      row: '<i onclick=hacked=1>Row 2</i>',
      sizes: [1],
      message: '<img src=x onerror=hacked=1> is not a count.</p></article>',
      fix: { span: at(source, '25'), text: '<script>hacked=1</script>' },
      evidence: ['<script>hacked=1</script>'],
    }),
  ],
  '"><script>hacked=1</script>.md',
);

describe.skipIf(browserPath === undefined)('in a browser', () => {
  let browser: Browser;
  const folder = mkdtempSync(join(tmpdir(), 'rowproof-pages-'));
  const fetched: string[] = [];
  const said: string[] = [];

  beforeAll(async () => {
    browser = await chromium.launch({ executablePath: browserPath as string, args: ['--no-sandbox'] });
  }, 60_000);
  afterAll(async () => {
    await browser?.close();
    rmSync(folder, { recursive: true, force: true });
  });

  async function open(text: string, options: { width?: number; dark?: boolean } = {}): Promise<Page> {
    const file = join(folder, 'page.html');
    writeFileSync(file, text);
    fetched.length = 0;
    said.length = 0;
    const page = await browser.newPage({
      viewport: { width: options.width ?? 1300, height: 900 },
      colorScheme: options.dark === true ? 'dark' : 'light',
    });
    page.on('request', (request) => fetched.push(request.url()));
    page.on('console', (message) => said.push(message.text()));
    page.on('pageerror', (error) => said.push(error.message));
    page.on('dialog', (dialog) => said.push(dialog.message()));
    await page.goto(pathToFileURL(file).href);
    return page;
  }

  const kelp = proofOf(scarf, scarfFindings);
  const pages: readonly (readonly [string, string])[] = [
    ['proof', proofHtml(inputWith(kelp))],
    ['count sheet', tallyHtml(inputWith(kelp))],
    ['sheet of a size', testSheetHtml(inputWith(kelp), 'M')],
  ];

  test.each([
    ['proof', proofHtml(inputWith(hostileProof, kelp))],
    ['count sheet', tallyHtml(inputWith(hostileProof))],
    ['sheet of a size', testSheetHtml(inputWith(hostileProof), hostileProof.pattern.sizes[0] ?? '')],
  ])(
    '%s: a hostile draft runs nothing and fetches nothing',
    async (_name, text) => {
      const page = await open(text);
      await page.evaluate(
        "document.querySelectorAll('a, summary, label, button').forEach((each) => each.dispatchEvent(new MouseEvent('click', { bubbles: true, cancelable: true })))",
      );
      expect(await page.evaluate("'hacked' in globalThis")).toBe(false);
      expect(fetched.filter((url) => !url.startsWith('file:'))).toEqual([]);
      expect(said).toEqual([]);
      expect(await page.locator('img, iframe, object, embed, [onclick], [onload], [onerror]').count()).toBe(0);
      expect(await page.locator('script').count()).toBe(1);
      await page.close();
    },
    60_000,
  );

  test('the words of a hostile draft are shown as they are', async () => {
    const page = await open(proofHtml(inputWith(hostileProof)));
    expect(await page.locator('#d0-L1 .tx').textContent()).toBe('# <script>hacked=1</script><img src=x onerror="hacked=1">');
    await page.close();
  }, 30_000);

  test('a finding leads to its line, its line to the finding, the finding to its row on squared paper, the row to its words', async () => {
    const page = await open(proofHtml(inputWith(kelp)));
    await page.click('#d0-f1 .where');
    expect(new URL(page.url()).hash).toBe('#d0-L13');
    expect(await inView(page, '#d0-L13')).toBe(true);
    await page.click('#d0-L13 .note.error a');
    expect(new URL(page.url()).hash).toBe('#d0-f1');
    await page.click('#d0-f1 >> text=This row on squared paper');
    const row = new URL(page.url()).hash;
    expect(row).toMatch(/^#d0-p1-e\d+$/);
    expect(await page.locator(row).isVisible()).toBe(true);
    await page.click(`${row} .sq`);
    expect(new URL(page.url()).hash).toBe('#d0-L13');
    await page.close();
  }, 30_000);

  test('one size shows its findings, those without sizes, and its squared paper', async () => {
    const page = await open(proofHtml(inputWith(kelp)));
    await page.check('input[name=d0-size][value="0"]');
    expect(await page.locator('.finding:visible').evaluateAll((all) => all.map((each) => each.id))).toEqual(['d0-f2', 'd0-f3']);
    expect(await page.locator('.filter output').textContent()).toBe('2 of 3 findings hold for this size.');
    await page.check('input[name=d0-size][value="1"]');
    expect(await page.locator('#d0-f1').isVisible()).toBe(true);
    expect(await page.locator('#d0-p1').isVisible()).toBe(true);
    expect(await page.locator('#d0-p0').isVisible()).toBe(false);
    await page.close();
  }, 30_000);

  test('the keyboard alone reaches the findings, a line, a size and the questions', async () => {
    const page = await open(proofHtml(inputWith(kelp)));
    await page.keyboard.press('Tab');
    expect(await focused(page)).toContain('Skip to the report');
    await page.keyboard.press('Enter');
    const seen: string[] = [];
    for (let step = 0; step < 60 && !seen.some((each) => each.startsWith('line 13')); step += 1) {
      await page.keyboard.press('Tab');
      seen.push(await focused(page));
    }
    expect(seen.at(-1)).toContain('#d0-L13');
    await page.keyboard.press('Enter');
    expect(new URL(page.url()).hash).toBe('#d0-L13');
    // The page moves the focus once the address has changed.
    await page.waitForFunction("document.activeElement?.id === 'd0-L13'");
    await page.focus('input[name=d0-size][value=all]');
    await page.keyboard.press('ArrowRight');
    expect(await page.isChecked('input[name=d0-size][value="0"]')).toBe(true);
    await page.focus('button[data-copy]');
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('button[data-copy] + output').textContent()).toMatch(/Copied|Selected/);
    await page.close();
  }, 30_000);

  test('the count sheet shows checkpoints only, and folds what is even', async () => {
    const page = await open(tallyHtml(inputWith(kelp)));
    const all = await page.locator('table.sheet tbody tr:visible').count();
    await page.check('input[value=checkpoints]');
    const few = await page.locator('table.sheet tbody tr:visible').count();
    expect(few).toBeLessThan(all);
    expect(await page.locator('table.sheet tbody tr:visible', { hasText: 'Row 3' }).count()).toBe(1);
    await page.close();
  }, 30_000);

  // axe-core, rules of WCAG 2.2 A and AA and its best practices.
  test.each(pages)(
    '%s: axe finds nothing, light or dark, wide or narrow, and nothing runs off the side',
    async (_name, text) => {
      const page = await open(text);
      for (const summary of await page.locator('summary:visible').all()) await summary.click();
      await page.evaluate(axe.source);
      for (const colorScheme of ['light', 'dark'] as const) {
        for (const width of [1300, 390]) {
          await page.emulateMedia({ colorScheme });
          await page.setViewportSize({ width, height: 900 });
          const violations = await page.evaluate<string[]>(
            "axe.run().then((result) => result.violations.map((each) => each.id + ': ' + each.nodes.map((node) => node.html.slice(0, 120) + ' ' + node.failureSummary).slice(0, 2).join(' | ')))",
          );
          expect(violations).toEqual([]);
          expect(await page.evaluate('document.documentElement.scrollWidth - innerWidth')).toBeLessThanOrEqual(0);
        }
      }
      await page.close();
    },
    120_000,
  );

  test('prints every finding, whatever size is shown', async () => {
    const page = await open(proofHtml(inputWith(kelp)));
    await page.check('input[name=d0-size][value="0"]');
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.finding:visible').count()).toBe(3);
    expect(await page.locator('button:visible, .filter:visible').count()).toBe(0);
    await page.close();
  }, 30_000);
});

async function inView(page: Page, selector: string): Promise<boolean> {
  const box = await page.locator(selector).boundingBox();
  return box !== null && box.y >= 0 && box.y + box.height <= (page.viewportSize()?.height ?? 0);
}

async function focused(page: Page): Promise<string> {
  return page.evaluate<string>("(document.activeElement.textContent ?? '') + ' ' + (document.activeElement.getAttribute('href') ?? '')");
}
