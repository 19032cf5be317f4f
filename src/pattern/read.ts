/** From a manuscript to the pattern: sizes, vocabulary, and sections with their statements in the order of the draft. */
import { readDefinition } from '../../grammar/definition.ts';
import type { Entry } from '../../grammar/lexicon/entry.ts';
import { lexicon } from '../../grammar/lexicon/index.ts';
import { countSteps, multipleIn, readPassage } from '../../grammar/read.ts';
import type { Label, Row, SizeBlock, Span, Statement, Unread } from '../../grammar/tree.ts';
import { type OwnWord, type Vocabulary, vocabularyOf } from '../../grammar/vocabulary.ts';
import type { Block, Manuscript, Passage, TableRow } from '../manuscript/manuscript.ts';
import type { FrontMatter } from './front/front-matter.ts';
import { readFrontMatter } from './front/read.ts';
import type { Pattern, Section } from './pattern.ts';
import { knittingRows } from './row-tables.ts';
import { statementsFromTable } from './tables.ts';
import { isAllCapitals, standsOut, withoutTitleLine } from './title-lines.ts';
import { looksLikeTitle, titleKind, titleTimes } from './titles.ts';

const spellings = new Set(lexicon.flatMap((entry) => entry.spellings.map((spelling) => spelling.toLowerCase())));

/** The draft's own stitches: names it defines that the lexicon does not know, or defines otherwise. */
function ownWords(front: FrontMatter, manuscript: Manuscript): { own: OwnWord[]; defined: Map<string, string> } {
  const own: OwnWord[] = [];
  const defined = new Map<string, string>();
  const base = vocabularyOf({});
  for (const { forms, meaning } of front.abbreviations) {
    for (const form of forms) {
      const term = form.trim().toLowerCase();
      if (term === '') continue;
      defined.set(term, meaning);
      const definition = readDefinition(form, meaning, base);
      if (definition === null || !definition.certain) continue;
      const known = spellings.has(term) || spellings.has(term.replace(/\d+/, '{n}'));
      if (known && !definition.overrides) continue;
      own.push({ spelling: form, meaning: { is: 'stitch', entry: definition.entry, spelling: form } });
      // "c. 6 f., cable 6 front thus": inside a row the stops are read as blanks.
      const bare = form.replace(/\./g, ' ').replace(/\s+/g, ' ').trim();
      if (bare !== form && bare !== '') own.push({ spelling: bare, meaning: { is: 'stitch', entry: definition.entry, spelling: bare } });
    }
  }
  for (const block of manuscript.blocks) {
    if (block.kind !== 'directive' || block.name !== 'stitch' || block.label === null) continue;
    const takes = Number(block.attributes['takes'] ?? '1');
    const makes = Number(block.attributes['makes'] ?? '1');
    if (!Number.isInteger(takes) || !Number.isInteger(makes)) continue;
    const name = block.label.text.trim();
    const entry: Entry = {
      name,
      spellings: [name],
      takes,
      makes,
      kind: 'other',
      moves: '',
      words: `as the draft says: takes ${takes}, makes ${makes}`,
      source: 'the draft',
    };
    own.push({ spelling: name, meaning: { is: 'stitch', entry, spelling: name } });
    defined.set(name.toLowerCase(), entry.words);
  }
  return { own, defined };
}

function dialectOf(source: string): 'US' | 'UK' | null {
  const count = (test: RegExp): number => (source.match(test) ?? []).length;
  const uk = count(/\bcast off\b|\btension\b|\bstocking stitch\b|\bst st\b|\byfwd\b|\bcolour\b|\bcentre\b/gi);
  const us = count(/\bbind off\b|\bBO\b|\bgauge\b|\bstockinette\b|\bcolor\b|\bcenter\b/g);
  return uk > us ? 'UK' : us > uk ? 'US' : null;
}

interface Draft {
  title: string;
  span: Span;
  depth: number;
  kind: Section['kind'];
  piece: number | null;
  statements: Statement[];
  multiple: Section['multiple'];
  times: number;
}

function hasCastOn(statements: readonly Statement[]): boolean {
  return statements.some(
    (statement) =>
      statement.type === 'castOn' ||
      (statement.type === 'row' &&
        statement.children.some((step) => step.type === 'castOn' || step.type === 'pickUp' || step.type === 'takeUp')) ||
      (statement.type === 'sizeBlock' && hasCastOn(statement.children)),
  );
}

