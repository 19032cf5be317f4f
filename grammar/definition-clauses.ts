// biome-ignore-all lint/suspicious/noThenProperty: a number of stitches, never a promise
/**
 * The clauses that definitions of stitches are made of, each with the primitive moves it has the hands do.
 *
 *     slip next 3 sts to cn and hold in front · k3 from cn · return them to left needle · knit them together through the back loops
 *     pass the slipped st over · lift the strand between the needles and knit it tbl · (k1, yo, k1) all in next st
 */

/** What has been done so far, as far as later clauses speak of it. */
export interface Doing {
  readonly moves: string[];
  /** Stitches last slipped and not passed over yet, and loops made since. */
  slipped: number;
  since: number;
  /** Stitches slipped or given back that "them" stands for. */
  them: number;
  /** Slipped stitches still on the right needle that "them" needs back on the left one. */
  back: number;
  sinceYarnOver: number;
  readonly cable: { slipped: number; hold: 'front' | 'back'; then: number; from: number }[];
  /** "through the fronts": the left needle enters them, which turns nothing back by itself. */
  certain: boolean;
}

const names: readonly string[] = ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

export const NUM = String.raw`(\d{1,2}|one|two|three|four|five|six|seven|eight|nine)`;

export const ST = String.raw`(?:sts?|stitch(?:es)?|loops?)\b`;

export const VERB = String.raw`(knit|k|purl|p)`;

export const LEFT = String.raw`(?:the )?(?:left-hand|left hand|left|lh|l)(?: (?:needle|ndl|n))?\b`;

export const CN = String.raw`(?:a |the |1st |first |2nd |second )?(?:cn|cable needle|cable-needle|cable ndl|spare needle|dpn)(?: ?([ab12]))?\b`;

/** What stands between the legs that a stitch is worked into. */
const JOIN = String.raw`(?:[ ,&]|and\b|then\b|into\b|in\b|the\b|knit\b|purl\b)+`;

export const BACKLOOP = String.raw`(?:tbl|b|through (?:the |their )?backs? ?(?:of )?(?:the |their |both )?(?:loops?|legs?)?|in(?:to)? (?:the |their )?back(?: loops?)?)`;

export const number = (text: string | undefined, otherwise: number): number => {
  if (text === undefined) return otherwise;
  const word = names.indexOf(text);
  return word >= 0 ? word : Number(text);
};

export const face = (verb: string | undefined): 'k' | 'p' => (verb?.startsWith('p') ? 'p' : 'k');

/** Puts stitches that "them" names back on the left needle if they were slipped and not yet returned. */
function takeBack(doing: Doing, count: number): void {
  if (doing.back > 0) {
    doing.moves.push(`ret(${Math.min(doing.back, count)})`);
    doing.slipped = Math.max(0, doing.slipped - count);
    doing.back = 0;
  }
}

export function made(doing: Doing, count: number): void {
  doing.since += count;
  doing.sinceYarnOver += count;
}

/** "k1, yo, k1" worked into one stitch: every stitch but the last keeps the old one on the needle. */
export function intoOne(inside: string, doing: Doing): boolean {
  const parts: string[] = [];
  const again = /\(([^()]+)\) ?(?:x ?)?(twice|\d|two times|three times|\d times)(?: times)?/g;
  const flat = inside.replace(again, (_, group: string, often: string) =>
    Array.from({ length: often === 'twice' ? 2 : number(/^\w+/.exec(often)?.[0], 2) }, () => group).join(', '),
  );
  for (const word of flat.replace(/[()[\]]/g, ' ').split(/,| and |;|-|\bthen\b/)) {
    const text = word.trim();
    if (text === '') continue;
    if (/^(?:yo|yarn over|yfwd|yrn|yon|yf)$/.test(text)) parts.push('yo');
    else {
      const plain = /^(knit|k|purl|p) ?1?(?: (tbl))?$/.exec(text);
      if (!plain) return false;
      parts.push(`${face(plain[1])}${plain[2] ? 'b' : ''}`);
    }
  }
  const last = parts.map((part) => part !== 'yo').lastIndexOf(true);
  if (last < 0 || parts.length > 15) return false;
  doing.moves.push(...parts.map((part, index) => (part === 'yo' || index === last ? part : `${part}+`)));
  made(doing, parts.length);
  doing.sinceYarnOver = 0;
  return true;
}

