/** A change of a correct draft: the words at a place become others. */
export interface Slip {
  readonly kind: string;
  readonly at: number;
  readonly was: string;
  readonly now: string;
}
