/** The yarn a pattern asks for: how many balls, length and weight of one, totals, colour letters, weight class. */
import { clausesOf } from './clauses.ts';
import type { Measure, Yarn } from './front-matter.ts';
import { type FoundMeasure, measuresIn } from './measure-words.ts';
import { type FoundList, numberLists } from './numbers.ts';
import type { Front, Segment } from './segments.ts';

const ballWord = /^\s{0,2}(?:balls?|skeins?|hanks?|cones?|cakes?|oddments?)\b/i;
const anyBall = /\b(?:ball|skein|hank|cone|cake|oddment)(?:s|\(s\))?\b/i;

/** Names of yarn weights as labels print them, longest first so that "super bulky" is not read as "bulky". */
const weightNames =
  /\b(super[- ]?(?:bulky|chunky)|light[- ](?:worsted|fingering|dk)|heavy[- ]worsted|double[- ]knitting|jumbo|roving|chunky|bulky|aran|worsted|dk|sport|fingering|sock|baby|lace|cobweb|laceweight|(?:[2-9]|1[0246])[- ]?ply|(?:two|three|four|five|eight|ten|twelve)[- ]ply)\b(?:[- ]?weight)?/i;
const classNumber = /(?:\bCYC|\bweight|\bcategory|#)\s?#?([0-7])\b/i;

const colourLead =
  /^\s{0,4}(?:yarn\s)?\(?((?:MC|CC\d?|MS|M|C\d?|[A-H])|(?:main|contrast(?:ing)?)(?:\s(?:colou?r|shade|yarn))?(?:\s[A-D1-9])?|colou?r\s[A-H1-9]|yarn\s[A-H1-9])\)?\s?(?:\(((?:MC|CC\d?|MS|M|C\d?|[A-H]))\))?\s?(?:[:=–-]|,?\s(?=\d))/i;
const colourInside =
  /\(((?:MC|CC\d?|MS|M|C\d?|[A-H]))\)|\b(?:colou?r|yarn|shade)\s([A-H]|MC|CC\d?)\b|\b(?:as|of|in)\s(MC|CC\d?|[A-H])\b(?![’'.-]?\w)|\b(MC|CC\d?)\b/;

function colourOf(text: string, label: string | null): string | null {
  const inLabel = label === null ? null : /\b(MC|CC\d?|MS)\b|^(?:yarn|colou?r)\s([A-H1-9])$|^([A-H]|M|C)$|\(([A-H]|M|C)\)/i.exec(label);
  const named = inLabel?.[1] ?? inLabel?.[2] ?? inLabel?.[3] ?? inLabel?.[4];
  if (named !== undefined) return named.toUpperCase();
  const lead = colourLead.exec(text);
  if (lead !== null) {
    const letter = lead[2] ?? lead[1]!;
    const last = /\b([A-H]|[1-9])$/.exec(letter)?.[1];
    return /^(?:colou?r|yarn)\s/i.test(letter) && last !== undefined ? last : letter;
  }
  const inside = colourInside.exec(text);
  return inside?.[1] ?? inside?.[2] ?? inside?.[3] ?? inside?.[4] ?? null;
}

interface Balls {
  readonly list: FoundList;
  readonly end: number;
}

/** `9 [10: 11] × 50 g balls`, `2 skeins`, `4 x 100g hanks`, `three balls`; not the 50 of `50 g balls`. */
function ballsIn(text: string, lists: readonly FoundList[]): readonly Balls[] {
  const found: Balls[] = [];
  for (const list of lists) {
    const end = list.index + list.length;
    const rest = text.slice(end, end + 60);
    const lead =
      /^\s{0,2}(?:[×xX]\s{0,2})?(?:\(?\d[\d½.]{0,5}\s{0,2}-?(?:g|gm|gms|gram|grams|oz|ounce)\b\.?\s?(?:[/(]\s?\d[\d½¼¾.]{0,5}\s{0,2}(?:g|oz)\.?\)?)?\)?\s{0,2})?/i.exec(
        rest,
      )!;
    const word =
      ballWord.exec(rest.slice(lead[0].length)) ??
      ballWord.exec(rest.slice(lead[0].length).replace(/^\s?(?:full|large|small|more)\s/i, ' '));
    if (word === null || /\bper\s$|\b(?:a|each)\s$/i.test(text.slice(Math.max(0, list.index - 6), list.index))) continue;
    found.push({ list, end: end + lead[0].length + word[0].length });
  }
  return found;
}

const isLength = (item: FoundMeasure): boolean => item.measure.unit === 'm' || item.measure.unit === 'yd';
const isWeight = (item: FoundMeasure): boolean => item.measure.unit === 'g' || item.measure.unit === 'oz';

interface Amounts {
  readonly lengthPerBall: readonly Measure[];
  readonly weightPerBall: readonly Measure[];
  readonly total: readonly Measure[];
}

function amountsIn(text: string, found: readonly FoundMeasure[]): Amounts {
  const perBall =
    found.some(isWeight) ||
    /\b(?:per|each|a)\s(?:\d{1,3}\s?g\s)?(?:ball|skein|hank|cone|cake)\b|\beach\b/i.test(text) ||
    anyBall.test(text);
  const lengthPerBall: Measure[] = [];
  const total: Measure[] = [];
  for (const item of found.filter(isLength)) {
    const near = text.slice(Math.max(0, item.start - 24), item.start);
    const after = text.slice(item.end, item.end + 16);
    const whole =
      /\btotal(?:\s(?:of|length|yardage))?:?\s(?:approx\.?\s|about\s)?$/i.test(near) || /^[\s)\]]{0,3}(?:in\s)?total\b/i.test(after);
    if (whole || item.measure.values.length > 1 || !perBall) total.push(item.measure);
    else lengthPerBall.push(item.measure);
  }
  const weights = found.filter((item) => isWeight(item) && item.measure.values.length === 1).map((item) => item.measure);
  // The weight of one ball in each unit; what follows in the same unit is a remark.
  const weightPerBall = weights.filter((one, i) => weights.findIndex((other) => other.unit === one.unit) === i);
  return { lengthPerBall, weightPerBall, total };
}

function weightClassOf(text: string): string | null {
  const name = weightNames.exec(text)?.[1];
  if (name !== undefined) return name;
  return classNumber.exec(text)?.[1] ?? null;
}

function one(text: string, start: number, balls: Balls | null, label: string | null): Yarn | null {
  const found = measuresIn(text, start, null);
  const amounts = amountsIn(text, found);
  const trimmed = text.trim();
  if (trimmed === '') return null;
  const from = start + text.indexOf(trimmed);
  return {
    colour: colourOf(text, label),
    balls: balls?.list.values ?? null,
    ...amounts,
    weightClass: weightClassOf(text),
    text: trimmed,
    span: { start: from, end: from + trimmed.length },
  };
}

/** A colour name that begins an entry: "MC: 5 balls", "A, 3 balls", "CC 200 yards". */
const entryStart =
  /(?:^|[;.,:\n]\s{0,3}|(?<!\b[A-H]\s)\b(?:and|plus)\s)(?=(?:yarn\s)?(?:MC|CC\d?|MS|[A-H])(?:\s(?:and|&)\s[A-H])?\s?[:=,–-]?\s{0,2}\d)/g;

/** Where a second yarn begins inside one segment: "… and 1 ball in Shade 2", "CC: 2 skeins" on a line of its own. */
function partsOf(text: string, balls: readonly Balls[]): readonly { from: number; to: number; balls: Balls | null }[] {
  const starts = new Set([0]);
  const line = /\n/g;
  for (let match = line.exec(text); match !== null; match = line.exec(text)) {
    if (colourLead.test(text.slice(match.index + 1, match.index + 60))) starts.add(match.index + 1);
  }
  entryStart.lastIndex = 0;
  const digit = text.search(/\d/);
  const firstNumber = digit < 0 ? text.length : digit;
  for (let match = entryStart.exec(text); match !== null; match = entryStart.exec(text)) {
    const at = match.index + match[0].length;
    // What stands before the first colour belongs to all of them.
    if (at > firstNumber) starts.add(at);
    if (match[0].length === 0) entryStart.lastIndex += 1;
  }
  for (const [i, ball] of balls.entries()) {
    const near = [...Array(12).keys()].some((back) => ball.list.index - back > 0 && starts.has(ball.list.index - back));
    if (i === 0 || near) continue;
    if (/(?:\b(?:and|plus)|[,;.])\s{1,3}$/i.test(text.slice(Math.max(0, ball.list.index - 8), ball.list.index)))
      starts.add(ball.list.index);
  }
  const sorted = [...starts].sort((a, b) => a - b);
  let next = 0;
  return sorted.map((from, i) => {
    const to = sorted[i + 1] ?? text.length;
    while ((balls[next]?.list.index ?? from) < from) next += 1;
    const ball = balls[next];
    return { from, to, balls: ball !== undefined && ball.list.index < to ? ball : null };
  });
}

/** "1 ball each in Foam (B) and Rust (C)", "B and C, 2 balls each": one yarn for every colour named. */
function eachColour(yarn: Yarn): readonly Yarn[] {
  if (!/\beach\b/i.test(yarn.text)) return [yarn];
  const lead = /^\s?([A-H])(?:,\s?([A-H]))?\s(?:and|&)\s([A-H])\b/.exec(yarn.text);
  const letters =
    lead === null
      ? [...yarn.text.matchAll(/\(([A-H]|MC|CC\d?)\)/g)].map((match) => match[1]!)
      : lead.slice(1).filter((letter) => letter !== undefined);
  return letters.length < 2 ? [yarn] : letters.map((colour) => ({ ...yarn, colour }));
}

/** Words that make a line of "Materials" a yarn line. */
function isYarnLine(text: string, balls: readonly Balls[]): boolean {
  if (balls.length > 0) return true;
  if (/\b(?:waste|scrap|thread)\b/i.test(text)) return false;
  const length = /[\d)\]]\s?(?:m|metres|meters|yds?|yards)\b/i.test(text);
  const weight = /\d\s?(?:g|grams|oz)\b/i.test(text);
  return (
    (length && weight) ||
    (length && (weightNames.test(text) || /\byarn|wool\b/i.test(text))) ||
    /\b(?:yarn|wool)\b[^.;]{0,60}\b(?:weight|dk|aran|fingering|held)\b/i.test(text)
  );
}

