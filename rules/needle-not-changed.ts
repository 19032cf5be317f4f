import { found, sectionAt } from './facts/blocks.ts';
import { listedSizes, type NeedleUse, needleUses } from './facts/used-needles.ts';
import { figure, listed } from './facts/wording.ts';
import type { Context, Finding, Rule } from './rule.ts';

/** Pieces that are made of the main fabric. Bands and trims stay on the needle they begin on. */
const mainPiece = /\b(?:backs?|fronts?|sleeves?|body|leg|hand|foot|sides?)\b|^\(/i;
const trim = /\b(?:bands?|neckband|borders?|edging|collar|cord|hood|pockets?|strap|trim|lining|cuff)s?\b/i;

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

/** Words that set up new stitches or take up others, so that the needle in hand need not be the one of before. */
const anew = /\b(?:CO|cast on|pick(?:ing)? up|knit up|place|slip|transfer|put|work(?:ed)? (?:as|the same)|as (?:given )?for|make)\b/i;
/** A change of the kind or the length of needle, whatever its size. */
const otherKind = /circ|dpn|double|straight|\bcm\b|\bin\b|inch|["″]|length|long|short/i;

/** "smaller circular" of "Change to smaller circular needle": which needle, and of what kind. */
const needleWords = (words: string): string =>
  (/\b((?:smaller|larger)\b[^,.;]*?)\s*\bneedles?\b/i.exec(words)?.[1] ?? words).toLowerCase().trim();

/** "Change to smaller needle" with the smaller needle in hand: the change to the larger one before it is missing. */
function changesToTheSame(context: Context): readonly Finding[] {
  const uses = needleUses(context);
  const sizes = listedSizes(context);
  if (sizes.length !== 2) return [];
  const source = context.manuscript.source;
  return uses.flatMap((use, at) => {
    const last = uses[at - 1];
    if (!use.change || last === undefined || last.mm !== use.mm) return [];
    // A section that begins with stitches of its own says nothing of the needle before it.
    const section = use.section === last.section ? null : sectionAt(context.pattern, use.span.start);
    const opening = section === null ? '' : source.slice(section.span.start, Math.min(use.span.start, section.span.start + 120));
    const words = source.slice(use.span.start, use.span.end + 24).split(/[.;\n]/)[0]!;
    const before = source.slice(last.span.start, last.span.end + 24).split(/[.,;\n]/)[0] ?? '';
    const alike = needleWords(words) === needleWords(before);
    if (anew.test(opening) || (otherKind.test(words) && !alike)) return [];
    if (/\b(?:needles?|dpns?|circulars?)\b/i.test(source.slice(last.span.end + 24, use.span.start))) return [];
    const other = sizes.find((size) => size !== use.mm)!;
    const place = sectionAt(context.pattern, last.span.start)?.title ?? '';
    const message = `The ${figure(use.mm)} mm needles are in hand since ${place === '' ? 'the last change' : `"${place}"`}, and the words change to them again. Is "Change to ${figure(other)} mm needles" missing in between?`;
    return [found(context, needleNotChanged, last.span, message, { also: [use.span] })];
  });
}

/** The gauge is told on one needle; only bands, cords and the like use it, and the rest is begun on another. */
function gaugeNeedleIdle(context: Context): readonly Finding[] {
  const [gauge, more] = context.pattern.front.gauges;
  const sizes = listedSizes(context);
  if (gauge === undefined || more !== undefined || gauge.needle === null || sizes.length !== 2) return [];
  const around = context.manuscript.source.slice(gauge.span.start, gauge.span.end + 60).split('\n')[0]!;
  const on = sizes.filter((size) => around.includes(`${figure(size)} mm`) || around.includes(`${String(size).replace('.', ',')} mm`));
  const mm = /\blarger\b/i.test(gauge.needle) ? sizes[1]! : on.length === 1 ? on[0]! : null;
  if (mm === null) return [];
  const inMain = needleUses(context).filter((use) => !trim.test(context.pattern.sections[use.section]?.title ?? ''));
  const [first] = inMain;
  // Held stitches may be taken up on the gauge needle later: that is no change to it.
  const source = context.manuscript.source;
  const takenUp = (use: NeedleUse): boolean =>
    !use.change && /\b(?:return|place|slip|put)\b[^.]*$/i.test(source.slice(Math.max(0, use.span.start - 80), use.span.start));
  if (
    first === undefined ||
    first.change ||
    first.mm === mm ||
    inMain.some((use) => use.mm === mm && !takenUp(use)) ||
    !needleUses(context).some((use) => use.mm === mm)
  )
    return [];
  const message = `The gauge is told on ${figure(mm)} mm needles; the main part begins on ${figure(first.mm)} mm and never changes to them. Is "Change to ${figure(mm)} mm needles" missing?`;
  return [found(context, needleNotChanged, first.span, message)];
}

export const needleNotChanged: Rule = {
  id: 'needle-not-changed',
  level: 'query',
  title: 'The change to the main needles is told in every piece',
  meaning:
    'A piece begins on one needle size and never changes, though its sister pieces or the gauge ask for it, or changes to the needle it is on.',
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
    const alone = all.flatMap((path) => {
      const [start] = path.uses;
      // A piece whose first words of needles are a change has gone on with those in hand.
      if (start === undefined || start.change || path.uses.some((use) => use.mm !== start.mm)) return [];
      const sisters = all.filter((other) => other.uses[0]?.mm === start.mm && other.uses.some((use) => use.change && use.mm !== start.mm));
      const to = sisters[0]?.uses.find((use) => use.mm !== start.mm)?.mm;
      if (to === undefined) return [];
      const names = listed(sisters.map((one) => (one.title.startsWith('(') ? 'another piece' : one.title)));
      const message = `${path.title} begins on ${figure(start.mm)} mm needles and never changes; ${names} ${sisters.length === 1 ? 'changes' : 'change'} to ${figure(to)} mm. Is "Change to ${figure(to)} mm needles" missing?`;
      return [found(context, needleNotChanged, start.span, message)];
    });
    if (alone.length > 0) return alone;
    const again = changesToTheSame(context);
    return again.length > 0 ? again.slice(0, 1) : gaugeNeedleIdle(context);
  },
};
