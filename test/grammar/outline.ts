/** A tree in one line, for tests: what the words were read as, in the order of the text. */
import { printSized } from '../../grammar/count.ts';
import { ambiguityOf } from '../../grammar/lexicon/ambiguous.ts';
import { readPassage } from '../../grammar/read.ts';
import type { Count, EndSide, Extent, Goal, Segment, Statement } from '../../grammar/tree.ts';
import { type Vocabulary, vocabularyOf } from '../../grammar/vocabulary.ts';

const num = (count: Count | null | undefined): string => (count == null ? '' : `${count.all ? 'all:' : ''}${printSized(count.values)}`);
const more = (sense: 'plain' | 'more' | 'all'): string => (sense === 'plain' ? '' : ` ${sense}`);

function extent(of: Extent | null): string {
  if (of === null) return 'never';
  switch (of.kind) {
    case 'times':
      return `${num(of.count)}×${more(of.sense)}`;
    case 'end':
      return 'end';
    case 'last':
      return `last ${num(of.count)}${of.of ? ` of ${of.of}` : ''}`;
    case 'onRight':
      return `${num(of.count)} on right${of.afterBindOff ? ' after bind-off' : ''}`;
    case 'over':
      return `over ${num(of.count)}`;
    case 'relative':
      return `${num(of.count)} ${of.sense} than last${of.side ? ` ${of.side}` : ''}`;
    case 'these':
      return 'these';
    case 'part':
      return of.name;
    case 'goal':
      return `until ${goal(of.goal)}`;
    case 'place':
      return [
        of.side === 'at' ? 'to' : `${num(of.n)} ${of.side}`,
        of.which === 'next' ? '' : of.which,
        of.ordinal ?? '',
        of.name ?? '',
        of.place,
      ]
        .filter((word) => word !== '')
        .join(' ');
  }
}

function goal(of: Goal | null): string {
  if (of === null) return '';
  switch (of.kind) {
    case 'measure':
      return `${of.of ?? 'it'} ${printSized(of.values)} ${of.unit}${of.from ? ` from ${of.from}` : ''}${of.shorter ? ' shorter' : ''}`;
    case 'count':
      return `${num(of.count)} sts${of.sense === 'total' ? '' : ` ${of.sense}`}${of.scope ? ` (${of.scope})` : ''}`;
    case 'rows':
      return `${num(of.count)} rows`;
    case 'matches':
      return `matches ${of.name ?? ''}${of.fewer ? ` less ${num(of.fewer)} rows` : ''}`;
    case 'allWorked':
      return 'all worked';
    case 'marks':
      return `${num(of.count)} ${of.of}${of.eachSide ? ' each side' : ''}`;
    case 'loose':
      return `loose "${of.text}"`;
  }
}

function segment(of: Segment): string {
  const k = of.k === null ? '' : ` k=${printSized(of.k)}${of.k2 ? `,${printSized(of.k2)}` : ''}`;
  const measure = of.measure ? ` measure=${printSized(of.measure)}` : '';
  return `${of.kind}${of.n ? ` n=${num(of.n)}` : ''}${k}${of.rowSide ? ` ${of.rowSide}` : ''}${measure}${more(of.more)}${of.until ? ` until ${num(of.until)}` : ''}`;
}

const ending = (of: EndSide | null): string =>
  of === null
    ? ''
    : ` ending ${of.last ?? ''}${of.row ? `row ${printSized(of.row)}` : ''}${of.edge ? `${of.edge} edge` : ''}`.replace(/ $/, '');
const list = (nodes: readonly Statement[]): string =>
  nodes
    .map(outline)
    .filter((text) => text !== '')
    .join(' ');

