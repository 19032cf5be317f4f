/** How many steps a tree holds, and which of them were not read. */
import type { Statement, Unread } from '../tree.ts';

/** Steps of a tree that count as instruction: leaves that do something, read or not. */
export function countSteps(statements: readonly Statement[]): { steps: number; notRead: Unread[] } {
  let steps = 0;
  const notRead: Unread[] = [];
  const visit = (node: Statement): void => {
    switch (node.type) {
      case 'remark':
      case 'stated':
        return;
      case 'unread':
        steps += 1;
        notRead.push(node);
        return;
      case 'row':
        if (node.does) visit(node.does);
        node.children.forEach(visit);
        return;
      case 'repeat':
      case 'intoOne':
      case 'needlePart':
        steps += node.type === 'repeat' ? 1 : 0;
        node.children.forEach(visit);
        if (node.type === 'repeat') {
          node.once.forEach(visit);
          node.ending?.children.forEach(visit);
        }
        return;
      case 'sizeBlock':
      case 'atSameTime':
        node.children.forEach(visit);
        return;
      case 'declare':
        return;
      default:
        steps += 1;
        if ('inside' in node && Array.isArray(node.inside)) (node.inside as readonly Statement[]).forEach(visit);
    }
  };
  statements.forEach(visit);
  return { steps, notRead };
}
