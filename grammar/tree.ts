/**
 * The instruction tree: what the words of a draft tell the knitter to do.
 *
 * Every node is a unist node. Offsets count UTF-16 units into the author's file, so `source.slice(start, end)` is the
 * author's text for every node. Line and column are worked out from the offset where a finding is printed.
 *
 * Long because it is types alone and is read as one: whoever plays or judges a draft finds here all that it can say.
 */
import type { Sized } from './count.ts';

/** A stretch of the author's file, in UTF-16 units, end exclusive. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

export type Side = 'RS' | 'WS';

interface Base {
  readonly type: string;
  readonly span: Span;
}

/** A number of the draft, sized, with the place where it is printed. */
export interface Count extends Base {
  readonly type: 'count';
  readonly values: Sized;
  /** `all` and `rem` stand for however many there are. */
  readonly all?: boolean;
}

/** How a repeat ends. */
export type Extent =
  /** "6 times", "6 times more", "6 times in all", "twice", "once more". `form` says where the number stood. */
  | { readonly kind: 'times'; readonly count: Count; readonly sense: 'plain' | 'more' | 'all'; readonly form: 'from' | 'bracket' }
  /** "to end", "across", "around", "until no sts rem". */
  | { readonly kind: 'end' }
  /** "to last 3 sts", "until 3 sts rem", "to within 3 sts of end"; `of` where the words say "of needle". */
  | { readonly kind: 'last'; readonly count: Count; readonly of?: 'needle' }
  /** "to 2 sts before m", "to m", "to 3 sts past marker". `n` is stitches short of (before) or past the place. */
  | {
      readonly kind: 'place';
      readonly place: Anchor;
      readonly which: 'next' | 'last' | 'first' | 'beginning';
      readonly ordinal?: number;
      readonly name?: string;
      readonly side: 'before' | 'past' | 'at';
      readonly n: Count | null;
    }
  /** "until there are 12 sts on right needle (after cast-off)". */
  | { readonly kind: 'onRight'; readonly count: Count; readonly afterBindOff: boolean }
  /** A run over a known number: "patt 12", "k across 36 sts"; `of` what they belong to: "k across the 46 sts of one sleeve". */
  | { readonly kind: 'over'; readonly count: Count; readonly of?: string }
  /** "K 5 sts fewer than on last RS row": measured against an earlier short row, of that side if one is named. */
  | { readonly kind: 'relative'; readonly count: Count; readonly sense: 'fewer' | 'more'; readonly side: Side | null }
  /** "k across them": over the stitches the step before has just named. */
  | { readonly kind: 'these' }
  /** "work instep", "k across heel sts": over the part so named. */
  | { readonly kind: 'part'; readonly name: string }
  /** A star that holds turns or slides: "rep from * until 1 gusset st rem each side", "until cord measures 40 cm". */
  | { readonly kind: 'goal'; readonly goal: Goal };

export type Anchor = 'marker' | 'turn' | 'gap' | 'wrapped' | 'double' | 'twin' | 'pin' | 'yarnOver' | 'centre' | 'corner';

/** Steps inside one row. */
export type Step =
  | Work
  | IntoOne
  | Repeat
  | Turn
  | Marker
  | CastOn
  | BindOff
  | Hold
  | TakeUp
  | PickUp
  | NeedlePart
  | Evenly
  | Resolve
  | PullOver
  | Change
  | Join
  | Arrange
  | Only
  | AndSoOn
  | Refer
  | Stated
  | Remark
  | Unread;