/** One node in one line; remarks are left out. */
export function outline(node: Statement): string {
  const stated =
    'stated' in node && Array.isArray(node.stated) ? (node.stated as readonly Statement[]).map((each) => ` ${outline(each)}`).join('') : '';
  switch (node.type) {
    case 'remark':
      return '';
    case 'unread':
      return `UNREAD "${node.text.replace(/\s+/g, ' ')}"`;
    case 'work':
      return `${node.stitch}${node.n ? `{${num(node.n)}}` : ''}${node.m === undefined ? '' : `/${node.m}`}${node.manner.length > 0 ? `<${node.manner.join(' ')}>` : ''}${node.times ? `×${num(node.times)}` : ''}${node.joins ? ` joins ${node.joins.count} ${node.joins.of}` : ''}${
        node.readings && node.readings.length > 1 && ambiguityOf(node.spelling ?? '')?.undecided
          ? `(or ${node.readings
              .slice(1)
              .map(
                (other) =>
                  `${other.stitch}${other.n ? `{${num(other.n)}}` : ''}${other.m === undefined ? '' : `/${other.m}`}${other.times ? `×${num(other.times)}` : ''}`,
              )
              .join(', ')})`
          : ''
      }`;
    case 'intoOne':
      return `(${list(node.children)})into ${node.into}${node.takes ? ` ${num(node.takes)}` : ''}${node.times ? ` ×${num(node.times)}` : ''}${node.dropping ? ' dropping' : ''}${node.everywhere ? ' everywhere' : ''}`;
    case 'repeat': {
      if (node.form === 'run') return `${node.verb}→${extent(node.extent)}`;
      const end = node.ending ? ` ${node.ending.kind}:${list(node.ending.children)}` : '';
      return `${node.form === 'list' ? (node.repeats === 'last' ? 'list of which last' : 'list') : node.form === 'star' ? (node.mark ?? '*') : ''}[${list(node.children)}${node.once.length > 0 ? ` | ${list(node.once)}` : ''}]→${extent(node.extent)}${end}`;
    }
    case 'turn':
      return `turn${node.not ? ' not' : ''}${node.quarter ? ' quarter' : ''}${node.insideOut ? ' inside out' : ''}${node.method === 'plain' ? '' : ` ${node.method}`}${node.leaving ? ` leaving ${num(node.leaving)}` : ''}${node.holds ? ` holds ${node.holds}` : ''}`;
    case 'marker':
      return `marker ${node.op}${node.name ? ` ${node.name}` : ''}${node.anywhere ? ' anywhere' : ''}${node.by ? ` ${num(node.by.count)} ${node.by.to}` : ''}${node.atRow ? ' at row' : ''}${node.at ? ` ${num(node.at.count)} from ${node.at.from}` : ''}`;
    case 'castOn':
      return `CO ${num(node.count)} ${node.where}${node.overGaps ? ' over gaps' : ''}${node.provisional ? ' provisional' : ''}${node.perNeedle ? ` (${num(node.perNeedle)} per needle)` : ''}`;
    case 'bindOff':
      if (node.toMarker) return 'BO to marker';
      return `BO ${node.part ? `part ${node.part} ` : ''}${node.which === 'next' ? '' : `${node.which} `}${num(node.count)}${node.loopCounted ? ' loop counted' : ''}`;
    case 'hold':
      return `hold ${node.which}${node.toMarker ? ' to marker' : ''}${node.count ? ` ${num(node.count)}` : ''} on ${node.holder}${node.name ? ` for ${node.name}` : ''}`;
    case 'takeUp':
      return `take up ${num(node.count)}${node.name ? ` ${node.name}` : ''}${node.worked ? '' : ' unworked'}`;
    case 'pickUp':
      return `pick up ${node.ratio ? `${num(node.ratio.sts)} per ${num(node.ratio.per)} ${node.ratio.unit}` : num(node.count)}${node.verb === 'knit' ? '' : ` ${node.verb}`}${node.includingHeld ? ' including held' : ''}`;
    case 'needlePart':
      return `${node.each ? 'each needle' : node.numbers && node.numbers.length > 0 ? `needle ${node.numbers.join(',')}` : node.needle.toLowerCase()}:{${list(node.children)}}`;
    case 'arrange':
      return [
        'arrange',
        node.needles ? `${num(node.needles)} needles` : '',
        node.perNeedle ? `${num(node.perNeedle)} each` : '',
        node.parts.map((part) => `${part.name ? `${part.name} ` : ''}${num(part.count)}`).join(' / '),
      ]
        .filter((word) => word !== '')
        .join(' ');
    case 'only':
      return `only ${node.which}${node.count ? ` ${num(node.count)}` : ''}`;
    case 'andSoOn':
      return `and so on${node.step ? ` ${num(node.step)}` : ''}${node.sense ? ` ${node.sense}` : ''}${node.schedule.length > 0 ? ` {${node.schedule.map(segment).join('; ')}}` : ''}${node.times ? ` ${num(node.times.count)}×${more(node.times.sense)}` : ''}${node.until ? ` until ${goal(node.until)}` : ''}${ending(node.ending)}${stated}`;
    case 'evenly':
      return `evenly ${node.change} ${num(node.count)}${node.inEvery ? ` in every ${printSized(node.inEvery)}` : ''}${node.onLastRow ? ' on last row' : ''}`;
    case 'resolve':
      return `resolve ${node.what}`;
    case 'pullOver':
      return `pull over ${node.count}${node.readings ? ` (or ${node.readings.slice(1).join(', ')})` : ''}`;
    case 'change':
      return `change ${node.what}`;
    case 'stated':
      return `=${num(node.count)} ${node.what}${node.scope ? ` (${node.scope})` : ''}`;
    case 'row': {
      const { label } = node;
      const head =
        label === null
          ? 'row'
          : [
              label.unit,
              label.next ? `next${label.next.values[0] === 1 && label.next.values.length === 1 ? '' : ` ${num(label.next)}`}` : '',
              label.name ?? '',
              label.numbers.join(','),
              label.andAll ? `and all ${label.andAll}` : '',
              label.side ? `(${label.side})` : '',
            ]
              .filter((word) => word !== '')
              .join(' ');
      return `${head}: ${node.does ? `${outline(node.does)} ` : ''}${list(node.children)}${stated}`.trim();
    }
    case 'repeatRows': {
      const { rows } = node;
      const which = [
        rows.kind,
        num(rows.count),
        rows.name ?? '',
        rows.numbers.join(','),
        rows.of ? `of ${rows.of}` : '',
        rows.mark ?? '',
        rows.toMark ? `to ${rows.toMark}` : '',
      ]
        .filter((word) => word !== '')
        .join(' ');
      return `${node.verb} rows [${which}]${node.times ? ` ${num(node.times.count)}×${more(node.times.sense)}` : ''}${node.until ? ` until ${goal(node.until)}` : ''}${node.schedule.length > 0 ? ` {${node.schedule.map(segment).join('; ')}}` : ''}${node.omitting ? ' omitting' : ''}${node.step ? ` step ${num(node.step)}${node.stepSense ? ` ${node.stepSense}` : ''}` : ''}${node.inPlace ? ` in place: ${node.inPlace.name} for ${node.inPlace.of.join(',')} {${node.inPlace.schedule.map(segment).join('; ')}}` : ''}${ending(node.ending)}${stated}`;
    }
    case 'plain':
      return `plain ${num(node.count)} ${node.unit}s${node.fabric ? ` ${node.fabric}` : ''}${node.begin ? ` beg ${node.begin}` : ''}${node.beginRow ? ` beg row ${node.beginRow}` : ''}${node.of ? ` of ${node.of}` : ''}${node.inside.length > 0 ? ` (${list(node.inside)})` : ''}${ending(node.ending)}${stated}`;
    case 'shape':
      return `${node.change} ${num(node.count)} ${node.place}${node.edge ? ` ${node.edge}` : ''} {${node.schedule.map(segment).join('; ')}}${ending(node.ending)}${stated}`;
    case 'edgeRows':
      return `${node.change} rows${node.atEnd ? ' at end' : ''}${node.edge ? ` at ${node.edge} edge` : ''} ${node.parts.map((part) => `${num(part.count)} {${part.rows.map(segment).join('; ')}}`).join(' + ')}${stated}`;
    case 'until':
      return `${node.verb}${node.fabric ? ` ${node.fabric}` : ''}${node.begin ? ` beg ${node.begin}` : ''}${node.of ? ` of ${node.of}` : ''} until ${goal(node.goal)}${node.inside.length > 0 ? ` (${list(node.inside)})` : ''}${ending(node.ending)}${stated}`;
    case 'refer':
      return `as ${node.to}${node.name ? ` ${node.name}` : ''}${node.part ? ` (${node.part})` : ''}${node.castOn ? ` cast on ${num(node.castOn.count)}${node.castOn.sense === 'total' ? '' : ` ${node.castOn.sense}`}` : ''}${node.from ? ` from ${node.from.mark ?? `row ${node.from.row}`}` : ''}${node.rows.length > 0 ? ` rows ${node.rows.join(',')}` : ''}${node.until ? ` to ${node.until.done ? 'end of ' : ''}${node.until.mark ?? node.until.place ?? goal(node.until.goal)}${ending(node.until.ending ?? null)}` : ''}${node.reversing ? ' reversing' : ''}${node.over ? ` ${extent(node.over)}` : ''}${node.repeats ? ` (${num(node.repeats)} repeats)` : ''}${node.times ? ` ${num(node.times.count)}×${more(node.times.sense)}` : ''}${node.then ? ` then ${node.then.map(outline).join(', ')}` : ''}${stated}`;
    case 'join':
      return `join ${node.what}${node.count ? ` ${num(node.count)}` : ''}${node.side ? ` ${node.side}` : ''}${node.loses ? ` loses ${node.loses}` : ''}`;
    case 'atSameTime':
      return `at the same time${node.when ? ` when ${goal(node.when)}` : ''}${ending(node.ending)} {${node.children.map(outline).join('; ')}}`;
    case 'sizeBlock':
      return `sizes ${node.rest ? 'rest ' : ''}${node.sizes === null ? (node.rest ? '' : 'all') : node.sizes.join(',')} {${node.children.map(outline).join('; ')}}`;
    case 'declare':
      return `declare ${node.what}${node.name ? ` ${node.name}` : ''}${node.multiple ? ` ${node.multiple.of}+${node.multiple.plus}` : ''}`;
  }
}

export interface OutlineOptions {
  readonly sizes?: readonly string[];
  readonly vocabulary?: Vocabulary;
  readonly itemNumber?: number;
}

/** Reads a text and prints its statements, joined by " | ". */
export function read(text: string, options: OutlineOptions = {}): string {
  const sizes = options.sizes ?? ['one'];
  return readPassage(text, 0, {
    vocabulary: options.vocabulary ?? vocabularyOf({}),
    sizes,
    ...(options.itemNumber === undefined ? {} : { itemNumber: options.itemNumber }),
  })
    .map(outline)
    .filter((line) => line !== '')
    .join(' | ');
}
