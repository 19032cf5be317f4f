/**
 * The last look over a passage: words that no node of the tree stands for are put in their place, as unread where they
 * instruct and as a remark where they do not. So nothing the author wrote goes missing, whatever the phrases passed over.
 */
import { Comma, Count, endOf, FullStop, isA, type KnitToken, Other, Stitch, W } from './tokens.ts';
import type { Remark, Span, Statement, Step, Unread } from './tree.ts';

/** The smallest nodes that stand for words: of a row its label, its steps and its counts. */
function parts(statement: Statement): Span[] {
  switch (statement.type) {
    case 'row':
      return [
        ...(statement.label === null ? [] : [statement.label.span]),
        ...(statement.does === null ? [] : parts(statement.does)),
        ...statement.children.map((step) => step.span),
        ...statement.stated.map((each) => each.span),
      ];
    case 'sizeBlock':
    case 'atSameTime':
      return [
        { start: statement.span.start, end: statement.children[0]?.span.start ?? statement.span.end },
        ...statement.children.flatMap(parts),
        { start: statement.children.at(-1)?.span.end ?? statement.span.end, end: statement.span.end },
      ];
    default:
      return [statement.span];
  }
}

/** Joining words and articles say nothing by themselves. */
const joining = /^(?:and|then|and then|the|a|an|&|so|now)$/i;

const wordLike = (token: KnitToken): boolean => /[\p{L}\p{N}]/u.test(token.image) && !joining.test(token.image);

function instructs(tokens: readonly KnitToken[]): boolean {
  return tokens.some(
    (token, at) =>
      (isA(token, Stitch) && (token.payload?.values !== undefined || tokens.length < 4)) ||
      (isA(token, Count, Other) && /\d/.test(token.image) && isA(tokens[at + 1], W.St)) ||
      (isA(token, W.CastOn, W.BindOff) && !isA(tokens[at + 1], W.Edge)) ||
      isA(token, W.PickUp, W.Rep, W.Turn, W.WrapTurn),
  );
}

/**
 * Puts every word in its place. `prose` are the sentences that order nothing, whose words can only be remarks. The statements
 * come back as they were where nothing is missing.
 */
export function covered(
  statements: readonly Statement[],
  tokens: readonly KnitToken[],
  base: number,
  text: string,
  prose: readonly Span[],
): Statement[] {
  const spans = statements.flatMap(parts).sort((a, b) => a.start - b.start);
  const lost: { readonly first: number; readonly words: KnitToken[] }[] = [];
  let at = 0;
  let reach = Number.NEGATIVE_INFINITY;
  let open: KnitToken[] | null = null;
  for (const [index, token] of tokens.entries()) {
    const start = base + token.startOffset;
    while (at < spans.length && (spans[at] as Span).start <= start) {
      reach = Math.max(reach, (spans[at] as Span).end);
      at += 1;
    }
    if (start < reach || isA(token, Comma)) {
      open = null;
      continue;
    }
    if (open === null && !wordLike(token)) continue;
    if (open === null) {
      open = [];
      lost.push({ first: index, words: open });
    }
    open.push(token);
  }
  if (lost.length === 0) return [...statements];
  const nodes = lost.map(({ first, words }): Unread | Remark => {
    const last = words.findLast(wordLike) ?? (words[0] as KnitToken);
    const span = { start: base + (words[0] as KnitToken).startOffset, end: base + endOf(last) };
    const told =
      prose.some((sentence) => span.start >= sentence.start && span.end <= sentence.end) ||
      (opensSentence(tokens[first - 1]) && !isA(words[0], Stitch, Count));
    return instructs(words) && !told
      ? { type: 'unread', text: text.slice(span.start - base, span.end - base), span }
      : { type: 'remark', span };
  });
  return placed(statements, nodes);
}

/** Whether a word stands first in its sentence, by what stands before it: what is passed over there introduces an order and is none. */
function opensSentence(before: KnitToken | undefined): boolean {
  return before === undefined || isA(before, FullStop);
}

/** Puts the nodes among the statements, each in the row or block it lies in. */
function placed(statements: readonly Statement[], nodes: readonly (Unread | Remark)[]): Statement[] {
  const out: Statement[] = [];
  const rest = [...nodes];
  for (const statement of statements) {
    while (rest[0] !== undefined && rest[0].span.start < statement.span.start) out.push(rest.shift() as Unread | Remark);
    const inside: (Unread | Remark)[] = [];
    while (rest[0] !== undefined && rest[0].span.start < statement.span.end) inside.push(rest.shift() as Unread | Remark);
    if (inside.length === 0) out.push(statement);
    else if (statement.type === 'row') out.push({ ...statement, children: inOrder([...statement.children, ...inside]) });
    else if (statement.type === 'sizeBlock' || statement.type === 'atSameTime')
      out.push({ ...statement, children: placed(statement.children, inside) });
    else out.push(statement, ...inside);
  }
  out.push(...rest);
  return out;
}

const inOrder = (steps: readonly Step[]): Step[] => [...steps].sort((a, b) => a.span.start - b.span.start);
