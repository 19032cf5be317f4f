/** Which needle the instructions work with, as far as they say: "using 3¼ mm needles", "change to larger needles". */
import type { Span } from '../../src/manuscript/manuscript.ts';
import type { Needle } from '../../src/pattern/front/front-matter.ts';
import { printedNumberAt } from '../../src/pattern/front/printed-number.ts';
import type { Context } from '../rule.ts';
import { needleSizes } from '../tables/needles.ts';
import { sectionAt, stretches } from './blocks.ts';

export interface NeedleUse {
  readonly mm: number;
  readonly span: Span;
  readonly piece: number | null;
  /** Index of the section. */
  readonly section: number;
  /** The words say "change". */
  readonly change: boolean;
}

/** Millimetres of a needle, from the chart where only an old UK number is printed. */
export function needleMm({ mm, us, uk }: Needle): number | null {
  return mm ?? (us === null && uk !== null ? (needleSizes.find((size) => size.uk === uk)?.mm ?? null) : null);
}

/** Sizes of the needles listed to knit with, smallest first, each once. */
export function listedSizes({ pattern }: Context): readonly number[] {
  const sizes = pattern.front.needles.flatMap((needle) => needleMm(needle) ?? []);
  return [...new Set(sizes)].sort((a, b) => a - b);
}

/** Size of a needle named by its rank, number or use. */
function sizeOf(words: string, needles: readonly Needle[], sizes: readonly number[]): number | null {
  if (/^larg/i.test(words)) return sizes.length > 1 ? (sizes[sizes.length - 1] ?? null) : null;
  if (/^small/i.test(words)) return sizes.length > 1 ? (sizes[0] ?? null) : null;
  const us = /^US\s?(?:size\s?|#)?(\d+(?:\.5|½)?)/i.exec(words)?.[1]?.replace('½', '.5');
  if (us !== undefined) return needles.find((needle) => needle.us === us)?.mm ?? null;
  const uk = /^No\.?\s?(\d+)/i.exec(words)?.[1];
  const old = uk === undefined ? undefined : needles.find((needle) => needle.uk === uk);
  return old === undefined ? null : needleMm(old);
}

const named =
  /\b(?:larger|largest|smaller|smallest)\b(?=[^.;]{0,30}\b(?:needles?|circulars?|dpns?|double)|\s*dpns?)|\bUS\s?(?:size\s?|#)?\d+(?:\.5|½)?|\bNo\.?\s?\d{1,2}(?=\s(?:knitting\s)?needles?\b)/gi;

/** Every place in the instructions that names a needle, in order. */
export function needleUses(context: Context): readonly NeedleUse[] {
  const { pattern } = context;
  const sizes = listedSizes(context);
  const uses: NeedleUse[] = [];
  for (const stretch of stretches(context)) {
    if (stretch.role !== 'work') continue;
    const section = sectionAt(pattern, stretch.start);
    const at = section === null ? -1 : pattern.sections.indexOf(section);
    const add = (mm: number | null, index: number, length: number): void => {
      if (mm === null) return;
      const before = stretch.text
        .slice(Math.max(0, index - 40), index)
        .split(/[.;]\s/)
        .pop()!;
      uses.push({
        mm,
        span: { start: stretch.start + index, end: stretch.start + index + length },
        piece: section?.piece ?? null,
        section: at,
        change: /\b(?:chang(?:e|ing)|switch(?:ing)?)\b/i.test(before),
      });
    };
    for (const match of stretch.text.matchAll(named)) add(sizeOf(match[0], pattern.front.needles, sizes), match.index, match[0].length);
    for (const { mm, index, length } of millimetres(stretch.text)) add(mm, index, length);
  }
  return uses.sort((a, b) => a.span.start - b.span.start);
}

/** "4 mm needles", "4 mm circular needle", "needle 4 mm": sizes of needles, not of buttons. */
export function millimetres(text: string): readonly { mm: number; index: number; length: number }[] {
  const found: { mm: number; index: number; length: number }[] = [];
  for (let index = 0; index < text.length; index += 1) {
    if (!/[\d½¼¾]/.test(text[index]!)) continue;
    const number = printedNumberAt(text, index, { words: false, decimalComma: true });
    if (number === null) continue;
    const after = /^\s?mm\b([^.;]{0,40})/.exec(text.slice(index + number.length, index + number.length + 44));
    const before = /\b(?:needles?|circulars?|dpns?|straights?)\s$/i.test(text.slice(Math.max(0, index - 12), index));
    if (after !== null && (before || /\b(?:needles?|circulars?|dpns?|double[- ]pointed|straights?)\b/i.test(after[1]!)))
      found.push({ mm: number.value, index, length: number.length + 3 });
    index += number.length - 1;
  }
  return found;
}
