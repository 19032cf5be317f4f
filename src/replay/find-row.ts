/** Which row of the sheet a reader means by "Body 17", "Row 5", "Yoke: Dec Rnd" or "Next row". */
import type { Proof } from '../index.ts';
import { entryOf } from '../report/sum.ts';
import type { Entry } from './replay.ts';

type Finding = Proof['findings'][number];

const small = new Set(['the', 'of', 'a', 'in', 'and', 'for']);

/** Words of a name, without regard to case; every word for a row or a round is the same. */
function wordsOf(text: string): string[] {
  return text
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '' && !small.has(word))
    .map((word) => (/^(rows?|rnds?|rounds?|r)$/.test(word) ? 'row' : word.replace(/^(inc|dec)(rease)?$/, '$1')));
}

/**
 * "Row 17" of "Crown" as one or more places in the sheet, the likeliest entry first; empty when there is none. The heading
 * of a finding leads there too: "Crown · Rnd 7 · size L", "Thumb", "line 57".
 */
export function findEntries(proof: Proof, asked: string, size: number): number[] {
  const line = /^\s*line (\d+)\s*$/i.exec(asked)?.[1];
  if (line !== undefined) return onLine(proof, Number(line));
  const place = asked.replace(/(?<=\S)\s*[·,]?\s*\b(?:every size|sizes? [^·]*)$/i, '');
  const found = byLabel(proof, place, size);
  return found.length > 0 ? found : underHeading(proof, place);
}

/** Entries worked from a line, or whose words stand on it; first those that a finding speaks of. */
function onLine(proof: Proof, line: number): number[] {
  const { entries } = proof.replay;
  const { place } = proof.manuscript;
  const here = [...entries.keys()].filter((index) => {
    const { span, textSpan } = entries[index] as Entry;
    return place(span.start).line === line || place(textSpan.start).line === line;
  });
  const found = ofFindings(proof, (finding) => place(finding.span.start).line === line).filter((index) => here.includes(index));
  return [...new Set([...found, ...here])];
}

/** A heading alone: the row that a finding under it speaks of, or else its first row. */
function underHeading(proof: Proof, asked: string): number[] {
  const wanted = wordsOf(asked);
  if (wanted.length === 0) return [];
  const { entries } = proof.replay;
  const here = [...entries.keys()].filter((index) => {
    const title = wordsOf(proof.pattern.sections[(entries[index] as Entry).section]?.title ?? '');
    return wanted.length === title.length && wanted.every((word, at) => word === title[at]);
  });
  const found = ofFindings(proof, () => true).filter((index) => here.includes(index));
  const rows = here.filter((index) => entries[index]?.unit !== 'step');
  return [...new Set([...found, ...rows, ...here])];
}

/** Entries that findings speak of, the gravest level first. */
function ofFindings(proof: Proof, wanted: (finding: Finding) => boolean): number[] {
  return (['error', 'query', 'style'] as const).flatMap((level) =>
    proof.findings
      .filter((finding) => finding.level === level && wanted(finding))
      .map((finding) => entryOf(proof, finding))
      .flatMap((entry) => (entry === null ? [] : [proof.replay.entries.indexOf(entry)])),
  );
}

function byLabel(proof: Proof, asked: string, size: number): number[] {
  const wanted = wordsOf(asked);
  if (wanted.length === 0) return [];
  const { entries } = proof.replay;
  let best: number[] = [];
  let bestScore = 0;
  entries.forEach((entry, index) => {
    const score = scoreOf(wanted, wordsOf(entry.label), wordsOf(proof.pattern.sections[entry.section]?.title ?? ''));
    if (score <= 0 || score < bestScore) return;
    if (score > bestScore) best = [];
    bestScore = score;
    best.push(index);
  });
  // The same row worked several times: first the place where it stands, in a size that works it.
  const rank = (index: number): number => {
    const entry = entries[index];
    if (entry === undefined) return 9;
    return (entry.before[size] === null && entry.afterPerRepeat === null ? 2 : 0) + (entry.span.start === entry.textSpan.start ? 0 : 1);
  };
  return best.sort((a, b) => rank(a) - rank(b) || a - b);
}

const isNumber = (word: string) => /^\d+$/.test(word);

/** Higher is nearer; nought where a word asked for is met by neither the row nor its section. */
function scoreOf(wanted: readonly string[], label: readonly string[], section: readonly string[]): number {
  const inLabel = new Set(label);
  const inSection = new Set(section);
  let score = 1000;
  let named = false;
  for (const word of wanted) {
    if (inLabel.has(word)) {
      score += 20;
      named = true;
    } else if (inSection.has(word)) score += 12;
    else if (word === 'row') score -= 1;
    else if (word.length >= 3 && !isNumber(word) && label.some((each) => each.startsWith(word))) {
      score += 10;
      named = true;
    } else if (word.length >= 3 && !isNumber(word) && section.some((each) => each.startsWith(word))) score += 6;
    else return 0;
  }
  if (!named) return 0;
  // "17" alone must not find "Row 1 … 17" by its section, and "Row 5" is not "Dec row 5".
  const extra = label.filter((word) => word !== 'row' && !wanted.includes(word)).length;
  return score - extra * 4 - section.filter((word) => !wanted.includes(word)).length * 0.01;
}
