/**
 * Rows of garments in many wordings, worked: what stood before, the words, what stands after and what waits on holders. The
 * numbers were reckoned by hand before the rows were worked. Forms of the trade from memory; numbers and words made up here.
 */
import { describe, expect, test } from 'vitest';
import { work } from '../work.ts';

interface Fact {
  /** Stitches on the needle before the first row. */
  readonly start: number;
  readonly side?: 'RS' | 'WS';
  readonly round?: boolean;
  /** Stitches before each marker. */
  readonly markers?: readonly number[];
  /** What waits on holders: whose, and how many. */
  readonly held?: readonly (readonly [string, number])[];
  readonly text: string;
  readonly after: number;
  /** Stitches on holders when all is done. */
  readonly onHold?: number;
}

const facts: Readonly<Record<string, readonly Fact[]>> = {
  'dividing and holding': [
    { start: 80, text: 'Next row (RS): K28, slip 52, turn.', after: 28, onHold: 52 },
    {
      start: 94,
      text: 'Next row (RS): Knit 34, slip the next 26 sts to a holder, join a 2nd ball and knit to the end.',
      after: 68,
      onHold: 26,
    },
    { start: 80, text: 'Patt 31, turn and leave rem sts on spare needle.', after: 31, onHold: 49 },
    { start: 82, text: 'Next row (RS): K30, BO 22, k to end.', after: 60 },
    { start: 82, text: 'Next row (RS): K30, BO 22, k30 (including st on needle).', after: 60 },
    { start: 92, text: 'Knit across first 40 sts and put them on a stitch holder, bind off 12, knit to end.', after: 40, onHold: 40 },
    { start: 50, text: 'Next row: Work 6 and slip them onto a safety pin, work to end.', after: 44, onHold: 6 },
    { start: 50, text: 'Next row (WS): Purl to last 7 sts, turn and put these 7 sts on a safety pin.', after: 43, onHold: 7 },
    { start: 77, text: 'K36, M1, turn; keep remaining 41 sts on a separate needle.', after: 37, onHold: 41 },
    {
      start: 150,
      round: true,
      text: 'Next rnd: BO 5, k until 70 sts are on right needle, turn. Place the rem 75 sts on waste yarn for back.',
      after: 70,
      onHold: 75,
    },
    { start: 84, text: 'Knit 22, place the next 40 sts on a holder, place the last 22 sts on another holder.', after: 22, onHold: 62 },
    { start: 82, text: 'Next row: K32, pass rem 50 sts onto a holder.', after: 32, onHold: 50 },
    { start: 0, held: [['front', 82]], text: 'k82 front sts from holder', after: 82, onHold: 0 },
    { start: 56, held: [['', 20]], text: 'K 28, k across 20 sts from holder, k 28.', after: 76, onHold: 0 },
    { start: 70, text: 'Next row (RS): K 26, slip 18 onto a thread, k to end.', after: 52, onHold: 18 },
    { start: 86, side: 'WS', text: 'Next row (WS): P 27, BO 32 sts for back neck, p to end.', after: 54 },
    { start: 77, text: 'Next row (RS): K36, M1, turn; leave rem 41 sts on a spare needle.', after: 37, onHold: 41 },
    { start: 50, text: 'Slip first and last 7 sts on safety pins.', after: 36, onHold: 14 },
  ],
  'picking up': [
    { start: 0, text: 'With RS facing, pick up stitches evenly: 30 along each side and 40 across back.', after: 100 },
    {
      start: 0,
      held: [['front', 16]],
      text: 'Pick up and knit stitches as follows: 24 down left side, 16 from holder, 24 up right side, 34 across back. 98 sts.',
      after: 98,
    },
    {
      start: 0,
      held: [['front neck', 15]],
      text: 'Knit up 17 sts down left side of neck, 15 sts from holder, 17 sts up right side and 29 sts from back neck.',
      after: 78,
    },
    { start: 0, text: 'Pick up 88 sts round the neck (44 at the front and 44 at the back).', after: 88 },
    { start: 0, text: 'Pick up and knit 80 sts (40 from each side).', after: 80 },
    {
      start: 0,
      held: [
        ['front', 14],
        ['back', 36],
      ],
      text: 'Beg at left shoulder, pick up 21 sts along left neck edge, k14 sts from front holder, pick up 21 sts along right neck edge, k36 sts from back holder, pm and join—92 sts.',
      after: 92,
    },
    {
      start: 30,
      text: 'Pick up and knit 16 sts along left side of gusset, pm, k30 instep sts, pm, pick up and knit 16 sts along right side.',
      after: 62,
    },
    {
      start: 0,
      held: [['sleeve', 30]],
      text: 'Slip 30 sts from holder to needle, pick up and k 2 sts at underarm gap, join for round. 32 sts.',
      after: 32,
    },
    { start: 0, held: [['sleeve', 50]], text: 'Pick up & k5 at underarm, pm, pick up & k5, k across 50 held sleeve sts.', after: 60 },
    { start: 0, text: 'Pick up and k6 sts across 6 cast-off sts at underarm.', after: 6 },
    {
      start: 0,
      held: [['', 8]],
      text: 'Pick up and knit 10 sts along edge of thumb opening and knit 8 sts from waste yarn. 18 sts.',
      after: 18,
    },
    {
      start: 0,
      held: [
        ['left band', 5],
        ['right band', 5],
      ],
      text: 'K 5 held band sts, pick up and k 78 sts round neck, k 5 held band sts. 88 sts.',
      after: 88,
    },
    { start: 0, text: 'Pick up and k 94 sts along front edge, turn and cast on 6 sts for flap.', after: 100 },
    {
      start: 0,
      text: 'With right sides facing and beginning at lower edge of Right Front, pick up and knit 58 sts to start of neck shaping, 24 to shoulder, 28 across the back, 24 to start of Left Front neck and 58 to lower edge: 192 sts.',
      after: 192,
    },
    {
      start: 0,
      text: 'With RS facing, pick up and k 19 sts down left front slope, pm, 1 st from centre front, pm, 19 sts up right front slope, 37 sts from back: 76 sts.',
      after: 76,
    },
    {
      start: 0,
      held: [['front', 14]],
      text: 'Join shoulders. With RS facing, beg at right shoulder, pick up and k 34 sts across back, 22 down left front, k 14 from holder, pick up and k 22 up right front; pm, join. 92 sts.',
      after: 92,
      onHold: 0,
    },
  ],
  neckbands: [
    { start: 92, round: true, text: 'Next rnd: Work in rib, dec 8 sts evenly around: 84 sts.', after: 84 },
    { start: 93, round: true, text: 'Next rnd: Rib to 1 st before centre st, s2kp, rib to end.', after: 91 },
    { start: 90, round: true, text: 'Rib 22, k2tog, rib 14, k2tog, rib to end.', after: 88 },
    { start: 60, text: 'Work garter st for 6 rows, dec 4 sts evenly on last row.', after: 56 },
    { start: 60, round: true, text: 'K next rnd, dec 6 sts evenly spaced.', after: 54 },
    { start: 101, text: 'Pm and join: work 8 rnds in rib, dec 1 st each side of centre st on every rnd.', after: 85 },
  ],
  buttonholes: [
    { start: 30, text: 'Next row: K3, BO 2, k to end. Next row: P to last 3 sts, cast on 2, p3.', after: 30 },
    {
      start: 90,
      text: 'Buttonhole row: Rib 3, cast off 3, (rib 11 including st on needle, cast off 3) 5 times, rib to end. Next row: Rib to end, casting on 3 sts in place of those cast off.',
      after: 90,
    },
    {
      start: 100,
      text: 'Next row: K12, * cast off next 2 sts, k until there are 16 sts on right needle since last cast-off, rep from * 3 times more, cast off 2, k to end.',
      after: 90,
    },
    { start: 64, text: 'Rib 3, *BO 2, rib 8 more sts; rep from * 4 times, BO 2, rib to end.', after: 52 },
    { start: 66, text: 'Row 5: K4, *yo, k2tog, k12; repeat from * ending last repeat k4.', after: 66 },
    { start: 40, text: 'Next row (RS): Work 5 sts, BO 2, work until 10 sts on RH needle after BO, BO 2, work to end.', after: 36 },
    { start: 20, text: 'Next row: K2, wrap yarn twice round needle, k2tog, knit to end.', after: 21 },
    {
      start: 94,
      text: 'Buttonhole row: Rib 4, [cast off 2 sts, rib until there are 12 sts on right needle after cast-off] 6 times, cast off 2 sts, rib to end. 2nd row: Rib, casting on 2 sts over those cast off.',
      after: 94,
    },
    { start: 40, text: 'Next row: Patt 4, BO 3, patt to end. Next row: Patt to gap, CO 3, patt to end.', after: 40 },
    { start: 30, text: 'Next row: K3, make a one-row buttonhole over next 3 sts, k to end.', after: 30 },
    {
      start: 30,
      markers: [10],
      text: 'Row 3 (RS): K to marker, sm, k2, BO 3, k to end; Row 4: K to gap, CO 3, k2, sm, k to end.',
      after: 30,
    },
  ],
  pockets: [
    {
      start: 44,
      held: [['pocket lining', 24]],
      text: 'Next row (RS): K 9, slip next 24 sts onto a holder, and in their place k across the sts of one pocket lining, k to end.',
      after: 44,
    },
    {
      start: 42,
      held: [['pocket lining', 22]],
      text: 'Next row: K 10, cast off 22 in rib, k to end. Next row: P10, p across 22 sts of lining, p to end.',
      after: 42,
    },
    {
      start: 46,
      held: [['pocket lining', 22]],
      text: 'Next row: K12, sl next 22 sts on a holder for pocket top, k22 lining sts, k12.',
      after: 46,
    },
    {
      start: 60,
      text: 'Next row: K20, with waste yarn k 20, slip these 20 sts back to left needle and k them again with main yarn, k to end.',
      after: 60,
    },
    {
      start: 18,
      held: [['pocket lining', 22]],
      text: 'Next row: P9, purl the 22 sts of the lining from the holder, purl to end.',
      after: 40,
    },
    {
      start: 60,
      held: [
        ['pocket lining', 18],
        ['pocket lining', 18],
      ],
      text: 'Next row: K8, [slip next 18 sts to holder, k18 from lining] twice, k to end.',
      after: 60,
    },
    {
      start: 64,
      text: 'Next row: K20, slip next 24 sts to a holder, k20. Next row: Purl, casting on 24 sts over those left on holder.',
      after: 64,
    },
    { start: 60, markers: [20, 40], text: 'Next row: K to marker, BO to next marker, k to end.', after: 40 },
    {
      start: 26,
      held: [
        ['pocket lining', 20],
        ['pocket lining', 20],
      ],
      text: 'Next row: [P 8, p across 20 sts from lining] twice, p to end.',
      after: 66,
    },
    {
      start: 48,
      held: [['pocket lining', 20]],
      text: 'Next row: K14, cast off next 20 sts, k to end. Next row: P to gap, p across 20 sts of lining, p to end.',
      after: 48,
      onHold: 0,
    },
    {
      start: 50,
      markers: [14, 36],
      held: [['pocket lining', 22]],
      text: 'Next row (RS): K to first marker, rm, slip next 22 sts onto a holder, k 22 lining sts, rm, k to end.',
      after: 50,
      onHold: 22,
    },
  ],
  'seamless pieces': [
    {
      start: 104,
      round: true,
      markers: [20, 45, 65],
      text: 'Inc Rnd: K1, YO, *knit to 1 st before marker, YO, k1, slm, k1, YO; rep from * 3 times, k to 1 st before end, YO, k1. 8 sts increased.',
      after: 112,
    },
    {
      start: 208,
      text: 'Next row (RS): K30 left front sts, place next 44 sleeve sts onto scrap yarn, cast on 6 sts for underarm, k60 back sts, place next 44 sleeve sts onto scrap yarn, cast on 6, k30 right front sts. 132 sts.',
      after: 132,
      onHold: 88,
    },
    {
      start: 200,
      round: true,
      markers: [30, 80, 130, 180],
      text: 'Next rnd: *knit to marker, remove marker, transfer sleeve sts to holder, remove marker, cast on 4, pm for side, cast on 4; repeat from * once; knit to end of round.',
      after: 116,
      onHold: 100,
    },
    {
      start: 220,
      round: true,
      text: 'Next rnd: K60, slip 50 sts to waste yarn, CO 8, k 60, slip 50 sts to waste yarn, CO 8.',
      after: 136,
      onHold: 100,
    },
    {
      start: 0,
      held: [['sleeve', 48]],
      text: 'Starting at centre of underarm CO, pick up and knit 4 sts, knit around 48 held sts, pick up and knit 4 sts, pm for BOR. 56 sts.',
      after: 56,
    },
    { start: 144, round: true, text: 'Next rnd: BO 5, k 62 (including st rem on needle after BO), BO 10, k 62, BO 5.', after: 124 },
    { start: 160, round: true, text: 'Dec rnd: (k2, k2tog) around. 120 sts.', after: 120 },
    {
      start: 120,
      markers: [20, 40, 80, 100],
      text: "Next row (RS): k1, k2tog tbl, [k to 3 sts before next marker, k2tog, k1, sm, k1, k2tog tbl] 4 times, k to last 3 sts, k2tog, k1—10 sts dec'd.",
      after: 110,
    },
    { start: 100, text: 'Next row: Bind off the 7 steek sts, k to end.', after: 93 },
    { start: 130, round: true, text: 'Dec evenly to 96 sts on next rnd.', after: 96 },
    { start: 74, round: true, text: 'Next rnd: *K5, k2tog; rep from * to last 4 sts, k4.', after: 64 },
    {
      start: 200,
      round: true,
      markers: [70, 120],
      text: 'Next rnd: K to marker, place sts to next marker on waste yarn, CO 8 sts, k to end.',
      after: 158,
      onHold: 50,
    },
    {
      start: 200,
      round: true,
      markers: [70, 120],
      text: 'Next rnd: K70, place sleeve sts on holder, CO 8, k to end.',
      after: 158,
      onHold: 50,
    },
    {
      start: 208,
      round: true,
      markers: [30, 74, 134, 178],
      text: 'Next rnd: Removing markers, k 30, place next 44 sts on hold, CO 6, pm for side, CO 6, k 60, place next 44 sts on hold, CO 12, k 30.',
      after: 144,
      onHold: 88,
    },
    {
      start: 60,
      round: true,
      text: 'Next rnd: K to last 4 sts, place last 4 and first 4 sts on waste yarn. 52 sts.',
      after: 52,
      onHold: 8,
    },
  ],
  markers: [
    { start: 41, markers: [20], text: 'Next row: K to 1 st before marker, remove marker, sk2p, replace marker, k to end.', after: 39 },
    { start: 40, markers: [20], text: 'Next row: K until 5 sts remain before marker, k2tog, k3, sm, k3, ssk, k to end.', after: 38 },
    { start: 40, markers: [10, 20], text: 'Next row: Knit to 2nd marker, slip it, m1, k to end.', after: 41 },
    { start: 41, markers: [20], text: 'Next row: Work across to centre marker, sm, yo, k1, yo, k to end.', after: 43 },
    {
      start: 60,
      markers: [10, 20, 40, 50],
      text: 'Next row: [K to m, sm, k1, m1, k to 1 st before m, m1, k1, sm] twice, k to end.',
      after: 64,
    },
    { start: 40, markers: [20], text: 'Next row: Knit up to 6 sts from the marker, C6F, knit to end.', after: 40 },
    { start: 40, markers: [10, 30], text: 'Next row: K to marker, m1, sm, k to marker, sm, m1, k to end.', after: 42 },
    {
      start: 40,
      markers: [20],
      text: 'Next row: Knit to within 1 st of marker, sl next st, rm, return st to left needle, pm, k2tog, k to end.',
      after: 39,
    },
    { start: 40, markers: [10, 30], text: 'Inc 1 st before first marker and after last marker on next row.', after: 42 },
    { start: 60, round: true, markers: [10, 30, 50], text: 'Dec 1 st before each marker on next rnd.', after: 57 },
    { start: 40, text: 'Pm 10 sts in from each edge. Next row: K to marker, m1, sm, k to marker, sm, m1, k to end.', after: 42 },
    {
      start: 40,
      text: 'Pm on either side of centre 14 sts. Next row: K to m, sm, k2tog, k to 2 sts before m, ssk, sm, k to end.',
      after: 38,
    },
    {
      start: 40,
      markers: [10, 30],
      text: 'Next row: Removing markers as you come to them, k to first marker, k2tog, k to end.',
      after: 39,
    },
    { start: 100, round: true, markers: [10, 40, 60, 90], text: 'Dec 1 st each side of the 4 markers on next rnd.', after: 92 },
  ],
  joining: [
    { start: 60, text: 'Next row (RS): Knit to end, do not turn, pm and join for working in rnds.', after: 60 },
    { start: 60, text: 'On the next row join body to work in the round: knit to end, CO 10, pm, join.', after: 70 },
    { start: 88, text: 'Join shoulder with three-needle BO over first 26 sts, bind off next 36 sts singly, join last 26 sts.', after: 0 },
    {
      start: 60,
      text: 'Next row (RS): K to end. At the end of the last RS row, cast on 14 sts for front neck and join in the round.',
      after: 74,
    },
    { start: 88, text: 'Join shoulder with three-needle bind-off over first 26 sts.', after: 62 },
  ],
};

