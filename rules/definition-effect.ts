import { stitchUse } from '../grammar/lexicon/use.ts';
import { definitionsOf } from '../src/pattern/definitions.ts';
import type { Finding, Rule } from './rule.ts';
import { counted } from './telling.ts';

const told = (net: number): string => (net === 0 ? 'keeps the count' : net < 0 ? `takes away ${counted(-net)}` : `adds ${counted(net)}`);

const numbers: readonly string[] = ['no', 'one', 'two', 'three', 'four'];

/** "(1 stitch increased)", "2 sts decreased, leans right": what the words say of the count; null where they say nothing. */
function remarkIn(meaning: string): number | null {
  const match = /\b([1-4]|one|two|three|four) (?:sts?|stitch(?:es)?) (inc|dec)(?:reased|['’]?d)?\b/i.exec(meaning);
  if (match === null) return null;
  const word = match[1]!.toLowerCase();
  const number = numbers.includes(word) ? numbers.indexOf(word) : Number(word);
  return match[2]!.toLowerCase() === 'inc' ? number : -number;
}

export const definitionEffect: Rule = {
  id: 'definition-effect',
  level: 'query',
  title: 'A definition does what it says it does',
  meaning:
    'The words of a definition take away or add another number of stitches than the remark behind them, or than the name commonly means.',
  reason: 'Every row that uses the stitch is then out by one.',
  needsReplay: false,
  wrong: {
    draft:
      '# Lens Strip\n\n## Abbreviations\n\n- BO: bind off\n- CO: cast on\n- cdd: slip 2 sts together, k1, pass 2 slipped sts over (1 st decreased)\n- k: knit\n- RS: right side\n- st(s): stitch(es)\n\n## Strip\n\nCO 9 sts.\n\nRow 1 (RS): K3, cdd, k3. 7 sts.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Lens Strip\n\n## Abbreviations\n\n- BO: bind off\n- CO: cast on\n- cdd: slip 2 sts together, k1, pass 2 slipped sts over (2 sts decreased)\n- k: knit\n- RS: right side\n- st(s): stitch(es)\n\n## Strip\n\nCO 9 sts.\n\nRow 1 (RS): K3, cdd, k3. 7 sts.\n\nBO all sts.\n',
  },
  check: ({ pattern }): readonly Finding[] =>
    definitionsOf(pattern).flatMap(({ abbreviation, definition, common }): Finding[] => {
      const base = {
        rule: definitionEffect.id,
        level: 'query' as const,
        span: abbreviation.meaningSpan,
        section: null,
        row: null,
        sizes: [],
        stated: null,
        replayed: null,
        fix: null,
      };
      if (definition === null || !definition.certain || definition.cable !== undefined || definition.declaredNet === null) {
        // Words that cannot be worked by themselves ("make one, leaning left") still carry their remark.
        const remark = remarkIn(abbreviation.meaning);
        const usual = common?.certain === true ? common.makes - common.takes : null;
        if (remark !== null && usual !== null && usual !== remark && Math.sign(usual) === Math.sign(remark))
          return [
            {
              ...base,
              message: `${abbreviation.term}: the remark says it ${told(remark)}, but the name commonly ${told(usual)}. Which is right?`,
            },
          ];
      }
      if (definition === null || !definition.certain || definition.cable !== undefined) return [];
      const own = stitchUse(definition.entry);
      const net = own.makes - own.takes;
      if (definition.declaredNet !== null && definition.declaredNet !== net) {
        return [
          {
            ...base,
            message: `${abbreviation.term}: worked as told it ${told(net)}, but the remark says it ${told(definition.declaredNet)}. Which is right?`,
          },
        ];
      }
      if (
        common?.certain &&
        (common.entry.kind === 'decrease' || common.entry.kind === 'doubleDecrease') &&
        net !== 0 &&
        common.makes - common.takes !== net
      ) {
        return [
          {
            ...base,
            message: `${abbreviation.term}: worked as told it ${told(net)}, but the name commonly ${told(common.makes - common.takes)}. Is a step missing?`,
          },
        ];
      }
      return [];
    }),
};
