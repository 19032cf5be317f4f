/** A short mark of a finding that stays the same when rows are inserted above it, so that a service can tell old from new. */

const prime = 0x01000193;

/** FNV-1a over UTF-16 units, two 32-bit halves from different seeds, in 16 hexadecimal digits. */
export function fingerprint(words: readonly string[]): string {
  const text = words.join('\u0000').replace(/\s+/g, ' ');
  return [0x811c9dc5, 0x9747b28c].map((seed) => half(text, seed)).join('');
}

function half(text: string, seed: number): string {
  let hash = seed;
  for (let index = 0; index < text.length; index += 1) hash = Math.imul(hash ^ text.charCodeAt(index), prime);
  return (hash >>> 0).toString(16).padStart(8, '0');
}
