import type { Reading, RunInput } from '#shared-core';

/** The inputs of a long file or run, in a twelfth of the memory that they take as objects: those of readings as bare numbers. */
export interface PackedInputs extends Iterable<RunInput> {
  push(input: RunInput): void;
  count(): number;
  /** At most so many from that one on; fewer only at the end. */
  page(fromIndex: number, most: number): RunInput[];
}

/** What readings of one channel have in common. */
type Kind = Pick<Reading, 'channel' | 'unit' | 'quality'>;

const firstRoom = 4096;

/** Keeps inputs in the order in which they come; each is made anew whenever they are gone through. */
export function createPackedInputs(): PackedInputs {
  const kinds: Kind[] = [];
  const kindNumbers = new Map<string, number>();
  /** What is no reading, by its place. */
  const others = new Map<number, RunInput>();
  let timesS = new Float64Array(firstRoom);
  let values = new Float64Array(firstRoom);
  let kindOf = new Uint16Array(firstRoom);
  let length = 0;

  let lastKind = 0;

  function numberOf({ channel, unit, quality }: Kind): number {
    const last = kinds[lastKind];
    if (last?.channel === channel && last.unit === unit && last.quality === quality)
      return lastKind;
    lastKind = newOrKnown({ channel, unit, quality });
    return lastKind;
  }

  function newOrKnown({ channel, unit, quality }: Kind): number {
    const name = `${channel} ${unit} ${quality}`;
    const known = kindNumbers.get(name);
    if (known !== undefined) return known;
    kindNumbers.set(name, kinds.length);
    return kinds.push({ channel: channel satisfies Reading['channel'], unit, quality }) - 1;
  }

  function makeRoom(): void {
    if (length < timesS.length) return;
    timesS = twice(timesS, new Float64Array(2 * length));
    values = twice(values, new Float64Array(2 * length));
    kindOf = twice(kindOf, new Uint16Array(2 * length));
  }

  function* between(from: number, to: number): Generator<RunInput, void> {
    for (let at = from; at < to; at += 1) {
      const other = others.get(at);
      const kind = kinds[kindOf[at] ?? 0];
      if (other !== undefined) yield other;
      else if (kind !== undefined) {
        const [timeS = 0, value = 0] = [timesS[at], values[at]];
        const { channel, unit, quality } = kind;
        // In the order of every other reading: what is told of a run as it happens and later is the same to the byte.
        yield { kind: 'reading', timeS, channel, value, unit, quality };
      }
    }
  }

  return {
    push(input) {
      makeRoom();
      if (input.kind === 'reading') {
        timesS[length] = input.timeS;
        values[length] = input.value;
        kindOf[length] = numberOf(input);
      } else others.set(length, input);
      length += 1;
    },
    count: () => length,
    page: (fromIndex, most) => [...between(fromIndex, Math.min(length, fromIndex + most))],
    [Symbol.iterator]: () => between(0, length),
  };
}

function twice<A extends Float64Array | Uint16Array>(from: A, into: A): A {
  into.set(from);
  return into;
}
