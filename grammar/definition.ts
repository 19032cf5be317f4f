/**
 * A draft's own definition of a stitch, read into an entry: what it takes and makes is worked out by carrying out the moves
 * that its words tell. Words that are not understood give no entry; nothing is guessed.
 */
import { movesOf } from './definition-phrases.ts';
import { carryOut } from './hands.ts';
import { ambiguityOf } from './lexicon/ambiguous.ts';
import type { Entry } from './lexicon/entry.ts';
import { stitchUse } from './lexicon/use.ts';
import { matchAt, type Vocabulary } from './vocabulary.ts';

export interface Definition {
  readonly entry: Entry;
  /** The gain (or, negative, the loss) that the definition itself states: "(2 sts decreased)" is -2. Null when it states none. */
  readonly declaredNet: number | null;
  /** False where the words do not add up by themselves, as when fewer stitches come off the cable needle than went on. */
  readonly certain: boolean;
  /** The name is new, has several readings, or is defined here with another count than the common one. */
  readonly overrides: boolean;
  /** A crossing: stitches put on the cable needle, where it is held, stitches worked past it and from it. */
  readonly cable?: { readonly slipped: number; readonly hold: 'front' | 'back'; readonly then: number; readonly from: number };
}

const numbers: readonly string[] = ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight'];

