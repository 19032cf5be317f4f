/**
 * Clauses of definitions that work stitches more than once or in an uncommon way, each with the moves it has the hands do.
 *
 *     p3tog leaving sts on left needle, yrn, p same 3 sts tog again · knit into front, back, front, back and front of next st
 *     pass 4 sts, one at a time, over the first · insert right needle into next 2 sts and knit them as one
 */
import { BACKLOOP, type Clause, CN, clause, face, intoOne, made, NUM, number, ST, VERB } from './definition-clauses.ts';

const YO = String.raw`(?:yo|yrn|yfwd|yon|yarn over|yarn (?:round|around|over) (?:the )?needle|yarn forward)`;
const STAYS = String.raw`(?:,? (?:but |and )?(?:leave|leaving|do not|don't|without|keep|keeping)[^,;.]*)`;

export const knots: readonly Clause[] = [
  // stars and gathers
  clause(
    String.raw`${VERB} ?(?:the )?(?:next )?${NUM} ?(?:${ST} )?(?:together|tog)${STAYS}, ${YO}, (?:then )?${VERB} ?(?:the )?(?:into )?(?:these |same )?(?:${NUM} ?)?(?:${ST} )?(?:together|tog) (?:again|once more)(?: (?:in|into) (?:the )?same ${ST})?`,
    ([, verb, count, again], doing) => {
      const n = number(count, 3);
      doing.moves.push(`${face(verb)}t+(${n})`, 'yo', `${face(again)}t(${n})`);
      made(doing, 3);
      return true;
    },
  ),
  clause(
    String.raw`[([]${VERB} ?${NUM} ?(?:together|tog), ?${YO}, ?${VERB} ?${NUM} ?(?:together|tog)[)\]] (?:all )?(?:in|into) (?:the )?(?:same|next) (?:${NUM} )?${ST}`,
    ([, verb, count, again, second], doing) => {
      const n = number(count, 3);
      if (number(second, 3) !== n) return false;
      doing.moves.push(`${face(verb)}t+(${n})`, 'yo', `${face(again)}t(${n})`);
      made(doing, 3);
      return true;
    },
  ),
  // many times into one stitch
  clause(
    String.raw`${VERB} ?1? ?(?:in|into) (?:the )?((?:front|back)(?:(?:, and |, then |, | and then | and )(?:the )?(?:front|back)){3,8})(?: again)?(?: (?:of|in) (?:the )?(?:next|same|one) ?(?:${ST})?)?`,
    ([, verb, legs = ''], doing) => {
      const parts = [...legs.matchAll(/front|back/g)].map(([leg]) => `${face(verb)}${leg === 'back' ? 'b' : ''}`);
      doing.moves.push(...parts.map((part, index) => (index < parts.length - 1 ? `${part}+` : part)));
      made(doing, parts.length);
      return true;
    },
  ),
  clause(
    String.raw`${VERB} (?:in|into) (?:the )?front and (?:the )?back of (?:the )?(?:next|same) ${ST} (twice|two times|3 times|three times)(,? (?:and )?(?:then )?(?:in|into)? ?(?:the )?front(?: again)?)?(?: ?\(\d ${ST}\))?`,
    ([, verb, often = '', front], doing) => {
      const v = face(verb);
      const parts = Array.from({ length: /^t(?:wice|wo)/.test(often) ? 2 : 3 }, () => [v, `${v}b`]).flat();
      if (front !== undefined) parts.push(v);
      doing.moves.push(...parts.map((part, index) => (index < parts.length - 1 ? `${part}+` : part)));
      made(doing, parts.length);
      return true;
    },
  ),
  clause(
    String.raw`((?:k|p) ?1(?:, ?| and | then )[([][^()[\]]{1,40}[)\]] (?:twice|\d times)) ?,? (?:all )?(?:in|into) (?:the )?(?:next|same|one)(?: ${ST})?`,
    ([, inside = ''], doing) => intoOne(inside.replace(/\[/g, '(').replace(/\]/g, ')'), doing),
  ),
  clause(
    String.raw`[([]([^()[\]]{1,40})[)\]] (twice|\d times) (?:all )?(?:in|into) (?:the )?(?:next|same|one)(?: ${ST})?`,
    ([, inside = '', often = ''], doing) => intoOne(`(${inside}) ${often}`, doing),
  ),
  // several of the last loops over the first or the last
  clause(
    String.raw`(?:pass|lift|pull|draw|slip) (?:the )?(?:other |first |last |next )?${NUM} (?:other )?${ST},? (?:one at a time,? |one by one,? )?over (?:the )?(?:first|last|1st)(?: ${ST})?`,
    ([, count], doing) => {
      const n = number(count, 1);
      if (n < 1) return false;
      doing.moves.push(`pass(${n}/1)`);
      return true;
    },
  ),
  // as one, told by the needle
  clause(
    String.raw`insert(?:ing)? (?:the )?(?:right|rh)[a-z -]*needle (?:knitwise |purlwise |from left to right |as if to knit )?(?:in|into|through) (?:the )?next ${NUM} ${ST}(?: knitwise| purlwise)?,? (?:and )?${VERB} (?:them|these|both) (?:together |tog )?(?:as one|together|tog)(?: ?,? ?${BACKLOOP})?`,
    ([whole, count, verb], doing) => {
      const n = number(count, 2);
      doing.moves.push(`${face(verb)}${new RegExp(`${BACKLOOP}$`).test(whole) ? 'b' : ''}t(${n})`);
      made(doing, 1);
      return true;
    },
  ),
  // wound together
  clause(
    String.raw`(?:slip|sl) (?:these|the|those|last) (?:last )?(?:${NUM} )?${ST} (?:on ?)?to ${CN},? (?:and )?(?:wrap|wind) (?:the )?yarn [^,;.]{0,40}(?:around|round) (?:them|these|the ${ST})[^,;.]{0,40},? (?:and |then )*(?:return|slip|replace|place)[^,;.]{0,30}right[^,;.]{0,20}`,
    (_, doing) => {
      doing.moves.push('-');
      return true;
    },
  ),
  // lifted from below, and the row below
  clause(
    String.raw`${VERB} (?:in|into) (?:the )?(?:right|left) (?:shoulder|leg|side|loop|half) of (?:the )?${ST} (?:(?:one |1 |2 |two )rows? )?below (?:the )?(next|last)(?: ${ST})?(?: on [a-z -]*needle)?`,
    ([, verb, which], doing) => {
      doing.moves.push(which === 'last' ? 'belowR' : 'below', face(verb));
      made(doing, 1);
      return true;
    },
  ),
  clause(
    String.raw`(?:with (?:the )?(?:left|lh)[a-z -]*needle,? )?(?:insert|lift)(?:ing)? (?:(?:left|lh)[a-z -]*needle (?:in|into) )?(?:the )?(?:right|left) (?:leg|loop|side) of (?:the )?${ST} (?:(?:one |1 |2 |two )rows? )below (?:the )?(last|next)(?: ${ST})? on (?:right|left|rh|lh)[a-z -]*needle,? (?:and )?${VERB} (?:it|this loop)`,
    ([, which, verb], doing) => {
      doing.moves.push(which === 'last' ? 'belowR' : 'below', face(verb));
      made(doing, 1);
      return true;
    },
  ),
  clause(
    String.raw`(?:insert(?:ing)? [a-z ]{0,16}needle (?:in|into) (?:the )?(?:centre|center) of (?:the )?${ST} below (?:the )?next ${ST}(?: on [a-z -]*needle)?,? (?:and )?${VERB}|${VERB} (?:in|into) (?:the )?${ST} below (?:the )?next ${ST})(?:,? (?:and |then )?(?:drop|let)[^,;.]*(?:above|off|unravel)[^,;.]*)?`,
    ([, first, second], doing) => {
      doing.moves.push(face(first ?? second));
      made(doing, 1);
      return true;
    },
  ),
  clause(
    String.raw`${VERB} (?:in|into) (?:the )?(back|front) of (?:the )?(?:bar|strand|thread|loop)(?! of| below)(?: [a-z ]{0,60})?`,
    ([, verb, leg], doing) => {
      doing.moves.push('bar', `${face(verb)}${leg === 'back' ? 'b' : ''}`);
      made(doing, 1);
      return true;
    },
  ),
  // three told out of their order
  clause(
    String.raw`${VERB} (?:the )?(?:third|3rd) ${ST}(?: on [a-z ]*needle)?,? (?:then |and )*(?:${VERB} )?(?:the )?(?:first|1st)(?: ${ST})?,? (?:then |and )*(?:${VERB} )?(?:the )?(?:second|2nd)(?: ${ST})?,? (?:then |and )*(?:slip|sl|drop|let|take) [^,;.]{0,40}(?:off|tog|together|all)[^,;.]{0,30}`,
    ([, third, first, second], doing) => {
      doing.moves.push(`${face(third)}@+(3)`, face(first ?? third), face(second ?? first ?? third), 'off(1)');
      made(doing, 3);
      return true;
    },
  ),
  // yarn wound round the needle
  clause(
    String.raw`(?:wrap|wind) (?:the )?yarn (?:(once|twice) )?(?:a?round) (?:the )?(?:right |rh )?(?:right-hand |hand )?needle(?: (once|twice))?(?: to make (?:a|1|one) ${ST})?`,
    ([, before, behind], doing) => {
      const twice = before === 'twice' || behind === 'twice';
      doing.moves.push(...(twice ? ['yo', 'yo'] : ['yo']));
      doing.since += twice ? 2 : 1;
      doing.sinceYarnOver = 0;
      return true;
    },
  ),
  clause(
    String.raw`make (?:a|1|one) (?:loop|${ST}) by (?:bringing|taking|putting) (?:the )?yarn (?:forward|over|to (?:the )?front|round (?:the )?needle)[^,;.]{0,30}`,
    (_, doing) => {
      doing.moves.push('yo');
      doing.since += 1;
      doing.sinceYarnOver = 0;
      return true;
    },
  ),
  clause(
    String.raw`${VERB} ?1?,? (?:by )?(?:wrapping|winding) (?:the )?yarn (twice|two times|2 times|3 times|three times) (?:a?round|over) (?:the )?needle`,
    ([, verb, often = ''], doing) => {
      doing.moves.push(`${face(verb)}w(${/^t(?:wice|wo)|^2/.test(often) ? 2 : 3})`);
      made(doing, 1);
      return true;
    },
  ),
];
