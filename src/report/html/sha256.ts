/** SHA-256 (FIPS 180-4) in base64, for the policy that lets a page run its own script and nothing else. Browsers have it only as a promise. */

const round: readonly number[] = firstPrimes(64).map((prime) => fraction(Math.cbrt(prime)));
const start: readonly number[] = firstPrimes(8).map((prime) => fraction(Math.sqrt(prime)));

function firstPrimes(count: number): number[] {
  const primes: number[] = [];
  for (let candidate = 2; primes.length < count; candidate += 1)
    if (primes.every((prime) => candidate % prime !== 0)) primes.push(candidate);
  return primes;
}

/** The first 32 bits behind the point. */
function fraction(value: number): number {
  return Math.floor((value - Math.floor(value)) * 0x100000000) | 0;
}

const turn = (word: number, by: number) => (word >>> by) | (word << (32 - by));

export function sha256Base64(text: string): string {
  const bytes = new TextEncoder().encode(text);
  const blocks = Math.ceil((bytes.length + 9) / 64);
  const message = new Uint8Array(blocks * 64);
  message.set(bytes);
  message[bytes.length] = 0x80;
  const view = new DataView(message.buffer);
  view.setUint32(message.length - 8, Math.floor((bytes.length * 8) / 0x100000000));
  view.setUint32(message.length - 4, (bytes.length * 8) >>> 0);
  const hash = start.slice();
  const words = new Int32Array(64);
  for (let block = 0; block < blocks; block += 1) {
    for (let index = 0; index < 16; index += 1) words[index] = view.getInt32(block * 64 + index * 4);
    for (let index = 16; index < 64; index += 1) {
      const a = words[index - 15] as number;
      const b = words[index - 2] as number;
      const s0 = turn(a, 7) ^ turn(a, 18) ^ (a >>> 3);
      const s1 = turn(b, 17) ^ turn(b, 19) ^ (b >>> 10);
      words[index] = ((words[index - 16] as number) + s0 + (words[index - 7] as number) + s1) | 0;
    }
    let [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = hash;
    for (let index = 0; index < 64; index += 1) {
      const one =
        (h + (turn(e, 6) ^ turn(e, 11) ^ turn(e, 25)) + ((e & f) ^ (~e & g)) + (round[index] as number) + (words[index] as number)) | 0;
      const two = ((turn(a, 2) ^ turn(a, 13) ^ turn(a, 22)) + ((a & b) ^ (a & c) ^ (b & c))) | 0;
      [h, g, f, e, d, c, b, a] = [g, f, e, (d + one) | 0, c, b, a, (one + two) | 0];
    }
    for (const [index, value] of [a, b, c, d, e, f, g, h].entries()) hash[index] = ((hash[index] as number) + value) | 0;
  }
  return base64(hash.flatMap((word) => [word >>> 24, (word >>> 16) & 255, (word >>> 8) & 255, word & 255]));
}

const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';

function base64(bytes: readonly number[]): string {
  let out = '';
  for (let index = 0; index < bytes.length; index += 3) {
    const [a = 0, b, c] = bytes.slice(index, index + 3);
    const word = (a << 16) | ((b ?? 0) << 8) | (c ?? 0);
    out +=
      (letters[word >>> 18] ?? '') +
      (letters[(word >>> 12) & 63] ?? '') +
      (b === undefined ? '=' : (letters[(word >>> 6) & 63] ?? '')) +
      (c === undefined ? '=' : (letters[word & 63] ?? ''));
  }
  return out;
}