/** Stitches of the lexicon: `k5`, `k2tog`, `C6B`, `yo twice`. `times` repeats the one token ("k2tog twice"). */
export interface Work extends Base {
  readonly type: 'work';
  /** Name of the lexicon entry, or of a stitch that the draft defines. */
  readonly stitch: string;
  /** The number in the name: 5 of `k5`, 2 of `k2tog`; null when the entry has none. */
  readonly n: Count | null;
  /** Second number of a cable such as `2/1 RC`. */
  readonly m?: number;
  readonly times?: Count;
  /** "tbl", "wyif", "knitwise", "with its wrap"… in normal form. */
  readonly manner: readonly string[];
  readonly colour?: string;
  /** "k32 sleeve sts": the part of the work whose stitches they are, where it is named. */
  readonly of?: string;
  /** "DS, p19 (including DS)": the stitch worked just before is one of the number. */
  readonly includesLast?: boolean;
  /** The name as the lexicon spells it, where it has several readings: `yfwd`, `inc 1`, `C3F`. */
  readonly spelling?: string;
  /**
   * Where the trade knows several stitches by the name: all of them, the likeliest here first; `stitch`, `n`, `m` and
   * `times` of the node are those of the first. With `netOnly` the gain or loss is certain and what it takes is not.
   */
  readonly readings?: readonly {
    readonly stitch: string;
    readonly n: Count | null;
    readonly m?: number;
    readonly times?: Count;
    readonly netOnly?: boolean;
  }[];
  /**
   * The stitch ties an edging to its piece: so many of the stitches it takes are live stitches of the piece, or loops
   * of its finished edge ("ssk (last edging st with next shawl st)" is 1, "sssk (with next 2 live sts)" is 2).
   */
  readonly joins?: { readonly of: 'live' | 'edge'; readonly count: number };
}

/** "(k1, yo, k1) in next st": one stitch taken (or `takes`), the sum of what is inside made. */
export interface IntoOne extends Base {
  readonly type: 'intoOne';
  readonly children: readonly Step[];
  /** What it is worked into: one stitch, or the loops of a double yarn over, or a number of stitches held together. */
  readonly into: 'stitch' | 'doubleYarnOver' | 'each';
  readonly takes: Count | null;
  /** "dropping second wrap". */
  readonly dropping: boolean;
  /** "in each of next 3 sts". */
  readonly times?: Count;
  /** No brackets were printed ("k1, yo, k1 in next st"): the other reading is that only the last of the children is worked so. */
  readonly bare?: boolean;
  /** "working (p1, k1) into each double yo": holds wherever one is met in the row, and is no place in it. */
  readonly everywhere?: boolean;
}

/** A group worked over and over: star repeats, brackets, and runs such as "k to last 3 sts". */
export interface Repeat extends Base {
  readonly type: 'repeat';
  /**
   * 'list': neither bracket nor star ("K4, ssk around"): the children are the steps since the beginning of the row or the
   * last marker, and `repeats` says whether all of them repeat or, likelier where more follows, only the last.
   */
  readonly form: 'star' | 'bracket' | 'run' | 'list';
  readonly repeats?: 'all' | 'last';
  /** Of a list: "rep to end", "alternately" say that all of it repeats. */
  readonly said?: boolean;
  readonly children: readonly Step[];
  readonly extent: Extent | null;
  /** Steps between the closing mark and "rep from": worked once, before the repeats begin. */
  readonly once: readonly Step[];
  /** "ending k2", "ending last rep k1 instead of k3". */
  readonly ending: { readonly kind: 'then' | 'lastRepeat' | 'omitting'; readonly children: readonly Step[]; readonly span: Span } | null;
  readonly mark: string | null;
  /** Where the opening mark or bracket stands. */
  readonly markSpan: Span | null;
  /** The verb of a run: knit, purl, work, patt, rib, slip. */
  readonly verb?: string;
}

/** Turning before the end of the row, with the method of the short row where the words name one. */
export interface Turn extends Base {
  readonly type: 'turn';
  readonly method: 'plain' | 'wrap' | 'double' | 'twin' | 'pin' | 'yarnOver';
  /** "leaving 6 sts unworked" is an assertion, "leaving rem sts" is none. */
  readonly leaving: Count | null;
  /** "leaving rem sts on a holder", "work on these sts only": the rest leaves the needle. */
  readonly holds: string | null;
  /** "turn work inside out": what was inside faces the knitter from here on. */
  readonly insideOut?: boolean;
  /** "do not turn". */
  readonly not?: boolean;
  /** The piece is rotated by a quarter, not turned over. */
  readonly quarter?: boolean;
}

