/** Bytes of a file that grows at its end and can be cut. */
export interface GrowingBytes {
  length(): number;
  append(bytes: Uint8Array): void;
  /** A copy of that stretch, as far as there is one. */
  slice(from?: number, to?: number): Uint8Array;
  cut(length: number): void;
}

export function createGrowingBytes(first: Uint8Array = new Uint8Array()): GrowingBytes {
  let held = first.slice();
  let length = first.length;
  return {
    length: () => length,
    append(bytes) {
      if (length + bytes.length > held.length) {
        const roomier = new Uint8Array(Math.max(1024, 2 * (length + bytes.length)));
        roomier.set(held.subarray(0, length));
        held = roomier;
      }
      held.set(bytes, length);
      length += bytes.length;
    },
    slice: (from = 0, to = length) => held.slice(from, Math.min(to, length)),
    cut(to) {
      length = Math.min(length, to);
    },
  };
}
