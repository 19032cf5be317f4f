/** Markup in which every text is escaped unless it is markup already. */

export interface Markup {
  readonly markup: string;
}

type Part = Markup | string | number | null | undefined | false | readonly Part[];

/** Text as it may stand between tags and in quoted attributes. Characters that no document may hold become a sign that says so. */
export function escapeText(text: string): string {
  let out = '';
  for (const character of text) {
    const code = character.codePointAt(0) ?? 0;
    if (character === '&') out += '&amp;';
    else if (character === '<') out += '&lt;';
    else if (character === '>') out += '&gt;';
    else if (character === '"') out += '&quot;';
    else if (character === "'") out += '&#39;';
    else if (code === 0xfeff) out += '';
    else if (
      (code < 0x20 && code !== 0x09 && code !== 0x0a) ||
      (code >= 0x7f && code < 0xa0) ||
      (code >= 0xd800 && code <= 0xdfff) ||
      isDirection(code)
    )
      out += '\ufffd';
    else out += character;
  }
  return out;
}

/** Signs that turn the direction of writing could make a text look like another one. */
const isDirection = (code: number) => (code >= 0x202a && code <= 0x202e) || (code >= 0x2066 && code <= 0x2069);

function flat(part: Part): string {
  if (part === null || part === undefined || part === false) return '';
  if (typeof part === 'string') return escapeText(part);
  if (typeof part === 'number') return String(part);
  if ('markup' in part) return part.markup;
  return part.map(flat).join('');
}

/** A template of markup: everything put into it is escaped, markup made by another template is not. */
export function html(strings: TemplateStringsArray, ...parts: readonly Part[]): Markup {
  return { markup: strings.map((text, index) => text + (index < parts.length ? flat(parts[index]) : '')).join('') };
}

/** Markup of our own that holds no text of a draft. */
export const own = (markup: string): Markup => ({ markup });

export const nothing: Markup = { markup: '' };
