/**
 * Character for character: what a passage shows in place of what the author's word processor or Markdown put there.
 * Every replacement is as long as what it replaces, so offsets hold.
 */

const straight: Readonly<Record<string, string>> = {
  '‘': "'",
  '’': "'",
  '‚': "'",
  '‛': "'",
  '′': "'",
  '“': '"',
  '”': '"',
  '„': '"',
  '‟': '"',
  '″': '"',
};

/** Tab, no-break, thin and other spaces of Unicode (category Zs), zero-width spaces and a mark inside the text. */
const otherSpaces = /[\t\u00a0\u1680\u2000-\u200b\u202f\u205f\u2060\u3000\ufeff]/;

const punctuation = /[!-/:-@[-`{-~]/;

/** One character as a passage shows it. `next` tells a lone carriage return, which ends a line, from one before `\n`. */
function plain(character: string, next: string | undefined): string {
  if (character === '\r') return next === '\n' ? ' ' : '\n';
  if (otherSpaces.test(character)) return ' ';
  return straight[character] ?? character;
}

/** Plain quotes, spaces and line ends throughout. `characters` is one UTF-16 unit per place and is changed. */
export function plainCharacters(characters: string[]): void {
  for (let at = 0; at < characters.length; at++) {
    const character = characters[at] ?? '';
    if (character < ' ' || character > '~') characters[at] = plain(character, characters[at + 1]);
  }
}

/**
 * Takes the backslash off every escape (`\*`, and `\` at a line end) and tells which characters it protected: those
 * stand for themselves and never open or close emphasis.
 */
export function liftEscapes(characters: string[]): ReadonlySet<number> {
  const protectedPlaces = new Set<number>();
  for (let at = 0; at < characters.length; at++) {
    if (characters[at] !== '\\') continue;
    const next = characters[at + 1];
    if (next === '\n' || (next === ' ' && characters[at + 2] === '\n')) characters[at] = ' ';
    else if (next !== undefined && punctuation.test(next)) {
      characters[at] = ' ';
      protectedPlaces.add(at + 1);
      at++;
    }
  }
  return protectedPlaces;
}

const lineBreakTag = /<br[ ]?\/?>|&nbsp;/gi;

/** A line break tag, as tables need it, becomes a line end; a written-out no-break space becomes blanks. */
export function liftTags(characters: string[], source: string): void {
  if (!source.includes('<') && !source.includes('&')) return;
  for (const match of source.matchAll(lineBreakTag)) {
    characters.fill(' ', match.index, match.index + match[0].length);
    if (match[0].startsWith('<')) characters[match.index] = '\n';
  }
}
