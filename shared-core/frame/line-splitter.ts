/** Longest line a probe may send; anything longer is noise or a wrong speed. */
export const longestLineBytes = 512;

export interface LineSplitter {
  /** Whole lines completed by these bytes, without their ends; empty lines are skipped. */
  push(bytes: Uint8Array): readonly string[];
  /** The next byte starts a line: silence went before it, so nothing of the line was missed. */
  startOfLine(): void;
  /** Forgets a half-heard line; used when the plug was pulled or the sender fell silent in mid-line. */
  restart(): void;
  /** Bytes of the line now being heard. */
  pendingBytes(): number;
  /** Bytes thrown away so far: overlong lines, torn first lines, half lines. */
  droppedBytes(): number;
  /** Lines thrown away because they passed the longest length. */
  overlongLines(): number;
}

const carriageReturn = 0x0d;
const lineFeed = 0x0a;

/**
 * Cuts a byte stream into lines that end in `\r`, `\n` or `\r\n`, wherever the chunks are torn.
 *
 * Memory stays bounded: a line longer than `longestBytes` is dropped and hearing resumes after its
 * end. The first line is dropped too unless {@link LineSplitter.startOfLine} was called, because a
 * listener that joins in mid-line would take `8.42` out of `78.42`. Bytes are read as Latin-1, so no
 * byte can swallow its neighbour.
 *
 * @example
 * createLineSplitter().push(latin1Bytes('8.42\r\nT=78.50\r78.5')) // => ["T=78.50"]
 */
export function createLineSplitter(longestBytes: number = longestLineBytes): LineSplitter {
  let line = '';
  let skipping = true;
  let droppedBytes = 0;
  let overlongLines = 0;

  function take(byte: number): string | undefined {
    // Between the two bytes of `\r\n` stands an empty line, and empty lines are skipped.
    if (byte === carriageReturn || byte === lineFeed) {
      const whole = line;
      const keep = !skipping && whole !== '';
      line = '';
      skipping = false;
      return keep ? whole : undefined;
    }
    if (skipping) {
      droppedBytes += 1;
    } else if (line.length >= longestBytes) {
      droppedBytes += line.length + 1;
      overlongLines += 1;
      line = '';
      skipping = true;
    } else {
      line += String.fromCharCode(byte);
    }
    return undefined;
  }

  return {
    push(bytes) {
      const lines: string[] = [];
      for (const byte of bytes) {
        const whole = take(byte);
        if (whole !== undefined) lines.push(whole);
      }
      return lines;
    },
    startOfLine() {
      droppedBytes += line.length;
      line = '';
      skipping = false;
    },
    restart() {
      droppedBytes += line.length;
      line = '';
      skipping = true;
    },
    pendingBytes: () => line.length,
    droppedBytes: () => droppedBytes,
    overlongLines: () => overlongLines,
  };
}
