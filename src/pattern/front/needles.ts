/** The needles a pattern lists: metric, US and UK sizes in any order, kind, length and what each is for. */

import { clausesOf } from './clauses.ts';
import type { Measure, Needle } from './front-matter.ts';
import { measuresIn } from './measure-words.ts';
import { printedNumberAt } from './printed-number.ts';
import type { Front, Segment } from './segments.ts';
import { topicOf } from './topics.ts';

interface Size {
  readonly system: 'mm' | 'us' | 'uk';
  readonly value: string;
  readonly start: number;
  readonly end: number;
}

const usLead = /(?:\bU\.?S\.?(?:A)?\s?(?:size|no\.?|#)?\s?#?|\bsize\s(?:US|U\.S\.)\s?#?|\bsize\s#|#)$/i;
/** "Size 8" alone: American as a rule, but 8 is old UK in many British patterns; read only where no millimetres say which. */
const bareSize = /\bsizes?\s$/i;
const ukLead = /(?:\b(?:old\s)?U\.?K\.?\s?(?:size|no\.?|#)?\s?|\bold\ssize\s|\bNo\.?\s?|\bEnglish\s(?:no\.?\s)?)$/i;

/** As charts print it: `10½` and `10 1/2` become `10.5`, `00` stays `00`. */
function label(text: string, start: number, length: number, value: number): string {
  const raw = text.slice(start, start + length);
  return /^0+$/.test(raw) ? raw : String(value);
}

/** Needle sizes in the text, in order. */
function sizesIn(text: string): readonly Size[] {
  const sizes: Size[] = [];
  let at = 0;
  while (at < text.length) {
    const letter = text[at]!;
    if (!/[\d½¼¾]/.test(letter)) {
      at += 1;
      continue;
    }
    const number = printedNumberAt(text, at, { words: false, decimalComma: true });
    if (number === null) {
      at += 1;
      continue;
    }
    const end = at + number.length;
    const before = text.slice(Math.max(0, at - 14), at);
    const behind = text.slice(end, end + 14);
    // "3½ and 4 mm" gives the unit once.
    const shared = /^\s(?:and|or|&)\s\d[\d.½¼¾]{0,4}\s?mm\b/i.test(text.slice(end, end + 24));
    const mm = shared ? /^/.exec('') : /^\s?-?(mm\b|millimet(?:re|er)s?\b)/i.exec(behind);
    if (mm !== null && number.value >= 0.5 && number.value <= 50)
      sizes.push({ system: 'mm', value: String(number.value), start: at, end: end + mm[0].length });
    else if (/\d$/.test(before) || /^[\d]/.test(behind)) {
      // Part of a longer number.
    } else if (/^\s?(?:cm|in\b|"|sts?\b|rows?\b|g\b|m\b|yd)/i.test(behind)) {
      // A length, a count or a weight.
    } else {
      const us = usLead.exec(before);
      const uk = ukLead.exec(before);
      if (us !== null && number.value <= 50) {
        sizes.push({ system: 'us', value: label(text, at, number.length, number.value), start: at - us[0].length, end });
      } else if (uk !== null && number.value <= 24) {
        sizes.push({ system: 'uk', value: label(text, at, number.length, number.value), start: at - uk[0].length, end });
      } else {
        if (bareSize.test(before) && !/\b(?:mm|UK|old)\b/i.test(text) && number.value <= 19 && /\bneedles?\b/i.test(text)) {
          sizes.push({ system: 'us', value: label(text, at, number.length, number.value), start: at, end });
        }
        const named = /^\s?\(?(US|UK)\b/.exec(behind);
        if (named !== null && /\bsize\s?$/i.test(before))
          sizes.push({
            system: named[1] === 'US' ? 'us' : 'uk',
            value: label(text, at, number.length, number.value),
            start: at,
            end: end + named[0].length,
          });
      }
    }
    at = end;
  }
  return sizes;
}

interface Cluster {
  readonly sizes: readonly Size[];
  readonly start: number;
  readonly end: number;
}

const joint = /^\s{0,2}(?:[()[\]/,–—=-]|\bor\b|\bold\b|\bsize\b|\bneedles?\b\s?\(?)?\s{0,2}[([]?\s?$/i;

/** Sizes that name the same needle: `3¼ mm (UK 10/US 3)`. A second size of the same system begins the next needle. */
function clustersOf(text: string, sizes: readonly Size[]): readonly Cluster[] {
  const clusters: Size[][] = [];
  for (const size of sizes) {
    const open = clusters.at(-1);
    const last = open?.at(-1);
    const joined = last !== undefined && joint.test(text.slice(last.end, size.start));
    if (open !== undefined && joined && !open.some((one) => one.system === size.system)) open.push(size);
    else clusters.push([size]);
  }
  return clusters.map((group) => ({ sizes: group, start: group[0]!.start, end: group.at(-1)!.end }));
}

type Kind = NonNullable<Needle['kind']>;
const kindWords: readonly (readonly [Kind, RegExp])[] = [
  ['spare', /\bspare\b/i],
  ['doublePointed', /\b(?:double[- ]?point(?:ed|s)?|dpn'?s?|dp\b|sock needles)/i],
  ['circular', /\bcirc(?:ulars?|s)?\b/i],
  ['straight', /\b(?:pair|pairs|straights?|single[- ]?point(?:ed|s)?)\b/i],
];

function kindsIn(text: string): readonly Kind[] {
  return kindWords
    .map(([kind, words]) => ({ kind, at: text.search(words) }))
    .filter(({ at }) => at >= 0)
    .sort((a, b) => a.at - b.at)
    .map(({ kind }) => kind);
}

const roleWords = /\bfor\s+(?:the\s|working\s(?:the\s)?|joining\s(?:the\s)?)?([^,.;()\n]{2,40})/i;
const rank =
  /\b(larger|smaller|largest|smallest|main|ribbing|edging|body|gauge|medium)\b(?=[^,;.()]{0,20}\bneedles?\b)|\bneedle\s(?:size\s)?([A-D1-3])\b(?!\s?mm)/i;

function roleOf(before: string, after: string, segmentLabel: string | null): string | null {
  const words = roleWords.exec(after)?.[1]?.trim();
  if (words !== undefined && !/^(?:or|example|your)\b/i.test(words)) return words.replace(/\s(?:or|and)\s.*$/i, '').trim();
  const ranked = rank.exec(before);
  if (ranked !== null) return (ranked[1] ?? ranked[2]!).toLowerCase();
  if (segmentLabel === null || topicOf(segmentLabel) !== null) {
    const main = segmentLabel === null ? null : /\b(main|larger|smaller|ribbing)\b/i.exec(segmentLabel);
    return main === null ? null : main[1]!.toLowerCase();
  }
  const rest = segmentLabel
    .replace(/\bneedles?\b/i, '')
    .replace(/^[\s,:(–-]+|[\s,:)]+$/g, '')
    .replace(/^(?:for|size)\s/i, '')
    .trim();
  return rest === '' ? null : rest;
}

const needleThings = /\b(?:needles?|circulars?|circ|dpn'?s?|double[- ]point|straights|pair)\b/i;
const otherThings =
  /\b(?:buttons?|beads?|hooks?|zips?|zippers?|snaps?|poppers?|ribbons?|elastic|eyes|press|pins?|wires?|dowel|pompoms?|fasteners?)\b/i;
/** Needles that knit nothing; they are notions. */
export const sewingNeedle = /\b(?:tapestry|wool|darning|sewing|yarn|blunt|embroidery|cable|finishing|weaving)[- ](?:\S+[- ])?needles?\b/gi;

const lengthOf = (found: readonly Measure[]): readonly Measure[] =>
  found.filter((measure) => {
    const value = measure.values[0];
    if (value == null || measure.values.length > 1) return false;
    return measure.unit === 'cm' ? value >= 15 && value <= 200 : measure.unit === 'in' && value >= 6 && value <= 80;
  });

/** Each length with its twin in the other unit: "40 cm and 80 cm long", "16 in (40 cm) and 32 in (80 cm)". */
function lengthsIn(found: readonly Measure[]): readonly (readonly Measure[])[] {
  const lengths: Measure[][] = [];
  for (const measure of lengthOf(found)) {
    const last = lengths.at(-1);
    if (last?.length === 1 && last[0]?.unit !== measure.unit) last.push(measure);
    else lengths.push([measure]);
  }
  return lengths;
}

function fromClause(text: string, start: number, segment: Segment, certain: boolean): readonly Needle[] {
  const plain = text.replaceAll(sewingNeedle, (words) => ' '.repeat(words.length));
  if (otherThings.test(plain) && !needleThings.test(plain)) return [];
  const sizes = sizesIn(plain);
  if (sizes.length === 0) return unsized(plain, start, segment);
  if (!certain && !needleThings.test(plain)) return [];
  const clusters = clustersOf(plain, sizes);
  const needles: Needle[] = [];
  let from = 0;
  for (const [i, cluster] of clusters.entries()) {
    const next = clusters[i + 1]?.start ?? plain.length;
    const after = plain
      .slice(cluster.end, next)
      .replace(/\s(?:and|,)?\s?(?:an?|one|two|\d)?\s?(?:spare|pair|set)(?:\sof)?[^,;.]{0,16}$/i, (words) =>
        next === plain.length ? words : ' '.repeat(words.length),
      );
    const before = plain.slice(from, cluster.start);
    const of = (system: Size['system']): string | null => cluster.sizes.find((size) => size.system === system)?.value ?? null;
    const mm = of('mm');
    if (mm !== null && Number(mm) > 26) continue;
    // "each" gives the kind of the first to all: "one pair each 3 mm and 4 mm".
    const shared = i > 0 && /\beach\b/i.test(plain.slice(0, clusters[0]!.start)) ? kindsIn(plain.slice(0, clusters[0]!.start)) : [];
    const behind = kindsIn(after);
    const ahead = kindsIn(before);
    const kinds = ahead.includes('spare')
      ? (['spare'] as const)
      : behind.length > 0
        ? behind
        : ahead.length > 0
          ? ahead.slice(-1)
          : shared.length > 0
            ? shared
            : kindsIn(segment.label ?? '');
    const measures = lengthsIn(measuresIn(after, start + cluster.end, null).map((item) => item.measure));
    const earlier = measures.length > 0 || i > 0 ? measures : lengthsIn(measuresIn(before, start + from, null).map((item) => item.measure));
    const role = roleOf(before, after, segment.label);
    const end = cluster.end + (plain[cluster.end] === ')' || plain[cluster.end] === ']' ? 1 : 0);
    const base = {
      mm: mm === null ? null : Number(mm),
      us: of('us'),
      uk: of('uk'),
      role,
      span: { start: start + cluster.start, end: start + end },
    };
    const two = behind.includes('circular') && behind.includes('doublePointed') && behind.length === 2;
    for (const kind of two ? behind : [kinds[0] ?? null]) {
      const lengths = kind === 'doublePointed' && two ? [] : kind === 'circular' ? earlier : earlier.slice(0, 1);
      // A needle for each length that is listed.
      for (const length of lengths.length > 0 ? lengths : [[]]) needles.push({ ...base, kind, length });
    }
    from = cluster.end;
  }
  return needles;
}

/** "spare needle", "set of dpns": listed with no size. */
function unsized(text: string, start: number, segment: Segment): readonly Needle[] {
  const match =
    /\b(?:spare\s(?:knitting\s)?(?:needles?|circulars?)|(?:set\sof\s)(?:\w+\s)?(?:dpns?|double[- ]pointed\sneedles?)|needles?\sone\ssize\s(?:smaller|larger)[^,;.]{0,40})/i.exec(
      text,
    );
  if (match === null) return [];
  const words = match[0];
  const kind = kindsIn(words)[0] ?? null;
  const role =
    /one\ssize\s(?:smaller|larger)/i.exec(words)?.[0].toLowerCase() ?? roleOf('', text.slice(match.index + words.length), segment.label);
  return [
    {
      mm: null,
      us: null,
      uk: null,
      kind,
      length: [],
      role,
      span: { start: start + match.index, end: start + match.index + words.trimEnd().length },
    },
  ];
}

/** Every knitting needle of the front matter. */
export function readNeedles(front: Front): readonly Needle[] {
  const needles: Needle[] = [];
  for (const segment of front.segments) {
    const topical = segment.topic === 'needles' || segment.topic === 'materials' || segment.topic === 'notions';
    const loose = segment.topic === null && segment.at < front.firstInstruction;
    if (!topical && !loose) continue;
    for (const clause of clausesOf(segment.text, false)) {
      needles.push(...fromClause(clause.text, segment.start + clause.at, segment, segment.topic === 'needles'));
    }
  }
  for (const table of front.tables) {
    if (table.topic !== 'needles' && table.topic !== 'materials') continue;
    for (const row of table.rows) {
      const [name, ...cells] = row.cells;
      const label = name?.text.trim() ?? '';
      const about = table.topic === 'needles' || /needle|dpn|circular/i.test(label);
      for (const cell of cells) {
        const segment: Segment = {
          topic: 'needles',
          label: label === '' ? null : label,
          text: cell.text,
          start: cell.start,
          emphasis: [],
          block: row,
          at: 0,
          heading: null,
        };
        if (about)
          for (const clause of clausesOf(cell.text, false)) needles.push(...fromClause(clause.text, cell.start + clause.at, segment, true));
      }
    }
  }
  return needles;
}
