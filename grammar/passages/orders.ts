/** The words by which a sentence is known to give the knitter an order. */
import { Count as CountToken, Dash, Fabric, isA, type KnitToken, Mark, Open, PlainStitch, Stitch, W, Word } from '../tokens.ts';

/** Words that begin an order to the knitter. */
const orders =
  /^(slip|slipping|removing|remove|divide|distribute|arrange|rearrange|cut|draw|fold|mark|hang|slide|resume|return|repeat|set|sl|pass|drop|wrap|purl|knit|pm|sm|rm|undo|unpick|unzip|unravel|ravel|release|weave|tie|redistribute|insert|carefully|now|first|finally|next|dividing|separate|hold|thread|pull|push|rotate)$/;

export function ordersAt(token: KnitToken | undefined): boolean {
  if (token === undefined) return false;
  if (isA(token, Word)) return orders.test(token.image.toLowerCase());
  return isA(
    token,
    Stitch,
    PlainStitch,
    Mark,
    Open,
    CountToken,
    Dash,
    Fabric,
    W.Work,
    W.Rep,
    W.Cont,
    W.Beg,
    W.Inc,
    W.Dec,
    W.CastOn,
    W.BindOff,
    W.PickUp,
    W.Place,
    W.Leaving,
    W.Return,
    W.Join,
    W.With,
    W.Change,
    W.Break,
    W.Turn,
    W.WrapTurn,
    W.Double,
    W.Graft,
    W.ThreeNeedle,
    W.FastenOff,
    W.Thread,
    W.Keep,
    W.Complete,
    W.As,
    W.Rs,
    W.Ws,
    W.Needle,
    W.Patt,
    W.Rib,
    W.Not,
    W.There,
    W.Then,
    W.Every,
    W.These,
    W.SameTime,
    W.Multiple,
    W.Holder,
    W.Last,
    W.Shaping,
    W.Reversing,
    W.Twin,
    W.Wrapped,
    W.InAll,
  );
}

/** "Follow Chart A to end of Row 16": an order by the chart it names. */
export function chartOrder(tokens: readonly KnitToken[], at: number, to: number): boolean {
  return (
    /^(?:foll|follow|begin|commence|read)$/i.test(tokens[at]?.image ?? '') &&
    tokens.slice(at, Math.min(to, at + 8)).some((token) => /^charts?$/i.test(token.image))
  );
}
