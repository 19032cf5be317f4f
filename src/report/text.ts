/**
 * The report an editor reads: what stops a knitter first, then questions to the author, then house style, each in the
 * order of the draft, and at the end what was not read. Plain text that survives mail.
 */
import type { Finding, Level } from '../../rules/rule.ts';
import type { Proof } from '../index.ts';
import type { ReportInput } from './input.ts';
import { cut, show, wrap } from './layout.ts';
import { countSentence, letStand, levelHeading, levels, nothingFound } from './levels.ts';
import { gaps } from './not-checked.ts';
import { type Paint, plainPaint } from './paint.ts';
import { hasSizes, inPlaceOrder, printedPath, rangeOf, sectionAt } from './place.ts';
import { plural } from './plural.ts';
import { type Digest, digestOf, type Report, whole } from './report.ts';
import { findingText, indent } from './text-finding.ts';

export interface TextOptions {
  /** Columns of the page. */
  readonly width: number;
  readonly paint: Paint;
}

export const plainText: TextOptions = { width: 80, paint: plainPaint };

/** The findings of every draft, drafts in the order given, and the sum of all. */
export const textReport = (options: TextOptions): Report<string> => ({
  part: (proof) => draftText(proof, options).join('\n'),
  assemble: ({ drafts }) => {
    const digests: Digest[] = [];
    return {
      add: (part, digest) => {
        digests.push(digest);
        return digests.length === 1 ? part : betweenDrafts(options) + part;
      },
      end: (unreadable) => [drafts > 1 ? `${betweenDrafts(options)}${allDrafts(digests, unreadable.length, options)}\n` : '\n'],
    };
  },
});

export const proofText = (input: ReportInput, options: TextOptions = plainText): string => whole(textReport(options), input);

export const betweenDrafts = ({ width }: TextOptions): string => `\n\n${'─'.repeat(width)}\n\n`;

function draftText(proof: Proof, { width, paint }: TextOptions): readonly string[] {
  return [
    ...titleLines(proof, width, paint),
    ...findingLines(proof, width, paint),
    ...notReadLines(proof, width, paint),
    ...notCheckedLines(proof, width, paint),
    '',
    ...closing(proof, width),
  ];
}

function titleLines(proof: Proof, width: number, paint: Paint): readonly string[] {
  const path = show(printedPath(proof.path));
  const title = show(proof.pattern.title);
  const names = proof.pattern.sizes.map(show);
  const sizes = hasSizes(proof) ? `${names.length === 1 ? 'Size' : 'Sizes'} ${names.join(', ')}. ` : '';
  return [
    ...(title === '' ? [] : wrap(title, width).map((line) => paint.strong(line))),
    path,
    ...wrap(`${sizes}${readingWords(proof)}`, width),
  ];
}

/** "412 of 415 steps read." */
export function readingWords(proof: Proof): string {
  const { steps, read } = proof.pattern.reading;
  if (steps > 0) return `${read} of ${plural(steps, 'step')} read.`;
  return proof.manuscript.source.trim() === '' || proof.manuscript.source === '\ufeff'
    ? 'The draft is empty: there is nothing to check.'
    : 'The draft instructs nothing: no rows were found to check.';
}

function findingLines(proof: Proof, width: number, paint: Paint): readonly string[] {
  const lines: string[] = [];
  let number = 0;
  for (const level of levels) {
    const found = inPlaceOrder(proof.findings.filter((finding) => finding.level === level));
    if (found.length === 0) continue;
    lines.push('', heading(level, found, paint));
    for (const finding of found) {
      number += 1;
      lines.push('', ...findingText(proof, finding, number, width, paint));
    }
  }
  return lines;
}

function heading(level: Level, found: readonly Finding[], paint: Paint): string {
  return paint.strong(paint.level(`${levelHeading[level].toUpperCase()} (${found.length})`, level));
}

function notReadLines(proof: Proof, width: number, paint: Paint): readonly string[] {
  const { notRead } = proof.pattern.reading;
  if (notRead.length === 0) return [];
  const lines = notRead.map((unread) => {
    const at = `line ${rangeOf(proof.manuscript, unread.span).line}`.padEnd(10);
    const section = show(sectionAt(proof, unread.span.start));
    const place = section === '' ? '' : `${cut(section, 24)}: `;
    return `${indent}${cut(`${at}${place}"${show(unread.text).trim()}"`, width - indent.length)}`;
  });
  return ['', paint.strong(`NOT READ (${notRead.length})`), ...lines];
}

/** Gaps that no passage stands for: a missing gauge, counts that are not known, pictures. */
function notCheckedLines(proof: Proof, width: number, paint: Paint): readonly string[] {
  const sentences = gaps(proof);
  if (sentences.length === 0) return [];
  const inner = width - indent.length;
  return [
    '',
    paint.strong('NOT CHECKED'),
    ...sentences.flatMap((sentence) => wrap(`– ${show(sentence)}`, inner, '  ').map((line) => indent + line)),
  ];
}

/** What was found and how far the reading went; never that the pattern is right. */
function closing(proof: Proof, width: number): readonly string[] {
  const { steps, notRead } = proof.pattern.reading;
  const digest = digestOf(proof);
  const standing = letStand(digest).flatMap((sentence) => wrap(sentence, width));
  if (proof.findings.length > 0) {
    const rest = notRead.length === 0 ? [] : wrap(unreadWords(notRead.length), width);
    return [...wrap(countSentence(digest.found), width), ...rest, ...standing];
  }
  if (steps === 0) return ['Nothing was checked.', ...standing];
  const inSizes = hasSizes(proof) ? ` in ${plural(proof.pattern.sizes.length, 'size')}` : '';
  const rest = notRead.length === 0 ? '.' : `; ${unreadWords(notRead.length)}`;
  const none = `${nothingFound(digest)} in ${plural(proof.pattern.reading.read, 'step')}${inSizes}${rest}`;
  return [...wrap(none, width), ...standing];
}

function unreadWords(count: number): string {
  return count === 1 ? '1 step was not read and not checked.' : `${count} steps were not read and not checked.`;
}

function allDrafts(digests: readonly Digest[], unreadable: number, { width }: TextOptions): string {
  const sum = (many: (digest: Digest) => number) => digests.reduce((total, digest) => total + many(digest), 0);
  const notRead = sum((digest) => digest.notRead);
  const parts = [
    `${plural(digests.length, 'draft')} proofed.`,
    ...(unreadable === 0 ? [] : [`${plural(unreadable, 'draft')} could not be proofed.`]),
    countSentence({
      error: sum(({ found }) => found.error),
      query: sum(({ found }) => found.query),
      style: sum(({ found }) => found.style),
    }),
    ...(notRead === 0 ? [] : [unreadWords(notRead)]),
    ...letStand({ known: sum(({ known }) => known), withheld: sum(({ withheld }) => withheld) }),
  ];
  return parts.flatMap((part) => wrap(part, width)).join('\n');
}
