/** Stitches that wait on their own needle, and edgings begun on the needle of the piece. */
import { describe, expect, test } from 'vitest';
import { proof } from '../../src/index.ts';

const front = '# Lee Jacket\n\nNeedles: 4 mm\n\nGauge: 22 sts and 44 rows = 10 cm in garter st\n\n';

function tally(text: string) {
  const { replay, findings } = proof(`${front}${text}`);
  return {
    after: replay.entries.map((entry) => entry.after[0]),
    errors: findings.filter((finding) => finding.level === 'error').map((finding) => finding.message),
  };
}

describe('"leave them on the needle"', () => {
  const divided =
    '## Body\n\nCO 24 sts. Knit 10 rows.\n\nNext row (RS): K10 and leave these sts on a holder; cast off 4 sts, k to end. 10 sts.\n\nKnit 5 rows on these sts. Leave them on the needle and break the yarn.\n\n## Front\n\nReturn the 10 sts to a needle and rejoin the yarn with the WS facing. Knit 1 row.\n\nKnit 6 rows. Cast off.\n\n';

  test('they are not among the stitches that are taken up next', () => {
    const { after, errors } = tally(divided);
    expect(errors).toEqual([]);
    expect(after).toEqual([24, 24, 10, 10, 10, 10, 10, 0]);
  });

  test('they come back by their number behind the stitches of another piece', () => {
    const { after, errors } = tally(
      `${divided}## Left front\n\nCast on 10 sts. Knit 6 rows.\n\nJoining row (RS): K the 10 sts of the left front, cast on 4 sts, k the 10 sts of the back. 24 sts.\n`,
    );
    expect(errors).toEqual([]);
    expect(after.slice(-3)).toEqual([10, 10, 24]);
  });
});

describe('an edging cast on to the left needle beside live stitches', () => {
  const edging =
    '## Border\n\nWith RS facing, CO 3 sts onto the left needle. The border is worked over these 3 sts; the last st of every RS row is worked together with the next st of the shawl.\n\nRow 1 (RS): K2, ssk, turn. [3 border sts]\nRow 2 (WS): Sl 1, k2. Turn.\n\n';

  // Ten stitches, one for every second row: 10 repeats, and the three of the border are left.
  test('its last stitch takes one of them, row by row, until they are used up', () => {
    const { after, errors } = tally(
      `## Shawl\n\nCO 10 sts. Knit 3 rows.\n\n${edging}Repeat rows 1 and 2 until all shawl sts have been used up. 3 sts remain. BO.\n`,
    );
    expect(errors).toEqual([]);
    expect(after.slice(2, 5)).toEqual([13, 12, 12]);
    expect(after.slice(-2)).toEqual([3, 0]);
  });
});

test('a sentence that begins with an article ends the one before', () => {
  const { after } = tally('## Strap\n\nCO 6 sts. The strap is narrow. Knit 4 rows. The next row ends it. BO.\n');
  expect(after).toEqual([6, 6, 0]);
});
