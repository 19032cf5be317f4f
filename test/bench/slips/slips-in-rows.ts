/** Slips in the rows themselves: numbers, stitches, sides, labels, markers. */
import type { Slip } from './slip.ts';

const changed = (number: number, by: number): string => String(Math.max(0, number + by));

/** Every place of a draft where a slip of some kind can be made. */
export function slipsInRows(source: string): Slip[] {
  const body = /^(?:.*\b(?:cast on|CO) \d)/im.exec(source)?.index ?? 0;
  const slips: Slip[] = [];
  const each = (kind: string, pattern: RegExp, make: (match: RegExpExecArray) => { at: number; was: string; now: string }[]): void => {
    for (const match of source.matchAll(pattern)) {
      if ((match.index ?? 0) < body) continue;
      for (const slip of make(match as RegExpExecArray)) if (slip.was !== slip.now) slips.push({ kind, ...slip });
    }
  };
  const whole = (match: RegExpExecArray, now: string): { at: number; was: string; now: string }[] => [
    { at: match.index, was: match[0], now },
  ];
  const numberIn = (match: RegExpExecArray, group: number, by: number): { at: number; was: string; now: string }[] => {
    const was = match[group];
    if (was === undefined) return [];
    const at = match.index + match[0].indexOf(was);
    return [{ at, was, now: changed(Number(was), by) }];
  };
  each('stated count', /(?:[—–=(]\s?|\. |\[)(\d{2,3})(?= (?:sts|stitches)\b)/g, (match) => [
    ...numberIn(match, 1, 2),
    ...numberIn(match, 1, -1),
  ]);
  each('stated count, one size', /, (\d{2,3})(?=[,)\]:] ?[^\n]{0,24}(?:sts|stitches)\b)/g, (match) => numberIn(match, 1, 2));
  each('stitch number', /\b[kKpP](\d{1,2})(?=[,;.)\]])/g, (match) => [
    ...numberIn(match, 1, 1),
    ...numberIn(match, 1, -1),
    ...numberIn(match, 1, 2),
  ]);
  each('repeat number', /\b(\d{1,2})(?= (?:more times|times more|times|further times)\b)/g, (match) => [
    ...numberIn(match, 1, 1),
    ...numberIn(match, 1, -1),
  ]);
  each('to last', /to last (\d{1,2})(?= sts)/gi, (match) => [...numberIn(match, 1, 1), ...numberIn(match, 1, -1)]);
  each('yarn over left out', /, yo(?=,)/g, (match) => whole(match, ''));
  each('decrease made plain', /\bk2tog\b(?=[,;.)\]])/g, (match) => whole(match, 'k2'));
  each('double decrease made single', /\b(?:sk2p|s2kp|k3tog)\b(?=[,;.)\]])/g, (match) => whole(match, 'k2tog'));
  each('increase left out', /, m1[lr]?(?=[,;.)\]])/gi, (match) => whole(match, ''));
  each('cast-on', /(?:[Cc]ast on|CO) (\d{2,3})\b/g, (match) => numberIn(match, 1, 1));
  each('marker left out', /, (?:sm|pm)(?=,)/g, (match) => whole(match, ''));
  each('size list short', /[,:] ?(\d{1,3})(?=[)\]] ?(?:sts|times|more|rows|rnds))/g, (match) => whole(match, ''));
  each('row number', /\b(Row|Rnd|Round) (\d{1,2})(?= ?[(:.])/g, (match) => [
    { at: match.index + match[0].length - (match[2] ?? '').length, was: match[2] ?? '', now: changed(Number(match[2]), 1) },
  ]);
  each('row range', /\bRows? (\d{1,2})[–-](\d{1,2})\b/g, (match) => [
    { at: match.index + match[0].length - (match[2] ?? '').length, was: match[2] ?? '', now: changed(Number(match[2]), 2) },
  ]);
  each('side exchanged', /\((RS|WS)\)/g, (match) => whole(match, match[1] === 'RS' ? '(WS)' : '(RS)'));
  each('bind-off number', /(?:[Cc]ast off|BO) (\d{1,2})(?= (?:sts|\())/g, (match) => numberIn(match, 1, 1));
  each('picked up', /[Pp]ick up and (?:k|knit) (\d{1,3})\b/g, (match) => numberIn(match, 1, 2));
  each('put on hold', /(?:place|slip) (?:next|centre|first) (\d{1,3})\b/gi, (match) => numberIn(match, 1, 2));
  return slips;
}
