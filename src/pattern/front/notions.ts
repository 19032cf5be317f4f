/** Markers, holders, buttons, sewing needles and the rest, with how many of each. */
import type { Sized } from '../../../grammar/count.ts';
import { clausesOf } from './clauses.ts';
import type { Notion } from './front-matter.ts';
import { numberLists } from './numbers.ts';
import type { Front, Segment } from './segments.ts';

/** Things a pattern asks for, in the singular; the first spelling is the name, the rest are other words for it. */
const things: readonly (readonly [name: string, ...others: string[]])[] = [
  ['cable needle', 'cn', 'cable pin', 'cable stitch needle'],
  ['tapestry needle'],
  ['wool needle'],
  ['darning needle'],
  ['yarn needle'],
  ['sewing needle'],
  ['blunt needle', 'blunt-ended needle'],
  [
    'stitch marker',
    'locking marker',
    'locking stitch marker',
    'removable marker',
    'split-ring marker',
    'ring marker',
    'st marker',
    'marker',
  ],
  ['stitch holder', 'st holder', 'holder', 'length of holding cord', 'holding thread'],
  ['safety pin'],
  ['blocking pin'],
  ['blocking wire'],
  ['backing button'],
  ['button'],
  ['press fastener', 'snap fastener', 'press stud', 'popper', 'snap'],
  ['hook and eye'],
  ['zip', 'zipper'],
  ['toggle'],
  ['crochet hook'],
  ['row counter', 'stitch counter'],
  ['waste yarn', 'scrap yarn', 'contrast waste yarn', 'smooth waste yarn'],
  ['cushion pad', 'cushion insert', 'pillow form', 'pillow insert'],
  ['sewing thread', 'matching thread', 'thread'],
  ['elastic'],
  ['ribbon'],
  ['toy stuffing', 'stuffing', 'toy filling', 'polyester filling', 'fibrefill', 'fiberfill'],
  ['toy eye', 'safety eye'],
  ['bead'],
  ['cloth', 'fabric', 'lining fabric'],
  ['pin'],
  ['tape measure'],
  ['scissors'],
];

interface Thing {
  readonly name: string;
  readonly words: string;
}

/** Longest words first, so that "backing button" is not read as "button". */
const byLength: readonly Thing[] = things
  .flatMap(([name, ...others]) => [name, ...others].map((words) => ({ name, words })))
  .sort((a, b) => b.words.length - a.words.length);

/** Where the thing stands in the clause, in the singular or the plural. */
function find(lower: string, words: string): { at: number; length: number } | null {
  let from = 0;
  for (;;) {
    const at = lower.indexOf(words, from);
    if (at < 0) return null;
    const end = at + words.length;
    const plural = /^(?:\(s\)|es|s)/.exec(lower.slice(end, end + 3))?.[0].length ?? 0;
    const stop = end + plural;
    const alone = !/[a-z-]/.test(lower[at - 1] ?? ' ') && !/[a-z]/.test(lower[stop] ?? ' ');
    if (alone) return { at, length: stop - at };
    from = end;
  }
}

interface Found {
  readonly name: string;
  readonly at: number;
  readonly length: number;
}

function thingsIn(text: string): readonly Found[] {
  const lower = text.toLowerCase();
  const found: Found[] = [];
  for (const thing of byLength) {
    const place = find(lower, thing.words);
    if (place === null) continue;
    // "buttonholes", and the button of "backing button" once that is found.
    if (found.some((one) => place.at < one.at + one.length && one.at < place.at + place.length)) continue;
    found.push({ name: thing.name, ...place });
  }
  return found.sort((a, b) => a.at - b.at);
}

