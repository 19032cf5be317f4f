import { definitionsOf } from '../src/pattern/definitions.ts';
import type { Finding, Rule } from './rule.ts';
import { counted } from './telling.ts';

export const cableDefinition: Rule = {
  id: 'cable-definition',
  level: 'error',
  title: 'The definition of a cable adds up, and to the width in its name',
  meaning:
    'More or fewer stitches come off the cable needle than were put on it, or the crossing is defined over another number of stitches than its name says.',
  reason: 'The knitter ends with stitches on the cable needle, or the crossing eats into its neighbours.',
  needsReplay: false,
  wrong: {
    draft:
      '# Hawser Strip\n\n## Abbreviations\n\n- C4F: slip 2 sts to cable needle and hold in front, k2, then k3 from cable needle\n- k: knit\n- p: purl\n- cn: cable needle\n\n## Strip\n\nCO 8 sts.\n\nRow 1 (RS): P2, C4F, p2.\nRow 2: K2, p4, k2.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Hawser Strip\n\nCable needle.\n\n## Abbreviations\n\n- BO: bind off\n- C4F: slip 2 sts to cable needle and hold in front, k2, then k2 from cable needle\n- CO: cast on\n- k: knit\n- p: purl\n- RS: right side\n- st(s): stitch(es)\n\n## Strip\n\nCO 8 sts.\n\nRow 1 (RS): P2, C4F, p2.\nRow 2: K2, p4, k2.\n\nBO all sts.\n',
  },
  check: ({ pattern }): readonly Finding[] =>
    definitionsOf(pattern).flatMap(({ abbreviation, definition, common }): Finding[] => {
      const cable = definition?.cable;
      if (definition === null || cable === undefined) return [];
      const name = abbreviation.term;
      const base = {
        rule: cableDefinition.id,
        span: abbreviation.meaningSpan,
        section: null,
        row: null,
        sizes: [],
        stated: null,
        replayed: null,
        fix: null,
      };
      if (!definition.certain && cable.slipped !== cable.from && cable.from > 0) {
        return [
          {
            ...base,
            level: 'error',
            message: `${name}: ${counted(cable.slipped)} ${cable.slipped === 1 ? 'goes' : 'go'} onto the cable needle, but ${cable.from} ${cable.from === 1 ? 'is' : 'are'} worked from it. One of the two numbers is wrong.`,
          },
        ];
      }
      const width = cable.slipped + cable.then;
      if (definition.certain && common?.certain && common.entry.kind === 'cable' && common.takes !== width) {
        return [
          {
            ...base,
            level: 'query',
            message: `${name} is defined over ${counted(width)} (${cable.slipped} on the cable needle and ${cable.then} worked past them), but its name says ${common.takes}. Which is meant?`,
          },
        ];
      }
      if (
        definition.certain &&
        common?.certain &&
        common.entry.kind === 'cable' &&
        common.entry.lean !== undefined &&
        definition.entry.lean !== undefined &&
        common.entry.lean !== definition.entry.lean
      ) {
        return [
          {
            ...base,
            level: 'query',
            message: `${name} usually crosses to the ${common.entry.lean}; held at the ${cable.hold} as defined here it crosses to the ${definition.entry.lean}. Is front or back exchanged?`,
          },
        ];
      }
      return [];
    }),
};