function readSegment(segment: Segment): readonly Yarn[] {
  const lists = numberLists(segment.text, null);
  const balls = ballsIn(segment.text, lists);
  if (segment.topic !== 'yarn' && !isYarnLine(segment.text, balls)) return [];
  if (segment.topic === 'yarn' && balls.length === 0 && !/\d/.test(segment.text) && !weightNames.test(segment.text)) {
    if (!/\b(?:oddments?|small amounts?|scraps?)\b/i.test(segment.text)) return [];
  }
  const yarns: Yarn[] = [];
  for (const part of partsOf(segment.text, balls)) {
    const text = segment.text.slice(part.from, part.to);
    const yarn = one(text, segment.start + part.from, part.balls, part.from === 0 ? segment.label : null);
    if (yarn !== null) yarns.push(...eachColour(yarn));
  }
  return shareBall(yarns);
}

/** "MC 5 balls, CC 2 balls of a DK (120 m per 50 g)": one label for all the colours of a line. */
function shareBall(yarns: readonly Yarn[]): readonly Yarn[] {
  if (yarns.length < 2) return yarns;
  const full = yarns.find((yarn) => yarn.lengthPerBall.length > 0);
  return yarns.map((yarn) =>
    yarn.lengthPerBall.length > 0 || full === undefined
      ? yarn
      : {
          ...yarn,
          lengthPerBall: full.lengthPerBall,
          weightPerBall: yarn.weightPerBall.length > 0 ? yarn.weightPerBall : full.weightPerBall,
        },
  );
}