const within = (block: Span, spans: readonly Span[]): boolean => spans.some((span) => block.start >= span.start && block.end <= span.end);

/** Behind a title that speaks of a chart: whether its rows are told there in words, so that they are worked and not only shown. */
function tellsRows(title: string, rest: readonly Block[]): boolean {
  if (!/\bcharts?\b/i.test(title)) return false;
  const next = rest.findIndex((block) => block.kind === 'heading');
  const told = (text: string): boolean =>
    /^\s*(?:\*{0,2}\s*)?(?:(?:rows?|rnds?|rounds?)\s\d|\d{1,3}(?:st|nd|rd|th)\s(?:and\s\S+\s)?(?:row|rnd|round))/i.test(text);
  return rest
    .slice(0, next < 0 ? rest.length : next)
    .some((block) => (block.kind === 'paragraph' || block.kind === 'item') && told(block.text));
}

/** A round told needle by needle, each on a line of its own: the lines are one round. */
function roundGoesOn(last: Statement | undefined, next: Statement): Row | null {
  if (last?.type !== 'row' || next.type !== 'row' || next.label !== null || next.does !== null || last.does !== null) return null;
  const [part] = next.children;
  if (part?.type !== 'needlePart' || part.numbers === undefined) return null;
  const before = last.children.at(-1);
  if (before === undefined ? last.label === null : before.type !== 'needlePart') return null;
  const first = part.numbers[0];
  const reached = before?.type === 'needlePart' ? before.numbers?.at(-1) : 0;
  if (first === undefined || reached === undefined || first <= reached) return null;
  return {
    ...last,
    children: [...last.children, ...next.children],
    stated: [...last.stated, ...next.stated],
    span: { start: last.span.start, end: next.span.end },
  };
}

const directiveNames: ReadonlySet<string> = new Set(['sizes', 'stitches', 'stitch', 'stet']);

/** One cell of `::stitches[45 | – | 53]`; undefined where it is no number. */
function cellCount(cell: string): number | null | undefined {
  const text = cell.trim();
  if (/^[–—-]?$/.test(text)) return null;
  return /^\d{1,6}$/.test(text) ? Number(text) : undefined;
}

/** "Sizes M and L only:" on a line of its own rules what follows; it is no heading, though it looks like one. */
const namesSizesOnly = (statements: readonly Statement[]): boolean =>
  statements.length === 1 && statements[0]?.type === 'sizeBlock' && statements[0].children.length === 0;

