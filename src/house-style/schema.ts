/** What may stand in `house-style.yaml`: every key, what it takes, and a line saying what it is for. */

/** A setting that takes one of a few words. */
export interface Choice {
  readonly kind: 'choice';
  readonly words: readonly string[];
  readonly about: string;
}

/** A setting that takes a number, nought or more. */
export interface Amount {
  readonly kind: 'amount';
  readonly about: string;
}

/** Settings below a setting. */
export interface Group {
  readonly kind: 'group';
  readonly keys: Readonly<Record<string, Choice | Amount>>;
  readonly about: string;
}

/** A level for each rule, by the rule's id. */
export interface RuleLevels {
  readonly kind: 'ruleLevels';
  readonly words: readonly string[];
  readonly about: string;
}

export type Setting = Choice | Amount | Group | RuleLevels;

const amount = (about: string): Amount => ({ kind: 'amount', about });
const choice = (words: readonly string[], about: string): Choice => ({ kind: 'choice', words, about });

export const houseStyleSchema: Readonly<Record<string, Setting>> = {
  rules: { kind: 'ruleLevels', words: ['error', 'query', 'style', 'off'], about: 'Level of a rule, or off.' },
  terms: choice(['US', 'UK'], 'Whose words for stitches the house uses; left out, only mixtures within one draft are reported.'),
  tolerance: {
    kind: 'group',
    about: 'How far a measure may be off.',
    keys: {
      cm: amount('Centimetres within which a width passes.'),
      inches: amount('Inches within which a width passes.'),
      stitches: amount('Stitches within which a width passes.'),
      queryStitches: amount('Stitches up to which a width is a question; beyond them it is an error.'),
      queryPercent: amount('Percent up to which a width is a question; beyond it is an error.'),
    },
  },
  labels: choice(['Row 1', '1st row'], 'How the label of a row is written.'),
  repeats: choice(['star', 'bracket'], 'How a repeat within a row is written.'),
  counts: choice(['dash', 'bracket', 'sentence'], 'How the count after a row is written.'),
};

/** The same as a JSON Schema, for editors that help while a `house-style.yaml` is written. */
export function houseStyleJsonSchema() {
  return {
    $schema: 'http://json-schema.org/draft-07/schema#',
    title: 'house-style.yaml of rowproof',
    ...objectSchema(houseStyleSchema),
  };
}

function objectSchema(keys: Readonly<Record<string, Setting>>): object {
  const properties = Object.fromEntries(Object.entries(keys).map(([key, setting]) => [key, settingSchema(setting)]));
  return { type: 'object', additionalProperties: false, properties };
}

function settingSchema(setting: Setting): object {
  switch (setting.kind) {
    case 'choice':
      return { description: setting.about, enum: setting.words };
    case 'amount':
      return { description: setting.about, type: 'number', minimum: 0 };
    case 'group':
      return { description: setting.about, ...objectSchema(setting.keys) };
    case 'ruleLevels':
      return { description: setting.about, type: 'object', additionalProperties: { enum: setting.words } };
  }
}
