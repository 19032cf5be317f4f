/**
 * "Let it stand": `::stet[reason]{rule=count-mismatch}` on a line of its own accepts what the named rule finds in the next
 * block. A stet that accepts nothing is itself a finding, so that no exception outlives its reason.
 */
import type { Finding } from '../rules/rule.ts';
import { staleStet } from '../rules/stale-stet.ts';
import { nearest } from './house-style/nearest.ts';
import type { Block, Directive, Manuscript, Span } from './manuscript/manuscript.ts';

/** A finding the author lets stand, with the reason in the author's words. */
export interface Withheld {
  readonly finding: Finding;
  readonly reason: string;
  /** Where the stet stands. */
  readonly span: Span;
}

export interface Stetted {
  readonly findings: readonly Finding[];
  readonly withheld: readonly Withheld[];
  /** What is to be said of the stets themselves. */
  readonly remarks: readonly Finding[];
}

interface Stet {
  readonly directive: Directive;
  readonly rule: string | null;
  readonly reason: string;
  /** The block it speaks of; null where none follows. */
  readonly block: Span | null;
}

/** Takes the accepted findings out, and says of the stets themselves what is to be said. */
export function applyStets(manuscript: Manuscript, findings: readonly Finding[], ruleIds: readonly string[]): Stetted {
  const stets = stetsOf(manuscript);
  if (stets.length === 0) return { findings, withheld: [], remarks: [] };
  const withheld: Withheld[] = [];
  const kept: Finding[] = [];
  const used = new Set<Stet>();
  for (const finding of findings) {
    const stet = stets.find(
      (each) =>
        each.rule === finding.rule &&
        each.block !== null &&
        each.reason !== '' &&
        each.block.start <= finding.span.start &&
        finding.span.start < each.block.end,
    );
    if (stet === undefined) kept.push(finding);
    else {
      used.add(stet);
      withheld.push({ finding, reason: stet.reason, span: { start: stet.directive.start, end: stet.directive.end } });
    }
  }
  return { findings: kept, withheld, remarks: stets.filter((stet) => !used.has(stet)).map((stet) => remark(stet, ruleIds)) };
}

function stetsOf(manuscript: Manuscript): Stet[] {
  const { blocks } = manuscript;
  return blocks.flatMap((block, index) => {
    if (block.kind !== 'directive' || block.name !== 'stet') return [];
    const next = blocks.slice(index + 1).find(isText) ?? null;
    const rule = block.attributes['rule']?.trim().toLowerCase() ?? '';
    return [{ directive: block, rule: rule === '' ? null : rule, reason: block.label?.text.trim() ?? '', block: next }];
  });
}

/** Stets may stand one below the other; all of them speak of the text that follows. */
const isText = (block: Block) => block.kind !== 'directive' && block.kind !== 'break';

function remark(stet: Stet, ruleIds: readonly string[]): Finding {
  return {
    rule: staleStet.id,
    level: staleStet.level,
    span: { start: stet.directive.start, end: stet.directive.end },
    section: null,
    row: null,
    sizes: [],
    message: words(stet, ruleIds),
    stated: null,
    replayed: null,
    fix: null,
  };
}

function words({ rule, reason, block }: Stet, ruleIds: readonly string[]): string {
  if (rule === null) return 'This stet names no rule, so it lets nothing stand; write it as ::stet[reason]{rule=count-mismatch}.';
  if (!ruleIds.includes(rule)) {
    const near = nearest(rule, ruleIds);
    return `There is no rule "${rule}", so this stet lets nothing stand${near === null ? '.' : `; the nearest is "${near}".`}`;
  }
  if (reason === '')
    return `This stet gives no reason, so it lets nothing stand; say in the square brackets why "${rule}" may be passed over.`;
  if (block === null) return `No text follows this stet, so it lets nothing stand; take it out.`;
  return `"${rule}" finds nothing in the block below, so this stet lets nothing stand; take it out.`;
}