export interface Marker extends Base {
  readonly type: 'marker';
  readonly op: 'place' | 'slip' | 'remove' | 'replace' | 'hang' | 'move';
  readonly name: string | null;
  /** "move the BOR marker 2 sts to the left": how far, and which way as the right side faces. */
  readonly by?: { readonly count: Count; readonly to: 'left' | 'right' };
  /** "place a marker at each end of last row": marks the row, not a place between stitches. */
  readonly atRow: boolean;
  /** "pm 20 sts in from each edge", "after 20 sts", "on each side of centre 14 sts", "after every 24th st": where in the row. */
  readonly at?: { readonly count: Count; readonly from: 'beginning' | 'eachEnd' | 'centre' | 'every' };
  /** "removing markers": all of them, or the one that is met, at no place of its own. */
  readonly anywhere?: boolean;
}

export interface CastOn extends Base {
  readonly type: 'castOn';
  readonly count: Count;
  /** 'start': a new piece or the beginning of a row; 'here': after the last stitch worked; 'end': when the row is done. */
  readonly where: 'start' | 'here' | 'end';
  readonly method: string | null;
  /** A provisional edge can be taken up again. */
  readonly provisional: boolean;
  /** "12 on each needle": the number printed per needle. */
  readonly perNeedle: Count | null;
  /** "over those cast off", "above each gap": at every gap that the last row's bind-offs left. */
  readonly overGaps?: boolean;
}

export interface BindOff extends Base {
  readonly type: 'bindOff';
  readonly count: Count;
  readonly which: 'next' | 'centre' | 'all' | 'remaining';
  readonly manner: readonly string[];
  /** "BO to next marker": as many as there are before it. */
  readonly toMarker?: boolean;
  /** "BO steek sts": a part of the stitches, by name. */
  readonly part?: string;
  /** "(including st on needle)" after the stitches that follow says the loop is counted in. */
  readonly loopCounted: boolean | null;
  /** "BO 20 sts each side": so many on either side of what lies between them. */
  readonly each?: true;
  /** "until 1 st rem", "all but 1 st": so many stay on the needle. */
  readonly leaves?: number;
  /** How it is done, told behind a colon: "k1, *k1, slip both sts back …, k them tog; rep from *". */
  readonly recipe?: string;
}

/** Stitches that leave the needle for a holder, waste yarn, a spare needle or a pin. */
export interface Hold extends Base {
  readonly type: 'hold';
  readonly which: 'first' | 'last' | 'firstAndLast' | 'next' | 'centre' | 'remaining' | 'these' | 'other';
  /** "all but last 6 sts": so many stay. */
  readonly but?: Count;
  /** "place sts to next marker on waste yarn": as many as there are before it. */
  readonly toMarker?: boolean;
  readonly count: Count | null;
  readonly holder: string;
  readonly name: string | null;
}

/** Held stitches come back: "k across 26 sts from back holder", "return 52 held sts to needle". */
export interface TakeUp extends Base {
  readonly type: 'takeUp';
  readonly count: Count | null;
  readonly name: string | null;
  /** Worked in the same pass ("k across …") or only put back on the needle. */
  readonly worked: boolean;
  readonly net: Count | null;
}

export interface PickUp extends Base {
  readonly type: 'pickUp';
  readonly count: Count | null;
  /** 'knit' unless the words say purl or only "pick up loops". */
  readonly verb: 'knit' | 'purl' | 'loops';
  readonly along: string | null;
  /** "including sts on holders": the number already contains them. */
  readonly includingHeld: boolean;
  /** "3 sts for every 4 rows", "1 st in each cast-on st": the number follows from the edge, and `count` is null. */
  readonly ratio?: { readonly sts: Count; readonly per: Count; readonly unit: 'row' | 'st' };
}

/** "Needle 1: …", "Front needle: …", "Instep: …": the steps measure "end" and "last" on this needle. */
export interface NeedlePart extends Base {
  readonly type: 'needlePart';
  readonly needle: string;
  /** Numbers of the needles where the words number them; empty for "Instep". */
  readonly numbers?: readonly number[];
  /** "On each needle": the steps are worked once on every needle. */
  readonly each?: boolean;
  /** "N2: same as N1": the needle whose steps are worked here too; the steps stand in `children`. */
  readonly like?: number;
  readonly children: readonly Step[];
}

