/** Values a number of a family may have. */
export interface Bounds {
  readonly least: number;
  /** A crossing split in half has an even width; a nupp an odd number of loops. */
  readonly parity?: 'even' | 'odd';
}

/** One stitch, or a parametric family of stitches, of the lexicon. */
export interface Entry {
  /** The name this project uses for it. Families name their number: `k{N}tog` is `kNtog`. */
  readonly name: string;
  /**
   * Ways to write it. `{N}` is a number (possibly sized), `{N:word}` a number word, `{N:times}` once, twice, 3 times,
   * `{M}` a second number. Matched without regard to case, except where the spelling is B, BO or Bo; spaces and
   * full stops of abbreviations are optional where knitters leave them out.
   */
  readonly spellings: readonly string[];
  /** Spellings that are common words or old usage, read only when the draft defines them. */
  readonly rare?: readonly string[];
  /** Stitches taken from the left needle: a number, or a formula in N and M ("N", "N+M", "2*N+M"). */
  readonly takes: number | string;
  /** Stitches put on the right needle. */
  readonly makes: number | string;
  /** Value of N (and M) for a spelling that has no slot: `yo twice` is 2. Default 1. */
  readonly literals?: Readonly<Record<string, { readonly N?: number; readonly M?: number }>>;
  /** Values N and M may have; at least 1 where nothing is said. Outside them the name says nothing certain (C5F). */
  readonly numbers?: { readonly N?: Bounds; readonly M?: Bounds };
  /** A spelling with no number means all the stitches there are: "cast off loosely". */
  readonly bareMeansAll?: true;
  /** Names of a way of working that stand beside a counted phrase ("long-tail cast on") and count nothing by themselves. */
  readonly methods?: readonly string[];
  /** Families that contain it: `C4F` is `CNF` with N = 4 and `N/M LC` with 2 and 2. */
  readonly memberOf?: readonly { readonly family: string; readonly N: number; readonly M?: number }[];
  /** `k` or `p` as it looks from the side it is worked on; what it is for lace, cables and needles. */
  readonly face?: 'k' | 'p';
  readonly kind:
    | 'plain'
    | 'slip'
    | 'increase'
    | 'decrease'
    | 'doubleDecrease'
    | 'yarnOver'
    | 'cable'
    | 'twist'
    | 'shortRow'
    | 'marker'
    | 'bindOff'
    | 'castOn'
    | 'other';
  /** Lean of a decrease or crossing as seen from the right side. */
  readonly lean?: 'left' | 'right' | 'centre';
  /** The entry that mirrors it. */
  readonly mirror?: string;
  /** Tools it needs: "cable needle". */
  readonly needs?: readonly string[];
  /** Dialect that uses the name: UK or US. */
  readonly dialect?: 'UK' | 'US';
  /** Primitive moves that build it, the second derivation of takes and makes in the tests. */
  readonly moves: string;
  /** Plain words, for a message or a rule page. */
  readonly words: string;
  /** Where the fact comes from; `memory` when it is not confirmed. */
  readonly source: string;
}

/** An entry with its numbers filled in. */
export interface StitchUse {
  readonly entry: Entry;
  readonly takes: number;
  readonly makes: number;
}