export interface Clause {
  readonly pattern: RegExp;
  readonly does: (match: RegExpExecArray, doing: Doing) => boolean;
}

export const clause = (source: string, does: Clause['does']): Clause => ({ pattern: new RegExp(source, 'y'), does });

const ok = (): boolean => true;

export const clauses: readonly Clause[] = [
  // cables
  clause(
    String.raw`(?:(?:slip|sl|place|put|move) ?|(?=next ))(?:the )?(?:next |first |foll )?${NUM}? ?(?:${ST} )?(?:purlwise |pwise )?(?:on ?to|to|on) ${CN}(?:,? (?:and |& )?(?:hold|holding|held|leave|leaving|keep|place)(?: it| them)?)?(?:,? (?:in|at|to))?(?: the)?(?: (front|back))?(?: of (?:the )?(?:work|needle|knitting))?`,
    ([, count, which, hold], doing) => {
      const n = number(count, 1);
      if (hold === undefined) return false;
      // Two needles: the second one of a crossing of three strands.
      const screen =
        doing.cable.length > 0 &&
        which !== undefined &&
        doing.moves.some((move) => /^cn[FB]/.test(move)) &&
        !doing.moves.some((move) => /cn[FB]$/.test(move))
          ? 'S'
          : hold === 'front'
            ? 'F'
            : 'B';
      doing.moves.push(`cn${screen}(${n})`);
      doing.cable.push({ slipped: n, hold: hold === 'front' ? 'front' : 'back', then: 0, from: 0 });
      return true;
    },
  ),
  clause(
    String.raw`(?:hold|holding|leave|leaving|held|and hold)(?: it| them)? (?:in|at|to)(?: the)? (?:front|back)(?: of (?:the )?work)?`,
    () => false,
  ),
  clause(
    String.raw`${VERB} ?(?:the )?(?:rem )?(?:${NUM} ?)?(?:${ST} )?(?:the |those |these )?(?:(tbl|through (?:the )?back loops?) )?(?:from|off|on) ${CN}(?: (tbl|through (?:the )?back loops?))?`,
    ([, verb, count, tbl, which, tblAfter], doing) => {
      const open = doing.cable.filter((each) => each.from === 0);
      const needle = doing.moves.some((move) => move.startsWith('cnS'))
        ? which === '2' || which === 'b' || (which === undefined && open.length === 2)
          ? doing.cable[1]
          : doing.cable[0]
        : open[0];
      if (needle === undefined || needle.from !== 0) return false;
      needle.from = number(count, needle.slipped);
      if (needle.from !== needle.slipped) doing.certain = false;
      const screen =
        needle === doing.cable[1] && doing.moves.some((move) => move.startsWith('cnS')) ? 'S' : needle.hold === 'front' ? 'F' : 'B';
      doing.moves.push(`${face(verb)}${(tbl ?? tblAfter) ? 'b' : ''}cn${screen}`);
      made(doing, needle.slipped);
      return true;
    },
  ),
  // into one stitch
  clause(
    String.raw`(?:work |knit |make )?[([]((?:[^()[\]]|\([^()]*\) ?(?:twice|\d)){1,120})[)\]](?: (?:twice|\d times)(?:, (?:k1|p1))?)? ?(?:all )?(?:in|into|in to) (?:the )?(?:next|same|one|1|single)(?: ${NUM})?(?: single)?(?: ${ST})?`,
    (match, doing) => {
      const tail = /[)\]] (twice|\d times)(?:, (k1|p1))?/.exec(match[0]);
      return intoOne(tail ? `(${match[1]}) ${tail[1]}${tail[2] ? `, ${tail[2]}` : ''}` : (match[1] ?? ''), doing);
    },
  ),
  clause(
    String.raw`((?:(?:k|p) ?1(?: tbl)?|k|p|knit|purl|yo|yarn over|yfwd|yrn)(?:(?:, | and |, and |, then )(?:(?:k|p) ?1(?: tbl)?|k|p|knit|purl|yo|yarn over|yfwd|yrn)){1,10}) ?,? (?:all )?(?:in|into|in to) (?:the )?(?:next|same|one|1)(?: ${ST})?`,
    ([, inside], doing) => intoOne(inside ?? '', doing),
  ),
  clause(String.raw`(?:in|into) (?:the )?(?:next|same) ${ST},? (?:work )?[([]([^()[\]]{1,80})[)\]]`, ([, inside], doing) =>
    intoOne(inside ?? '', doing),
  ),
  clause(
    String.raw`${VERB} ?1? ?(?:in|into|in to|through|to) (?:the )?(front|back)(?: loop| leg)?${JOIN}(front|back)(?: loop| leg)?(?:${JOIN}(front|back))?(?: loops?| legs?)?(?: (?:of|in) (?:the )?(?:next |same |one )?(?:1 )?${ST}| again)*(?: before (?:slipping|dropping|letting|taking)[^,;.]*)?`,
    ([, verb, first, second, third], doing) => {
      const v = face(verb);
      const part = (leg: string | undefined): string => (leg === 'back' ? `${v}b` : v);
      if (third === undefined) doing.moves.push(`${part(first)}+`, part(second));
      else doing.moves.push(`${part(first)}+`, `${part(second)}+`, part(third));
      made(doing, third === undefined ? 2 : 3);
      return true;
    },
  ),
  clause(
    String.raw`${VERB} ?1? (?:in|into|in to|through) (?:the )?(?:(front|back)(?: loop| leg)? of )?(?:the )?next ${ST}(?: (?:as usual|as normal))?,?(?: (?:and|but|then))?(?: (?:leave|leaving|keep|keeping|without|do not|don't)[^,;.]*?(?:needle|off|slipping it|dropping it))?,? ?(?:and |then |but )*(knit|k|purl|p)? ?(?:again )?(?:in|into|in to|through) (?:the )?(front|back)(?: loop| leg)?(?: of)?(?: (?:the )?same)?(?: ${ST})?(?:,? (?:and |then |and then )?(?:slip|sl|drop|let|take|slipping|dropping) [^,;.]*off[^,;.]*)?`,
    ([, verb, first, again, second], doing) => {
      const v = face(verb);
      const w = again === undefined ? v : face(again);
      doing.moves.push(`${v}${first === 'back' ? 'b' : ''}+`, `${w}${second === 'back' ? 'b' : ''}`);
      made(doing, 2);
      return true;
    },
  ),
  clause(String.raw`(?:${VERB}|work) (?:twice|2 times) in(?:to)? (?:the )?(?:next|same) ${ST}`, ([, verb], doing) => {
    doing.moves.push(`${face(verb)}+`, `${face(verb)}b`);
    made(doing, 2);
    return true;
  }),
  // lifted strands and loops
  clause(
    String.raw`(?:(?:make|inc|increase) (?:1|one)(?: ${ST})?(?: (?:purlwise|left|right|knitwise))?,? ?(?:by )?)?(?:insert(?:ing)? [a-z -]*needle [a-z ]*under|lift(?:ing)?|pick(?:ing)? up|knit(?:ting)? into|using) (?:the )?(?:horizontal |running |connecting )*(?:bar|strand|thread|loop|yarn)\b(?! (?:of|below))([a-z ,;'()-]*)`,
    ([whole, rest = ''], doing) => {
      if (/\b(?:slip|sl|pass|yo|tog|together|below|turn)\b/.test(rest)) return false;
      const verbs = [...rest.matchAll(/\b(k|knit|knitting|p|purl|purling|work|working)\b/g)];
      const verb = verbs.at(-1)?.[1] ?? (/^knit/.test(whole) || /\bknitting into\b/.test(whole) ? 'k' : undefined);
      if (verb === undefined) return false;
      const tail = rest.slice(verbs.at(-1)?.index ?? 0);
      const back = /tbl|\bback\b|twist/.test(tail);
      doing.moves.push('bar', `${verb.startsWith('p') ? 'p' : 'k'}${back ? 'b' : ''}`);
      made(doing, 1);
      return true;
    },
  ),
  clause(
    String.raw`(?:make |using |work |place )?(?:a |an |1 )?(?:backward|backwards|twisted|half-hitch|e)[ -]?loop(?: (?:increase|inc|cast on|cast-on))?(?: on(?:to)? (?:the )?(?:right|rh)[a-z -]*needle)?`,
    (_, doing) => {
      doing.moves.push('loop');
      made(doing, 1);
      return true;
    },
  ),
  clause(
    String.raw`(?:(?:lift|pick up|insert (?:left|lh) needle into) (?:the )?|with (?:the )?(?:left|lh) needle,? (?:lift|pick up) (?:the )?)(left|right)?(?: leg| loop| side)? ?(?:of )?(?:the )?(?:${ST})? ?(?:(?:one|1|two|2|in the) rows? )?below (?:the )?(?:(?:st|stitch) )?(?:(?:just worked|last ${ST}|next ${ST}) ?)?(?:on (?:the )?(?:right|left|rh|lh)[ -]?(?:hand )?needle ?)?(?:onto (?:the )?(?:left|lh)[ -]?(?:hand )?needle)?`,
    ([whole], doing) => {
      doing.moves.push(/just worked|last|left leg/.test(whole) ? 'belowR' : 'below');
      doing.them = 1;
      doing.back = 0;
      return true;
    },
  ),
  // twists: a stitch worked before its neighbour, both let go at last
  clause(
    String.raw`${VERB} ?2 ?(?:together|tog)(?: ${BACKLOOP})?,? (?:but |and )?(?:leave|leaving|do not|don't|without|keep|keeping)[^,;.]*(?:needle|off|dropping them|slipping them)[,;]? ?(?:insert[a-z -]* needle between [a-z\d ]{0,16}sts?(?: just knitted)? and )?(?:then |and )*(knit|k|purl|p) (?:the )?(?:into )?(?:the )?(?:first|1st) (?:${ST})?(?: again)?[,;]? ?(?:then |and )*(?:slip|sl|drop|let|slipping|dropping|take) [^,;.]*(?:off|tog|together|both)[^,;.]*`,
    ([, verb, again], doing) => {
      doing.moves.push(`${face(verb)}t+(2)`, face(again), 'off(1)');
      made(doing, 2);
      return true;
    },
  ),
  clause(
    String.raw`${VERB} (?:in|into)? ?(?:the )?(?:(back|front) of )?(?:the )?(?:second|2nd) ${ST}(?: on [a-z ]*needle)?(?: (?:${BACKLOOP}))?(?: (?:passing )?(?:from behind|from the back|from the front|(?:in front of|behind) (?:the )?first(?: ${ST})?))?(?: ?,? (?:but |and )?(?:leave|leaving|do not|don't|without)[^,;.]*(?:needle|off|it))?,? ?(?:then |and )*(knit|k|purl|p) (?:in|into)? ?(?:the )?(?:(?:front|back) of )?(?:the )?(?:first|1st)(?: ${ST})?(?: tbl| through (?:the )?(?:front|back)(?: loop)?)?,? ?(?:then |and )*(?:slip|sl|drop|let|slipping|dropping|take) [^,;.]*(?:off|tog|together|both)[^,;.]*`,
    ([, verb, , again], doing) => {
      doing.moves.push(`${face(verb)}@+(2)`, face(again), 'off(1)');
      made(doing, 2);
      return true;
    },
  ),
  // giving back
  clause(
    String.raw`(?:inserting|insert|place|put) (?:the )?(?:tip of )?(?:the )?(?:left|lh)(?:-hand| hand)? needle (?:tip )?(?:in|into|through) (?:the )?(?:fronts?|front legs?)(?: loops?)? of (?:the |these |those |both |them)?(?:${NUM} )?(?:slipped )?(?:${ST})?(?: from left to right)?`,
    ok,
  ),
  clause(
    String.raw`(?:return|replace|put|slip|sl|place|move|transfer) (?:the |these |those |both |them|it|this)?(?: ?${NUM})? ?(?:slipped |sl |resulting |new )?(?:${ST})? ?(?:back )?(?:on ?to|to|on|in) ${LEFT}(?: as they are| in this position| purlwise| one at a time| tog(?:ether)? through back loops?)?`,
    ([whole, count], doing) => {
      const n = number(count, /\bit\b|\bthis\b|\bst\b|stitch\b/.test(whole) ? 1 : Math.max(doing.back, 1));
      doing.moves.push(`ret(${n})`);
      doing.them = n;
      doing.back = 0;
      doing.slipped = Math.max(0, doing.slipped - n);
      return true;
    },
  ),
  clause(
    String.raw`(?:slip|sl|return|place) (?:the |this |it |resulting )*(?:${ST} )?(?:back )?(?:on ?to|to) (?:the )?(?:right|rh)(?:[ -]hand)? (?:needle|ndl)`,
    (_, doing) => {
      doing.moves.push('sl');
      return true;
    },
  ),
  // passing over
  clause(
    String.raw`(?:pass|lift|pull|draw|slip|bring) (?:the )?2nd,? 3rd(?:,? 4th)?(?:,? (?:and |& )?5th)?(?:,? (?:and |& )?(?:6th|7th|4th|3rd))? (?:${ST} )?(?:one at a time )?over (?:the )?(?:first|1st)(?: ${ST})?(?: and off[^,;.]*)?`,
    ([whole], doing) => {
      const over = (whole.match(/\d(?:nd|rd|th)/g) ?? []).length;
      doing.moves.push(`pass(${over}/1)`);
      return true;
    },
  ),
  clause(
    String.raw`(?:pass|lift|pull|draw|slip) (?:the )?(?:yo|yarn over|yfwd|yrn) over(?: (?:both|the|these|last|next|(?:the )?(?:last |next |two |2 )?(?:\d )?(?:knit |k )?${ST}|them|k2|2|it))*`,
    (_, doing) => {
      doing.moves.push(`pass(1/${Math.max(1, doing.sinceYarnOver)})`);
      return true;
    },
  ),
  clause(
    String.raw`(?:pass|lift|pull|draw) (?:the )?(?:next|2nd|second|foll(?:owing)?) ${ST}(?: on [a-z ]*needle)? over(?: (?:it|this|the|returned|first|decreased|decrease|k2tog|and off the needle|${ST}))*`,
    (_, doing) => {
      doing.moves.push('lpass(1/1)');
      return true;
    },
  ),
  clause(
    String.raw`(?:p(2|3)?ss?so|psso|p2sso|(?:pass|lift|pull|draw|slip) (?:the |both |all )?(?:first )?(?:${NUM} )?(?:slipped |sl |slip[- ])(?:${ST})?,? ?(?:one at a time,? |one by one,? )?(?:tog(?:ether)? )?over)(?: (?:both|them|it|all|the|these|last|made|one at a time|one by one|knitted|knit|purled|purl|knit ones|k1|k2tog|k2|k st|decrease|dec|decreased|k-st|worked|just|\d|two|three|${ST}))*(?: and off (?:the )?(?:right |rh )?needle)?`,
    ([whole, short, count], doing) => {
      const over = number(short ?? count, /\bboth\b|sts\b over|stitches over/.test(whole) && doing.slipped > 1 ? doing.slipped : 1);
      if (over > doing.slipped || over < 1 || doing.since < 1) return false;
      doing.moves.push(`pass(${over}/${doing.since})`);
      doing.slipped -= over;
      return true;
    },
  ),
  // several worked as one
  clause(
    String.raw`${VERB} ?(?:them|these|those|the|both|next|slipped)?(?: (?:slipped|same|both|next))* ?(?:${NUM} )?(?:slipped )?(?:${ST} )?(?:together|tog)(?: as one)?(?: ?,? ?${BACKLOOP})?`,
    ([whole, verb, count], doing) => {
      const those = /\b(?:them|these|those|both|slipped)\b/.test(whole);
      const n = number(count, those ? Math.max(doing.them, doing.back) : 0);
      if (n < 2) return false;
      if (those || doing.back === n) takeBack(doing, n);
      doing.moves.push(`${face(verb)}${new RegExp(`(?:together|tog).*${BACKLOOP}$`).test(whole) ? 'b' : ''}t(${n})`);
      made(doing, 1);
      return true;
    },
  ),
  clause(
    String.raw`${VERB}${NUM}tog(?:ether)?(?: ?,? ?${BACKLOOP})?(?: (?:these|the|those|them)(?: ${NUM})?(?: slipped)?(?: ${ST})?)?`,
    ([whole, verb, count], doing) => {
      const n = number(count, 2);
      if (n < 2) return false;
      if (/\b(?:these|those|them)\b/.test(whole)) takeBack(doing, n);
      doing.moves.push(`${face(verb)}${/(?:tbl|back)/.test(whole) ? 'b' : ''}t(${n})`);
      made(doing, 1);
      return true;
    },
  ),
  // slipping
  clause(
    String.raw`(?:slip|sl) ?(?:the )?(?:next |first |foll )*(?:${NUM} ?)?(?:${ST} ?)?((?: ?(?:together|tog|knitwise|purlwise|kwise|pwise|as if to (?:knit|purl|k2tog|k|p)(?: 2 ?tog(?:ether)?)?|wyif|wyib|with yarn in (?:front|back)|(?:, )?one at a time|one by one|individually|separately|singly|one after the other|to (?:the )?right (?:hand )?needle|,? twice))*)`,
    ([, count, how = ''], doing) => {
      const n = number(count, 1) * (/twice/.test(how) ? 2 : 1);
      const knitwise = /knit|kwise|to k/.test(how);
      if (/\btog(?:ether)?\b|k2tog/.test(how) && n > 1) doing.moves.push(`slt(${n})`);
      else doing.moves.push(...Array.from({ length: n }, () => (knitwise ? 'slk' : 'sl')));
      // A second slip right after the first adds to "them"; one after other work starts anew.
      const goesOn = doing.since === 0;
      doing.slipped += n;
      doing.them = goesOn && doing.back > 0 ? doing.back + n : n;
      doing.back = doing.them;
      doing.since = 0;
      return true;
    },
  ),
  // yarn
  clause(
    String.raw`(?:bring|take|wrap|wind|wind the|put) (?:the )?yarn (?:(?:forward|to (?:the )?front|from front to back|round|around|over)(?: and|,)? ?)+(?:(?:over|round|around|to back over)(?: the)? (?:right |rh )?(?:right-hand |right hand )?needle)(?: (?:from|to) [a-z ]*)?`,
    (_, doing) => {
      doing.moves.push('yo');
      doing.since += 1;
      doing.sinceYarnOver = 0;
      return true;
    },
  ),
  clause(
    String.raw`(?:(?:bring|take|move|return|with|hold) (?:the )?yarn (?:back )?(?:to|in|at|between needles to) (?:the )?(?:front|back)(?: of (?:the )?work)?(?: between (?:the )?needles)?|(?:yf|yb|ybk|wyif|wyib)(?![a-z]))`,
    (_, doing) => {
      doing.moves.push('-');
      return true;
    },
  ),
  clause(String.raw`turn(?: (?:the )?work)?`, (_, doing) => {
    doing.moves.push('turn');
    return true;
  }),
  clause(String.raw`${VERB} (?:it|this ${ST}|this loop|the loop|the lifted (?:loop|st))(?: ${BACKLOOP})?`, ([whole, verb], doing) => {
    if (doing.them !== 1) return false;
    takeBack(doing, 1);
    doing.moves.push(`${face(verb)}${/tbl|back/.test(whole) ? 'b' : ''}`);
    made(doing, 1);
    return true;
  }),
  clause(
    String.raw`${VERB} ?(?:the )?(?:next )?(?:${NUM}|next|${ST})(?: ?${ST})?(?: ?${BACKLOOP})?(?: (?:from|on) ${LEFT})?(?![a-z])`,
    ([whole, verb, count], doing) => {
      const n = number(count, 1);
      doing.moves.push(...Array.from({ length: n }, () => `${face(verb)}${/tbl|back/.test(whole) ? 'b' : ''}`));
      made(doing, n);
      const last = doing.cable.at(-1);
      if (last !== undefined && last.from === 0) last.then += n;
      return true;
    },
  ),
];
