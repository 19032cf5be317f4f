/** What every stretch of rows has: its words for the sheet, the side it begins with, the side it ends with. */
import { sizeValue } from '../../grammar/count.ts';
import type { EndSide, Plain, Statement } from '../../grammar/tree.ts';
import { live, stopShort } from './needles.ts';
import { handOf, met, type Play } from './play.ts';
import { nextSide, settle } from './sides.ts';

function clip(text: string): string {
  const words = text.replace(/\s+/g, ' ').trim();
  return words.length > 48 ? `${words.slice(0, 46).replace(/\s\S*$/, '')} …` : words;
}

export function words(play: Play, node: Statement): string {
  return clip(play.text(node.span));
}

/** After a stretch the draft may say on which side it ends. */
export function checkEnding(play: Play, ending: EndSide | null, size: number, node: Statement, known: boolean): void {
  if (ending === null) return;
  const { needles } = handOf(play, size);
  if (needles.mode === 'round') {
    const short = ending.before ? sizeValue(ending.before.values, size) : null;
    if (short !== null && short < live(needles)) stopShort(needles, short);
    return;
  }
  if (ending.last === null) return;
  const last = nextSide(needles) === 'RS' ? 'WS' : nextSide(needles) === 'WS' ? 'RS' : null;
  if (known && last !== null && last !== ending.last)
    met(play, { kind: 'endingSide', span: ending.span, numbers: {}, words: { stated: ending.last, replayed: last } }, size, node, null);
  settle(needles, ending.last === 'RS' ? 'WS' : 'RS');
}

export function beginSide(play: Play, begin: Plain['begin'], size: number): void {
  const hand = handOf(play, size);
  const { needles } = hand;
  if (begin === null || needles.mode === 'round') return;
  const side = begin === 'RS' || begin === 'k' ? 'RS' : 'WS';
  if (nextSide(needles) === null) settle(needles, side);
}
