import { findingOf, type Root, rootsOf, telling } from './observed.ts';
import type { Context, Finding, Rule } from './rule.ts';
import { counted, excerpt } from './telling.ts';

function message(context: Context, root: Root): string {
  const { met } = root;
  const { head, n, one } = telling(context, met);
  const words = excerpt(context, met.span);
  const name = met.words['marker'] ? ` ${met.words['marker']}` : '';
  if (met.kind === 'markerNotThere')
    return `${head}${words} speaks of a marker, and none lies ahead in this row. Place it in a row before, or name the place otherwise.`;
  const ahead = one('ahead');
  if (ahead !== null && ahead > 0)
    return `${head}${words} comes ${counted(n('ahead'))} too early: so many still lie before the marker${name}.`;
  return `${head}${words} comes where no marker is. Check what is worked before it, and where markers are placed.`;
}

function say(context: Context, root: Root): Finding {
  return findingOf(context, root, { rule: markerPlace.id, level: 'error', message: message(context, root) });
}

export const markerPlace: Rule = {
  id: 'marker-place',
  level: 'error',
  title: 'A marker is where the row meets it',
  meaning:
    'The row slips a marker, or works to one, and no marker is at that place: it was never placed, or a stitch still lies before it.',
  reason: 'The knitter meets the marker in the middle of a stitch, and the shaping line wanders.',
  needsReplay: true,
  wrong: {
    draft:
      '# Mast Sleeve\n\nCO 30 sts.\n\nRow 1 (RS): K15, pm, k15.\nRow 2: Purl.\nRow 3: K to 3 sts before m, k2tog, sm, k1, ssk, k to end.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Mast Sleeve\n\nCO 30 sts.\n\nRow 1 (RS): K15, pm, k15.\nRow 2: Purl.\nRow 3: K to 3 sts before m, k2tog, k1, sm, k1, ssk, k to end.\n\nBO all sts.\n',
  },
  check: (context) => rootsOf(context, 'markerMissing', 'markerNotThere', 'markerTooNear').map((root) => say(context, root)),
};
