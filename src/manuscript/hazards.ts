/** Where the page a reader is shown would differ from what the author typed. */
import type { Hazard, Span } from './manuscript.ts';

export function unclosedFence(span: Span, fence: string): Hazard {
  const message = `The code block opened here with ${fence} is never closed: everything after it is shown as code and none of it is read as instructions. Close it with ${fence} on a line of its own, or take the line out.`;
  return { kind: 'unclosedFence', ...span, message };
}

export function unclosedContainer(span: Span, name: string): Hazard {
  const message = `The :::${name} block opened here is never closed: everything after it counts as part of it. Close it with ::: on a line of its own.`;
  return { kind: 'unclosedContainer', ...span, message };
}

export function unclosedComment(span: Span): Hazard {
  return {
    kind: 'preview',
    ...span,
    message: 'The comment opened here is never closed: a page shows nothing of what follows it. Close it with -->.',
  };
}

export function repeatMarkAsBullet(span: Span, bullet: string): Hazard {
  return {
    kind: 'preview',
    ...span,
    message: `This ${bullet} is read as the start of the repeat, but a page shows it as a bullet and the repeat loses its start. Type \\${bullet} instead, or take out the blank after it.`,
  };
}

export function listRenumbered(span: Span, typed: number, shown: number): Hazard {
  const message = `This item is numbered ${typed}; a page would number it ${shown}, because lists are counted on from their first number.`;
  return { kind: 'listNumbers', ...span, message };
}

/** `[k2, p2](3)`: a link on a page. An address never begins with a digit and holds nothing but numbers. */
const bracketThenNumber = /\]\(\d[\d,/:;-]{0,40}\)/g;

/** Counts in round brackets that a page would take for the address of a link. */
export function countsShownAsLinks(text: string, start: number): Hazard[] {
  if (!text.includes('](')) return [];
  return Array.from(text.matchAll(bracketThenNumber), (match) => ({
    kind: 'preview',
    start: start + match.index,
    end: start + match.index + match[0].length,
    message: `A page turns the brackets before ${match[0].slice(1)} into a link and does not show the number. Put a blank between ] and (.`,
  }));
}
