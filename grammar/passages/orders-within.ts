/**
 * Whether a sentence that no phrase begins with holds an order all the same. Such a sentence is shown as not read and never
 * passed over as prose; stories, descriptions, advice and notes on yarn and care are prose, whatever numbers they hold.
 *
 *     Stop increasing sleeves, but continue to increase body on every 4th row · You now knit 6 rounds
 *     Once the sleeve is long enough, cast off all sts · 12 sts are cast off at beg of next 2 rows
 */
import { adverbAt } from '../introductions.ts';
import {
  Close,
  Colon,
  Comma,
  Count,
  Dash,
  Fabric,
  FullStop,
  isA,
  type KnitToken,
  Name,
  Ordinal,
  PlainStitch,
  Semicolon,
  SlipStitch,
  Stitch,
  W,
  Word,
} from '../tokens.ts';

/** Advice, and what the writer did: the knitter is told nothing to do here. */
const advice =
  /\b(?:you (?:can|may|might|could|wish|want|prefer|would|will find|will need)|if (?:you (?:like|prefer|want|wish|find|lose|need|run|would|do not|don't)|desired|preferred|wanted|necessary|needed)|as you (?:like|wish|please)|as often as you|optional|optionally|feel free|i|i've|i'd|my|helps|in case)\b/;
const adviceOpening =
  /^(?:tips?|notes?|hints?|nb|n\.b|remember|warning|caution|for (?:a |an )?(?:longer|shorter|wider|narrower|looser|tighter|bigger|smaller|deeper|different)|to make (?:it|the|your|a)\b|to (?:lengthen|shorten|adjust))\b/;

/** "After the repeats, k 1 row …" tells what a table or the rows named have already said. */
const retold = /^after (?:the |all )?(?:repeats?|reps?)\b/;
const makingUp = /^(?:sew|press|block|weave|darn|embroider|fold|stuff|steam|wash|soak|pin|iron|lay|tack|stretch)\b/;

/** Commands that are no words of the lists: they order something where a number of stitches or rows stands with them. */
const commands =
  /^(?:increase|decrease|narrow|widen|reduce|lessen|lose|gain|add|omit|skip|reverse|mirror|alternate|alternating|recommence|finish|follow|shape|shaping|take|bring|divide|distribute|share|arrange|split|slip|sl|hold|transfer|move|unpick|begin|do|top|round|knit|purl|pass|drop|use|go|decreasing|increasing|casting|slipping|working|placing)$/;
/** Commands to go on or to leave off, with no number: the rows that follow depend on them. */
const goOn = /^(?:stop|recommence|resume|proceed)$/;
const opensCondition = /^(?:when|once|after|as soon|having|on|at|with|before|if|unless|whilst|while|provided|as)\b/;
/** No command but a thing or what was done. */
const doneOrThing = /(?:ed|es|s|'d|ing off|ing on|cast-on|cast-off|bind-off|bound off)$/;

const lower = (token: KnitToken | undefined): string => token?.image.toLowerCase() ?? '';

/** Whether a clause may begin at a word, by what stands before it. */
function clauseBegins(tokens: readonly KnitToken[], at: number, from: number): boolean {
  const before = tokens[at - 1];
  return (
    at === from ||
    isA(before, Comma, Semicolon, Colon, Dash, W.And, W.Then, Close) ||
    adverbAt(before) ||
    // "Over the next 24 sts work Row 1 of Chart E"
    (isA(before, W.St, W.Row, W.Round, W.Edge) && /^(?:over|on|at|across|along|in)$/.test(lower(tokens[from]))) ||
    /^(?:but|you|we|please|to|otherwise|so|either|just|simply)$/.test(lower(before))
  );
}

function commandAt(tokens: readonly KnitToken[], at: number, from: number): boolean {
  const token = tokens[at];
  if (!clauseBegins(tokens, at, from)) return false;
  const infinitive = lower(tokens[at - 1]) === 'to';
  if (infinitive && !/^(?:continue|cont|need|begin|start|proceed)$/.test(lower(tokens[at - 2]))) return false;
  if (isA(token, Word)) return commands.test(lower(token));
  if (isA(token, W.Inc, W.Dec, W.BindOff, W.CastOn)) return !doneOrThing.test(lower(token));
  if (isA(token, W.Rep)) return lower(token) !== 'repeats';
  if (isA(token, W.Work)) return !/ed$|^works$/.test(lower(token));
  // "Follow with 4 rows", "Straight on for 12 rows", "Alternate Rows 1 and 2"
  if (isA(token, W.Foll)) return lower(token) === 'follow';
  if (isA(token, W.Straight) && at === from) return true;
  if (isA(token, W.Alt) && at === from) return /^alternat(?:e|ing)$/.test(lower(token)) && isA(tokens[at + 1], W.Row, W.Round);
  if (isA(token, W.Leaving)) return isA(tokens[at + 1], Count, W.Rem, W.Last) && isA(tokens[at + 2], W.St, Count);
  return isA(
    token,
    PlainStitch,
    SlipStitch,
    W.Cont,
    W.PickUp,
    W.Place,
    W.Complete,
    W.Reversing,
    W.Join,
    W.Keep,
    W.Return,
    W.Patt,
    W.Rib,
    W.Turn,
    W.Change,
  );
}

const indicative = (token: KnitToken | undefined): boolean =>
  isA(token, W.There) || /^(?:is|are|was|were|has|have|had)$/.test(lower(token));

const unit = (token: KnitToken | undefined): boolean => isA(token, W.St, W.Row, W.Round, W.Ridge);

/** "every 4th row", "next 2 rows", "foll alt row": rows that an order is for. */
function rowsToCome(tokens: readonly KnitToken[], at: number, to: number): boolean {
  if (!isA(tokens[at], W.Next, W.Foll, W.Every, W.Alt, W.Each, Ordinal)) return false;
  if (isA(tokens[at], W.Each, Ordinal) && !isA(tokens[at + 1], W.Alt, W.Row, W.Round, W.Foll)) return false;
  for (let next = at + 1; next < Math.min(to, at + 4); next += 1) {
    if (isA(tokens[next], W.Row, W.Round)) return true;
    if (!isA(tokens[next], Count, Ordinal, W.Foll, W.Alt, W.Other, W.Rs, W.Ws, W.More, Word)) return false;
  }
  return false;
}

/** Whether the words say how many stitches, rows or times, or which rows. */
function measuredAt(tokens: readonly KnitToken[], at: number, to: number): boolean {
  const token = tokens[at];
  if (isA(token, Count)) {
    for (let next = at + 1; next < Math.min(to, at + 4); next += 1) {
      if (unit(tokens[next]) || isA(tokens[next], W.Times, W.Cm, W.Inch)) return true;
      if (!isA(tokens[next], Word, Name, Fabric, W.More, W.Last, W.Foll, W.Edge, W.Centre, W.Rem)) return false;
    }
    return false;
  }
  if (isA(token, Stitch) && token?.payload?.values !== undefined) return true;
  if (isA(token, W.InRound)) return true;
  if (isA(token, W.Until)) return goalAt(tokens, at, to);
  if (isA(token, W.Row, W.Round))
    return isA(tokens[at + 1], Count) || isA(tokens[at - 1], W.Last, W.These, W.First, W.Next, W.Inc, W.Dec, Name);
  if (isA(token, W.All)) return isA(tokens[at + 1], W.St);
  if (isA(token, W.Across)) return /sts|stitch/.test(lower(token));
  return rowsToCome(tokens, at, to);
}

const shapes = (token: KnitToken | undefined): boolean =>
  isA(token, W.Inc, W.Dec, W.BindOff, W.CastOn) || /^(?:narrow|widen|reduce|lessen|shap(?:e|ing))$/.test(lower(token));

/** "12 sts are cast off at beg of next 2 rows", "the 12 centre sts are put on a holder". */
function passiveAt(tokens: readonly KnitToken[], at: number, from: number, to: number): boolean {
  if (!/^(?:are|is)$/.test(lower(tokens[at]))) return false;
  const told = tokens.slice(Math.max(from, at - 4), at);
  if (!told.some((token) => isA(token, Count)) || !told.some((token) => isA(token, W.St))) return false;
  const next = /^(?:then|now|next)$/.test(lower(tokens[at + 1])) ? at + 2 : at + 1;
  const when = tokens.slice(next, to);
  if (
    !told.some((token) => isA(token, W.Next)) &&
    !when.some((token, index) => isA(token, W.Holder) || rowsToCome(tokens, next + index, to))
  )
    return false;
  return (
    isA(tokens[next], W.BindOff, W.CastOn, W.Dec, W.Inc, W.PickUp, W.Place) ||
    /^(?:slipped|placed|put|transferred|left|knitted|purled|held)$/.test(lower(tokens[next]))
  );
}

/** "until 60 sts are left", "until work measures 20 cm". */
function goalAt(tokens: readonly KnitToken[], at: number, to: number): boolean {
  if (!isA(tokens[at], W.Until)) return false;
  return tokens.slice(at + 1, Math.min(to, at + 9)).some((token, index) => isA(token, Count) || (index < 4 && isA(token, W.Rem)));
}

/** Whether the words between `from` and `to` order something to be knitted. */
export function holdsOrder(tokens: readonly KnitToken[], from: number, to: number): boolean {
  const words = tokens
    .slice(from, to)
    .map((token) => token.image)
    .join(' ')
    .toLowerCase()
    .replace(/\s+/g, ' ');
  if (advice.test(words) || adviceOpening.test(words) || makingUp.test(words) || retold.test(words) || words.endsWith('?')) return false;
  if (isA(tokens[from], W.Cont) || goOn.test(lower(tokens[from]))) return true;
  if (/^(?:do|work) (?:the same|likewise)\b/.test(words)) return true;
  const conditional = opensCondition.test(words);
  let told = false;
  let sided = false;
  let commanded = false;
  let measured = false;
  let worked = false;
  let shaped = false;
  let scheduled = false;
  for (let at = from; at < to; at += 1) {
    const token = tokens[at];
    // "…: rnds 1-6:"
    if (at > from && !isA(tokens[from], W.InAll) && isA(token, W.Row, W.Round) && isA(tokens[at + 1], Count) && isA(tokens[at + 2], Colon))
      return true;
    if (passiveAt(tokens, at, from, to)) return true;
    if (worked && goalAt(tokens, at, to)) return true;
    // "Each pair of loops is worked as two stitches: purl into the first": the number is of what is told, not ordered.
    told ||= !conditional && indicative(token);
    commanded ||= commandAt(tokens, at, from);
    measured ||= (commanded || !told) && measuredAt(tokens, at, to);
    sided ||= isA(token, W.Each) && (isA(tokens[at + 1], W.End, W.Edge) || /^(?:sides?|ends?)$/.test(lower(tokens[at + 1])));
    shaped ||= shapes(token);
    scheduled ||= rowsToCome(tokens, at, to);
    worked ||= isA(token, W.Work, W.Cont, W.Rep, W.Patt, W.Rib, PlainStitch, Fabric) || shapes(token) || /^do(?:ing)?$/.test(lower(token));
  }
  return (commanded && (measured || (shaped && sided))) || (shaped && scheduled);
}

/** Whether the sentence up to a word only tells what is done: "The back is worked on the centre sts, taking in …". */
function describes(tokens: readonly KnitToken[], at: number): boolean {
  for (let before = at - 1; before >= 0 && !isA(tokens[before], FullStop); before -= 1) if (indicative(tokens[before])) return true;
  return false;
}

/**
 * Whether words left over inside a sentence order something: beside what a sentence of its own would have to hold, rows that
 * are counted, rows to come, and where they end.
 */
export function fragmentOrders(tokens: readonly KnitToken[], from: number, to: number): boolean {
  // "join and cont in rnds"
  if (isA(tokens[from], W.Cont) && to - from < 3) return false;
  // "The back is worked on the centre sts, taking in one of the side sts at the end of each row"
  if (/^[a-z]+ing\b/.test(lower(tokens[from])) && describes(tokens, from)) return false;
  if (holdsOrder(tokens, from, to)) return true;
  // "where sts were cast off", "which are worked later", "(as on row 3)"
  if (
    /^(?:where|which|that|who|as|like|so|because|since|for|to|the|this|these|that|there|it|you|after|before|see|counting)$/.test(
      lower(tokens[from]),
    )
  )
    return false;
  if (tokens.slice(from, to).some(indicative)) return false;
  for (let at = from; at < to; at += 1) {
    // "2 rows of k2, p2 rib"; "2 rows MC" in a list of stripes only names their colours.
    if (isA(tokens[at], Count) && isA(tokens[at + 1], W.Row, W.Round, W.Ridge))
      return isA(tokens[at + 2], W.Of, W.In, Fabric, W.Rib, W.Patt, W.Straight) && at + 3 < to;
    if (isA(tokens[at], W.Ending) && isA(tokens[at + 1], W.Rs, W.Ws, W.The, W.Row, W.Round, Count))
      return !lower(tokens[at]).startsWith('ready');
    if (goalAt(tokens, at, to)) return true;
  }
  // "every RS row", "foll alt row"; "every row" and "40th row" only name a place.
  return isA(tokens[from], W.Every, W.Foll, W.Alt) && to - from > 2 && rowsToCome(tokens, from, to);
}
