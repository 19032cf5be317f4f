/** Clauses of the making up and of the placing of buttonholes: they tell what to do and change no stitch on the needles. */
const clauses: readonly RegExp[] = [
  /^(?:make|work) (?:an? |\d+ |two |three |some )?(?:twisted |crochet(?:ed)? |plaited |matching |long |large |small )*(?:pom-?poms?|tassels?|cords?|fringes?|plaits?|ties?|drawstrings?)\b/i,
  /^attach(?:ing)? (?:the )?(?:buttons?|beads?|pom-?poms?|tassels?|zips?|zippers?|ribbons?|poppers?|snaps?|pockets?|labels?|lining|hooks?)\b/i,
  /^crochet\b/i,
  /^(?:work|make) (?:an? |\d+ (?:row|rnd|round)s? (?:of )?)?(?:crab stitch|slip-?stitch (?:chain|edging)|crochet edging|double crochet|dc\b|single crochet|sc\b)/i,
  /^fold(?:ing)? (?:the )?(?:hem|neckband|band|collar|cuffs?|facing|welt|edge)\b[^,;]*\b(?:sew|stitch|hem|inside|wrong side|in half)\b/i,
  /^(?:work|make|place|position|space|spacing|placing|working|making) (?:the |all )?(?:first|last|top|bottom|lowest|remaining|other) buttonholes?\b/i,
  /^(?:place|position|space|spacing|placing) (?:the |\d+ )?buttonholes? (?:on|at|in|evenly|to)\b/i,
  /^(?:make|work) (?:the |\d+ (?:more )?)?buttonholes (?:to|at|in) (?:match|correspond|position|pos|same|these)\b/i,
];

/** Whether the clause orders something that no row and no count depends on. */
export function makesUp(clause: string): boolean {
  const words = clause.replace(/\s+/g, ' ');
  return clauses.some((form) => form.test(words));
}

/** "Work the first buttonhole 4 rows from lower edge, the last 2 rows from top edge and the rest evenly between": one saying to its full stop. */
export const wholeSaying = (words: string): boolean =>
  /^(?:work|make|place|position) (?:the )?(?:first|last|top|lowest) buttonhole\b[^.]*,[^.]*\b(?:last|first|rest|rem|remaining|others?)\b/i.test(
    words.replace(/\s+/g, ' '),
  );