/** "Divide sts over 3 needles (15-30-15)", "N1: 16; N2: 32; N3: 16": how the stitches lie on the needles from the beginning of the round on. */
export interface Arrange extends Base {
  readonly type: 'arrange';
  /** Needles or named parts with their stitches, in the order of the round; empty when only the number of needles is said. */
  readonly parts: readonly { readonly name: string | null; readonly count: Count }[];
  /** "over 4 dpns". */
  readonly needles: Count | null;
  /** "16 sts per needle". */
  readonly perNeedle: Count | null;
}

/** "Work back and forth on these 32 sts only": from here on the rest of the stitches waits on its needle. */
export interface Only extends Base {
  readonly type: 'only';
  readonly which: 'next' | 'first' | 'last' | 'centre' | 'these';
  readonly count: Count | null;
}

/**
 * "…", "etc.", "cont in this way, working 6 sts fewer each row until 6 sts rem": the series of the rows (or steps) just
 * given goes on, up to the goal or to the row or step that is printed next.
 */
export interface AndSoOn extends Base {
  readonly type: 'andSoOn';
  /** How much changes from one row to the next of its kind; null: as between those already given. */
  readonly step: Count | null;
  readonly sense: 'fewer' | 'more' | null;
  /** "Work 6 more rows in this way". */
  readonly rows?: Count;
  readonly schedule: readonly Segment[];
  readonly times: { readonly count: Count; readonly sense: 'plain' | 'more' | 'all' } | null;
  readonly until: Goal | null;
  readonly ending: EndSide | null;
  readonly stated: readonly Stated[];
}

/** "inc 6 sts evenly", "dec to 90 sts": only the net is fixed. */
export interface Evenly extends Base {
  readonly type: 'evenly';
  readonly change: 'inc' | 'dec' | 'to';
  readonly count: Count;
  /** "across last row": no extra row. */
  readonly onLastRow: boolean;
  /** "across next row": a row of its own. */
  readonly onNextRow?: boolean;
  /** "in every 10th st": once for so many stitches. */
  readonly inEvery?: Sized;
}

/** "working each DS as one st", "picking up wraps", "close gap": says what happens to the marks of turns. */
export interface Resolve extends Base {
  readonly type: 'resolve';
  /** 'drops': "dropping yos", "dropping extra wraps": the spare loops of the row below fall as they are met. */
  readonly what: 'wraps' | 'doubles' | 'twins' | 'loops' | 'gap' | 'drops';
  /** Of loops that fall: only the second of each double yarn over, not all. */
  readonly extra?: boolean;
}

/** `psso`, `p2sso`, "pass the yo over". */
export interface PullOver extends Base {
  readonly type: 'pullOver';
  readonly count: number;
  /** "pass 2nd, 3rd and 4th sts over first": loops just worked, not slipped ones. */
  readonly ofWorked?: boolean;
  /** A bare "psso" behind two slipped stitches lifts both or one: the numbers, the likeliest first. */
  readonly readings?: readonly number[];
}

/** A change of needle, yarn or colour; takes and makes nothing. */
export interface Change extends Base {
  readonly type: 'change';
  readonly what: 'needle' | 'yarn' | 'join' | 'break' | 'side' | 'slide' | 'rotate' | 'noTurn' | 'pin' | 'other';
  readonly detail: string;
}

/** A count the draft gives. */
export interface Stated extends Base {
  readonly type: 'stated';
  readonly count: Count;
  /** 'total' of stitches; a change; rows; stitches of a part. */
  readonly what:
    | 'total'
    | 'increased'
    | 'decreased'
    | 'rows'
    | 'each'
    | 'part'
    | 'left'
    | 'held'
    | 'repeats'
    | 'series'
    | 'worked'
    | 'used';
  /** "each side", "for back", "on holder", "between markers", "Needle 1". */
  readonly scope: string | null;
}

