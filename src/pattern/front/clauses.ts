/** Text cut into clauses where a list of materials divides them, each with its offset; brackets and decimal points hold together. */

export interface Clause {
  readonly text: string;
  /** Offset within the text that was cut. */
  readonly at: number;
}

/** Shortened words whose full stop ends no sentence. */
const shortened = /\b(?:no|nos|approx|in|ins|yd|yds|oz|st|sts|rnd|rnds|circ|dp|dpn|dpns|cm|mm|incl|e\.g|i\.e|inc|u\.s|u\.k|u|s|k)$/i;

export function clausesOf(text: string, commas: boolean): readonly Clause[] {
  const found: Clause[] = [];
  let from = 0;
  let depth = 0;
  const close = (to: number): void => {
    const piece = text.slice(from, to);
    const lead = piece.length - piece.trimStart().length;
    if (piece.trim() !== '') found.push({ text: piece.trim(), at: from + lead });
    from = to + 1;
  };
  for (let at = 0; at < text.length; at += 1) {
    const letter = text[at]!;
    if (letter === '(' || letter === '[') depth += 1;
    else if (letter === ')' || letter === ']') depth = Math.max(0, depth - 1);
    else if (letter === '\n') {
      depth = 0;
      close(at);
    } else if (depth > 0) continue;
    else if (letter === ';' || letter === '•' || letter === '·' || letter === '|') close(at);
    else if (letter === ',' && commas && !(/\d/.test(text[at - 1] ?? '') && /\d/.test(text[at + 1] ?? ''))) close(at);
    else if (letter === '.' && /^(\s|$)/.test(text.slice(at + 1, at + 2)) && !endsShort(text, at)) close(at);
  }
  close(text.length);
  return found;
}

function endsShort(text: string, at: number): boolean {
  if (!shortened.test(text.slice(Math.max(0, at - 8), at))) return false;
  // A capital after the stop begins a sentence: "30 cm. Wool needle."
  return !/^\.?\s{1,3}[A-Z]/.test(text.slice(at, at + 5)) || /\b(?:no|approx)$/i.test(text.slice(Math.max(0, at - 8), at));
}