const soft = new Set(['readingNotDefault', 'readingsDiffer', 'yarnOverAtEdge']);

for (const [family, rows] of Object.entries(facts)) {
  describe(`${family}, worked`, () => {
    test.each(rows.map((fact) => [`${fact.start}: ${fact.text}`, fact] as const))('%s', (_, fact) => {
      const worked = work(fact.text, {
        start: fact.start,
        ...(fact.side ? { side: fact.side } : {}),
        ...(fact.round ? { mode: 'round' as const } : {}),
        ...(fact.markers ? { markers: fact.markers } : {}),
        held: (fact.held ?? []).map(([name, n]) => ({ name, n: [n] })),
      });
      expect(worked.kinds.filter((kind) => !soft.has(kind))).toEqual([]);
      expect(worked.needles.map((needles) => needles.sure)).toEqual([true]);
      expect(worked.end).toEqual([fact.after]);
      if (fact.onHold === undefined) return;
      const waiting = (worked.held[0] ?? []).filter((set) => !set.used).reduce((sum, set) => sum + set.n, 0);
      expect(waiting).toBe(fact.onHold);
    });
  });
}

describe('rows behind rounds', () => {
  test.each([
    'Work 5 rnds in st st. From here, work back and forth in rows. Row 1 (WS): P to end. Row 2 (RS): K to end.',
    'Work 5 rnds in st st. Work back and forth in rows from here. Next row (WS): P to end.',
  ])('%s', (text) => {
    const worked = work(text, { start: 60, mode: 'round' });
    expect(worked.kinds).toEqual([]);
    expect(worked.end).toEqual([60]);
  });
});
