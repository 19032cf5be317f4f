/** A page with a part for every draft of a run: title, list of the drafts, what could not be read, the parts, the foot. */
import type { Unreadable } from '../input.ts';
import { plural } from '../plural.ts';
import type { Assembly, Digest, Run } from '../report.ts';
import { html, type Markup, nothing } from './markup.ts';
import { page } from './page.ts';

/** A draft on the page, with the id its part begins with. */
export interface Listed {
  readonly id: string;
  readonly digest: Digest;
}

export interface Words {
  title(name: string): string;
  /** `name` is that of the only draft, or "12 drafts". */
  heading(name: string, one: boolean): string;
  list(listed: readonly Listed[]): Markup;
  readonly foot: string;
}

/** The list of drafts stands above them, so nothing can be written before the last one is there. */
export function pageOfDrafts({ tool, drafts }: Run, words: Words): Assembly<Markup | null> {
  const listed: Listed[] = [];
  const parts: Markup[] = [];
  let index = -1;
  return {
    add(part, digest) {
      index += 1;
      if (part === null) return '';
      listed.push({ id: `d${index}`, digest });
      parts.push(part);
      return '';
    },
    end(unreadable) {
      const one = drafts === 1;
      const name = one || listed.length === 1 ? (listed[0]?.digest.name ?? 'No draft') : plural(listed.length, 'draft');
      const head = html`<header><h1>${words.heading(name, one)}</h1>
${one ? nothing : words.list(listed)}${unreadableList(unreadable)}</header>
<main id="main">`;
      const foot = html`</main>
<footer>${tool.name} ${tool.version}. ${words.foot}</footer>`;
      return page({ title: words.title(name), body: [head, ...parts, foot] });
    },
  };
}

export const plainList = (listed: readonly Listed[]): Markup =>
  html`<nav aria-label="Drafts"><ul>${listed.map(({ id, digest }) => html`<li><a href="#${id}">${digest.name}</a></li>`)}</ul></nav>`;

function unreadableList(unreadable: readonly Unreadable[]): Markup {
  if (unreadable.length === 0) return nothing;
  return html`<section aria-labelledby="unreadable"><h2 id="unreadable">Drafts that could not be read</h2><ul>${unreadable.map((draft) => html`<li>${draft.sentence}</li>`)}</ul></section>`;
}
