/** Gauge as stitches and rows to one centimetre or inch, in the unit the measure is printed in. */
import type { Gauge, Measure } from '../../src/pattern/front/front-matter.ts';
import { cmPerInch, tradeCmPerInch } from '../tables/units.ts';

export interface Density {
  /** Stitches (or rows) to one unit of the measure. */
  readonly per: number;
  /** "22 sts to 10 cm". */
  readonly words: string;
}

/**
 * Densities under which a measure may have been worked out: by the gauge in the measure's own unit, or, where it has none, converted
 * at either ratio. The first is the one to print.
 */
export function densities(gauge: Gauge, of: 'stitches' | 'rows', unit: Measure['unit']): readonly Density[] {
  const amount = gauge[of];
  if (amount === null) return [];
  const name = of === 'stitches' ? 'sts' : (gauge.unit ?? 'rows') === 'rounds' ? 'rnds' : 'rows';
  const found: Density[] = [];
  const ownUnit = gauge.over.some((over) => (over.unit === 'in' ? 'in' : 'cm') === unit);
  for (const over of gauge.over) {
    const length = over.values[0];
    if (length === null || length === undefined || length === 0 || (over.unit !== 'cm' && over.unit !== 'in' && over.unit !== 'mm'))
      continue;
    const words = `${amount} ${name} to ${length} ${over.unit}`;
    const span = over.unit === 'mm' ? length / 10 : length;
    const own = over.unit === 'in' ? 'in' : 'cm';
    if (own === unit) found.push({ per: amount / span, words });
    else if (ownUnit) continue;
    else if (unit === 'in') found.push({ per: (amount / span) * tradeCmPerInch, words }, { per: (amount / span) * cmPerInch, words });
    else if (unit === 'cm') found.push({ per: amount / span / tradeCmPerInch, words }, { per: amount / span / cmPerInch, words });
  }
  return found;
}
