/** The known word that somebody most likely meant. */

/**
 * The nearest of the known words, or null where none is near: at most a third of the word may differ, counting each
 * letter added, left out, changed, or swapped with its neighbour as one difference. A word cut short counts as near.
 */
export function nearest(word: string, known: readonly string[]): string | null {
  const wanted = word.toLowerCase().slice(0, 60);
  let best: string | null = null;
  let bestDistance = Math.max(1, Math.floor(wanted.length / 3)) + 1;
  for (const candidate of known) {
    const lower = candidate.toLowerCase();
    const isBeginning = wanted.length >= 3 && (lower.startsWith(wanted) || (wanted.startsWith(lower) && lower.length >= 3));
    const distance = isBeginning ? 1 : difference(wanted, lower);
    if (distance < bestDistance) {
      best = candidate;
      bestDistance = distance;
    }
  }
  return best;
}

function difference(from: string, to: string): number {
  let twoBack: number[] = [];
  let back = Array.from({ length: to.length + 1 }, (_, index) => index);
  for (let i = 1; i <= from.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= to.length; j += 1) {
      const same = from[i - 1] === to[j - 1];
      let least = Math.min((back[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (back[j - 1] ?? 0) + (same ? 0 : 1));
      if (i > 1 && j > 1 && from[i - 1] === to[j - 2] && from[i - 2] === to[j - 1]) least = Math.min(least, (twoBack[j - 2] ?? 0) + 1);
      row.push(least);
    }
    twoBack = back;
    back = row;
  }
  return back[to.length] ?? 0;
}
