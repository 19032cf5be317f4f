/** Remarks that hold an order after all are shown as not read: nothing the knitter is told to do is passed over without a word. */
import { Colon, isA, type KnitToken, Open } from '../tokens.ts';
import type { Remark, Span, Statement, Step, Unread } from '../tree.ts';
import { fragmentOrders, holdsOrder } from './orders-within.ts';

/** The statements with such remarks turned into words not read; `prose` are the sentences already known to order nothing. */
export function ordersShown(
  statements: readonly Statement[],
  tokens: readonly KnitToken[],
  base: number,
  text: string,
  prose: readonly Span[],
): Statement[] {
  const shown = (remark: Remark): Remark | Unread => {
    const { span } = remark;
    if (remark.known) return remark;
    if (prose.some((sentence) => span.start >= sentence.start && span.end <= sentence.end)) return remark;
    const from = tokens.findIndex((token) => base + token.startOffset >= span.start);
    const past = tokens.findIndex((token) => base + token.startOffset >= span.end);
    const to = past < 0 ? tokens.length : past;
    // "on the next row make the first buttonhole:" only says what the words behind it do.
    if (from < 0 || from >= to || isA(tokens[to], Colon)) return remark;
    const orders = isA(tokens[from], Open) ? holdsOrder(tokens, from + 1, to) : fragmentOrders(tokens, from, to);
    return orders ? { type: 'unread', text: text.slice(span.start - base, span.end - base), span } : remark;
  };
  const looked = <T extends Statement>(nodes: readonly T[]): (T | Unread)[] =>
    nodes.map((node) => {
      if (node.type === 'remark') return shown(node) as T | Unread;
      if (node.type === 'row' && node.children.some((step) => step.type === 'remark'))
        return { ...node, children: looked<Step>(node.children) } as unknown as T;
      if (node.type === 'sizeBlock' || node.type === 'atSameTime') return { ...node, children: looked(node.children) } as unknown as T;
      return node;
    });
  return looked(statements);
}
