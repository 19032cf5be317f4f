/**
 * Shaping schedules: on which rows, counted from now, the shaping falls.
 *
 *     next 3 rows, then foll 2 alt rows, then foll 4th row  →  1, 2, 3, 5, 7, 11
 */
import { sizeValue } from '../../grammar/count.ts';
import type { Segment } from '../../grammar/tree.ts';

export interface Events {
  /** Row of each shaping, counted from 1. Long runs are cut; `count` is exact. */
  readonly count: number;
  /** Rows used, the last shaping row included. */
  readonly rows: number;
  /** False where the words leave open how often: "foll alt rows" with no number and no count. */
  readonly settled: boolean;
}

export type Facing = 'RS' | 'WS' | 'round' | null;

/** What a row of shaping does to the count, and the count it may run to. */
export interface Room {
  readonly live: number;
  /** Change of one shaping row, with its sign. */
  readonly step: number;
  /** Rows of the window, where the schedule stands inside "work N rows". */
  readonly window: number | null;
  /** The count stated behind the schedule, for words that name no end. */
  readonly stated: number | null;
  /** Side of the next row; in a round every row is an RS row. */
  readonly facing?: Facing;
}

export interface Missed {
  readonly target: number;
  readonly live: number;
  readonly step: number;
  readonly passed: boolean;
}

/** "next and every foll 4th row 6 times" is six in all; behind "next 3 rows" the number stands by itself. */
function single(before: Segment | undefined, size: number): boolean {
  return before === undefined || before.n === null || sizeValue(before.n.values, size) === 1;
}

/** Rows it takes to work `n` rows of one side, where `rows` have been worked since `facing` was the side of the next. */
function sidedRows(n: number, side: 'RS' | 'WS', rows: number, facing: Facing): number {
  if (facing === 'round' || n === 0) return n;
  const now = facing === null ? side : rows % 2 === 0 ? facing : facing === 'RS' ? 'WS' : 'RS';
  return (now === side ? 1 : 2) + 2 * (n - 1);
}

/** Counts the shaping rows of one size. `every` after a first row counts that row in its number unless "more" is said. */
export function eventsOf(segments: readonly Segment[], size: number, room: Room, countFirst: boolean): Events | Missed {
  let count = 0;
  let rows = 0;
  // A command with no rows of its own leaves open when it is worked.
  let settled = segments.length > 0;
  const live = (): number => room.live + count * room.step;
  for (let index = 0; index < segments.length; index += 1) {
    const segment = segments[index] as Segment;
    const n = segment.n === null ? null : sizeValue(segment.n.values, size);
    if (segment.n !== null && n === null) continue;
    const until = segment.until === null ? null : sizeValue(segment.until.values, size);
    if (segment.until !== null && until === null) continue;
    const k = segment.k === null ? (segment.rowSide ? 2 : 1) : (sizeValue(segment.k, size) ?? 1);
    const runTo = (target: number): Missed | null => {
      const need = target - live();
      if (room.step === 0 || need % room.step !== 0 || need / room.step < 0)
        return { target, live: live(), step: room.step, passed: room.step !== 0 && need / room.step < 0 };
      count += need / room.step;
      rows += (need / room.step) * k;
      return null;
    };
    switch (segment.kind) {
      case 'this':
        count += 1;
        break;
      case 'next':
      case 'follEach':
        count += n ?? 1;
        rows += segment.rowSide ? sidedRows(n ?? 1, segment.rowSide, rows, room.facing ?? null) : (n ?? 1);
        break;
      case 'nth':
        count += 1;
        rows += k;
        break;
      case 'follEvery':
      case 'every':
      case 'alternately': {
        if (until !== null) {
          const missed = runTo(until);
          if (missed) return missed;
          break;
        }
        if (n !== null) {
          // "next and every foll 4th row 6 times" is six in all; "6 more times" adds six.
          const first =
            segment.kind === 'every' &&
            index > 0 &&
            segment.more !== 'more' &&
            countFirst &&
            segments[index - 1]?.kind !== 'every' &&
            single(segments[index - 1], size);
          const times = Math.max(0, first ? n - 1 : n);
          count += times;
          const average = segment.k2 ? (k + (sizeValue(segment.k2, size) ?? k)) / 2 : k;
          rows += Math.round(times * average);
          break;
        }
        if (room.window !== null) {
          const more = index === 0 ? Math.floor(room.window / k) : Math.floor(Math.max(0, room.window - rows) / k);
          count += more;
          rows += more * k;
          break;
        }
        if (segment.kind === 'follEvery') {
          // "foll 4th row": once. "foll alt rows": up to the stated count.
          const open =
            segment.k !== null &&
            segment.k.length === 1 &&
            segment.k[0] === 2 &&
            room.stated !== null &&
            index === segments.length - 1 &&
            (room.stated - live()) % room.step === 0 &&
            (room.stated - live()) / room.step >= 1;
          const times = open ? ((room.stated as number) - live()) / room.step : 1;
          count += times;
          rows += times * k;
          break;
        }
        if (
          room.stated !== null &&
          room.step !== 0 &&
          (room.stated - live()) % room.step === 0 &&
          (room.stated - live()) / room.step >= 0
        ) {
          const times = (room.stated - live()) / room.step;
          count += times;
          rows += times * k;
          break;
        }
        settled = false;
        break;
      }
    }
    if (until !== null && segment.kind !== 'every' && segment.kind !== 'follEvery' && segment.kind !== 'alternately') {
      if (live() !== until) return { target: until, live: live(), step: room.step, passed: false };
    }
  }
  return { count, rows, settled };
}
