/**
 * The bytes of a text in Latin-1; a character beyond U+00FF becomes `?`.
 *
 * @example
 * latin1Bytes('7°').length // => 2
 */
export function latin1Bytes(text: string): Uint8Array {
  return Uint8Array.from(text, (character) => {
    const code = character.codePointAt(0) ?? 0;
    return code <= 0xff ? code : 0x3f;
  });
}

/**
 * The text with everything that cannot be printed shown as `·`, cut to `longest` characters, so that
 * people can be shown what arrived, whatever arrived.
 *
 * @example
 * printable('78.4\u0000') // => "78.4·"
 */
export function printable(text: string, longest = 120): string {
  const shown = text.slice(0, longest).replace(/[^\x20-\x7e\xa1-\xff]/g, '·');
  return text.length > longest ? `${shown}…` : shown;
}

/** How many of the bytes are ASCII text or line ends; a wrong speed makes this fall towards one half. */
export function countTextBytes(bytes: Uint8Array): number {
  let count = 0;
  for (const byte of bytes) {
    if ((byte >= 0x20 && byte <= 0x7e) || byte === 0x0a || byte === 0x0d || byte === 0x09)
      count += 1;
  }
  return count;
}
