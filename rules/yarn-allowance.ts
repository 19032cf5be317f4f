import { found } from './facts/blocks.ts';
import { sentencesOf } from './facts/child.ts';
import type { Finding, Rule } from './rule.ts';

const used =
  /\b(?:sample|prototype|model|shown)\b[^.;]{0,60}?\b(?:took|used|needed|weighs?|weighed|required)\s+(?:about\s+|approx\.?\s+)?(\d{2,5})\s?(m|metres|meters|yd|yds|yards|g|grams)\b/i;
const unitOf = (words: string): 'm' | 'yd' | 'g' => (/^y/i.test(words) ? 'yd' : /^g/i.test(words) ? 'g' : 'm');
/** Less than this over the sample is called short; ten to fifteen in a hundred are usual. Common practice, no source. */
const least = 1.05;

export const yarnAllowance: Rule = {
  id: 'yarn-allowance',
  level: 'query',
  title: 'The yarn asked for leaves something over the sample',
  meaning: 'The draft says what the sample took, and asks for hardly more.',
  reason: 'Nobody knits at exactly the same gauge; the last row is when the yarn runs out.',
  needsReplay: false,
  wrong: {
    draft: '# Kelp Wrap\n\nYarn: 415 m of fingering weight yarn\n\nThe sample took 412 m.\n\nCO 30 sts.\n\nRow 1: Knit.\n',
  },
  right: {
    draft: '# Kelp Wrap\n\nYarn: 460 m of fingering weight yarn\n\nThe sample took 412 m.\n\nCO 30 sts.\n\nRow 1: Knit.\n',
  },
  check: (context): readonly Finding[] => {
    for (const one of sentencesOf(context)) {
      const match = used.exec(one.text);
      if (match === null) continue;
      const [took, unit] = [Number(match[1]), unitOf(match[2] ?? 'm')];
      const totals = context.pattern.front.yarns
        .flatMap((yarn) => yarn.total)
        .filter((measure) => measure.unit === unit && !(one.span.start <= measure.span.start && measure.span.end <= one.span.end))
        .flatMap((measure) => measure.values.filter((value) => value !== null));
      const most = Math.max(0, ...totals);
      if (totals.length === 0 || context.pattern.front.yarns.length > 1 || most >= took * least) continue;
      const start = one.span.start + match.index;
      return [
        found(
          context,
          yarnAllowance,
          { start, end: start + match[0].length },
          `The sample took ${took} ${unit} and ${most} ${unit} are asked for${most < took ? ', which is less' : `: ${most - took} ${unit} to spare`}. Is an allowance of about a tenth (${Math.round(took * 1.1)} ${unit}) meant?`,
        ),
      ];
    }
    return [];
  },
};