/** Words that instruct nothing. */
export interface Remark extends Base {
  readonly type: 'remark';
  /**
   * While a row is read: sizes named within it, 1 for each that is named. They rule the next step, all to come, the one before,
   * or, where a comma sets them off at its end, the whole row. Gone once the row is read.
   */
  readonly sizes?: Sized;
  readonly rules?: 'next' | 'rest' | 'before' | 'all';
  /** The words were understood and there is nothing to work in them; without it they were only passed over. */
  readonly known?: true;
}

/** Words that instruct and were not understood. */
export interface Unread extends Base {
  readonly type: 'unread';
  readonly text: string;
  /** Why a passage was not even tried: no draft prints one so long, or blocks or brackets so deep within each other. */
  readonly beyond?: 'long' | 'deep' | 'brackets';
}

/** The label of a row or round. */
export interface Label extends Base {
  readonly type: 'label';
  readonly unit: 'row' | 'round';
  /** Numbers in order: `Rows 5–8` is 5, 6, 7, 8. Empty for "Next row" and named rows. */
  readonly numbers: readonly number[];
  /** The numbers as ranges of the text, for rules that point at them. */
  readonly numberSpan: Span | null;
  /** Where the last number differs by size: `Rows 3–6 (8, 10)`. */
  readonly lastBySize: Sized | null;
  /** "Row 2 and all WS rows". */
  readonly andAll: 'RS' | 'WS' | 'even' | 'odd' | 'alternate' | null;
  /** "Next", "Next 3". */
  readonly next: Count | null;
  /** "Dec", "Inc", "Set-up", "Rib", "Moss st", "Short" in lower case, without the row word. */
  readonly name: string | null;
  readonly side: Side | null;
  readonly sideSpan: Span | null;
}

/** One row or round, or several with the same text. */
export interface Row extends Base {
  readonly type: 'row';
  readonly label: Label | null;
  readonly children: readonly Step[];
  /** Text of a labelled row that speaks of rows: "Row 4: As Row 2", "Rows 5–8: Rep Rows 1 and 2 twice". */
  readonly does: Statement | null;
  readonly stated: readonly Stated[];
}

/** Rows by name: "rep last 2 rows", "Rows 1–4", "Rib rnd", "moss st row". */
export interface RowsNamed {
  /** 'shaping': "this inc rnd", "the decrease": the row that made the last change, an increase or decrease where `name` says which. */
  readonly kind: 'last' | 'these' | 'first' | 'numbers' | 'name' | 'mark' | 'pattern' | 'shaping';
  readonly count: Count | null;
  readonly numbers: readonly number[];
  readonly name: string | null;
  /** "of Leaf pattern", "of cowl", "of Chart A". */
  readonly of: string | null;
  readonly mark: string | null;
  readonly toMark: string | null;
}

/** What ends a stretch of rows. */
export type Goal =
  | {
      readonly kind: 'measure';
      readonly of: string | null;
      readonly values: Sized;
      readonly unit: 'cm' | 'mm' | 'in';
      readonly from: string | null;
      readonly span: Span;
      readonly shorter?: boolean;
    }
  | {
      readonly kind: 'count';
      readonly count: Count;
      /** `needle`: on the one needle that `scope` names. */
      readonly sense: 'total' | 'unworked' | 'between' | 'section' | 'markers' | 'needle';
      readonly scope: string | null;
    }
  | { readonly kind: 'rows'; readonly count: Count }
  /** `fewer`: "18 rows less than on Back to shoulder shaping". */
  | { readonly kind: 'matches'; readonly name: string | null; readonly fewer?: Count }
  | { readonly kind: 'allWorked' }
  /** "until there are 9 wrapped sts on each side". */
  | {
      readonly kind: 'marks';
      readonly of: 'wrapped' | 'double' | 'twin' | 'pin' | 'yarnOver';
      readonly count: Count;
      readonly eachSide: boolean;
    }
  | { readonly kind: 'loose'; readonly text: string };

/** "ending with a WS row", "ending with RS facing", "ending with Row 4". */
export interface EndSide extends Base {
  readonly type: 'endSide';
  readonly last: Side | null;
  readonly row: Sized | null;
  readonly edge: string | null;
  /** "ending 4 sts before end of last rnd": stitches of the last round left unworked. */
  readonly before?: Count;
}

