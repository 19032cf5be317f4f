import { found } from './facts/blocks.ts';
import { type NeedleUse, needleUses } from './facts/used-needles.ts';
import { figure, listed } from './facts/wording.ts';
import type { Context, Finding, Rule } from './rule.ts';

/** Pieces that are made of the main fabric. Bands and trims stay on the needle they begin on. */
const mainPiece = /\b(?:backs?|fronts?|sleeves?|body|leg|hand|foot|sides?)\b/i;
const trim = /\b(?:bands?|neckband|borders?|edging|collar|cord|hood|pockets?|strap|trim|lining|cuffs?)\b/i;

interface Path {
  readonly piece: number;
  readonly title: string;
  readonly uses: readonly NeedleUse[];
}

function paths(context: Context): readonly Path[] {
  const uses = needleUses(context);
  const pieces = [...new Set(uses.flatMap((use) => (use.piece === null ? [] : [use.piece])))];
  return pieces.flatMap((piece) => {
    const title = context.pattern.sections.find((section) => section.piece === piece && section.kind === 'piece')?.title ?? '';
    return mainPiece.test(title) && !trim.test(title) ? [{ piece, title, uses: uses.filter((use) => use.piece === piece) }] : [];
  });
}

export const needleNotChanged: Rule = {
  id: 'needle-not-changed',
  level: 'query',
  title: 'The change to the main needles is told in every piece',
  meaning: 'A piece begins on one needle size and never changes, though its sister pieces begin alike and do.',
  reason: 'The whole piece is knitted on the needles of its border and does not fit the others.',
  needsReplay: false,
  wrong: {
    draft: `# Kelp Vest

Needles: 3 mm and 4 mm needles

## Back

With 3 mm needles, cast on 40 sts. Knit 4 rows.

Change to 4 mm needles. Knit 40 rows. Cast off.

## Front

With 3 mm needles, cast on 40 sts. Knit 4 rows.

Knit 40 rows. Cast off.
`,
  },
  right: {
    draft: `# Kelp Vest

Needles: 3 mm and 4 mm needles

## Back

With 3 mm needles, cast on 40 sts. Knit 4 rows.

Change to 4 mm needles. Knit 40 rows. Cast off.

## Front

With 3 mm needles, cast on 40 sts. Knit 4 rows.

Change to 4 mm needles. Knit 40 rows. Cast off.
`,
  },
  check(context): readonly Finding[] {
    const all = paths(context);
    return all.flatMap((path) => {
      const [start] = path.uses;
      if (start === undefined || path.uses.some((use) => use.mm !== start.mm)) return [];
      const sisters = all.filter((other) => other.uses[0]?.mm === start.mm && other.uses.some((use) => use.change && use.mm !== start.mm));
      const to = sisters[0]?.uses.find((use) => use.mm !== start.mm)?.mm;
      if (to === undefined) return [];
      const names = listed(sisters.map((one) => one.title));
      const message = `${path.title} begins on ${figure(start.mm)} mm needles and never changes; ${names} ${sisters.length === 1 ? 'changes' : 'change'} to ${figure(to)} mm. Is "Change to ${figure(to)} mm needles" missing?`;
      return [found(context, needleNotChanged, start.span, message)];
    });
  },
};
