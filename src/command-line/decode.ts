/** Bytes of a file as text. Offsets count the byte order mark in, so it is kept. */

export type Decoded = { readonly text: string } | { readonly reason: string };

/** The text of a draft, or the reason why the bytes are not one. */
export function decode(bytes: Uint8Array): Decoded {
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) {
    return { reason: 'it is saved as UTF-16; save it as UTF-8 and try again' };
  }
  if (bytes.includes(0)) return { reason: 'it is not a text file; save the draft as plain text or Markdown' };
  try {
    return { text: new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes) };
  } catch {
    return { reason: `it is not saved as UTF-8 (first seen on line ${faultLine(bytes)}); save it as UTF-8 and try again` };
  }
}

/** Line of the first byte that is not UTF-8: the longest readable beginning ends there. */
function faultLine(bytes: Uint8Array): number {
  let line = 1;
  let start = 0;
  for (let index = 0; index <= bytes.length; index += 1) {
    if (index < bytes.length && bytes[index] !== 0x0a) continue;
    try {
      new TextDecoder('utf-8', { fatal: true }).decode(bytes.subarray(start, index));
    } catch {
      return line;
    }
    line += 1;
    start = index + 1;
  }
  return line;
}
