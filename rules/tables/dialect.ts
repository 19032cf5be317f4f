/** Words of American and British patterns. A dangerous pair means another fabric, needle or yarn on the other side. */
import { type Certainty, memory, published } from './certainty.ts';

export interface WordPair {
  readonly us: readonly string[];
  readonly uk: readonly string[];
  /** The same word means something else across the ocean, so a mixture is a question and not a matter of style. */
  readonly dangerous: boolean;
  readonly note: string | null;
  readonly certainty: Certainty;
}

const seen = (count: number): Certainty => published(`${count} published comparison lists`);
const pair = (
  us: readonly string[],
  uk: readonly string[],
  certainty: Certainty,
  note: string | null = null,
  dangerous = false,
): WordPair => ({
  us,
  uk,
  dangerous,
  note,
  certainty,
});

export const wordPairs: readonly WordPair[] = [
  pair(['gauge'], ['tension'], seen(4)),
  pair(['bind off', 'bound off', 'binding off', 'BO'], ['cast off', 'casting off'], seen(3)),
  pair(['stockinette', 'stockinette stitch'], ['stocking stitch'], seen(3)),
  pair(['reverse stockinette'], ['reverse stocking stitch'], seen(2)),
  pair(
    ['seed stitch', 'seed st'],
    ['moss stitch', 'moss st'],
    seen(2),
    "American moss stitch keeps each row's ribs for two rows (double moss in Britain); British moss stitch is American seed stitch.",
    true,
  ),
  pair(['work even'], ['work straight'], seen(1)),
  pair(['skip'], ['miss'], memory),
  pair(['every other row', 'every other round'], ['alternate rows', 'alt rows', 'alternate row'], memory),
  pair(['color', 'gray', 'center'], ['colour', 'grey', 'centre'], memory),
  pair(['selvage'], ['selvedge'], memory),
  pair(['sweater', 'vest'], ['jumper', 'tank top', 'slipover', 'waistcoat'], memory),
  pair(['turtleneck'], ['polo neck'], memory),
  pair(['afghan', 'throw'], ['blanket'], memory),
  pair(['fingering'], ['4 ply', '4-ply'], seen(3)),
  pair(['worsted'], ['aran'], seen(4), 'Worsted and aran are neighbours, not one weight.', true),
  pair(['bulky'], ['chunky'], seen(4)),
  pair(['main color', 'MC'], ['main shade', 'MS', 'main colour'], seen(2)),
  pair(['in the round'], ['in rounds'], memory),
  pair(['three-needle bind-off', 'three-needle bind off'], ['three-needle cast-off', 'three-needle cast off'], memory),
  pair(
    ['yarn over'],
    ['yarn forward', 'yfwd', 'yrn', 'yon', 'yfrn'],
    seen(4),
    'British names say where the yarn over stands: between two knits, two purls, purl and knit, knit and purl.',
  ),
];

/** The one number that is the same size in both systems is 7 (4.5 mm); every other needle number differs. */
export const needleNumbersDiffer = { certainty: published('9 published conversion charts'), exception: '7' } as const;
