import type { SizeBlock } from '../grammar/tree.ts';
import type { Context, Finding, Rule } from './rule.ts';
import { inSizes, listed, sectionTitle } from './telling.ts';

/** Blocks that follow each other with nothing but remarks between, and so are one alternative. */
function alternatives(context: Context): { blocks: SizeBlock[]; section: number }[] {
  const out: { blocks: SizeBlock[]; section: number }[] = [];
  context.pattern.sections.forEach((section, index) => {
    let open: SizeBlock[] = [];
    const close = (): void => {
      if (open.length > 1) out.push({ blocks: open, section: index });
      open = [];
    };
    let headed = false;
    for (const statement of section.statements) {
      if (statement.type === 'sizeBlock') {
        // A label on its own line rules what follows; the next such label goes on with the same alternative.
        if (statement.sizes === null || statement.rest === true) {
          if (statement.rest === true) open = [];
          close();
          headed = false;
        } else {
          open.push(statement);
          headed = statement.children.length === 0;
        }
      } else if (statement.type !== 'remark' && !headed) close();
    }
    close();
  });
  return out;
}

export const sizePaths: Rule = {
  id: 'size-paths',
  level: 'query',
  title: 'Each size has exactly one path',
  meaning: 'Instructions are divided by size, and the labels together leave a size out, or name one twice.',
  reason: 'The knitter of that size does not know whether to do nothing or which of the two to do.',
  needsReplay: false,
  wrong: {
    draft:
      '# Quay Vest\n\nSizes: S (M, L, XL)\n\nTo fit chest: 80 (90, 100, 110) cm\n\nCO 40 (44, 48, 52) sts.\n\nSizes S and M only: Knit 2 rows.\n\nSize XL only: Knit 6 rows.\n\nAll sizes: Knit 4 rows.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Quay Vest\n\nSizes: S (M, L, XL)\n\nTo fit chest: 80 (90, 100, 110) cm\n\nCO 40 (44, 48, 52) sts.\n\nSizes S and M only: Knit 2 rows.\n\nSizes L and XL only: Knit 6 rows.\n\nAll sizes: Knit 4 rows.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] => {
    const all = context.pattern.sizes.map((_, size) => size);
    if (all.length < 3) return [];
    return alternatives(context).flatMap(({ blocks, section }): Finding[] => {
      const named = blocks.flatMap((block) => block.sizes ?? []);
      const missing = all.filter((size) => !named.includes(size));
      const twice = all.filter((size) => named.filter((each) => each === size).length > 1);
      const last = blocks.at(-1) as SizeBlock;
      const base = {
        rule: sizePaths.id,
        level: 'query' as const,
        span: last.span,
        section: sectionTitle(context, section),
        row: null,
        stated: null,
        replayed: null,
        fix: null,
      };
      const name = (sizes: readonly number[]): string => listed(sizes.map((size) => context.pattern.sizes[size] ?? ''));
      // Two sizes or more left out, of few named, is a step for some sizes only.
      if (missing.length === 1 && named.length >= 2)
        return [
          {
            ...base,
            sizes: missing,
            message: `${inSizes(context, missing)}nothing is said: the labels before and here name ${name([...new Set(named)].sort((a, b) => a - b))}. Is this size to do nothing, or has it been forgotten?`,
          },
        ];
      if (twice.length > 0 && missing.length > 0)
        return [
          {
            ...base,
            sizes: twice,
            message: `Size ${name(twice)} is named in two labels, and ${name(missing)} in none. Is one of the labels wrong?`,
          },
        ];
      return [];
    });
  },
};
