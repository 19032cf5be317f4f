/**
 * What may stand before an order in its sentence: a heading run into the text, an adverb, a condition.
 *
 *     Armhole shaping (RS): Cast off 6 sts … · Shape neck—Next row: … · Loosely cast off … · When work measures 30 cm, cast off …
 */
import {
  Close,
  Colon,
  Comma,
  Count as CountToken,
  Dash,
  Fabric,
  isA,
  type KnitToken,
  Mark,
  Name,
  Open,
  Ordinal,
  PlainStitch,
  Stitch,
  W,
  Word,
} from './tokens.ts';

/** Longest heading that may run into the text, in tokens. */
const longestHeading = 9;

/**
 * Index behind the colon or dash of a heading that runs into the text at `from`; -1 when none does. Words that work
 * stitches make it no heading, except in the bracket that names a side.
 */
export function headingEnd(tokens: readonly KnitToken[], from: number, to: number): number {
  let depth = 0;
  for (let at = from; at < Math.min(to, from + longestHeading); at += 1) {
    const token = tokens[at];
    if (isA(token, Open)) depth += 1;
    else if (isA(token, Close)) depth -= 1;
    // "Pocket linings, both alike:", "Neckband, seamed version:"
    else if (isA(token, Comma) && at > from && isA(tokens[from], Word, Name) && isA(tokens[at + 1], Word, W.Each, Name)) continue;
    // "Short row back neck:", "Buttonhole loop:"
    else if (isA(token, W.Row) && at === from + 1 && /^short$/i.test(tokens[from]?.image ?? '') && isA(tokens[at + 1], Word, Name))
      continue;
    else if (isA(token, W.St) && at > from && /^loops?$/i.test(token?.image ?? '') && isA(tokens[at + 1], Colon)) continue;
    else if (isA(token, Colon, Dash) && depth === 0) return at > from && at + 1 < to ? at + 1 : -1;
    else if (depth > 0) continue;
    // "Triangle 2:", "Finger 1:": the number of the piece ends its name.
    else if (
      isA(token, W.Row) &&
      (/^short-row/i.test(token?.image ?? '') || (at > from && /^short$/i.test(tokens[at - 1]?.image ?? '') && isA(tokens[from], W.Work)))
    )
      continue;
    // "Work in short rows as follows:"
    else if (isA(tokens[from], W.Work) && isA(token, W.In, W.As, W.Foll)) continue;
    else if (isA(token, CountToken) && at > from && isA(tokens[at - 1], Word, Name) && isA(tokens[at + 1], Colon)) continue;
    else if (
      !isA(
        token,
        Word,
        Name,
        Ordinal,
        W.Shaping,
        W.End,
        W.Straight,
        W.Turn,
        Fabric,
        W.Dec,
        W.Inc,
        W.For,
        W.And,
        W.Of,
        W.First,
        W.Last,
        W.Other,
        W.Edge,
        W.Rib,
        W.Centre,
        W.Next,
        W.At,
        W.Size,
        W.Beg,
        W.Each,
        W.These,
        W.Work,
        W.Join,
        W.Place,
        W.Yarn,
        W.As,
        W.Foll,
        W.Set,
      ) &&
      token?.image.toLowerCase() !== 'left'
    )
      return -1;
  }
  return -1;
}

/** Whether the words at `from` are an adverb before an order: "Loosely cast off", "Provisionally cast on". */
export function adverbAt(token: KnitToken | undefined): boolean {
  return isA(token, Word) && /ly$|^(provisional|now|then|first|next|finally|also|again|please|always)$/i.test(token?.image ?? '');
}

/** Index behind the comma of "At end of last row," or "On reaching the armhole,"; -1 when the sentence begins otherwise. */
export function placeEnd(tokens: readonly KnitToken[], from: number, to: number): number {
  if (
    !isA(tokens[from], W.At, W.On, W.After, W.In, W.From, W.For, W.Between, W.Matches) &&
    !(
      isA(tokens[from], Word) &&
      /^(being|taking|by|once|during|upon|to|counting|along|above|below|holding)$/i.test(tokens[from]?.image ?? '')
    )
  )
    return -1;
  for (let at = from + 1; at < Math.min(to, from + 14); at += 1) {
    // "At end of next 4 rows turn, leaving 5 sts unworked": no place but an order.
    if (isA(tokens[at], W.Turn)) return -1;
    if (isA(tokens[at], Comma, Colon)) return at + 1;
    // "On last row of rib inc 8 sts evenly"
    if (isA(tokens[at], W.Inc, W.Dec) && isA(tokens[at + 1], CountToken) && isA(tokens[from], W.On)) return at;
    // "At end of last row CO 20 sts"
    if (isA(tokens[at], W.CastOn) && isA(tokens[at - 1], W.Row, W.Round, W.End, W.Needle) && isA(tokens[at + 1], CountToken)) return at;
    // "Along edge of left front pick up and k 90 sts"
    if (isA(tokens[at], W.PickUp) && (isA(tokens[at + 1], CountToken) || isA(tokens[at + 1], W.And))) return at;
    // "on 20 held sts work rows 1 to 5"
    if (isA(tokens[at], W.Work) && isA(tokens[at - 1], W.St) && isA(tokens[from], W.On) && isA(tokens[at + 1], W.Row, CountToken, W.In))
      return at;
    if (isA(tokens[at], Stitch, W.CastOn, W.BindOff, W.Inc, W.Dec) && !isA(tokens[at - 1], W.After, W.Last, W.From, W.Of, W.At, Word))
      return -1;
  }
  return -1;
}

/** Whether a clause between `from` and `to` gives an order with a number: such a sentence is never passed over as prose. */
export function clauseOrders(tokens: readonly KnitToken[], from: number, to: number): boolean {
  for (let at = from; at < to; at += 1) {
    const begins = at === from || isA(tokens[at - 1], Comma, Colon, Dash, W.And, W.Then) || adverbAt(tokens[at - 1]);
    if (!begins) continue;
    const token = tokens[at];
    const next = tokens[at + 1];
    // "Every other round: *ssk, …; rep from *", "Double the sts: *k1, m1; …"
    if (isA(token, Mark) && isA(next, Stitch, PlainStitch)) return true;
    // "At end of next 4 rows turn, leaving 5 sts unworked"
    if (isA(token, W.Leaving) && isA(next, CountToken) && isA(tokens[at + 2], W.St) && isA(tokens[at + 3], W.Unworked)) return true;
    // "Weave 18 sts to 18 sts with Kitchener stitch"
    if (at === from && /^(?:weave|sew)$/i.test(token?.image ?? '') && tokens.slice(from, to).some((each) => isA(each, W.Graft)))
      return true;
    if (isA(token, W.CastOn, W.BindOff, W.PickUp) && isA(next, CountToken, W.All, W.Centre, W.Rem, W.Next, W.First)) return true;
    if (isA(token, W.Inc, W.Dec) && isA(next, CountToken) && isA(tokens[at + 2], W.St)) return true;
    if (
      isA(token, PlainStitch) &&
      (token?.payload?.values !== undefined || isA(next, W.To)) &&
      isA(tokens[at + (isA(next, W.To) ? 2 : 1)], Comma, W.End, W.Last, W.Marker)
    )
      return true;
  }
  return false;
}
