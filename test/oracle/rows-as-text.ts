/** Random rows, as a pattern would print them. */
import fc from 'fast-check';

const small = fc.integer({ min: 1, max: 6 });
const single = fc.constantFrom(
  'k2tog',
  'ssk',
  'p2tog',
  'yo',
  'm1',
  'kfb',
  'sk2p',
  's2kp',
  'k3tog',
  'k1',
  'p1',
  'sl1',
  'C4F',
  '2/1 RC',
  'C6B',
  'RT',
  'T3F',
  'yo twice',
  '(k1, yo, k1) in next st',
  'k2tog twice',
  'sl1, k1, psso',
);
const plain = fc.tuple(fc.constantFrom('k', 'p', 'sl'), small).map(([stitch, n]) => `${stitch}${n}`);
const token = fc.oneof({ weight: 3, arbitrary: plain }, { weight: 3, arbitrary: single });
const list = fc.array(token, { minLength: 1, maxLength: 4 }).map((tokens) => tokens.join(', '));
const times = fc.integer({ min: 2, max: 5 }).map((n) => (n === 2 ? 'twice' : `${n} times`));

/** "[k2, (p1, k1) twice, yo] 3 times". */
const bracket = fc
  .tuple(list, fc.option(fc.tuple(list, times)), times)
  .map(([outer, inner, often]) => (inner === null ? `[${outer}] ${often}` : `[${outer}, (${inner[0]}) ${inner[1]}] ${often}`));

const segment = fc
  .tuple(list, fc.option(fc.tuple(list, times)))
  .map(([outer, inner]) => (inner === null ? outer : `${outer}, [${inner[0]}] ${inner[1]}`));

/** A repeat that runs as far as the row lets it. */
const elastic = fc.oneof(
  segment.map((text) => `*${text}; rep from * to end`),
  fc
    .tuple(segment, fc.integer({ min: 1, max: 7 }))
    .map(([text, n]) => `*${text}; rep from * to last ${n === 1 ? 'st' : `${n} sts`}, k${n}`),
  fc.tuple(segment, small).map(([text, n]) => `*${text}; rep from *, ending k${n}`),
  fc.tuple(list, small, small).map(([text, old, now]) => `*${text}, k${old}; rep from *, ending last rep k${now} instead of k${old}`),
  fc.tuple(list, small).map(([text, n]) => `(${text}) to last ${n === 1 ? 'st' : `${n} sts`}, p${n}`),
  fc.constant('k to end'),
  fc.integer({ min: 1, max: 9 }).map((n) => `k to last ${n === 1 ? 'st' : `${n} sts`}, ${n === 2 ? 'k2tog' : `p${n}`}`),
);

const counted = fc.oneof(
  fc.tuple(segment, fc.integer({ min: 1, max: 4 })).map(([text, n]) => `*${text}; rep from * ${n === 1 ? 'once more' : `${n} times more`}`),
  fc.tuple(segment, fc.integer({ min: 2, max: 4 })).map(([text, n]) => `*${text}; rep from * ${n} times in all`),
);

const item = fc.oneof({ weight: 4, arbitrary: token }, { weight: 2, arbitrary: bracket });

export interface RandomRow {
  readonly text: string;
  readonly start: number;
  readonly markers: readonly number[];
}

/** A row on some number of stitches; about half of the rows are given the number that they take. */
export const randomRow = fc
  .tuple(
    fc.array(item, { maxLength: 4 }),
    fc.option(fc.oneof({ weight: 3, arbitrary: elastic }, { weight: 1, arbitrary: counted }), { freq: 4 }),
    fc.integer({ min: 4, max: 90 }),
  )
  .map(
    ([items, repeat, start]): RandomRow => ({
      text: [...items, ...(repeat === null ? [] : [repeat])].join(', ') || 'k4',
      start,
      markers: [],
    }),
  );

