import type { Entry } from '../src/replay/replay.ts';
import { found } from './facts/blocks.ts';
import type { Context, Finding, Rule } from './rule.ts';
import { inSizes, lineOf, perSize } from './telling.ts';

interface Side {
  readonly title: string;
  readonly rows: readonly number[];
  readonly at: Entry;
}

const body = /\b(?:back|front)\b/i;
const measured = ({ node }: Entry): boolean =>
  node.type === 'refer' ||
  (node.type === 'until' && node.goal.kind !== 'count' && node.goal.kind !== 'rows') ||
  (node.type === 'repeatRows' && (node.until?.kind === 'measure' || node.until?.kind === 'matches' || node.until?.kind === 'loose'));

/** Rows from the cast-on to the first stitches bound off for the armhole; null where any of them are not told as rows. */
function toArmhole(context: Context, piece: number, title: string): Side | null {
  const { pattern, replay } = context;
  const rows = pattern.sizes.map(() => 0);
  let started = false;
  for (const entry of replay.entries) {
    if (pattern.sections[entry.section]?.piece !== piece) continue;
    if (entry.node.type === 'castOn' && !started) {
      started = true;
      continue;
    }
    if (!started || measured(entry)) return null;
    const first = entry.node.type === 'row' ? entry.node.children.find((step) => step.type !== 'change') : undefined;
    const bound = (entry.node.type === 'edgeRows' && entry.node.change === 'bindOff') || first?.type === 'bindOff';
    if (bound) return { title, rows, at: entry };
    if (entry.unit === 'step') continue;
    for (const size of rows.keys())
      if (entry.after[size] !== null || entry.before[size] !== null) rows[size] = (rows[size] ?? 0) + entry.times;
  }
  return null;
}

export const rowsOfPieces: Rule = {
  id: 'rows-of-pieces',
  level: 'query',
  title: 'Pieces that are sewn together have the same rows to the armhole',
  meaning: 'Back and fronts are told row by row, and one of them has more rows below its armhole than the other.',
  reason: 'The side seam has to be eased in, or puckers.',
  needsReplay: true,
  wrong: {
    draft:
      '# Quay Vest\n\n## Back\n\nCO 60 sts.\n\nKnit 40 rows.\n\nBO 4 sts at beg of next 2 rows. 52 sts.\n\nBO all sts.\n\n## Front\n\nCO 60 sts.\n\nKnit 44 rows.\n\nBO 4 sts at beg of next 2 rows. 52 sts.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Quay Vest\n\n## Back\n\nCO 60 sts.\n\nKnit 40 rows.\n\nBO 4 sts at beg of next 2 rows. 52 sts.\n\nBO all sts.\n\n## Front\n\nCO 60 sts.\n\nKnit 40 rows.\n\nBO 4 sts at beg of next 2 rows. 52 sts.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] => {
    const { pattern } = context;
    if (pattern.reading.notRead.length > 0) return [];
    const sides = pattern.sections.flatMap((section): Side[] => {
      if (section.kind !== 'piece' || section.piece === null || !body.test(section.title)) return [];
      const side = toArmhole(context, section.piece, section.title);
      return side === null ? [] : [side];
    });
    const [one, ...others] = sides;
    if (one === undefined) return [];
    return others.flatMap((two): Finding[] => {
      // An armhole that begins one row later mirrors one that begins on the other side.
      const off = pattern.sizes.map((_, size) => size).filter((size) => Math.abs((one.rows[size] ?? 0) - (two.rows[size] ?? 0)) > 1);
      if (off.length === 0) return [];
      const rows = (side: Side): string =>
        perSize(
          context,
          off,
          off.map((size) => side.rows[size] ?? null),
        );
      return [
        found(
          context,
          rowsOfPieces,
          two.at.span,
          `${inSizes(context, off)}${two.title} has ${rows(two)} rows to here, and ${one.title} ${rows(one)} to the same place (line ${lineOf(context, one.at.span)}). Are they sewn together?`.replace(
            /^./,
            (letter) => letter.toUpperCase(),
          ),
          { sizes: pattern.sizes.length > 1 ? off : [], also: [one.at.span] },
        ),
      ];
    });
  },
};