/** One stretch of a shaping schedule: which rows carry the shaping. */
export interface Segment extends Base {
  readonly type: 'segment';
  /** 'this': row being worked · 'next n' · 'jth' from now · 'foll n' in succession · 'foll kth' n times · 'every kth' */
  readonly kind: 'this' | 'next' | 'nth' | 'follEach' | 'follEvery' | 'every' | 'alternately';
  readonly n: Count | null;
  /** Row interval; null for every RS row. */
  readonly k: Sized | null;
  readonly k2?: Sized | null;
  /** "every RS row", "every other RS row". */
  readonly rowSide?: Side | null;
  readonly more: 'plain' | 'more' | 'all';
  readonly until: Count | null;
  /** "every 2 cm 5 times". */
  readonly measure?: Sized | null;
}

/** Statements: what stands at the level of rows. */
export type Statement = Row | RepeatRows | Plain | Shape | EdgeRows | Until | Refer | Join | AtSameTime | SizeBlock | Declare | Step;

/** "Rep last 2 rows 5 times more", "Work Rows 1–8 twice", "rep from ** until …". */
export interface RepeatRows extends Base {
  readonly type: 'repeatRows';
  readonly verb: 'rep' | 'work';
  readonly rows: RowsNamed;
  readonly times: { readonly count: Count; readonly sense: 'plain' | 'more' | 'all' } | null;
  readonly until: Goal | null;
  readonly ending: EndSide | null;
  /** "Rep Dec Row every 10 (10, 8) rnds 6 (7, 9) more times, then …". */
  readonly schedule: readonly Segment[];
  /** "working 4 sts fewer each time". */
  readonly step: Count | null;
  readonly stepSense?: 'fewer' | 'more';
  /** "omitting the final k1 and p1": the last rows end with their decrease. */
  readonly omitting?: boolean;
  /** "working the Buttonhole row in place of Row 1 on the 17th and every foll 18th row …". */
  readonly inPlace: { readonly name: string; readonly of: readonly number[]; readonly schedule: readonly Segment[] } | null;
  readonly stated: readonly Stated[];
}

/** "Work 3 rows even", "Knit 6 rows", "Beg with a k row, work 10 rows in st st". */
export interface Plain extends Base {
  readonly type: 'plain';
  readonly count: Count;
  readonly unit: 'row' | 'round';
  readonly fabric: string | null;
  readonly begin: 'k' | 'p' | 'RS' | 'WS' | null;
  /** "Beg with 2nd row". */
  readonly beginRow: number | null;
  readonly ending: EndSide | null;
  /** "in rib as given for back": the piece whose rows of this fabric are meant. */
  readonly of: string | null;
  /** Shaping inside the window: "work 21 rows, dec 1 st at each end of next and every foll alt row". */
  readonly inside: readonly Statement[];
  readonly stated: readonly Stated[];
}

/** "Dec 1 st at each end of next and every foll 4th row until 48 sts rem". */
export interface Shape extends Base {
  readonly type: 'shape';
  readonly change: 'inc' | 'dec';
  readonly count: Count;
  /** 'eachMarker': once at every marker there is; 'atMarkers': at markers that the words name, all of them in `count`. */
  readonly place: 'bothEnds' | 'beginning' | 'end' | 'edge' | 'eachEdge' | 'eachSideOfMarkers' | 'eachMarker' | 'atMarkers' | 'centre';
  readonly edge: string | null;
  readonly schedule: readonly Segment[];
  readonly fabric: string | null;
  readonly ending: EndSide | null;
  readonly stated: readonly Stated[];
}

/** "Cast off 4 sts at beg of next 2 rows, then 3 sts at beg of foll 4 rows". */
export interface EdgeRows extends Base {
  readonly type: 'edgeRows';
  /** "Cast on 5 sts at end of next 2 rows": when the row is done, not before it. */
  readonly atEnd?: boolean;
  /** "at each neck edge": at both of them, one on each side of the gap. */
  readonly each?: boolean;
  /** 'leave': so many stay unworked at the end of each row, which turns there. */
  readonly change: 'bindOff' | 'castOn' | 'leave';
  readonly parts: readonly { readonly count: Count; readonly rows: readonly Segment[]; readonly span: Span }[];
  readonly edge: string | null;
  readonly stated: readonly Stated[];
}

