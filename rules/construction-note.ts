import { found, stretches } from './facts/blocks.ts';
import { sentencesOf } from './facts/child.ts';
import type { Context, Finding, Rule } from './rule.ts';

type End = 'top' | 'bottom' | 'toe' | 'cuff';

/** Where the work begins, as a note on the construction says it. */
const notes: readonly (readonly [End, RegExp])[] = [
  ['toe', /\b(?:from the toes? up|toe[- ]up|(?:begins?|starts?|started|begun) (?:at|from) the toes?)\b/i],
  ['cuff', /\b(?:cuff[- ]down|from the cuffs? down(?:wards?)?)\b/i],
  [
    'bottom',
    /\b(?:bottom[- ]up|(?:from|at) the (?:hem|bottom|lower edge|lower border|welt|brim)(?: edge)? (?:up|upwards?)|(?:begins?|starts?|started|begun) (?:at|from) the (?:hem|bottom|lower edge|welt))\b/i,
  ],
  [
    'top',
    /\b(?:top[- ]down|neck[- ]down|from the (?:neck|neckline|neckband|top|crown|collar|shoulders?) (?:down|downwards?)|(?:begins?|starts?|started|begun) (?:at|from) the (?:neck|neckline|neckband|collar|crown))\b/i,
  ],
];

/** Words of the heading over the first cast-on. */
const heads: readonly (readonly [End, RegExp])[] = [
  ['toe', /\btoes?\b/i],
  ['cuff', /\b(?:cuff|leg)\b/i],
  ['bottom', /\b(?:hem|welt|lower (?:edge|border|body)|brim|skirt)\b/i],
  ['top', /\b(?:neckband|neckline|neck edge|neck|collar|yoke|crown)\b/i],
];

const opposite: Readonly<Record<End, End>> = { top: 'bottom', bottom: 'top', toe: 'cuff', cuff: 'toe' };

/** Of a part only: "the sleeves are worked from the top down". */
const ofAPart = /\b(?:sleeves?|thumbs?|borders?|edgings?|straps?|pockets?|hoods?|flaps?|motifs?|charts?|read|bands?|fingers?|gussets?)\b/i;

const endOf = (table: readonly (readonly [End, RegExp])[], text: string): End | null =>
  table.find(([, words]) => words.test(text))?.[0] ?? null;

function firstHeading(context: Context): { title: string; line: number } | null {
  const first = context.replay.entries.find((entry) => entry.node.type === 'castOn');
  const section = first === undefined ? undefined : context.pattern.sections[first.section];
  return section === undefined || section.title === '' || section.title.split(' ').length > 4
    ? null
    : { title: section.title, line: context.manuscript.place(section.span.start).line };
}

export const constructionNote: Rule = {
  id: 'construction-note',
  level: 'query',
  title: 'The note on the construction agrees with the first piece',
  meaning: 'The introduction says where the work begins, and the instructions begin at the other end.',
  reason: 'Knitters choose a pattern by its construction; an introduction left over from another version makes them doubt every section.',
  needsReplay: true,
  wrong: {
    draft:
      '# Cutter Pullover\n\nA pullover worked in one piece from the hem up.\n\n## Neckband\n\nCO 88 sts. Join in the round.\n\nRnd 1: *K2, p2; rep from * to end.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Cutter Pullover\n\nA pullover worked in one piece from the neck down.\n\n## Neckband\n\nCO 88 sts. Join in the round.\n\nRnd 1: *K2, p2; rep from * to end.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] => {
    const head = firstHeading(context);
    const begins = head === null ? null : endOf(heads, head.title);
    if (head === null || begins === null) return [];
    const inFront = new Set(
      stretches(context)
        .filter((one) => one.role === 'front')
        .map((one) => one.start),
    );
    const said = sentencesOf(context).flatMap((sentence) => {
      const end = sentence.role === 'front' && inFront.size > 0 && !ofAPart.test(sentence.text) ? endOf(notes, sentence.text) : null;
      return end === null ? [] : [{ end, sentence }];
    });
    // Worked from both ends, or one of two ways to work it: nothing can be said.
    const [first] = said;
    if (first === undefined || new Set(said.map((each) => each.end)).size > 1 || opposite[first.end] !== begins) return [];
    return [
      found(
        context,
        constructionNote,
        first.sentence.span,
        `The note has the work begin at the ${first.end}, and the first thing cast on is "${head.title}" (line ${head.line}). Is the note left over from another version?`,
      ),
    ];
  },
};