/** Rows that read their markers: to a marker, short of it, a repeat up to it. */
export const markedRow = fc
  .tuple(
    fc.array(fc.integer({ min: 2, max: 16 }), { minLength: 1, maxLength: 4 }),
    fc.array(
      fc.oneof(
        fc.constantFrom(
          'k to m, sm',
          'k to 1 st before m, kfb, sm, kfb',
          'k to 2 sts before m, k2tog, sm, ssk',
          '*k1, p1; rep from * to m, sm',
          '(p2, k1) to 1 st before m, k1, sm',
          'k to 2 sts past m',
          'yo, k to m, yo, sm',
          'k to m',
          'p3',
        ),
      ),
      { minLength: 1, maxLength: 4 },
    ),
    fc.integer({ min: 2, max: 12 }),
  )
  .map(([parts, words, tail]): RandomRow => {
    const markers: number[] = [];
    let at = 0;
    for (const part of parts) {
      at += part;
      markers.push(at);
    }
    return { text: `${words.join(', ')}, k to end`, start: at + tail, markers };
  });

/** Rows that fit most numbers of stitches, so that many can follow one another. */
export const fittingRow = fc.oneof(
  fc
    .tuple(
      fc.array(token, { maxLength: 3 }),
      fc.constantFrom('k to end', 'k to last st, yo, k1', 'p to last 2 sts, k2tog', 'k to last 3 sts, m1, k3'),
    )
    .map(([tokens, end]) => [...tokens, end].join(', ')),
  fc.constantFrom(
    'yo, k to end',
    'k2, pm, k to end',
    'k to m, yo, sm, k to end',
    'k to 1 st before m, k2tog, k to end',
    'm1, k1, m1, p to end',
    'k to last 4 sts, pm, k4',
  ),
);

/** Bind-offs in the row, whose loop is counted in what follows or not. */
export const boundOffRow = fc
  .tuple(
    fc.integer({ min: 0, max: 9 }),
    fc.array(fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 9 })), { minLength: 1, maxLength: 3 }),
    fc.boolean(),
    fc.integer({ min: 10, max: 60 }),
  )
  .map(
    ([lead, parts, open, start]): RandomRow => ({
      text: [
        ...(lead > 0 ? [`k${lead}`] : []),
        ...parts.flatMap(([off, on]) => [`BO ${off} sts`, `k${on}`]),
        ...(open ? ['k to end'] : []),
      ].join(', '),
      start,
      markers: [],
    }),
  );

/** "rep from * 3 times": two readings. */
export const twoReadings = fc
  .tuple(segment, fc.integer({ min: 2, max: 4 }), fc.boolean(), fc.integer({ min: 4, max: 80 }))
  .map(([text, n, open, start]): RandomRow => ({ text: `*${text}; rep from * ${n} times${open ? ', k to end' : ''}`, start, markers: [] }));

const turnOf = { wrap: 'w&t', plain: 'turn', double: 'turn' } as const;

export interface RandomShortRows {
  readonly text: string;
  readonly start: number;
}

/** Rows of one way of turning, out and back, written with numbers or with the distance from the last turn. */
export const randomShortRows = fc
  .tuple(
    fc.constantFrom('wrap' as const, 'plain' as const, 'double' as const),
    fc.integer({ min: 20, max: 80 }),
    fc.array(fc.tuple(fc.constantFrom('number', 'before', 'past', 'last', 'gapDec', 'end'), fc.integer({ min: 1, max: 9 })), {
      minLength: 2,
      maxLength: 8,
    }),
  )
  .map(([way, start, rows]): RandomShortRows => {
    const place = { wrap: 'wrapped st', plain: 'gap', double: 'DS' }[way];
    const lines = rows.map(([how, n], index) => {
      const verb = index % 2 === 0 ? 'k' : 'p';
      const lead = way === 'double' && index > 0 && rows[index - 1]?.[0] !== 'end' ? 'DS, ' : '';
      const dec = verb === 'k' ? 'k2tog' : 'p2tog';
      const words = {
        number: `${verb}${n + 3}, ${turnOf[way]}`,
        before: `${verb} to ${n} sts before ${place}, ${turnOf[way]}`,
        past: `${verb} to ${n} sts past ${place}, ${turnOf[way]}`,
        last: `${verb} to last ${n} sts, ${turnOf[way]}`,
        gapDec: `${verb} to 1 st before gap, ${dec}, ${verb}${n}, ${turnOf[way]}`,
        end: `${verb} to end`,
      }[how];
      return `Row ${index + 1}: ${lead}${words}.`;
    });
    return { text: lines.join(' '), start };
  });
