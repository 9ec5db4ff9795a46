/** Bytes written as base64, for messages that carry text only. */
export function toBase64(bytes: Uint8Array): string {
  // A call takes only so many arguments.
  const atOnce = 8192;
  const pieces: string[] = [];
  for (let from = 0; from < bytes.length; from += atOnce) {
    pieces.push(String.fromCharCode(...bytes.subarray(from, from + atOnce)));
  }
  return btoa(pieces.join(''));
}

export function fromBase64(text: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(text), (character) => character.charCodeAt(0));
}
