import { found } from './facts/blocks.ts';
import { childOf, denies, fixesFirmly, type Sentence, sentencesOf, warns } from './facts/child.ts';
import type { Context, Finding, Rule } from './rule.ts';

const cords = /\b(?:i-cords?|cords?|drawstrings?|ties|tie strings?|ribbons?|strings?|laces)\b/i;
const nearHead = /\b(?:hood|neck|neckline|neckband|collar|bonnet|throat|chin|cap|hat|head)\b/i;
const free =
  /\b(?:tassel(?:s|led)?|pompoms?|pom-poms?|free[- ]hanging|hang(?:s|ing)? (?:free|loose|down|freely)|dangl(?:es?|ing)|loose ends?|free ends?|left hanging)\b/i;
const small = /\b(?:buttons?|beads?|toy eyes?|safety eyes?|pompoms?|bells?|sequins?)\b/i;
const sleep = /\b(?:nightgowns?|nightdress(?:es)?|pyjamas|pajamas|sleep ?(?:sack|suit|ing bag)s?|sleepers?|dressing gowns?|bathrobes?)\b/i;
/** EN 14682 bans cords at hood and neck up to seven years and limits them up to fourteen. */
const youngest = 7;
const oldest = 14;
const underThree = 3;

function cordFindings(context: Context, all: readonly Sentence[], to: number | null): readonly Finding[] {
  if (to !== null && to > oldest) return [];
  const hanging = all.find(
    (one) => free.test(one.text) && nearHead.test(one.text) && (cords.test(one.text) || /\bends?\b/i.test(one.text)) && !denies(one.text),
  );
  if (hanging !== undefined) {
    return [
      found(
        context,
        childSafety,
        hanging.span,
        'Ends that hang free near the head or neck of a child can catch and strangle; EN 14682 allows none there up to seven years. Sew them down or leave them out, and refer to local rules.',
      ),
    ];
  }
  const warned = all.some((one) => warns(one.text) && (cords.test(one.text) || /\bstrangl|14682/i.test(one.text)));
  if (warned) return [];
  // The place may stand in the sentence before: "Pick up 3 sts at the corner of the neck edge. … until the cord measures …".
  const near = (one: Sentence): boolean =>
    nearHead.test(one.text) ||
    (/\bi-cords?\b|\bcord measures\b|\bties\b/i.test(one.text) &&
      all.some(
        (other) =>
          other.role === 'work' &&
          other.span.end <= one.span.start &&
          one.span.start - other.span.end < 120 &&
          /\b(?:hood|neck|bonnet|collar)\b/i.test(other.text),
      ));
  const cord = all.find((one) => one.role === 'work' && cords.test(one.text) && near(one) && !denies(one.text));
  if (cord === undefined) return [];
  const young = to === null || to <= youngest;
  const law = young
    ? 'EN 14682 allows no cords or ties at hood and neck of clothes for children up to seven years'
    : 'EN 14682 allows only short cords without free ends at hood and neck up to fourteen years';
  return [
    found(
      context,
      childSafety,
      cord.span,
      `A cord or tie near the head or neck of a child can catch and strangle; ${law} (hats and scarves stand outside it, the danger does not). Is it meant? Add a caution that refers to local rules.`,
    ),
  ];
}

/** A stuffed toy with eyes that can come off, and no word on how young a child it is for. */
function toyEyes(context: Context, all: readonly Sentence[]): readonly Finding[] {
  const { notions } = context.pattern.front;
  const eye = notions.find((one) => one.name === 'toy eye');
  if (eye === undefined || !notions.some((one) => one.name === 'toy stuffing')) return [];
  const cautioned =
    /\b(?:embroider(?:ed)? (?:the )?eyes|under (?:the age of )?(?:three|3)|small parts|small child(?:ren)?|young child(?:ren)?|bab(?:y|ies)|toddlers?)\b/i;
  // The name of the eyes is no warning.
  if (all.some((one) => warns(one.text.replace(/\bsafety eyes?\b/gi, '')) || cautioned.test(one.text))) return [];
  const message =
    'Toy eyes can be pulled off and swallowed by a child under three, and nothing here says so. Add a caution: embroider the eyes for small children, follow local rules.';
  return [found(context, childSafety, eye.span, message)];
}

export const childSafety: Rule = {
  id: 'child-safety',
  level: 'query',
  title: 'What can hurt a child comes with a caution',
  meaning:
    'A pattern for a child has cords near the neck, small parts or nightwear, and no sentence warns of them; or ends hang free near the hood.',
  reason: 'Cords catch, buttons are swallowed; laws differ, and the person who knits or sells the piece must be told to look.',
  needsReplay: false,
  wrong: {
    draft: `# Kelp Bonnet for a Baby

Sizes: 3 (6, 12) months

Cast on 60 (64, 68) sts.

Row 1: Knit.

Sew a twisted cord to each side of the neck edge.
`,
  },
  right: {
    draft: `# Kelp Bonnet for a Baby

Sizes: 3 (6, 12) months

## Cautions

Cords at the neck of a baby can strangle: leave them out for everyday wear and follow your local rules.

## Bonnet

Cast on 60 (64, 68) sts.

Row 1: Knit.

Sew a twisted cord to each side of the neck edge.
`,
  },
  check(context): readonly Finding[] {
    const child = childOf(context);
    const all = sentencesOf(context);
    if (child === null) return toyEyes(context, all);
    const findings = [...cordFindings(context, all, child.to)];
    const warned = all.some((one) => warns(one.text));
    if (warned) return findings;
    const part = all.find((one) => one.role === 'work' && small.test(one.text) && !/buttonholes?/i.test(one.text) && !denies(one.text));
    const fixed = all.some((one) => fixesFirmly(one.text) && small.test(one.text));
    if (part !== undefined && !fixed && (child.baby || (child.from !== null && child.from < underThree))) {
      findings.push(
        found(
          context,
          childSafety,
          part.span,
          'Buttons and other small parts can be pulled off and swallowed under three years. Add a caution: sew them on firmly, test them by pulling, follow local rules.',
        ),
      );
    }
    const night = all.find((one) => sleep.test(one.text) && !denies(one.text));
    if (night !== undefined) {
      findings.push(
        found(
          context,
          childSafety,
          night.span,
          'Nightwear for children falls under fire-safety rules in many countries. Add a caution that refers to local rules.',
          { level: 'style' },
        ),
      );
    }
    return findings;
  },
};