/** "(2 sts decreased)", "1 stitch increased", "dec 1": the net that the words state, and the text without them. */
function declared(text: string): { readonly net: number | null; readonly rest: string } {
  const pattern =
    /[([;,–—-]?\s*\b(?:(?:net )?(?:decrease|increase|dec|inc)s?(?:'d)? (?:of )?(\d|one|two|three|four) (?:sts?|stitch(?:es)?)|(\d|one|two|three|four) (?:sts?|stitch(?:es)?) (?:have been |has been |is |are )?(dec(?:reased|'d|d)?|inc(?:reased|'d|d)?|decrease|increase|made|lost|rem(?:ains?)?))\b\.?\s*[)\]]?\.?\s*$/;
  const match = pattern.exec(text);
  if (match === null || match.index === 0) return { net: null, rest: text };
  const word = match[1] ?? match[2] ?? '';
  const number = numbers.includes(word) ? numbers.indexOf(word) : Number(word);
  if (/rem/.test(match[3] ?? '')) return { net: null, rest: text.slice(0, match.index) };
  const loss = match[3] === undefined ? /dec/.test(match[0]) : /^(?:dec|lost)/.test(match[3]);
  return { net: loss ? -number : number, rest: text.slice(0, match.index) };
}

const bracketed =
  /\s*[([][^()[\]]*(?:lean|slant|decrease|increase|dec\b|inc\b|rs|ws|optional|see |twist|ssk|k2tog|cross)[^()[\]]*[)\]]\s*\.?$/;

/** Longest definition that is read; what is longer explains and does not define. */
const longest = 420;

/**
 * Reads what a draft says a term means.
 * @param term the abbreviation as printed: `C6F`, `MB`, `sk2p`
 * @param meaning its definition, in the author's words
 * @param vocabulary the draft's words so far; its own stitches may be named in the definition
 * @returns null when the words are not a stitch, or not understood
 */
export function readDefinition(term: string, meaning: string, vocabulary: Vocabulary): Definition | null {
  const name = term.trim();
  if (name === '' || meaning.length > longest) return null;
  const text = meaning
    .toLowerCase()
    .replace(/[’]/g, "'")
    .replace(/\s+/g, ' ')
    .replace(/^[\s=:–—-]+/, '')
    .replace(/[\s.;]+$/, '')
    // "slip slip knit": the three moves of its name
    .replace(/\bslip (?=(?:slip|knit|purl)\b)/g, 'slip, ')
    .trim();
  const { net, rest } = declared(text);
  for (const part of wordings(rest)) {
    const read = movesOf(part, vocabulary);
    if (read === null) continue;
    let moves = read.moves.join(' ');
    let hands = carryOut(moves);
    if (hands !== null && hands.givenBack > 0) {
      // "return st to left needle, pass next st over": that it comes back to the right needle goes without saying.
      moves = `${moves} sl×${hands.givenBack}`;
      hands = carryOut(moves);
    }
    if (hands === null) continue;
    const { takes, makes } = hands;
    // Only the yarn moves, or only a part of a stitch is told.
    if (takes < 0 || makes < 0 || (takes === 0 && makes === 0)) return null;
    const first = read.cable[0];
    const entry: Entry = {
      name,
      spellings: [name],
      takes,
      makes,
      kind: kindOf(read.moves, takes, makes),
      ...faceOf(hands.faces),
      ...(first === undefined ? {} : { lean: first.hold === 'front' ? ('left' as const) : ('right' as const), needs: ['cable needle'] }),
      moves,
      words: meaning.trim(),
      source: 'the draft',
    };
    return {
      entry,
      declaredNet: net,
      certain: read.certain,
      overrides: overrides(name, entry, vocabulary),
      ...(first === undefined ? {} : { cable: first }),
    };
  }
  return null;
}

/** The words as they stand, without a closing remark, and what follows a gloss: "cable 6 front: slip next 3 sts …". */
function wordings(text: string): string[] {
  const bare = text.replace(bracketed, '').trim();
  const out: string[] = [];
  const gloss = /^[^:–—=(]{2,60}?(?::|\s[–—=-]\s|=)\s*(.+)$/.exec(bare);
  if (gloss?.[1]) out.push(gloss[1]);
  // "Make bobble. K into front …": the name once more, then how
  const named = /^(?:make (?:an? )?|work (?:an? )?)?[a-z][a-z -]{2,30}\d{0,2}\. (.+)$/.exec(bare);
  if (named?.[1] && !/\b(?:knit|purl|slip|k|p|sl|yo)\b/.test(bare.slice(0, bare.indexOf('.')))) out.push(named[1]);
  // "narrow (knit 2 sts together)", "narrow, i.e. k 2 tog"
  const told = /^(?:narrow|widen|over|throw over|increase|decrease|inc|dec)(?: \(([^()]+)\)|,? (?:i\.e\.|that is),? (.+))$/.exec(text);
  const inner = told?.[1] ?? told?.[2];
  if (inner !== undefined && !/^(?:knit|purl|slip|k|p|sl|yo)\b/.test(text)) out.push(inner);
  // "increase by knitting into front and back of it"
  const by = /^(?:increase|inc|decrease|dec)(?: (?:one|1|a) (?:st|stitch))? by (?:(knitting|working)|(purling)|(slipping)) (.+)$/.exec(
    bare,
  );
  if (by?.[4]) out.push(`${by[1] ? 'knit' : by[2] ? 'purl' : 'slip'} ${by[4].replace(/\bof it$/, 'of next st')}`);
  out.push(text, bare);
  const comma =
    /^(?:make (?:a )?(?:bobble|knot)|(?:left|right|centred|centered|double)[a-z ]*(?:decrease|increase|twist|cross)|increase|decrease|cable \d+ (?:front|back|left|right)),\s*(.+)$/.exec(
      bare,
    );
  if (comma?.[1]) out.push(comma[1]);
  const before = /^([^(]+)\(/.exec(text);
  if (before?.[1]) out.push(before[1].trim());
  return [...new Set(out.filter((each) => each !== ''))];
}

function kindOf(moves: readonly string[], takes: number, makes: number): Entry['kind'] {
  const text = moves.join(' ');
  if (/cn[FBS]/.test(text)) return 'cable';
  if (/turn/.test(text)) return 'other';
  if (/@\+/.test(text)) return 'twist';
  if (takes === 0 && /^\(?yo\)?(?: \(?yo\)?)*$/.test(text)) return 'yarnOver';
  if (makes > takes) return 'increase';
  if (takes - makes === 1) return 'decrease';
  if (takes - makes > 1) return 'doubleDecrease';
  if (/^\(?(?:yf |yb |- )?(?:slk?|slt\(\d\))(?: |×\d+|slk?|\))*$/.test(text)) return 'slip';
  return /^[kpb ()×\d-]*$/.test(text) ? 'plain' : 'other';
}

/** The face of the last loop made, where there is one. */
function faceOf(faces: readonly ('k' | 'p' | null)[]): { face?: 'k' | 'p' } {
  const last = faces.filter((face) => face !== null).at(-1);
  return last ? { face: last } : {};
}

function overrides(term: string, entry: Entry, vocabulary: Vocabulary): boolean {
  const known = matchAt(term, 0, vocabulary, null);
  if (known === null || known.length !== term.length || known.meaning.is !== 'stitch')
    return known?.meaning.is !== 'word' && known?.meaning.is !== 'fabric';
  if (ambiguityOf(term) !== undefined) return true;
  const common = known.meaning.entry;
  const literal = common.literals?.[known.meaning.spelling];
  const { takes, makes } = stitchUse(common, known.n?.[0] ?? literal?.N ?? 1, known.m ?? literal?.M ?? 1);
  return (
    takes !== entry.takes || makes !== entry.makes || (common.lean !== undefined && entry.kind === 'cable' && common.lean !== entry.lean)
  );
}
