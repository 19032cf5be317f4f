/** Words of labels: what may name a row, and labels of rows that no number names ("All WS rows:", "Every RS row:", "Even rounds:"). */
import {
  Colon,
  Comma,
  Dash,
  endOf,
  Fabric,
  isA,
  type KnitToken,
  Name,
  Ordinal,
  PlainStitch,
  rowWords,
  Stitch,
  W,
  Word,
} from '../tokens.ts';
import type { Label } from '../tree.ts';
import type { LabelMatch } from './labels.ts';

/** Words that may name a row before the row word: "Inc", "Set-up", "Moss st", "Buttonhole". */
export function namesRow(token: KnitToken | undefined): boolean {
  return (
    isA(
      token,
      Word,
      W.Inc,
      W.Dec,
      Fabric,
      Name,
      W.Ridge,
      W.Rib,
      W.Patt,
      W.Centre,
      W.Shaping,
      W.Turn,
      W.CastOn,
      W.BindOff,
      W.Join,
      W.Gap,
      W.Straight,
      W.St,
      W.Edge,
      W.Foll,
      Ordinal,
      W.Cont,
      W.Marker,
      W.Twist,
      W.PickUp,
      W.Work,
    ) ||
    (isA(token, Stitch) && !isA(token, PlainStitch))
  );
}

/** Which rows "and all WS rows", "and every alt row" mean. */
export function rowsMeant(words: string): NonNullable<Label['andAll']> {
  const text = words.toLowerCase();
  return /\bws|wrong/.test(text)
    ? 'WS'
    : /\brs|right/.test(text)
      ? 'RS'
      : /even/.test(text)
        ? 'even'
        : /odd/.test(text)
          ? 'odd'
          : 'alternate';
}

const everyWords = [W.Rs, W.Ws, W.Foll, W.Other, W.Straight, Word];
const evenOdd = /^(?:even|odd)(?:-numbered)?$/i;

/** "All WS rows:", "Every RS row:", "RS rows:", "Even-numbered rounds:": a label of rows that no number names. */
export function everyLabel(tokens: readonly KnitToken[], index: number, base: number, text: string): LabelMatch | null {
  const first = tokens[index] as KnitToken;
  const led = isA(first, W.All, W.Every);
  const from = led ? index + 1 : index;
  let at = from;
  while (at < from + 4 && isA(tokens[at], ...everyWords)) at += 1;
  const word = tokens[at];
  if (word === undefined || !isA(word, ...rowWords) || !isA(tokens[at + 1], Colon)) return null;
  const sided = tokens.slice(from, at).find((token) => isA(token, W.Rs, W.Ws));
  const meant = rowsMeant(text.slice(first.startOffset, word.startOffset));
  if (led ? (at === from ? !isA(first, W.Every) : sided === undefined && meant === 'alternate') : !pluralOf(tokens, from, at)) return null;
  return {
    label: {
      type: 'label',
      unit: isA(word, W.Round) ? 'round' : 'row',
      numbers: [],
      numberSpan: null,
      lastBySize: null,
      andAll: sided || at === from ? null : meant,
      next: null,
      name: 'every',
      side: sided === undefined ? null : isA(sided, W.Rs) ? 'RS' : 'WS',
      sideSpan: sided === undefined ? null : { start: base + sided.startOffset, end: base + endOf(sided) },
      span: { start: base + first.startOffset, end: base + endOf(word) },
    },
    next: at + 2,
  };
}

/** "RS rows", "even rounds", "odd-numbered rows": all of them, by the plural. */
function pluralOf(tokens: readonly KnitToken[], from: number, word: number): boolean {
  if (!/s$/i.test(tokens[word]?.image ?? '')) return false;
  const words = tokens.slice(from, word);
  if (words.length === 1) return isA(words[0], W.Rs, W.Ws) || evenOdd.test(words[0]?.image ?? '');
  return words.length === 2 && evenOdd.test(words[0]?.image ?? '') && /^numbered$/i.test(words[1]?.image ?? '');
}

/** "dec:", ", decrease as follows:", "– inc row:": what the row does, told in its label; index of the colon, or -1. */
export function toldInLabel(tokens: readonly KnitToken[], from: number): number {
  let at = isA(tokens[from], Comma, Dash) ? from + 1 : from;
  if (!isA(tokens[at], W.Inc, W.Dec, W.Shaping, W.As, W.Beg) && !/^(?:shape|shaping|form)$/i.test(tokens[at]?.image ?? '')) return -1;
  for (const most = at + 7; at < most; at += 1) {
    if (isA(tokens[at], Colon)) return at;
    if (!isA(tokens[at], W.Inc, W.Dec, W.Shaping, W.As, W.Foll, W.Beg, W.St, W.Edge, W.For, Word, Name, ...rowWords)) return -1;
  }
  return -1;
}
