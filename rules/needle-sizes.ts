import { found } from './facts/blocks.ts';
import { figure, listed } from './facts/wording.ts';
import type { Finding, Rule } from './rule.ts';
import { checkNeedlePair, needleSizes } from './tables/needles.ts';

const systems = [
  { system: 'us', name: 'US' },
  { system: 'uk', name: 'UK' },
] as const;

/** What charts print for a number, in millimetres: "UK 9 is 3.75 mm". */
function sizesOf(system: 'us' | 'uk', label: string): string | null {
  const sizes = needleSizes.filter((size) => size[system] === label).map((size) => `${figure(size.mm)} mm`);
  return sizes.length === 0 ? null : listed(sizes, 'or');
}

export const needleSizesRule: Rule = {
  id: 'needle-sizes',
  level: 'error',
  title: 'Metric, US and UK needle sizes name the same needle',
  meaning: 'Two sizes printed for one needle belong to two different needles in the published conversion charts.',
  reason:
    'A knitter takes whichever number is printed on the needles at hand; with the wrong one the whole piece comes out in another size.',
  needsReplay: false,
  wrong: {
    draft: `# Kelp Square

Needles: 4.5 mm (US 6) needles

Cast on 20 sts.

Row 1: K20.
`,
  },
  right: {
    draft: `# Kelp Square

Needles: 4.5 mm (US 7) needles

Cast on 20 sts.

Row 1: K20.
`,
  },
  check(context): readonly Finding[] {
    const findings: Finding[] = [];
    const said = new Set<string>();
    for (const needle of context.pattern.front.needles) {
      if (needle.mm === null) continue;
      const place = `${needle.span.start}`;
      const parts: string[] = [];
      let sure = true;
      for (const { system, name } of systems) {
        const label = needle[system];
        if (label === null) continue;
        const check = checkNeedlePair(needle.mm, system, label);
        if (check.verdict !== 'no chart') continue;
        sure &&= check.certainty.sure === 'published';
        const own = sizesOf(system, label);
        parts.push(`${figure(needle.mm)} mm is ${name} ${check.expected}${own === null ? '' : `, and ${name} ${label} is ${own}`}`);
      }
      if (parts.length === 0 || said.has(place)) continue;
      said.add(place);
      findings.push(
        found(context, needleSizesRule, needle.span, `These sizes are not one needle: ${parts.join('; ')}. Which one is meant?`, {
          level: sure ? 'error' : 'query',
        }),
      );
    }
    return findings;
  },
};
