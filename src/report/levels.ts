/** The three levels of a finding, in the words of an editor and in the words of other formats. */
import type { Level } from '../../rules/rule.ts';

/** From the gravest to the mildest; also the order in which a report prints them. */
export const levels: readonly Level[] = ['error', 'query', 'style'];

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
export function countSentence(found: readonly Level[]): string {
  const many = (level: Level) => found.filter((each) => each === level).length;
  const errors = many('error');
  const queries = many('query');
  const styles = many('style');
  const parts = [
    errors === 1 ? '1 place stops the knitter' : `${errors || 'no'} ${errors === 0 ? 'place stops' : 'places stop'} the knitter`,
    `${queries || 'no'} ${queries > 1 ? 'questions' : 'question'} to the author`,
    `${styles || 'no'} ${styles > 1 ? 'remarks' : 'remark'} on house style`,
  ];
  const sentence = parts.join(', ');
  return `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.`;
}
