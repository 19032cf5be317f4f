import type { Level } from '../../rules/rule.ts';

/** The settings of a house, from `house-style.yaml`. Everything is optional; the defaults hold for a draft alone. */
export interface HouseStyle {
  /** Level of a rule, or `off`. */
  readonly rules: Readonly<Record<string, Level | 'off'>>;
  /** US or UK words; null: only mixtures within one draft are reported. */
  readonly terms: 'US' | 'UK' | null;
  /** Tolerances for measures. */
  readonly tolerance: {
    /** Centimetres, inches and stitches within which a width passes. */
    readonly cm: number;
    readonly inches: number;
    readonly stitches: number;
    /** Stitches and percent up to which a width is a question, beyond it an error. */
    readonly queryStitches: number;
    readonly queryPercent: number;
  };
  /** How row labels, repeats and counts are written; null: any, but not mixed. */
  readonly labels: 'Row 1' | '1st row' | null;
  readonly repeats: 'star' | 'bracket' | null;
  readonly counts: 'dash' | 'bracket' | 'sentence' | null;
}

/**
 * What holds for a draft that no house has settings for. The tolerances are this project's own choice: a width that is off
 * by half a centimetre, a quarter of an inch or one stitch is rounding, because stitch counts come in whole repeats.
 */
export const noHouse: HouseStyle = {
  rules: {},
  terms: null,
  tolerance: { cm: 0.5, inches: 0.25, stitches: 1, queryStitches: 2, queryPercent: 2 },
  labels: null,
  repeats: null,
  counts: null,
};