/**
 * The clauses of a materials paragraph, each as a segment of its own. "…; 420 yd per 100 g" goes on with the yarn before
 * it where that has balls and no length.
 */
function sentences(segment: Segment): readonly Segment[] {
  // A line labelled with a colour is about that yarn to its end.
  if (segment.topic === 'yarn' || (segment.label !== null && colourOf('', segment.label) !== null)) return [segment];
  const spans: { from: number; to: number }[] = [];
  for (const clause of clausesOf(segment.text, false)) {
    const last = spans.at(-1);
    const before = last === undefined ? '' : segment.text.slice(last.from, last.to);
    const own = ballsIn(clause.text, numberLists(clause.text, null)).length > 0;
    const amount = /[\d)\]]\s?(?:m|metres|meters|yds?|yards)\b/i;
    const open = ballsIn(before, numberLists(before, null)).length > 0 && !amount.test(before);
    const balls = own && isYarnLine(before, []) && amount.test(before) && ballsIn(before, numberLists(before, null)).length === 0;
    if (last !== undefined && ((open && !own && amount.test(clause.text)) || balls)) last.to = clause.at + clause.text.length;
    else spans.push({ from: clause.at, to: clause.at + clause.text.length });
  }
  return spans.map(({ from, to }, i) => ({
    ...segment,
    text: segment.text.slice(from, to),
    start: segment.start + from,
    label: i === 0 ? segment.label : null,
  }));
}

/** Every yarn of the front matter. */
export function readYarns(front: Front): readonly Yarn[] {
  const yarns: Yarn[] = [];
  for (const segment of front.segments) {
    if (segment.topic !== 'yarn' && segment.topic !== 'materials') continue;
    for (const sentence of sentences(segment)) yarns.push(...readSegment(sentence));
  }
  for (const table of front.tables) {
    if (table.topic !== 'yarn' && table.topic !== 'materials') continue;
    for (const row of table.rows) {
      const [name, ...cells] = row.cells;
      const label = name?.text.trim() ?? '';
      for (const cell of cells) {
        const topic = table.topic === 'yarn' || /yarn|wool|MC|CC|colou?r/i.test(label) ? 'yarn' : 'materials';
        yarns.push(
          ...readSegment({
            topic,
            label: label === '' ? null : label,
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
  return yarns;
}
