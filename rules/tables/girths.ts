/**
 * How far round things are that go round a head, a hand or a foot, in centimetres, from the smallest a baby wears to the largest an
 * adult does: the knitted edge, before it is stretched. From memory and common practice, no source; wide on purpose, for a question only.
 */
export const girths: readonly { readonly name: string; readonly words: RegExp; readonly from: number; readonly to: number }[] = [
  { name: 'a cap', words: /\b(?:cap|hat|beanie|beret|tam|toque|bonnet|headband)\b/i, from: 26, to: 70 },
  { name: 'a sock', words: /\b(?:socks?|stockings?)\b/i, from: 10, to: 40 },
  { name: 'a mitten', words: /\b(?:mittens?|mitts?|gloves?|wristers?|wrist warmers?|cuffs?)\b/i, from: 9, to: 34 },
  { name: 'a cowl', words: /\b(?:cowl|snood)\b/i, from: 36, to: 200 },
  { name: 'a garment for the body', words: /\b(?:pullover|jumper|sweater|cardigan|vest|waistcoat)\b/i, from: 24, to: 220 },
];
