/** Names as the Encoding Standard's decoders take them. */
export type TextEncodingName = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';

/**
 * In which encoding a logger wrote its text: UTF-8 or UTF-16 by its mark or by every second byte being zero, else
 * UTF-8 if the bytes are valid as such, else Windows-1252.
 *
 * @param bytes the beginning or the whole of a file; a character cut off at the end does no harm
 *
 * Source: Encoding Standard (WHATWG), byte order marks and names; the guess itself: common practice, no source.
 * @example
 * detectEncoding([0xff, 0xfe, 0x41, 0x00]) // => "utf-16le"
 * detectEncoding([0xb0, 0x43]) // => "windows-1252"
 * detectEncoding([0xc2, 0xb0, 0x43]) // => "utf-8"
 */
export function detectEncoding(bytes: ArrayLike<number>): TextEncodingName {
  const [first, second] = [bytes[0], bytes[1]];
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  if (first === 0xfe && second === 0xff) return 'utf-16be';
  return unmarkedUtf16(bytes) ?? (isUtf8(bytes) ? 'utf-8' : 'windows-1252');
}

/** Western text in UTF-16 without a mark: among its first bytes nearly every second one is zero. */
function unmarkedUtf16(bytes: ArrayLike<number>): 'utf-16le' | 'utf-16be' | null {
  const length = Math.min(512, bytes.length);
  let [even, odd] = [0, 0];
  for (let index = 0; index < length; index++) {
    if (bytes[index] !== 0) continue;
    if (index % 2 === 0) even += 1;
    else odd += 1;
  }
  const most = 0.4 * length;
  if (length < 8 || Math.min(even, odd) > 0.02 * length) return null;
  if (odd > most) return 'utf-16le';
  return even > most ? 'utf-16be' : null;
}

/** Well-formed by table 3-7 of the Unicode Standard; what is cut off at the end counts as well-formed. */
function isUtf8(bytes: ArrayLike<number>): boolean {
  for (let index = 0; index < bytes.length; index++) {
    const lead = bytes[index] ?? 0;
    if (lead < 0x80) continue;
    const followers = lead < 0xc2 ? -1 : lead < 0xe0 ? 1 : lead < 0xf0 ? 2 : lead < 0xf5 ? 3 : -1;
    if (followers === -1) return false;
    for (let step = 1; step <= followers; step++) {
      const byte = bytes[index + step];
      if (byte === undefined) return true;
      const [low, high] = step === 1 ? secondByteRange(lead) : [0x80, 0xbf];
      if (byte < low || byte > high) return false;
    }
    index += followers;
  }
  return true;
}

/** No overlong forms, no surrogates, nothing beyond U+10FFFF. */
function secondByteRange(lead: number): readonly [number, number] {
  if (lead === 0xe0) return [0xa0, 0xbf];
  if (lead === 0xed) return [0x80, 0x9f];
  if (lead === 0xf0) return [0x90, 0xbf];
  if (lead === 0xf4) return [0x80, 0x8f];
  return [0x80, 0xbf];
}
