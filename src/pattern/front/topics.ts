/** What a heading or a run-in label in the front of a pattern announces, by its own words. */

export type Topic = 'sizes' | 'measures' | 'materials' | 'yarn' | 'needles' | 'notions' | 'gauge' | 'abbreviations' | 'notes';

/** Words that announce a topic, as headings of patterns use them. */
const topicWords: Readonly<Record<Topic, readonly string[]>> = {
  sizes: ['size', 'sizes', 'size(s)', 'sizing', 'sized', 'ages', 'age'],
  measures: [
    'measurement',
    'measurements',
    'dimension',
    'dimensions',
    'fit',
    'circumference',
    'bust',
    'chest',
    'length',
    'width',
    'height',
    'wingspan',
    'depth',
  ],
  materials: ['material', 'materials', 'need', 'requirements', 'supplies', 'ingredients', 'kit'],
  yarn: ['yarn', 'yarns', 'yarn(s)', 'wool', 'wools', 'yardage', 'fibre', 'fiber', 'meterage'],
  needles: ['needle', 'needles', 'needle(s)'],
  notions: ['notion', 'notions', 'extras', 'haberdashery', 'accessories', 'equipment', 'tools', 'trimmings', 'buttons', 'hardware'],
  gauge: ['gauge', 'tension'],
  abbreviations: ['abbreviation', 'abbreviations', 'abbr', 'abbrev', 'glossary', 'key', 'terms', 'definitions'],
  notes: [
    'note',
    'notes',
    'construction',
    'cautions',
    'caution',
    'warning',
    'warnings',
    'safety',
    'technique',
    'techniques',
    'skill',
    'skills',
    'level',
    'difficulty',
    'ease',
    'about',
    'introduction',
    'schematic',
    'schematics',
    'start',
    'begin',
    'information',
    'overview',
    'description',
    'copyright',
    'credits',
    'errata',
    'support',
  ],
};

/** Words that may stand beside a topic word in its heading and announce nothing themselves. */
const fillers = new Set(
  (
    'a an and the of for in to on or you your youll will we i this it is are used use special additional further also ' +
    'finished actual final knitted garment body approximate approx required recommended suggested intended general pattern stitch ' +
    'stitches before main knitting needed shown quantities amounts quantity guide table chart square information what things old us uk ' +
    'metric list short common read first please'
  ).split(' '),
);

const byWord = new Map<string, Topic>();
for (const topic of Object.keys(topicWords) as Topic[]) for (const word of topicWords[topic]) byWord.set(word, topic);

/** Phrases whose words say too little one by one. */
const phrases: readonly (readonly [RegExp, Topic])[] = [
  [/^to fit( [a-z]+){0,4}$/, 'measures'],
  [/^(special|pattern|stitch)? ?(stitches|stitch guide|stitch key)( and abbreviations)?$/, 'abbreviations'],
  [/^short (forms|words)( used)?$/, 'abbreviations'],
  [/^you('ll| will) (also )?need$/, 'materials'],
  [/^(also|other (bits|things)|bits and (bobs|pieces)|sundries|odds and ends|and)$/, 'notions'],
  [/^before you (start|begin|cast on)$/, 'notes'],
  [/^(reading|using) (the|this) (pattern|chart|charts)$/, 'notes'],
];

function wordsOf(label: string): readonly string[] {
  return label
    .toLowerCase()
    .replaceAll(/[’']/g, '')
    .split(/[^a-z()]+/)
    .map((word) => (word.includes('(s)') ? word : word.replaceAll(/[()]/g, '')))
    .filter((word) => word !== '');
}

const materialKinds = new Set<Topic>(['materials', 'yarn', 'needles', 'notions']);

const aNeedle = /^\s*needles? \d(?: ?(?:and|&|,) ?\d)*\s*[:.]?\s*$/i;

/** The topic of a heading, if each of its words belongs to one: "Yarn & Needles" is materials, "Needle Case" is none. */
export function topicOf(heading: string): Topic | null {
  const label = heading.trim().replace(/[:.]+$/, '');
  // "Needle 1: K to last 3 sts" is a part of a round, and no list of needles.
  if (label === '' || label.length > 60 || aNeedle.test(label)) return null;
  const plain = label.toLowerCase().replaceAll('’', "'");
  for (const [pattern, topic] of phrases) if (pattern.test(plain)) return topic;
  const found = new Set<Topic>();
  for (const word of wordsOf(label)) {
    const topic = byWord.get(word);
    if (topic !== undefined) found.add(topic);
    else if (!fillers.has(word)) return null;
  }
  if (found.size === 0) return null;
  if (found.has('sizes')) {
    // "Sizes 5 and 6" names the sizes a step is for; "Finished size" states a measure.
    if (/\d/.test(label)) return null;
    if (/^(finished|actual|final|knitted)\b/.test(plain)) return 'measures';
  }
  // "3 buttons" is one of the things, not the heading over them.
  if (found.has('notions') && /\d/.test(label)) return null;
  const kinds = [...found];
  if (kinds.length === 1) return kinds[0]!;
  if (found.has('abbreviations')) return 'abbreviations';
  if (kinds.every((kind) => materialKinds.has(kind))) return 'materials';
  if (found.has('sizes')) return 'sizes';
  if (found.has('gauge')) return 'gauge';
  if (found.has('notes')) return kinds.find((kind) => kind !== 'notes') ?? 'notes';
  return kinds[0]!;
}

/**
 * The topic of a run-in label, which may carry a remark: "Needles, edgings", "Yarn A", "Gauge in St st", "Main needles (body)".
 */
export function topicOfLabel(label: string): Topic | null {
  if (aNeedle.test(label)) return null;
  const whole = topicOf(label);
  if (whole !== null) return whole;
  const match =
    /^\s*((?:main|ribbing|larger|smaller|finished|stitch|special)?\s*[a-z()]+(?:\(s\))?)\s*(?:[,(–—-]|\s(?:for|in|on|over|a|b|c|d|mc|cc\d?|[1-9])\b)/i.exec(
      label,
    );
  const first = match?.[1];
  if (first === undefined || label.length > 60) return null;
  const topic = topicOf(first);
  return topic === 'notes' || topic === 'sizes' ? null : topic;
}
