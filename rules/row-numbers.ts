import type { Label, Statement } from '../grammar/tree.ts';
import type { Span } from '../src/manuscript/manuscript.ts';
import { once } from '../src/once.ts';
import { rootsOf } from './observed.ts';
import type { Context, Edit, Finding, Rule } from './rule.ts';
import { sectionTitle } from './telling.ts';

interface Slip {
  readonly span: Span;
  readonly label: Label;
  readonly section: number;
  readonly message: string;
  readonly missing: readonly number[];
  readonly fix: Edit | null;
}

interface Printed {
  readonly label: Label;
  readonly first: number;
  readonly last: number;
  /** Rows told in between without numbers, so that the next number cannot be foretold. */
  readonly open: boolean;
}

const unit = (label: Label): string => (label.unit === 'round' ? 'Rnd' : 'Row');
const named = (label: Label, number: number): string =>
  `${label.name === null ? unit(label) : `${label.name.charAt(0).toUpperCase()}${label.name.slice(1)} ${unit(label).toLowerCase()}`} ${number}`;

/** Statements that may stand between two numbered rows and use up numbers of their own. */
const usesNumbers: ReadonlySet<Statement['type']> = new Set([
  'repeatRows',
  'plain',
  'shape',
  'until',
  'edgeRows',
  'refer',
  'atSameTime',
  'andSoOn',
  'unread',
  'sizeBlock',
]);

/** The labels of one section or size block that count on from each other, by name. */
function seriesOf(statements: readonly Statement[]): Printed[][] {
  const series = new Map<string, Printed[]>();
  let open = false;
  let at = -1;
  for (const statement of statements) {
    if (statement.type !== 'row' || statement.label === null) {
      if (usesNumbers.has(statement.type) || statement.type === 'row') open = true;
      continue;
    }
    const { label } = statement;
    // Rows built from a table carry the label of the row they follow.
    if (label.numbers.length === 0 || label.span.start <= at) {
      if (label.numbers.length === 0) open = true;
      continue;
    }
    at = label.span.start;
    const name = label.name ?? '';
    const list = series.get(name) ?? [];
    list.push({
      label,
      first: label.numbers[0] as number,
      last: label.lastBySize === null ? (label.numbers.at(-1) as number) : Number.NaN,
      open: (name === '' || /short/.test(name)) && open,
    });
    series.set(name, list);
    open = false;
  }
  return [...series.values()];
}

/** Numbers that "and all WS rows" gives. */
function filled(labels: readonly Printed[], number: number): boolean {
  return labels.some(
    ({ label, first }) =>
      label.andAll !== null &&
      (label.andAll === 'even' ? number % 2 === 0 : label.andAll === 'odd' ? number % 2 === 1 : (number - first) % 2 === 0),
  );
}

function editFor(context: Context, label: Label, number: number): Edit | null {
  const span = label.numberSpan;
  if (span === null || label.numbers.length !== 1) return null;
  return /^\d+$/.test(context.manuscript.source.slice(span.start, span.end)) ? { span, text: String(number) } : null;
}

function slipsOf(context: Context, list: readonly Printed[], section: number): Slip[] {
  const slips: Slip[] = [];
  // A label whose own length is in dispute is told there.
  const disputed = new Set(
    rootsOf(context, 'rangeDiffers').map((root) => (root.met.node?.type === 'row' ? root.met.node.label?.span.start : undefined)),
  );
  let last: number | null = null;
  let run = new Set<number>();
  list.forEach((each, index) => {
    const { label, first } = each;
    const after = list[index + 1];
    const all = each.label.andAll !== null;
    if (last === null && index === 0 && after?.first === first && first > 1 && !after.open) {
      slips.push({
        span: label.numberSpan ?? label.span,
        label,
        section,
        message: `${named(label, first)} stands twice, and there is no ${first - 1}: the first is probably ${first - 1}.`,
        missing: [first - 1],
        fix: editFor(context, label, first - 1),
      });
      last = first - 1;
      return;
    }
    if (last === null || Number.isNaN(last) || (first === 1 && (last !== 1 || list[index - 1]?.label.unit !== label.unit))) run = new Set();
    else if (first !== last + 1 && (!all || run.has(first))) {
      let next: number = last + 1;
      while (filled(list, next) && next - last < 3) next += 1;
      const between = Array.from({ length: Math.max(0, first - next) }, (_, step) => next + step).filter((number) => !filled(list, number));
      const slip = (message: string, missing: readonly number[], fix: Edit | null): void => {
        slips.push({ span: label.numberSpan ?? label.span, label, section, message, missing, fix });
      };
      let then = next + 1;
      while (filled(list, then) && then - next < 3) then += 1;
      const steps = after !== undefined && !after.open && after.first === then;
      if (first > next && between.length > 0 && !each.open && !disputed.has(list[index - 1]?.label.span.start)) {
        if (steps || (after !== undefined && after.first < first && after.first > last)) {
          slip(
            `${named(label, first)} stands between ${named(label, last)} and ${named(label, after?.first ?? 0)}; ${next} is probably meant.`,
            [next],
            steps ? editFor(context, label, next) : null,
          );
          last = next;
          run.add(next);
          return;
        }
        slip(
          `After ${named(label, last)} comes ${named(label, first)}: ${between.length === 1 ? `${between[0]} is` : `${between.join(', ')} are`} missing. Is a row lost, or a number wrong?`,
          between,
          null,
        );
      } else if (first <= last && run.has(first) && !(first === 1 && each.open)) {
        slip(
          `${named(label, first)} stands twice${steps ? `, and there is no ${next}: the second is probably ${next}` : `: it comes again after ${named(label, last)}`}.`,
          steps || after === undefined ? [next] : [],
          steps ? editFor(context, label, next) : null,
        );
        if (steps) {
          last = next;
          run.add(next);
          return;
        }
        if (after === undefined || after.first === last + 1) return;
      }
    }
    for (const number of label.numbers) run.add(number);
    last = each.last;
  });
  return slips;
}

