/** The questions to the author as text for a mail; each can be answered by yes, no or a number. */
import type { Finding } from '../../../rules/rule.ts';
import type { Proof } from '../../index.ts';
import { byLevel } from '../levels.ts';
import { inPlaceOrder, placeWords, rangeOf } from '../place.ts';

/** One question: where, what, and how to answer. `number` is that of the finding in the report. */
export function queryText(proof: Proof, finding: Finding, number: number): string {
  const place = placeWords(proof, finding) || 'The draft as a whole';
  const line = rangeOf(proof.manuscript, finding.span).line;
  return [
    `${number}. ${place} (line ${line})`,
    `   ${oneLine(finding.message)}`,
    ...(finding.evidence ?? []).map((sentence) => `   ${oneLine(sentence)}`),
    ...answerLines(proof, finding),
  ].join('\n');
}

const oneLine = (text: string) => text.replace(/\s+/g, ' ').trim();

function answerLines(proof: Proof, finding: Finding): string[] {
  if (finding.fix !== null) {
    const was = oneLine(proof.manuscript.source.slice(finding.fix.span.start, finding.fix.span.end));
    const { text } = finding.fix;
    const ask =
      was === '' ? `Shall I add "${text}"?` : text === '' ? `Shall I take out "${was}"?` : `Shall I change "${was}" to "${text}"?`;
    return [`   ${ask} (yes / no)`];
  }
  const fits = finding.wouldFit ?? [];
  if (fits.length > 1)
    return [
      `   Which is meant?`,
      ...fits.map((edit, index) => `     ${index + 1} – ${oneLine(edit)}`),
      `   (${fits.map((_, index) => index + 1).join(' / ')}, or 0 for none of them)`,
    ];
  if (fits.length === 1) return [`   Shall I write: ${oneLine(fits[0] ?? '')}? (yes / no)`];
  if (typeof finding.stated === 'number' && typeof finding.replayed === 'number') {
    return [`   Which number is right, ${finding.stated} or ${finding.replayed}? (the number)`];
  }
  const question = /(?:^|[.:;] )([A-Z][^.?]*)\?$/.exec(finding.message.trim())?.[1];
  if (question !== undefined) return [/^(?:Which|What|How)\b/.test(question) ? '   (the number, or the words in short)' : '   (yes / no)'];
  return ['   Shall I leave it as it stands? (yes / no, or the number that is meant)'];
}

/** The mail: every place that stops the knitter, then every question, numbered as in the report. House style is not the author's to answer. */
export function queriesText(proof: Proof): string {
  const ordered = byLevel(inPlaceOrder(proof.findings));
  const asked = ordered.filter((finding) => finding.level !== 'style');
  if (asked.length === 0) return '';
  const title = proof.pattern.title === '' ? 'your pattern' : proof.pattern.title;
  return [
    `Questions on ${oneLine(title)}`,
    '',
    ...asked.map((finding) => `${queryText(proof, finding, ordered.indexOf(finding) + 1)}\n`),
    'What I hear nothing about I leave as it is.',
    '',
  ].join('\n');
}