/** "Cont straight until armhole measures 19 (20: 21) cm, ending with a WS row". */
export interface Until extends Base {
  readonly type: 'until';
  readonly verb: string;
  readonly fabric: string | null;
  readonly begin: 'k' | 'p' | 'RS' | 'WS' | null;
  /** "in rib as given for back until …": the piece whose rows of this fabric are meant. */
  readonly of: string | null;
  readonly goal: Goal;
  readonly ending: EndSide | null;
  readonly inside: readonly Statement[];
  readonly stated: readonly Stated[];
}

/** "As Row 2", "as given for Back to **", "complete to match first side, reversing shapings". */
export interface Refer extends Base {
  readonly type: 'refer';
  readonly to: 'row' | 'piece' | 'side' | 'pattern' | 'chart';
  readonly rows: readonly number[];
  readonly name: string | null;
  readonly until: {
    readonly mark: string | null;
    readonly place: string | null;
    readonly goal: Goal | null;
    readonly ending?: EndSide;
    /** "Until armhole shaping is completed": to the end of the stage, not to its beginning. */
    readonly done?: boolean;
  } | null;
  readonly reversing: boolean;
  /** Rows of it, or how often. */
  readonly times: { readonly count: Count; readonly sense: 'plain' | 'more' | 'all' } | null;
  /** "as for Back from 1st row", "from **": where in the piece it begins; the stitches in hand go on. */
  readonly from?: { readonly row: number | null; readonly mark: string | null };
  /** "Shape armholes as given for Back": only this part of the piece, on the stitches in hand. */
  readonly part?: string;
  /** "but cast on 4 sts more", "casting on 90 sts": how its cast-on differs. */
  readonly castOn?: { readonly count: Count; readonly sense: 'more' | 'fewer' | 'total' };
  /** Of a chart: the stitches it is worked over, inside a row or on every row. */
  readonly over?: Extent | null;
  /** Of a chart: "working 6-st rep 6 (7) times", "(2 reps)": passes of its repeat in a row. */
  readonly repeats?: Count | null;
  /** "Work Chart A twice, then Rows 1–4 once more": what comes after it of the same chart. */
  readonly then?: readonly Refer[];
  readonly stated: readonly Stated[];
}

/** Joining in the round, rejoining yarn, grafting, three-needle bind-off, fastening off, thread through. */
export interface Join extends Base {
  readonly type: 'join';
  readonly what: 'round' | 'noRound' | 'rejoin' | 'graft' | 'threeNeedle' | 'fastenOff' | 'thread' | 'seam' | 'resumeRound';
  readonly count: Count | null;
  readonly side: Side | null;
  /** "k first and last st tog": one stitch fewer. */
  readonly loses: number;
}

/** Two tracks on one stream of rows. */
export interface AtSameTime extends Base {
  readonly type: 'atSameTime';
  readonly when: Goal | null;
  readonly ending: EndSide | null;
  readonly children: readonly Statement[];
}

/** "Sizes M and L only:". Size indexes counted from 0; null means all sizes. */
export interface SizeBlock extends Base {
  readonly type: 'sizeBlock';
  readonly sizes: readonly number[] | null;
  /**
   * "All other sizes", "Remaining sizes": `sizes` holds those that the blocks before it in the same passage did not
   * name; it is null where no block stands before it, and the blocks of the passages before decide.
   */
  readonly rest?: boolean;
  /** Statements on the same line, ruled by an inline label; empty where the label stands on its own line. */
  readonly children: readonly Statement[];
}

/** "These 4 rows form patt", "multiple of 8 + 3", standing rules. */
export interface Declare extends Base {
  readonly type: 'declare';
  readonly what: 'forms' | 'multiple' | 'panel' | 'rule' | 'mark' | 'blockMark' | 'title';
  readonly name: string | null;
  readonly multiple: { readonly of: number; readonly plus: number; readonly rows: number | null } | null;
  readonly count: Count | null;
}

export type TreeNode = Statement | Label | Count | Segment | EndSide;