/** What may stand between a cast-on and its first row. */
const beforeRows: ReadonlySet<Statement['type']> = new Set(['castOn', 'change', 'join', 'remark', 'stated', 'declare', 'marker']);

/** "Cast on 20 sts. Row 2: …": the numbering begins with 2, and nothing has been worked that could be Row 1. */
function startsLate(context: Context, index: number): Slip[] {
  const { sections } = context.pattern;
  const section = sections[index];
  if (section === undefined) return [];
  const at = section.statements.findIndex((statement) => !beforeRows.has(statement.type));
  const row = section.statements[at];
  const castOn = section.statements.slice(0, Math.max(0, at)).some((statement) => statement.type === 'castOn');
  if (!castOn || row?.type !== 'row' || row.label === null) return [];
  const { label } = row;
  if (label.name !== null || label.andAll !== null || label.numbers[0] !== 2 || label.numbers.length !== 1) return [];
  const told = context.manuscript.source.slice(section.span.start, label.span.start);
  if (/\b(?:row|rnd|round)s?\s*1\b|\b(?:1st|first)\s+(?:row|rnd|round)\b|\bcounts? as\b/i.test(told)) return [];
  const again = section.statements[at + 1];
  if (again?.type === 'row' && again.label?.numbers[0] === 2) return [];
  return [
    {
      span: label.numberSpan ?? label.span,
      label,
      section: index,
      message: `The numbering begins with ${named(label, 2)}, straight after the cast-on. Is a row lost, or is this ${named(label, 1)}?`,
      missing: [1],
      fix: null,
    },
  ];
}

const slipsIn = once((context: Context): readonly Slip[] => {
  const slips = context.pattern.sections.flatMap((section, index) => {
    const lists = [
      section.statements,
      ...section.statements.flatMap((statement) =>
        statement.type === 'sizeBlock' && statement.children.length > 0 ? [statement.children] : [],
      ),
    ];
    return [
      ...startsLate(context, index),
      ...lists.flatMap((statements) => seriesOf(statements).flatMap((list) => slipsOf(context, list, index))),
    ];
  });
  return slips;
});

/** Numbers that no row has because a label carries another: a row that calls them suffers only from that. */
export function missingNumbers(context: Context): ReadonlySet<number> {
  return new Set(slipsIn(context).flatMap((slip) => slip.missing));
}

export const rowNumbers: Rule = {
  id: 'row-numbers',
  level: 'query',
  title: 'Row numbers run without gap or double',
  meaning: 'Two rows carry the same number, or a number is left out.',
  reason: 'References such as “rep Rows 3–6” then mean something else, and the knitter wonders which row she has lost.',
  needsReplay: false,
  wrong: {
    draft:
      '# Sprat Square\n\nCO 20 sts.\n\nRow 1 (RS): Knit.\nRow 2: Purl.\nRow 3: *K1, p1; rep from * to end.\nRow 3: Purl.\nRow 5: Knit.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Sprat Square\n\nCO 20 sts.\n\nRow 1 (RS): Knit.\nRow 2: Purl.\nRow 3: *K1, p1; rep from * to end.\nRow 4: Purl.\nRow 5: Knit.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] =>
    slipsIn(context).map(({ span, label, section, message, fix }) => ({
      rule: rowNumbers.id,
      level: 'query',
      span,
      section: sectionTitle(context, section),
      row: named(label, label.numbers[0] ?? 0),
      sizes: [],
      message,
      stated: null,
      replayed: null,
      fix,
    })),
};
