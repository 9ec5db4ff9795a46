import { describe, expect, test } from 'vitest';
import { matchPaints } from '../../../scripts/measuring/match-paints.ts';

/** Ten numbers a second that go round, as the measuring probe sends them. */
const sent = Array.from({ length: 40 }, (_, index) => ({
  text: `7${index % 10}`,
  atMs: index * 100,
}));

describe('matchPaints', () => {
  test('each number is the reading of that text that follows the last one shown', () => {
    const painted = sent.map(({ text, atMs }) => ({ text, atMs: atMs + 33 }));
    expect(matchPaints(sent, painted)).toEqual({
      readings: sent.map(({ atMs }) => ({ sentMs: atMs, shownMs: atMs + 33, overtaken: false })),
      unexplained: 0,
      longestPauseMs: 100,
    });
  });

  test('a reading that a later one overtook counts until the later one was shown', () => {
    const painted = [
      { text: '70', atMs: 20 },
      { text: '73', atMs: 320 },
    ];
    expect(matchPaints(sent, painted).readings).toEqual([
      { sentMs: 0, shownMs: 20, overtaken: false },
      { sentMs: 100, shownMs: 320, overtaken: true },
      { sentMs: 200, shownMs: 320, overtaken: true },
      { sentMs: 300, shownMs: 320, overtaken: false },
    ]);
  });

  test('after a standstill of a whole round the number is the newest reading of that text', () => {
    const painted = [
      { text: '70', atMs: 20 },
      { text: '75', atMs: 1590 },
      { text: '76', atMs: 1640 },
    ];
    const { readings, longestPauseMs } = matchPaints(sent, painted);
    expect([readings.length, readings.at(-1), longestPauseMs]).toEqual([
      17,
      { sentMs: 1600, shownMs: 1640, overtaken: false },
      1570,
    ]);
  });

  test('a number that was never sent, or not yet, is told apart', () => {
    const painted = [
      { text: '90', atMs: 20 },
      { text: '75', atMs: 30 },
    ];
    expect(matchPaints(sent, painted)).toMatchObject({ readings: [], unexplained: 2 });
  });
});
