/**
 * What a reference names, from its words: the piece, the part of it that is shaped alike, whether it is mirrored, how
 * many more are made.
 *
 *     shape armholes as given for Back · work right front as a mirror image of left front · make the second sleeve exactly like the first
 */

const alike = String.raw`(?:exactly |just |worked |made )?(?:in )?(?:the )?(?:same (?:way |manner )?as|as|like)`;
const given = String.raw`(?:(?:was |were |is |are )?(?:given|worked|set|written|instructed|described|done|told) )?(?:(?:for|in|on|of) )?(?:the )?`;
const pieces = String.raw`(?:sleeve|sock|mitten|glove|piece|pocket|strap|slipper|cuff|wing|ear|leg|motif|square|one|lining|flap|band)`;

/** "Shape armholes as given for Back", "Work raglan shaping as on Back", "Shape shoulders to match Back": the part and the piece. */
export function partAsIn(words: string): { part: string; piece: string } | null {
  const text = words.toLowerCase().replace(/\s+/g, ' ');
  const match =
    new RegExp(
      `^(?:shape|shaping) (?:the )?([a-z ]+?) (?:${alike} ${given}|to (?:match|correspond (?:with|to)) (?:the )?)([a-z ]+?)(?= until\\b| to \\*| to \\d|,|\\.|;|$)`,
    ).exec(text) ??
    new RegExp(
      `^work (?:the )?([a-z ]+? shapings?) (?:${alike} ${given}|to match (?:the )?)([a-z ]+?)(?= until\\b| to \\*| to \\d|,|\\.|;|$)`,
    ).exec(text);
  if (match === null || match[1] === undefined || match[2] === undefined) return null;
  if (/\b(?:follows?|foll|set|before|established|rows?|rnds?|chart|side)\b/.test(match[2])) return null;
  return { part: match[1].trim(), piece: match[2].trim() };
}

/** "Front is worked exactly as the Back up to **", "Knit the Front in the same way as the Back": told with the piece in front. */
export function pieceTold(words: string): boolean {
  const text = words.toLowerCase().replace(/\s+/g, ' ');
  return (
    new RegExp(
      `^(?:the |this )?(?:[a-z]+ ){0,3}(?:is|are) (?:also |then |now )?(?:worked|made|knitted|knit|completed) ${alike} (?:given )?(?:for )?(?:the )?[a-z]`,
    ).test(text) ||
    /^(?:knit|make) (?:one|1|two|2) (?:more )?(?:[a-z]+ ){1,3}?(?:exactly |worked )?(?:as|like)(?: given)?(?: for| on)? (?:the )?[a-z]/.test(
      text,
    ) ||
    /^(?:knit|make|work) (?:the )?[a-z ]{2,24} in the same (?:way|manner) as (?:the )?[a-z]/.test(text) ||
    /^(?:foll(?:ow)?|following|work from|use|as per) (?:the )?(?:same )?(?:instructions|directions|pattern) (?:given )?(?:for|of|as for) (?:the )?[a-z]/.test(
      text,
    )
  );
}

/** "Knit another sleeve the same", "Make one more piece like this", "Work a second one to match": one more of them; its name, '' where none is told. */
export function oneMore(words: string): string | null {
  const text = words.toLowerCase().replace(/\s+/g, ' ').replace(/[.;]$/, '');
  const match = new RegExp(
    `^(?:knit|make|work|complete) (?:a |the )?(?:another|second|2nd|other|one more) (?:more )?(?:(${pieces})s? )?(?:to (?:match|correspond)|(?:exactly |just )?(?:like|as) (?:this|it|the (?:first|other|1st)|before)|in (?:the )?(?:same|like) (?:way|manner)|the same(?: way)?|alike|in reverse)(?: \\(?.*)?$`,
  ).exec(text);
  if (match === null) return null;
  const name = match[1] ?? '';
  return name === 'one' || name === 'piece' ? '' : name;
}

/** "Knit a second front in reverse": the front once more, mirrored. */
export function mirroredPiece(words: string): string | null {
  return (
    /^(?:knit|make|work) (?:a |the )?(?:second|other|2nd) ([a-z]+) (?:in reverse|in mirror image|as a mirror image|mirrored)\b/i.exec(
      words.replace(/\s+/g, ' '),
    )?.[1] ?? null
  );
}

/** "Until armhole shaping is completed", "until the neck shaping has been worked": the stage; null for another goal. */
export function stageDone(goal: string): string | null {
  return /^(?:the )?([a-z ]+?) (?:is|are|has been|have been|was) (?:completed?|finished|done|worked)$/i.exec(goal.trim())?.[1] ?? null;
}

/** Words of the manner behind the name of a piece that are no part of it. */
export function plainName(name: string): string {
  return name
    .replace(/^(?:a |the )?mirror image of (?:the )?/, '')
    .replace(/(?:^|,| )(?:but|with|and|working|reversing|except|in (?:reverse|mirror)|as a mirror)\b.*$/, '')
    .trim();
}

/** Whether the words turn the piece round: shapings reversed, a mirror image, a row more or fewer before them. */
export function mirrored(words: string): boolean {
  return /\brevers(?:e|ed|ing)\b|\bmirror(?:ed|ing)?\b|\bopposite (?:ends?|edges?|sides?)\b|\bworking (?:1|one) row (?:more|less|fewer)\b|\b(?:1|one) (?:extra row|row (?:more|less|fewer)) (?:must be|is|has to be)/i.test(
    words,
  );
}
