import { createLineReader, createLineSplitter, type LineOutcome } from '#shared-core';
import type { Talk, TalkWire } from './talk.ts';

/**
 * Silence before the first byte that proves the byte begins a line: the bytes of one line follow
 * each other within milliseconds.
 */
const silenceBeforeLineS = 0.5;
/** A line that stopped in the middle for longer than this was cut off by a restart of the board. */
const longestPauseInLineS = 3;

/** For probes that speak by themselves, one reading or more a line. */
export function createListeningTalk(
  options: Parameters<typeof createLineReader>[0],
  wire: Pick<TalkWire, 'outcomes'>,
): Talk {
  const splitter = createLineSplitter();
  let reader = createLineReader(options);
  let lastByteS = 0;
  let heardAny = false;
  let overlong = 0;

  return {
    opened(atS) {
      splitter.restart();
      reader = createLineReader(options);
      lastByteS = atS;
      heardAny = false;
    },
    receive(bytes, atS) {
      const pauseS = atS - lastByteS;
      if (!heardAny && pauseS >= silenceBeforeLineS) splitter.startOfLine();
      if (splitter.pendingBytes() > 0 && pauseS > longestPauseInLineS) splitter.startOfLine();
      heardAny = true;
      lastByteS = atS;
      const outcomes: LineOutcome[] = splitter.push(bytes).map((line) => reader.read(line));
      const tooLong = splitter.overlongLines() - overlong;
      overlong = splitter.overlongLines();
      for (let index = 0; index < tooLong; index += 1) {
        outcomes.push({ text: '', values: [], rejections: [{ kind: 'too-long' }] });
      }
      if (outcomes.length > 0) wire.outcomes(outcomes, atS);
    },
    tick() {},
    droppedBytes: () => splitter.droppedBytes(),
    identity: () => null,
  };
}
