/** Proofs made by hand, so that the reports are tested without the reader and the replay. The pattern is invented. */
import type { Unread } from '../../grammar/tree.ts';
import type { Vocabulary } from '../../grammar/vocabulary.ts';
import type { Finding, Rule } from '../../rules/rule.ts';
import type { Proof } from '../../src/index.ts';
import type { Manuscript, Span } from '../../src/manuscript/manuscript.ts';
import type { Section } from '../../src/pattern/pattern.ts';
import type { Entry } from '../../src/replay/replay.ts';
import type { ReportInput } from '../../src/report/input.ts';

/** The nth stretch of the source that reads so. */
export function at(source: string, words: string, nth = 1): Span {
  let start = -1;
  for (let count = 0; count < nth; count += 1) start = source.indexOf(words, start + 1);
  if (start < 0) throw new Error(`"${words}" does not stand in the source`);
  return { start, end: start + words.length };
}

function manuscriptOf(source: string): Manuscript {
  return {
    source,
    blocks: [],
    hazards: [],
    place(offset) {
      const before = source.slice(0, offset).split('\n');
      return { line: before.length, column: (before[before.length - 1] ?? '').length + 1 };
    },
  };
}

export function section(source: string, title: string): Section {
  return { title, span: at(source, title), depth: 2, kind: 'piece', piece: 0, statements: [], multiple: null, times: 1 };
}

export function unread(source: string, words: string): Unread {
  const span = at(source, words);
  return { type: 'unread', span, text: words };
}

export function entry(span: Span, given: Partial<Entry>): Entry {
  return {
    section: 0,
    label: 'Row 1',
    span,
    textSpan: span,
    node: { type: 'remark', span },
    side: null,
    unit: 'row',
    times: 1,
    before: [],
    after: [],
    takes: [],
    makes: [],
    afterPerRepeat: null,
    ...given,
  };
}

export function finding(span: Span, given: Partial<Finding>): Finding {
  return {
    rule: 'count-mismatch',
    level: 'error',
    span,
    section: null,
    row: null,
    sizes: [],
    message: 'The count does not come out.',
    stated: null,
    replayed: null,
    fix: null,
    ...given,
  };
}

export interface HandMade {
  readonly path?: string;
  readonly source: string;
  readonly title?: string;
  readonly sizes?: readonly string[];
  readonly sections?: readonly Section[];
  readonly steps?: number;
  readonly notRead?: readonly Unread[];
  readonly entries?: readonly Entry[];
  readonly findings?: readonly Finding[];
}

export function handMade(given: HandMade): Proof {
  const notRead = given.notRead ?? [];
  const steps = given.steps ?? 0;
  return {
    path: given.path ?? 'draft.md',
    manuscript: manuscriptOf(given.source),
    pattern: {
      title: given.title ?? '',
      sizes: given.sizes ?? ['one'],
      sections: given.sections ?? [],
      front: {
        title: null,
        sizes: null,
        measures: [],
        pairs: [],
        gauges: [],
        needles: [],
        yarns: [],
        notions: [],
        abbreviations: [],
        blocks: [],
      },
      vocabulary: {} as Vocabulary,
      reading: { steps, read: steps - notRead.length, notRead },
      rows: [],
      sizeBlocks: [],
    },
    replay: { entries: given.entries ?? [], observations: [], sectionRows: [] },
    findings: given.findings ?? [],
  };
}

export const ruleOfCounts: Rule = {
  id: 'count-mismatch',
  level: 'error',
  title: 'The stated count is the count the row makes',
  meaning: 'A knitter who counts after the row has another number than the draft.',
  reason: 'She will look for a slip of her own that is not there.',
  needsReplay: true,
  wrong: { draft: 'Cast on 10 sts.\n\nRow 1: K2, k2tog, k to end. 10 sts.\n' },
  right: { draft: 'Cast on 10 sts.\n\nRow 1: K2, k2tog, k to end. 9 sts.\n' },
  check: () => [],
};

export const ruleOfCommas: Rule = {
  id: 'comma-before-times',
  level: 'style',
  title: 'A comma stands before the number of times, so that a knitter who reads fast does not run the two together',
  meaning: 'The eye reads "k2tog 3" as one stitch.',
  reason: 'It costs a second look.',
  needsReplay: false,
  offByDefault: true,
  wrong: { draft: 'Row 1: (K2tog) 3 times.' },
  right: { draft: 'Row 1: (K2tog), 3 times.' },
  check: () => [],
};

export function inputOf(...proofs: readonly Proof[]): ReportInput {
  return { tool: { name: 'rowproof', version: '0.0.1' }, proofs, rules: [ruleOfCounts, ruleOfCommas], unreadable: [] };
}

const hatSource = [
  '# Skerry Cap',
  '',
  '## Crown',
  '',
  'With 3 sizes in hand:',
  'Rnd 7: *K6, k2tog; rep from * to end. 77 (84, 92) sts.',
  'Rnd 8: Knit.',
  'Rnd 9: Work in the manner of the lamp room.',
  '',
  '## Finishing',
  '',
  'Weave in ends, "neatly".',
  '',
].join('\n');

/** A cap in three sizes: one wrong count, one question, one remark of style, one step that was not read. */
export const cap: Proof = handMade({
  path: 'drafts/Skerry cap.md',
  source: hatSource,
  title: 'Skerry Cap',
  sizes: ['S', 'M', 'L'],
  sections: [section(hatSource, 'Crown'), section(hatSource, 'Finishing')],
  steps: 6,
  notRead: [unread(hatSource, 'Work in the manner of the lamp room.')],
  entries: [
    entry(at(hatSource, 'Rnd 7: *K6, k2tog; rep from * to end. 77 (84, 92) sts.'), {
      label: 'Rnd 7',
      unit: 'round',
      before: [88, 96, 104],
      after: [77, 84, 91],
      takes: [88, 96, 104],
      makes: [77, 84, 91],
    }),
    entry(at(hatSource, 'Rnd 8: Knit.'), {
      label: 'Rnd 8',
      unit: 'round',
      times: 2,
      before: [77, 84, 91],
      after: [77, 84, 91],
      takes: [77, 84, 91],
      makes: [77, 84, 91],
    }),
    entry(at(hatSource, 'Rnd 9: Work in the manner of the lamp room.'), {
      label: 'Rnd 9',
      unit: 'round',
      before: [77, 84, 91],
      after: [null, null, null],
      takes: [null, null, null],
      makes: [null, null, null],
    }),
  ],
  findings: [
    finding(at(hatSource, '"neatly"'), {
      rule: 'comma-before-times',
      level: 'style',
      section: 'Finishing',
      message: 'The house writes this without quotation marks.',
    }),
    finding(at(hatSource, 'Rnd 8'), {
      rule: 'length-not-given',
      level: 'query',
      section: 'Crown',
      row: 'Rnd 8',
      sizes: [0, 1, 2],
      message: 'Rnd 8 is worked twice by the words after it, or once by the chart. Which is meant?',
      wouldFit: ['Rnds 8 and 9: Knit.', 'Rnd 8: Knit once.'],
    }),
    finding(at(hatSource, '92'), {
      section: 'Crown',
      row: 'Rnd 7',
      sizes: [2],
      message: '104 stitches are 13 repeats of 8, each leaves 7: after Rnd 7 there are 91 stitches, the draft says 92.',
      stated: 92,
      replayed: 91,
      evidence: ['The next round needs a multiple of 7: 91 is one, 92 is not.'],
      fix: { span: at(hatSource, '92'), text: '91' },
      also: [at(hatSource, 'Rnd 8'), at(hatSource, 'Rnd 9')],
    }),
  ],
});
