/** Slips in the words around the rows: gauge and measures, needles, notions, yarn, abbreviations, units, references. */
import type { Slip } from './slip.ts';

type Made = Omit<Slip, 'kind'>;

/** "12.5" and its like, with so much more. */
function more(number: string, by: number): string {
  const places = number.split('.')[1]?.length ?? 0;
  return (Number(number) + by).toFixed(places);
}

/** The next value of a list of sizes, far enough off that nobody takes it for rounding. */
const another = (number: string): string => more(number, Number(number) >= 40 ? 8 : Number(number) >= 10 ? 4 : 1);

/** A group of a match, made into another. */
function group(match: RegExpExecArray, name: string, make: (was: string) => string | null): Made[] {
  const [start, end] = match.indices?.groups?.[name] ?? [];
  if (start === undefined || end === undefined) return [];
  const was = match.input.slice(start, end);
  const now = make(was);
  return now === null ? [] : [{ at: start, was, now }];
}

const out = (match: RegExpExecArray): Made[] => [{ at: match.index, was: match[0], now: '' }];

const number = String.raw`\d+(?:\.\d+)?`;
/** Lines whose numbers are no measures of the piece. */
const aside = /\b(?:needles?|circ|dpns?|yarn|wool|balls?|sts|stitches|tension|gauge|=)\b|=/i;

const materials = /\b(?:needles?|notions?|also|extras?|materials?|you (?:also )?need|other bits|haberdashery)\b/i;

