/** Drafts and pages for the tests of the HTML reports, and a reader of markup that knows nothing of the writer. */
import type { Finding } from '../../../rules/rule.ts';
import { type Proof, proof } from '../../../src/index.ts';
import type { ReportInput } from '../../../src/report/input.ts';
import { at, finding } from '../hand-made.ts';

export const scarf = `# Kelp Line Scarf

Sizes: S (M)

Gauge: 20 sts and 28 rows = 10 cm.

## Body

Cast on 20 (24) sts.

Row 1 (RS): K2, *yo, k2tog; rep from * to last 2 sts, k2.

Row 2: Purl. 20 (25) sts.

Row 3: K1, m1, k to last st, m1, k1. 22 (26) sts.

Row 4: Purl.

Work 6 rows in st st.

Row 5: K8, turn.

Row 6: P to end.

Bind off.
`;

/** The draft proofed, with findings made by hand, so that no rule's wording decides a test of the page. */
export function proofOf(source: string, findings: (source: string) => readonly Finding[] = () => [], path = 'kelp.md'): Proof {
  return { ...proof(source, { path }), findings: findings(source) };
}

export const scarfFindings = (source: string): readonly Finding[] => [
  finding(at(source, '20 (25)'), {
    section: 'Body',
    row: 'Row 2',
    sizes: [1],
    message: 'After Row 2 there are 24 stitches in size M, the draft says 25.',
    stated: 25,
    replayed: 24,
    fix: { span: at(source, '25'), text: '24' },
    evidence: ['Row 1 keeps the count.'],
    also: [at(source, 'Row 3')],
  }),
  finding(at(source, 'rows in st st'), {
    rule: 'which-fabric',
    level: 'query',
    section: 'Body',
    sizes: [],
    message: 'Is the fabric named before?',
    wouldFit: ['stocking stitch', 'rib'],
  }),
  finding(at(source, 'Purl'), {
    rule: 'house-words',
    level: 'style',
    section: 'Body',
    row: 'Row 2',
    sizes: [0],
    message: 'The house writes "P to end".',
  }),
];

export function inputWith(...proofs: readonly Proof[]): ReportInput {
  return { tool: { name: 'rowproof', version: '0.0.1' }, proofs, rules: [], unreadable: [] };
}

const empty = new Set(['meta', 'input', 'br', 'hr', 'img', 'link']);

/** What is wrong with the nesting of a document; nothing where every tag is closed in its place. */
export function nestingProblems(text: string): string[] {
  const problems: string[] = [];
  const open: string[] = [];
  let index = 0;
  while (index < text.length) {
    const start = text.indexOf('<', index);
    if (start < 0) break;
    if (text.startsWith('<!doctype', start)) {
      index = text.indexOf('>', start) + 1;
      continue;
    }
    const end = text.indexOf('>', start);
    const tag = text.slice(start + 1, end);
    index = end + 1;
    const name = /^\/?([a-z][a-z0-9]*)/.exec(tag)?.[1];
    if (name === undefined) {
      problems.push(`<${tag.slice(0, 20)}`);
      continue;
    }
    if (tag.startsWith('/')) {
      const last = open.pop();
      if (last !== name) problems.push(`</${name}> closes <${last}>`);
      continue;
    }
    if (name === 'script' || name === 'style') {
      index = text.indexOf(`</${name}>`, index) + name.length + 3;
      continue;
    }
    if (!tag.endsWith('/') && !empty.has(name)) open.push(name);
  }
  return [...problems, ...open.map((name) => `<${name}> is not closed`)];
}

/** Values of an attribute in the order of the document; style and script are passed over. */
export function attributes(text: string, name: string): string[] {
  const markup = text.replace(/<style>[\s\S]*?<\/style>/, '').replace(/<script>[\s\S]*?<\/script>/, '');
  return [...markup.matchAll(new RegExp(`<[^>]*? ${name}="([^"]*)"`, 'g'))].map((match) => match[1] ?? '');
}
