/** Which rows the words mean: by number, by name, the last ones, those of a section. */
import { sizeValue } from '../../../grammar/count.ts';
import type { Row, RowsNamed, Span } from '../../../grammar/tree.ts';
import { fillerFor } from '../labelled-rows.ts';
import { type Hand, labelWords, type Play, type Worked } from '../play.ts';

/** A row as it will be worked once more. */
export interface Again {
  readonly row: Row | null;
  readonly number: number | null;
  readonly times: number;
  readonly textSpan: Span;
  readonly label: string;
  readonly change: number;
}

function again(row: Row, number: number | null): Again {
  return { row, number, times: 1, textSpan: row.span, label: labelWords(row.label, number), change: 0 };
}

/** Words of a name without what every name has. */
function nameWords(name: string): string[] {
  return name
    .toLowerCase()
    .split(/[^a-z0-9]+/)
    .filter(
      (word) => word !== '' && !['row', 'rows', 'rnd', 'rnds', 'round', 'rounds', 'the', 'of', 'st', 'pattern', 'patt'].includes(word),
    )
    .map((word) => (word.length > 3 ? word.replace(/(rease|rease[ds])$/, '').replace(/s$/, '') : word));
}

/** A named row: "Dec Rnd", "Rib rnd", "moss st row"; the newest of that name. */
export function findRow(play: Play, name: string, number: number | null): { row: Row; section: number } | null {
  const wanted = nameWords(name);
  for (let at = play.named.length - 1; at >= 0; at -= 1) {
    const each = play.named[at];
    if (each === undefined) continue;
    if (number !== null && each.number !== null && each.number !== number) continue;
    if (number !== null && each.number === null) continue;
    const have = nameWords(each.name);
    if (have.length === wanted.length && have.every((word, index) => word === wanted[index])) return each;
  }
  for (let at = play.named.length - 1; at >= 0; at -= 1) {
    const each = play.named[at];
    if (each === undefined) continue;
    if (number !== null && each.number !== null && each.number !== number) continue;
    const have = nameWords(each.name);
    if (wanted.length > 0 && wanted.every((word) => have.includes(word))) return each;
  }
  return null;
}

/** The section whose numbered rows are meant: the one named, the one being worked, else the last that has them. */
function setFor(play: Play, rows: RowsNamed): { section: number; set: Map<number, Row> } | null {
  const has = (set: Map<number, Row> | undefined, section: number): boolean =>
    set !== undefined && rows.numbers.every((number) => set.has(number) || fillerFor(play, section, number) !== null);
  if (rows.of !== null) {
    const wanted = nameWords(rows.of);
    const { sections } = play.pattern;
    for (let section = sections.length - 1; section >= 0; section -= 1) {
      const words = nameWords(sections[section]?.title ?? '');
      const set = play.sets.get(section);
      if (set !== undefined && wanted.length > 0 && wanted.some((word) => words.includes(word)) && has(set, section))
        return { section, set };
    }
  }
  const own = play.sets.get(play.section);
  if (own !== undefined && has(own, play.section)) return { section: play.section, set: own };
  for (let section = play.section - 1; section >= 0; section -= 1) {
    const set = play.sets.get(section);
    if (set !== undefined && set.size > 0 && has(set, section)) return { section, set };
  }
  return own === undefined ? null : { section: play.section, set: own };
}

/** The rows that the words name, in order, for one size; null when some of them do not exist. */
export function rowsNamed(
  play: Play,
  rows: RowsNamed,
  hand: Hand,
  size: number,
): { list: Again[]; missing: number | null; section: number } | null {
  switch (rows.kind) {
    case 'last':
    case 'these':
    case 'pattern': {
      if (rows.kind !== 'last' && rows.count === null) {
        const set = play.sets.get(play.section);
        if (set !== undefined && set.size > 0) {
          const numbers = [...set.keys()].sort((a, b) => a - b);
          const highest = numbers.at(-1) ?? 0;
          const list: Again[] = [];
          for (let number = numbers[0] ?? 1; number <= highest; number += 1) {
            const row = set.get(number) ?? fillerFor(play, play.section, number);
            if (row !== null && row !== undefined) list.push(again(row, number));
          }
          return { list, missing: null, section: play.section };
        }
        if (rows.kind === 'pattern') return null;
      }
      const count = rows.count === null ? 1 : (sizeValue(rows.count.values, size) ?? 0);
      return lastRows(hand, count);
    }
    case 'first': {
      const set = play.sets.get(play.section);
      const count = rows.count === null ? 1 : (sizeValue(rows.count.values, size) ?? 0);
      const list: Again[] = [];
      for (let number = 1; number <= count; number += 1) {
        const row = set?.get(number);
        if (row) list.push(again(row, number));
      }
      return list.length === count ? { list, missing: null, section: play.section } : null;
    }
    case 'numbers': {
      const found = setFor(play, rows);
      if (found === null) return null;
      const list: Again[] = [];
      for (const number of rows.numbers) {
        const row = found.set.get(number) ?? fillerFor(play, found.section, number);
        if (row === undefined || row === null) return { list: [], missing: number, section: found.section };
        list.push(again(row, number));
      }
      return { list, missing: null, section: found.section };
    }
    case 'shaping': {
      const list = shapedLast(play, hand, rows.name);
      return list === null ? null : { list: [list], missing: null, section: play.section };
    }
    case 'name': {
      if (rows.name === null) return null;
      const list: Again[] = [];
      for (const number of rows.numbers.length > 0 ? rows.numbers : [null]) {
        const found = findRow(play, rows.name, number);
        if (found === null) return null;
        list.push(again(found.row, number));
      }
      return { list, missing: null, section: play.section };
    }
    default:
      return null;
  }
}

/** "This inc rnd", "the decrease": the row of that name in this section, else the last row that made such a change, else any of the name. */
function shapedLast(play: Play, hand: Hand, name: string | null): Again | null {
  const named = name === null ? null : findRow(play, name, null);
  if (named !== null && named.section === play.section) return again(named.row, null);
  const sign = name === 'inc' ? 1 : name === 'dec' ? -1 : 0;
  for (let at = hand.history.length - 1; at >= 0; at -= 1) {
    const worked = hand.history[at] as Worked;
    if (worked.section !== play.section) break;
    const step = worked.step ?? worked.change;
    if (step === 0 || (sign !== 0 && Math.sign(step) !== sign)) continue;
    const number = worked.row?.label?.numbers[0] ?? null;
    return { row: worked.row, number, times: 1, textSpan: worked.textSpan, label: worked.label, change: worked.row === null ? step : 0 };
  }
  return named === null ? null : again(named.row, null);
}

function lastRows(hand: Hand, count: number): { list: Again[]; missing: number | null; section: number } | null {
  const list: Again[] = [];
  let need = count;
  for (let at = hand.history.length - 1; at >= 0 && need > 0; at -= 1) {
    const worked = hand.history[at] as Worked;
    const times = Math.min(worked.times, need);
    list.unshift({
      row: worked.row,
      number: worked.row?.label?.numbers[0] ?? null,
      times,
      textSpan: worked.textSpan,
      label: worked.label,
      change: worked.row === null ? worked.change : 0,
    });
    need -= times;
  }
  return need > 0 ? null : { list, missing: null, section: -1 };
}

export function sameList(a: readonly Again[], b: readonly Again[]): boolean {
  return (
    a.length === b.length &&
    a.every(
      (each, index) =>
        each.row === b[index]?.row &&
        each.times === b[index]?.times &&
        each.textSpan.start === b[index]?.textSpan.start &&
        each.number === b[index]?.number,
    )
  );
}
