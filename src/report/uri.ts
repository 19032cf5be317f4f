/** Paths as the relative, percent-encoded URIs that SARIF asks for. */

/** A lone half of a surrogate pair has no encoding; it is shown as the replacement character. */
const loneHalf = /[\ud800-\udfff]/gu;

/**
 * The URI of a draft, relative where it can be: `drafts/Gull socks.md` is `drafts/Gull%20socks.md`. `base` is the folder
 * the run was started in, as an absolute path; an absolute path below it becomes relative, any other a `file:` URI.
 */
export function draftUri(path: string, base: string): string {
  if (path === '-' || path === '') return 'standard-input';
  const slashed = slashes(path);
  const root = slashes(base).endsWith('/') ? slashes(base) : `${slashes(base)}/`;
  const relative = root !== '/' && slashed.startsWith(root) ? slashed.slice(root.length) : slashed;
  const encoded = relative
    .split('/')
    .filter((part, index) => part !== '.' && (part !== '' || index === 0))
    .map((part) => encodeURIComponent(part.replace(loneHalf, '\ufffd')))
    .join('/');
  if (encoded.startsWith('/')) return `file://${encoded}`;
  return /^[A-Za-z]%3A\//.test(encoded) ? `file:///${encoded.replace('%3A', ':')}` : encoded;
}

/** A backslash parts folders only in a path that has a drive letter or no slash of its own. */
function slashes(path: string): string {
  return /^[A-Za-z]:\\/.test(path) ? path.replaceAll('\\', '/') : path;
}