/** Every place of a draft where a slip of some kind can be made. */
export function slipsInWords(source: string): Slip[] {
  const slips: Slip[] = [];
  const begin = /^(?:.*\b(?:cast on|CO) \d)/im.exec(source)?.index ?? 0;
  const each = (
    kind: string,
    pattern: RegExp,
    make: (match: RegExpExecArray) => readonly Made[],
    where: 'front' | 'work' | 'all' = 'all',
  ): void => {
    for (const match of source.matchAll(new RegExp(pattern.source, `${pattern.flags.replace(/[gd]/g, '')}gd`))) {
      const front = match.index < begin;
      if ((where === 'front' && !front) || (where === 'work' && front)) continue;
      for (const slip of make(match as RegExpExecArray)) if (slip.was !== slip.now) slips.push({ kind, ...slip });
    }
  };
  /** The line a match stands on, from its beginning. */
  const lineOf = (at: number): string => source.slice(source.lastIndexOf('\n', at - 1) + 1, source.indexOf('\n', at));

  each(
    'needle change left out',
    /\b(?:Change|Switch) to [^.,;\n]*?(?:needles?|dpns?)(?: \d[\d.]* mm)?(?: and (?=\w)|\. ?|(?=\n))/,
    out,
    'work',
  );
  each(
    'needle exchanged',
    /\b(?<which>larger|smaller)\b(?=[^.\n]{0,24}\b(?:needles?|circular|dpns?))/i,
    (match) => group(match, 'which', (was) => (was === 'larger' ? 'smaller' : was === 'smaller' ? 'larger' : null)),
    'work',
  );
  each(
    'needle size in the list',
    new RegExp(`(?<mm>${number}) ?mm\\b`),
    (match) =>
      /\b(?:needles?|circ|dpns?|straights?|pair)\b/i.test(lineOf(match.index))
        ? group(match, 'mm', (was) => more(was, 0.5).replace(/\.0$/, ''))
        : [],
    'front',
  );
  each(
    'needle size in the rows',
    new RegExp(`(?<mm>${number}) mm (?:circular |double-pointed )?needles?\\b`),
    (match) => group(match, 'mm', (was) => String(Number(was) + 0.25)),
    'work',
  );
  each('US number', /\bUS (?:size |#)?(?<us>\d+)\b/, (match) => group(match, 'us', (was) => String(Number(was) + 2)), 'front');

  const notion =
    /(?:(?:\d+|one|two|three|four|five|a|an) )?(?:stitch |st |locking )?(?:markers?|holders?|cable needle|waste yarn|scrap yarn|safety pins?|spare needle[^,;.\n]*|buttons?)(?:, |; |(?=[.\n]))/i;
  each(
    'notion left out',
    notion,
    (match) => (materials.test(lineOf(match.index)) && !/place marker|abb|slip|hold /i.test(lineOf(match.index)) ? out(match) : []),
    'front',
  );
  each(
    'number of notions',
    /(?<n>\d+|two|three|four|five|six|seven) (?:[^,;.\n]{0,12})?(?:buttons|markers)\b/i,
    (match) => {
      const words = ['two', 'three', 'four', 'five', 'six', 'seven'];
      return group(match, 'n', (was) => {
        const at = words.indexOf(was.toLowerCase());
        return at < 0 ? String(Number(was) - 1) : at === 0 ? 'one' : (words[at - 1] as string);
      });
    },
    'front',
  );
  each(
    'something listed that nobody uses',
    /(?<at>, )(?:tapestry|darning|wool|yarn) needle/i,
    (match) => group(match, 'at', () => ', cable needle, '),
    'front',
  );

  each(
    'gauge in stitches',
    /(?<n>\d{2}(?:\.5)?)(?= (?:sts|stitches)\b[^\n]{0,40}\b(?:cm|inch|in|rows|rnds|rounds)\b|(?: sts)? [+×] \d)/,
    (match) => [...group(match, 'n', (was) => more(was, 3)), ...group(match, 'n', (was) => more(was, -3))],
    'front',
  );
  each(
    'gauge in rows',
    /(?<n>\d{2})(?= (?:rows|rnds|rounds)\b[^\n]{0,50}\b(?:cm|inch|in|")|(?:rows|rnds|rounds) (?:=|to) )/,
    (match) => group(match, 'n', (was) => more(was, -12)),
    'front',
  );
  each('gauge without rows', /(?: and| \+| ×|,) \d{2} (?:rows|rnds|rounds)\b/, out, 'front');

  each(
    'measure of one size',
    new RegExp(`[(,/:–] ?(?<n>${number})(?=[^\\n(]{0,24}\\)? ?(?:cm|in|inches|")(?![a-z]))`),
    (match) => (aside.test(lineOf(match.index)) ? [] : group(match, 'n', another)),
    'front',
  );
  each(
    'measure of the only size',
    new RegExp(`(?<n>${number})(?= cm\\b)`),
    (match) => (aside.test(lineOf(match.index)) ? [] : group(match, 'n', another)),
    'front',
  );
  each('inches beside centimetres', new RegExp(`(?<n>${number})(?= ?cm ?[/(\\[] ?${number} ?(?:in|"))`), (match) =>
    group(match, 'n', another),
  );
  each('centimetres beside inches', new RegExp(`(?:in|inches|") ?[/(\\[] ?(?<n>${number})(?= ?cm)`), (match) => group(match, 'n', another));
  each(
    'metres beside yards',
    /(?<n>\d{2,4})(?= ?(?:yds?|yards?|m|metres|meters) ?[/([] ?\d{2,4} ?(?:yds?|yards?|m|metres|meters)\b)/,
    (match) => group(match, 'n', (was) => more(was, 30)),
  );

  each(
    'balls of one size',
    /(?<n>\d{1,2})(?=[)\]}]? (?:hanks?|skeins?|balls?)\b)/,
    (match) => group(match, 'n', (was) => String(Math.max(1, Number(was) - 3))),
    'front',
  );
  each(
    'metres of the whole',
    /(?<n>\d{3,4})(?= ?(?:m|metres|yds|yards) of\b)/,
    (match) => group(match, 'n', (was) => String(Number(was) * 3)),
    'front',
  );
  each('colour', /\b[Ww]ith (?<c>[A-D]|MC|CC\d?)\b/, (match) => group(match, 'c', () => 'E'), 'work');

  each('abbreviation left out', /^\| (?!Abb|---|k \||p \|)[a-z][\w&() ]{0,10}\|[^|\n]+\|\n/m, out, 'front');
  each('abbreviation left out', /^[-*] [a-z][\w&()]{0,8}(?::| –| —| =) [a-z][^\n]*\n/m, out, 'front');
  each(
    'abbreviation left out',
    /(?<=[;·] )(?:[a-z][\w&()]{0,7})(?::| –| —| =|,)? [a-z][a-z, ]{2,50}(?:;|·|$)/im,
    (match) => (/^\W*(?:abb|short)/i.test(lineOf(match.index)) ? out(match) : []),
    'front',
  );
  each(
    'definition',
    /(?<n>\b[123]|\bone|\btwo)(?= (?:sts?|stitch|stitches) (?:inc|dec)reased)/i,
    (match) => group(match, 'n', (was) => (was === '1' || /one/i.test(was) ? '2' : '1')),
    'front',
  );
  each(
    'definition',
    /\b[Kk](?:nit)? ?(?<n>2|two)(?= (?:sts |stitches )?tog)/,
    (match) => group(match, 'n', (was) => (was === '2' ? '3' : 'three')),
    'front',
  );
  each('definition', /to cable needle and hold [^\n]{0,20}?k(?<n>\d)/, (match) => group(match, 'n', (was) => more(was, 1)), 'front');

  each(
    'row referred to',
    /\b(?:as|As|AS) (?:for )?(?:row|Row|ROW|rnd|Rnd|round|Round) (?<n>\d{1,2})\b/,
    (match) => group(match, 'n', (was) => String(Number(was) + 31)),
    'work',
  );
  each(
    'rows referred to',
    /\b[Rr]ep(?:eat)? (?:[Rr]ows|[Rr]nds|[Rr]ounds) \d{1,2} ?(?:–|-|and|to|&) ?(?<n>\d{1,2})\b/,
    (match) => group(match, 'n', (was) => String(Number(was) + 2)),
    'work',
  );
  each(
    'piece referred to',
    /\b(?:as given for|as for|to match|as on) (?:the )?(?<name>[A-Z]?[a-z]+)\b/,
    (match) => group(match, 'name', (was) => (/^(?:body|back|front|sleeve)$/i.test(was) ? 'lining' : null)),
    'work',
  );
  each('mark left out', /(?<=[a-z.)] )\*\*(?= ?\n|$)/m, (match) => (/\bto \*\*/.test(source) ? out(match) : []), 'work');
  each('heading the rows speak of', /\bChart (?<name>[A-D])\b/, (match) => group(match, 'name', () => 'F'), 'work');
  // What no row uses is missed by nobody.
  const work = source.slice(begin);
  return slips.filter((slip) => {
    const term = slip.kind === 'abbreviation left out' ? /[A-Za-z][\w&]*/.exec(slip.was)?.[0] : undefined;
    return term === undefined || new RegExp(`\\b${term}`, 'i').test(work);
  });
}
