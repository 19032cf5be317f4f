/** All rules, in the order in which they are listed. */
import type { Rule } from './rule.ts';

export const rules: readonly Rule[] = [];
