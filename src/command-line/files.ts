/** Which drafts a run is about, and their text. Nothing is ever written here. */
import { lstatSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Unreadable } from '../report/input.ts';
import { decode } from './decode.ts';
import { fileReason } from './stop.ts';

/** A draft to be read; `-` is standard input. */
export interface DraftFile {
  /** As printed in reports: as given, or the given folder and the way below it. */
  readonly path: string;
  /** Absolute; null for standard input. */
  readonly absolute: string | null;
}

export interface DraftText extends DraftFile {
  readonly source: string;
}

/** Folders in which nobody keeps drafts. */
const passedOver = new Set(['node_modules', '.git']);

/** Files first named come first; what a folder holds comes in the order of the bytes of its path; a draft named twice is read once. */
export function findDrafts(
  given: readonly string[],
  folder: string,
): { readonly drafts: readonly DraftFile[]; readonly unreadable: readonly Unreadable[] } {
  const drafts = new Map<string, DraftFile>();
  const unreadable: Unreadable[] = [];
  const keep = (draft: DraftFile) => {
    const key = draft.absolute ?? '-';
    if (!drafts.has(key)) drafts.set(key, draft);
  };
  for (const path of given) {
    if (path === '-') {
      keep({ path, absolute: null });
      continue;
    }
    const absolute = resolve(folder, path);
    try {
      if (!statSync(absolute).isDirectory()) {
        keep({ path, absolute });
        continue;
      }
      const below = draftsBelow(absolute);
      if (below.length === 0)
        unreadable.push({ path, sentence: `${path}: no draft was found in this folder; drafts are files that end in .md.` });
      for (const way of below) keep({ path: joined(path, way), absolute: resolve(absolute, way) });
    } catch (error) {
      unreadable.push({ path, sentence: unreadableSentence(path, error) });
    }
  }
  return { drafts: [...drafts.values()], unreadable };
}

function joined(folder: string, way: string): string {
  const base = folder.replace(/[/\\]+$/, '');
  if (base === '') return folder === '' ? way : `/${way}`;
  return base === '.' ? way : `${base}/${way}`;
}

/** Every `*.md` below a folder, as ways from it with forward slashes. Links to folders are not followed, so no circle is walked. */
function draftsBelow(top: string): readonly string[] {
  const found: string[] = [];
  const open: string[] = [''];
  for (let way = open.pop(); way !== undefined; way = open.pop()) {
    for (const each of readdirSync(resolve(top, way), { withFileTypes: true })) {
      const next = way === '' ? each.name : `${way}/${each.name}`;
      if (each.isDirectory()) {
        if (!passedOver.has(each.name)) open.push(next);
      } else if (/\.md$/i.test(each.name) && (each.isFile() || (each.isSymbolicLink() && leadsToFile(resolve(top, next)))))
        found.push(next);
    }
  }
  return found.sort((a, b) => Buffer.compare(Buffer.from(a), Buffer.from(b)));
}

function leadsToFile(absolute: string): boolean {
  try {
    return statSync(absolute).isFile();
  } catch {
    // A link that leads nowhere is named when it is read, not passed over.
    return lstatSync(absolute).isSymbolicLink();
  }
}

function unreadableSentence(path: string, error: unknown): string {
  const reason = fileReason(error) ?? 'it could not be read';
  return `${path}: ${reason}.`;
}

const noInput = async (): Promise<Uint8Array> => new Uint8Array();

/** The text of one draft, or one sentence why it cannot be read; `input` is everything on standard input. */
export async function readDraft(draft: DraftFile, input: () => Promise<Uint8Array> = noInput): Promise<DraftText | Unreadable> {
  try {
    const bytes = draft.absolute === null ? await input() : readFileSync(draft.absolute);
    const decoded = decode(bytes);
    if ('text' in decoded) return { ...draft, source: decoded.text };
    const name = draft.absolute === null ? 'standard input' : draft.path;
    return { path: draft.path, sentence: `${name}: ${decoded.reason}.` };
  } catch (error) {
    return { path: draft.path, sentence: unreadableSentence(draft.path, error) };
  }
}
