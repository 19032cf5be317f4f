/** The three levels of a finding, in the words of an editor and in the words of other formats. */
import type { Level } from '../../rules/rule.ts';

/** From the gravest to the mildest; also the order in which a report prints them. */
export const levels: readonly Level[] = ['error', 'query', 'style'];

/** As a report numbers them: the gravest first, and within a level in the order given. */
export function byLevel<Each extends { readonly level: Level }>(findings: readonly Each[]): Each[] {
  return levels.flatMap((level) => findings.filter((finding) => finding.level === level));
}

export const levelHeading: Readonly<Record<Level, string>> = {
  error: 'Stops the knitter',
  query: 'Questions to the author',
  style: 'House style',
};

/** Whether a finding of this level fails a run whose gate stands at `gate`. */
export function atGate(level: Level, gate: Level): boolean {
  return levels.indexOf(level) <= levels.indexOf(gate);
}

/** "2 places stop the knitter, 1 question to the author, no remark on house style." */
export function countSentence({ error: errors, query: queries, style: styles }: Readonly<Record<Level, number>>): string {
  const parts = [
    errors === 1 ? '1 place stops the knitter' : `${errors || 'no'} ${errors === 0 ? 'place stops' : 'places stop'} the knitter`,
    `${queries || 'no'} ${queries > 1 ? 'questions' : 'question'} to the author`,
    `${styles || 'no'} ${styles > 1 ? 'remarks' : 'remark'} on house style`,
  ];
  const sentence = parts.join(', ');
  return `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.`;
}

interface Standing {
  readonly known: number;
  readonly withheld: number;
}

/** What is found and yet not repeated, one sentence for each reason. */
export function letStand({ known, withheld }: Standing): string[] {
  const many = (count: number) => (count === 1 ? '1 finding is' : `${count} findings are`);
  return [
    ...(known === 0 ? [] : [`${many(known)} known from the record and not repeated.`]),
    ...(withheld === 0 ? [] : [`${many(withheld)} let stand by the draft itself.`]),
  ];
}

/** Where something is known or let stand, a green light must not look as if nothing were there. */
export function nothingFound({ known, withheld }: Standing): string {
  if (known > 0) return 'No new contradiction found';
  return withheld > 0 ? 'No other contradiction found' : 'No contradiction found';
}
