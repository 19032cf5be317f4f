/** Whether words begin an instruction beyond doubt. A cue only: the grammar reads the instruction itself. */

/** "Row 3 (RS):", "1st row", "Next rnd.", "Inc Row 2:", "Rows 1–4" at the start. */
const rowLabel =
  /^\s*(?:\*{0,3}\s*)?(?:(?:next|set-?up|foundation|inc|dec|increase|decrease|rib|dividing|buttonhole|joining|pattern|first|last|moss|cuff|cord|short)\s+){0,3}(?:st\s+)?(?:rows?|rnds?|rounds?)\b\s*(?:\d|\(|[:.,]|and\b)/i;
const ordinalLabel = /^\s*\d{1,3}(?:st|nd|rd|th)\s+(?:(?:and|to)\s+\d|(?:row|rnd|round)\b)/i;
/** "CO 36 sts", "Cast on 98 [110: 122] sts", "With smaller needle, CO 112", "Using 4 mm needles cast on 60". */
const castOn = /^\s*(?:(?:with|using)\b[^\n]{0,80}?,?\s)?(?:co|cast\s+on|pick\s+up\s+and\s+k(?:nit)?)\s+(?:\d|one\b|two\b|three\b|\(|\[)/i;
const repeats =
  /^\s*(?:rep|repeat|work|cont|continue|bo|bind\s+off|cast\s+off|change\s+to|beg|dec|inc|knit|purl|join)\s+(?:\S+\s+){0,4}?(?:rows?|rnds?|rounds?|sts?|needles?|until|with\s+a\s+k|straight|even)\b/i;

/** `key`: the words stand in a list of abbreviations, where "rep – repeat. rnd – round" is no instruction. */
export function isInstruction(text: string, key = false): boolean {
  const head = text.slice(0, 160);
  if (key) return /^\s*(?:rows?|rnds?|rounds?)\s\d/i.test(head) || castOn.test(head);
  return rowLabel.test(head) || ordinalLabel.test(head) || castOn.test(head) || repeats.test(head);
}

/** A row label anywhere: "**Buttonhole row (RS):**" inside a note. */
export function holdsRow(text: string): boolean {
  return /(?:^|[.\n]\s{0,4}|\b(?:inc|dec|buttonhole|next|rib|set-?up)\s)(?:rows?|rnds?|rounds?)\s{0,2}\d{0,3}\s{0,2}(?:\([^)\n]{1,30}\)\s{0,2})?:/i.test(
    text,
  );
}
