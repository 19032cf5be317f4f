/** Rules that hold parts of a garment against each other: what is asked, and what is let pass. Common practice, no source. */
import { describe, expect, test } from 'vitest';
import { told } from './drafts.ts';

describe('buttonhole rows', () => {
  const flap = (row: string): readonly string[] =>
    told(
      'buttonhole-row',
      `# Locker Flap\n\nCO 6 sts.\n\nRow 1 (RS): Knit.\n\nRow 2: Knit.\n\nButtonhole row: ${row}\n\nNext row: Knit.\n\nBO all sts.\n`,
    );

  test('a yarn over is missing', () => {
    expect(flap('K2, k2tog, k2.')).toEqual([
      'query The row takes 6 sts and makes 5, so the band shrinks by 1 st. Is a yarn over missing beside a buttonhole?',
    ]);
  });

  test('holes that are bound off come back in the next row', () => expect(flap('K2, BO 2 sts, k2.')).toEqual([]));

  const band = (buttons: number): readonly string[] =>
    told(
      'buttonhole-row',
      `# Locker Jacket\n\n**Notions:** ${buttons} buttons, stitch markers\n\n## Band\n\nCO 66 sts.\n\nRow 1 (RS): Knit.\n\nRow 2: Knit.\n\nButtonhole row: K4, [yo, k2tog, k12] 4 times, yo, k2tog, k4.\n\nNext row: Knit.\n\nBO all sts.\n`,
    );

  test('five holes for five buttons', () => expect(band(5)).toEqual([]));
  test('five holes for six buttons', () =>
    expect(band(6)).toEqual(['query The row makes 5 buttonholes, and 6 buttons are listed. How many are there?']));
});

describe('pieces that meet', () => {
  const vest = (back: string, front: string): readonly string[] =>
    told(
      'rows-of-pieces',
      `# Quay Vest\n\n## Back\n\nCO 60 sts.\n\n${back}\n\nBO 4 sts at beg of next 2 rows. 52 sts.\n\nBO all sts.\n\n## Front\n\nCO 60 sts.\n\n${front}\n\nBO 4 sts at beg of next 2 rows. 52 sts.\n\nBO all sts.\n`,
    );

  test('40 rows and 44', () => expect(vest('Knit 40 rows.', 'Knit 44 rows.')).toHaveLength(1));
  test('40 rows told in two ways', () => expect(vest('Knit 40 rows.', 'Knit 10 rows.\n\nPurl 30 rows.')).toEqual([]));
  test('a length is not reckoned in rows', () =>
    expect(vest('Knit 40 rows.', 'Work in garter st until piece measures 20 cm.')).toEqual([]));
});

test('a shaping that begins at a length not reached yet is announced in time', () => {
  const vest = (length: number): readonly string[] =>
    told(
      'announced-late',
      `# Tide Vest\n\n## Back\n\nCO 80 sts.\n\nKnit 2 rows.\n\nWork straight until piece measures 12 cm.\n\nAT THE SAME TIME, when piece measures ${length} cm, dec 1 st at each end of next row. 78 sts.\n\nBO all sts.\n`,
    );
  expect(vest(8)).toHaveLength(1);
  expect(vest(15)).toEqual([]);
});

test('both sides of a band give the same number', () => {
  const band = (left: number): readonly string[] =>
    told(
      'picked-up-alike',
      `# Skerry Collar\n\nCO 40 sts.\n\nKnit 60 rows.\n\nBO all sts.\n\n## Band\n\nRow 1 (RS): Pick up and knit 30 sts along right front edge and ${left} sts along left front edge.\n\nBO all sts.\n`,
    );
  expect(band(30)).toEqual([]);
  expect(band(33)).toEqual([
    'query 30 sts are picked up along right front edge and 33 along left front edge. Are the two sides not alike?',
  ]);
});

test('a cap of 60 cm is one for a head, and one of 16 cm is not', () => {
  const cap = (sts: number): readonly string[] =>
    told(
      'cast-on-girth',
      `# Kelp Cap\n\nGauge: 20 sts and 28 rnds to 10 cm in stockinette stitch\n\nCO ${sts} sts. Join in the round.\n\nRnd 1: Knit.\n\nRnd 2: Purl.\n\nBO all sts.\n`,
    );
  expect(cap(120)).toEqual([]);
  expect(cap(32)).toHaveLength(1);
});
