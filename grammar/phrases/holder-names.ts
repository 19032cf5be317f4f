/** Whose stitches a phrase speaks of, from its words: the holder, the piece or the pocket they wait for. */

/** The place a holder is named after: "front neck" of "from front neck holder", '' of "on holder"; null when no holder is named. */
export function holderNamed(words: string): string | null {
  const match =
    /\b(?:from|on|of|left on|held on)(?: the| a)? ([a-z ]*?)\s*(?:st(?:itch)? )?(?:holder|safety pin|pin|spare needle|waste yarn|thread)\b/.exec(
      words,
    );
  return match === null ? null : (match[1] ?? '').trim();
}

/** "front" of "k82 front sts from holder", "left front" of "return held 30 left front sts": whose stitches they are; null when no words say so. */
export function ownerNamed(words: string): string | null {
  const match =
    /^[a-z]+?(?=\d|\b)\s*(?:across |over |back )?(?:the )?(?:held |rem(?:aining)? |first |next |all )*(?:[\d([][\d ,:;()[\]–-]*)?(?:held )?([a-z][a-z ]*?) (?:sts|stitches)\b/.exec(
      words,
    );
  const name = match?.[1]
    ?.replace(/\b(?:held|the|rem|remaining|all|these|those|first|next|last|centre|center|marked|waiting)\b/g, '')
    .trim();
  return name === undefined || name === '' || /^(?:st|up|to|of|and|across|over|back|in|on|from)\b/.test(name) ? null : name;
}

/** Whether the words speak of the stitches of a pocket lining: "k 24 lining sts", "p across 20 sts of pocket back". */
export function liningNamed(words: string): boolean {
  return /\b(?:linings?|pocket (?:backs?|bags?|sts|stitches))\b/.test(words) && /\b(?:sts|stitches|linings?)\b/.test(words);
}