/** Reads the whole draft. Never throws; what instructs and is not understood stands in `reading.notRead`. */
export function readPattern(manuscript: Manuscript): Pattern {
  const front = readFrontMatter(manuscript);
  const names = front.sizes?.names ?? ['one'];
  const { own, defined } = ownWords(front, manuscript);
  const vocabulary: Vocabulary = vocabularyOf({ own, defined, dialect: dialectOf(manuscript.source) });
  const sections: Draft[] = [];
  const open = (title: string, span: Span, depth: number, kind: Section['kind']): Draft => {
    // "Lace (multiple of 8 + 1)": the heading itself gives the multiple.
    const given = kind === 'front' ? null : multipleIn(title);
    const section: Draft = {
      title,
      span,
      depth,
      kind,
      piece: null,
      statements: [],
      multiple: given === null ? null : { ...given, span },
      times: titleTimes(title),
    };
    sections.push(section);
    return section;
  };
  let current = open('', { start: 0, end: 0 }, 0, 'front');
  let headingDepth = 0;
  let roundList = false;
  /** Passages of the front that are too long to be read. */
  const overlong: Unread[] = [];

  const read = (passage: Passage, options: { itemNumber?: number | null; label?: Label } = {}): Statement[] =>
    readPassage(passage.text, passage.start, {
      vocabulary,
      sizes: names,
      emphasis: passage.emphasis,
      itemNumber: options.itemNumber ?? null,
      itemUnit: roundList ? 'round' : 'row',
      label: options.label ?? null,
    });

  const addAll = (statements: readonly Statement[]): void => {
    for (const statement of statements) {
      if (statement.type === 'declare' && statement.what === 'title' && statement.name !== null) {
        const kind = titleKind(statement.name);
        if (kind === 'front') continue;
        current = open(statement.name.trim(), statement.span, Math.max(headingDepth, 1) + 2, kind === 'piece' ? 'stage' : kind);
        continue;
      }
      if (statement.type === 'declare' && statement.what === 'multiple' && statement.multiple !== null)
        current.multiple = { ...statement.multiple, span: statement.span };
      const whole = roundGoesOn(current.statements.at(-1), statement);
      if (whole !== null) current.statements[current.statements.length - 1] = whole;
      else current.statements.push(statement);
    }
  };

  const tables = new Map<number, TableRow[]>();
  for (const block of manuscript.blocks)
    if (block.kind === 'tableRow') tables.set(block.table, [...(tables.get(block.table) ?? []), block]);
  const tablesRead = new Set<number>();
  const inFront = (block: Block): boolean => within(block, front.blocks) && block.kind !== 'heading';
  const titleSpan = front.title?.span ?? null;

  const blocks = manuscript.blocks.flatMap(withoutTitleLine);
  for (const [place, block] of blocks.entries()) {
    switch (block.kind) {
      case 'heading': {
        const title = block.text.replace(/\s+/g, ' ').trim();
        headingDepth = block.depth;
        const isTitle = titleSpan !== null && block.start <= titleSpan.start && block.end >= titleSpan.end;
        const sizes = /^sizes?\b.*\bonly\b|^all sizes$|\bsizes? only\b/i.test(title)
          ? readPassage(block.text, block.start, { vocabulary, sizes: names })
          : [];
        current = open(
          title,
          { start: block.start, end: block.end },
          block.depth,
          isTitle
            ? 'front'
            : sizes.length > 0 || (titleKind(title) === 'front' && tellsRows(title, blocks.slice(place + 1)))
              ? 'stage'
              : titleKind(title),
        );
        if (sizes[0]?.type === 'sizeBlock') current.statements.push(sizes[0]);
        break;
      }
      case 'paragraph':
      case 'item': {
        if (block.kind === 'paragraph') roundList = /\b(rounds?|rnds?)\b/i.test(block.text);
        const multiple = multipleIn(block.text);
        // "BACK" on a line of its own below the front: the first piece, in a draft without headings.
        const opens =
          block.kind === 'paragraph' &&
          current.kind === 'front' &&
          !inFront(block) &&
          looksLikeTitle(block.text) &&
          titleKind(block.text.trim()) === 'piece' &&
          (isAllCapitals(block.text) || standsOut(block));
        if (!opens && (inFront(block) || current.kind === 'front')) {
          // A note may still define a row ("Buttonhole row (RS): …") or name the multiple of a pattern.
          if (
            multiple !== null &&
            /\b(multiple|odd number|even number|any number)\b/i.test(block.text) &&
            current.multiple === null &&
            current.kind !== 'front'
          )
            current.multiple = { ...multiple, span: { start: block.start, end: block.end } };
          const all = read(block);
          const rows = all.filter(
            (statement) =>
              statement.type === 'row' && statement.label !== null && (statement.children.length > 0 || statement.does !== null),
          );
          // Below a front heading a cast-on begins the work, though no heading says so.
          const begins = current.kind === 'front' && !inFront(block) && block.kind === 'paragraph' && hasCastOn(all);
          if (begins) {
            if (current.title === '' || sections.length === 1)
              current = open(front.title?.text ?? '', { start: block.start, end: block.start }, headingDepth + 1, 'piece');
            else current.kind = 'piece';
            addAll(all);
          } else if (/\b(row|rnd|round)s?\b/i.test(block.text)) current.statements.push(...rows);
          break;
        }
        if (block.kind === 'paragraph' && looksLikeTitle(block.text) && !namesSizesOnly(read(block))) {
          const title = block.text.replace(/\s+/g, ' ').trim();
          const kind = titleKind(title);
          current = open(title, { start: block.start, end: block.end }, headingDepth + 1, kind);
          break;
        }
        const statements = read(block, block.kind === 'item' && current.kind !== 'finishing' ? { itemNumber: block.number } : {});
        if (
          multiple !== null &&
          current.multiple === null &&
          !statements.some((statement) => statement.type === 'declare' && statement.what === 'multiple') &&
          /\b(multiple of|mult of)\b/i.test(block.text)
        ) {
          current.multiple = { ...multiple, span: { start: block.start, end: block.end } };
        }
        addAll(statements);
        break;
      }
      case 'tableRow': {
        if (inFront(block) || current.kind === 'front' || tablesRead.has(block.table)) break;
        const rows = tables.get(block.table) ?? [];
        tablesRead.add(block.table);
        const labelled = knittingRows(rows, { vocabulary, sizes: names });
        if (labelled.length > 0) {
          // "Work the pattern from the table": the rows of the table are what it says.
          current.statements = current.statements.filter(
            (statement) => !(statement.type === 'unread' && /\btable\b/i.test(statement.text) && !/\d/.test(statement.text)),
          );
          for (const { label, body, stated } of labelled) {
            addAll(read(body, { label }));
            if (stated !== null) addAll([stated]);
          }
        } else {
          const made = statementsFromTable(rows, current, sections, { vocabulary, sizes: names });
          // The sentence that points at the table is carried out by the rows of the table.
          if (made.length > 0) current.statements = current.statements.filter((statement) => statement.type !== 'refer');
          addAll(made);
        }
        break;
      }
      case 'directive': {
        const values = block.name === 'stitches' && block.label !== null ? block.label.text.split('|').map(cellCount) : null;
        if (values === null || block.label === null || values.includes(undefined)) {
          // A directive that nobody knows, or one that says nothing that can be counted, is shown as not read.
          if (!directiveNames.has(block.name) || block.name === 'stitches')
            current.statements.push({
              type: 'unread',
              text: manuscript.source.slice(block.start, block.end).trim(),
              span: { start: block.start, end: block.end },
            });
          break;
        }
        const span = { start: block.label.start, end: block.label.end };
        current.statements.push({
          type: 'stated',
          count: { type: 'count', values: values as (number | null)[], span },
          what: 'total',
          scope: null,
          span,
        });
        break;
      }
      case 'overlong': {
        const words = manuscript.source
          .slice(block.start, block.start + 60)
          .replace(/\s+/g, ' ')
          .trim();
        const unread: Unread = {
          type: 'unread',
          text: `${words} …`,
          beyond: block.why,
          span: { start: block.start, end: block.end },
        };
        if (current.kind === 'front') overlong.push(unread);
        else current.statements.push(unread);
        break;
      }
      default:
        break;
    }
  }

  let piece = -1;
  for (const section of sections) {
    if (section.kind !== 'front' && section.kind !== 'finishing' && section.kind !== 'other') {
      if (hasCastOn(section.statements.slice(0, 6)) || section.kind === 'piece') {
        if (
          section.kind === 'stage' &&
          hasCastOn(section.statements.slice(0, 2)) &&
          section.statements.some((statement) => statement.type === 'castOn')
        )
          section.kind = 'piece';
        if (section.kind === 'piece') piece += 1;
      }
      section.piece = piece < 0 ? null : piece;
    }
  }
  return finish(front, names, vocabulary, sections, overlong);
}

function finish(
  front: FrontMatter,
  names: readonly string[],
  vocabulary: Vocabulary,
  sections: readonly Draft[],
  overlong: readonly Unread[],
): Pattern {
  let steps = overlong.length;
  const notRead: Unread[] = [...overlong];
  const rows: { section: Section; row: Row; label: Label }[] = [];
  const sizeBlocks: SizeBlock[] = [];
  for (const section of sections) {
    if (section.kind !== 'front') {
      const counted = countSteps(section.statements);
      steps += counted.steps;
      notRead.push(...counted.notRead);
    }
    const visit = (statement: Statement): void => {
      if (statement.type === 'row' && statement.label !== null) rows.push({ section, row: statement, label: statement.label });
      if (statement.type === 'sizeBlock') {
        sizeBlocks.push(statement);
        statement.children.forEach(visit);
      }
      if (statement.type === 'atSameTime') statement.children.forEach(visit);
    };
    section.statements.forEach(visit);
  }
  notRead.sort((a, b) => a.span.start - b.span.start);
  const title = front.title?.text ?? sections.find((section) => section.title !== '')?.title ?? '';
  return { title, sizes: names, sections, front, vocabulary, reading: { steps, read: steps - notRead.length, notRead }, rows, sizeBlocks };
}
