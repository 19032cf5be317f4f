/** What a heading says of the section below it. Its words give a hint; what stands below decides. */
import type { Section } from './pattern.ts';

const front =
  /\b(materials?|gauge|tension|abbreviations?|notes?|sizes?|measurements?|needles?|yarns?|notions|you will need|requirements|equipment|before you (start|begin)|technique|techniques|cautions?|safety|construction|special (stitches|abbreviations)|stitch (guide|glossary)|glossary|skill level|difficulty|introduction|about|schematic|dimensions|finished size|to fit|key|legend|trying them out|tips|credits|copyright|support|errata|charts?)\b/i;
const finishing = /^(finishing|making up|to make up|make up|to finish|blocking|assembly|to complete|completion|joining|aftercare|care)\b/i;
const stitches = /\b(stitch patterns?|pattern stitch(es)?|stitch cards?|lace pattern|cable pattern|patterns? used|edging pattern)\b/i;
const piece =
  /\b(back|fronts?|left front|right front|sleeves?|body|yoke|neckband|collar|hood|band|buttonband|button band|pocket|cuff|cuffs|leg|foot|heel|toe|brim|crown|hat|cowl|scarf|shawl|blanket|square|thumb|hand|mitten|mittens|glove|strap|cord|border|edging|gusset|tab|wedges?|skirt|bodice|panel|motif|ear|head|arm|tail|lining|bonnet|bag|cushion)\b/i;
const stage =
  /^(?:(?:left |right )?(?:back|front) (?:neck|armholes?|shoulders?)(?: shaping)?(?=$)|shape|shaping|divide|dividing|join|joining|work|begin|beginning|set-?up|decrease|increase|continue|next|transition|turn|sizes?\b.*\bonly|all sizes|for)(?=\W|$)/i;

/** The kind a title suggests. */
export function titleKind(title: string): Section['kind'] {
  const words = title.trim();
  if (finishing.test(words)) return 'finishing';
  if (stage.test(words)) return 'stage';
  if (stitches.test(words)) return 'stitches';
  if (front.test(words) && !piece.test(words.replace(/\bsizes?\b.*/i, ''))) return 'front';
  if (piece.test(words)) return 'piece';
  return 'stage';
}

/** "(make 2)", "(both alike)". */
export function titleTimes(title: string): number {
  const match = /\bmake (\d+|two|three|four|six|eight)\b/i.exec(title);
  if (match) {
    const words: Record<string, number> = { two: 2, three: 3, four: 4, six: 6, eight: 8 };
    return words[match[1]?.toLowerCase() ?? ''] ?? Number(match[1]);
  }
  return /\b(both|worked) alike\b/i.test(title) ? 2 : 1;
}

/** Whether a paragraph on its own is a heading in all but its marks: "Shape armholes", "BACK". */
export function looksLikeTitle(text: string): boolean {
  const words = text.trim();
  if (words === '' || words.length > 60 || /[.;,!?*=]|\d\s*(sts?|rows?|cm|in)\b/.test(words) || /\n/.test(words)) return false;
  const body = words
    .replace(/\(.*?\)/g, '')
    .replace(/:$/, '')
    .trim();
  if (body.split(/\s+/).length > 7) return false;
  if (
    /^(knit|purl|k|p|turn|work|cont|continue|cast|bind|bo|co|rep|repeat|change|break|join|place|slip|do|weave|sew|block|fasten|graft|dec|inc|rows?|rnds?|rounds?|next)\b/i.test(
      body,
    ) &&
    !/^(join(ing)? (body|sleeves|for)|work (sleeves|body)|divid|turn the heel|turn heel)/i.test(body)
  )
    return false;
  return /^[A-Z]/.test(body) || body === body.toUpperCase();
}