/** The number that goes with the thing: right before it, with adjectives between, never a size in mm. */
function countFor(text: string, from: number, at: number): { values: Sized; start: number } | null {
  const before = text.slice(from, at);
  const lists = numberLists(before, null).filter((list) => {
    const after = before.slice(list.index + list.length);
    return (
      !/^\s?[-×x]?\s?(?:mm|cm|in\b|ins\b|inch|"|″|g\b|m\b|%|yds?\b|ply)/i.test(after) &&
      !/\b(?:US|UK|size|no\.?|#)\s?$/i.test(before.slice(0, list.index)) &&
      !/[([]\s?$/.test(before.slice(0, list.index))
    );
  });
  const list = lists[0];
  if (list !== undefined) return { values: list.values, start: from + list.index };
  const single = /\b(?:an?|one)\s(?:[a-z-]+\s){0,4}$/i.exec(before);
  if (single !== null) return { values: [1], start: from + single.index };
  return null;
}

const ordinals: readonly RegExp[] = [
  /\banother\b/i,
  /\b(?:a\s)?(?:second|third|fourth|fifth|sixth|seventh)\b/i,
  /\bone\s(?:more|extra|different)\b/i,
];

/** "2 stitch holders and a third for the back neck" are three. */
function alsoOneMore(text: string, end: number): number {
  const joint = /^\s{0,2}(?:,\s)?(?:and|plus)\s/.exec(text.slice(end, end + 8));
  if (joint === null) return 0;
  const rest = text.slice(end + joint[0].length, end + joint[0].length + 14);
  const match = ordinals.map((words) => words.exec(rest)).find((one) => one !== null && one.index === 0);
  return match == null ? 0 : joint[0].length + match[0].length;
}

function fromClause(text: string, start: number): readonly Notion[] {
  if (/^\s*no\s|\bnot? (?:needed|required)\b|\bare needed\b.*\bno\b/i.test(text)) return [];
  const found = thingsIn(text);
  const notions: Notion[] = [];
  let from = 0;
  for (const thing of found) {
    const behind = /^\s?\((\d{1,2})\)/.exec(text.slice(thing.at + thing.length, thing.at + thing.length + 6));
    const count = countFor(text, from, thing.at) ?? (behind === null ? null : { values: [Number(behind[1])], start: thing.at });
    const end = thing.at + thing.length + (behind?.[0].length ?? 0);
    const more = alsoOneMore(text, end);
    const values = more > 0 && count !== null ? count.values.map((value) => (value === null ? null : value + 1)) : (count?.values ?? null);
    notions.push({ name: thing.name, count: values, span: { start: start + (count?.start ?? thing.at), end: start + end + more } });
    from = end + more;
  }
  return notions;
}

/** A plain thing of a notions list that stands in no table here: "3 wooden hoops". */
function unknown(text: string, start: number): Notion | null {
  const match = /^(?:(\d{1,2}|an?|one|two|three|four|five|six)\s)?((?:[a-z-]+\s){0,3}[a-z-]{3,})$/i.exec(text.trim());
  if (match === null || /\b(?:needles?|size|gauge|obtain|optional|yarn|mm)\b/i.test(text)) return null;
  const list = match[1] === undefined ? null : numberLists(match[1], null)[0];
  const count = list !== null && list !== undefined ? list.values : match[1] === undefined ? null : [1];
  const name = match[2]!.toLowerCase();
  return { name: name.endsWith('ss') ? name : name.replace(/s$/, ''), count, span: { start, end: start + text.length } };
}

function readSegment(segment: Segment): readonly Notion[] {
  const notions: Notion[] = [];
  const topical = segment.topic === 'notions';
  for (const sentence of clausesOf(segment.text, false)) {
    const parts = clausesOf(sentence.text, true);
    // "5 buttons, 18 mm (¾ in), for the front" is one thing: parts with no thing of their own are remarks.
    for (const part of parts) {
      const start = segment.start + sentence.at + part.at;
      const known = fromClause(part.text, start);
      if (known.length > 0) notions.push(...known);
      else if (topical && parts.length === 1) {
        const thing = unknown(part.text, start);
        if (thing !== null) notions.push(thing);
      }
    }
  }
  return notions;
}

/** Every notion of the front matter. */
export function readNotions(front: Front): readonly Notion[] {
  const notions: Notion[] = [];
  for (const segment of front.segments) {
    if (segment.topic === 'notions' || segment.topic === 'materials' || segment.topic === 'needles') notions.push(...readSegment(segment));
  }
  for (const table of front.tables) {
    if (table.topic !== 'notions' && table.topic !== 'materials' && table.topic !== 'needles') continue;
    for (const row of table.rows) {
      for (const cell of row.cells) {
        if (/^\s*(?:notions?|extras|needles?|yarns?)\s*$/i.test(cell.text)) continue;
        notions.push(
          ...readSegment({
            topic: 'materials',
            label: null,
            text: cell.text,
            start: cell.start,
            emphasis: [],
            block: row,
            at: 0,
            heading: null,
          }),
        );
      }
    }
  }
  return notions;
}
