/** A run that cannot be made ends with one clear sentence on standard error and exit status 2. */

const stops = new WeakSet<Error>();

/** An error to throw: its message is the sentence the person reads. */
export function stop(sentence: string): Error {
  const error = new Error(sentence);
  stops.add(error);
  return error;
}

export function isStop(error: unknown): error is Error {
  return error instanceof Error && stops.has(error);
}

/** For what nobody foresaw: one sentence and no trace of the program's inside. */
export function unforeseenSentence(error: unknown): string {
  const words = (error instanceof Error ? error.message : String(error)).split('\n')[0]?.trim() || 'no reason was given';
  return `rowproof stopped: ${words.replace(/[.\s]+$/, '')}. Please report this, with the draft if you may.`;
}

/** Why a file could not be opened, in plain words; null where the system gave no reason this knows. */
export function fileReason(error: unknown): string | null {
  const code = (error as NodeJS.ErrnoException | null)?.code ?? '';
  return reasons[code] ?? null;
}

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file or folder',
  ENOTDIR: 'a part of that path is a file, not a folder',
  EACCES: 'this account may not open it',
  EPERM: 'this account may not open it',
  EISDIR: 'it is a folder, not a file',
  ELOOP: 'its links lead in a circle',
  EMFILE: 'too many files are open',
  ENOSPC: 'the disk is full',
  EROFS: 'the disk may only be read',
  ENAMETOOLONG: 'its name is too long',
  ERR_FS_FILE_TOO_LARGE: 'it is larger than 2 GB',
};
