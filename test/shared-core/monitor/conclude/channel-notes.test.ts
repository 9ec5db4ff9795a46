import { describe, expect, test } from 'vitest';
import { createChannelNotes } from '../../../../shared-core/monitor/conclude/channel-notes.ts';
import { createConclusionLog } from '../../../../shared-core/monitor/conclusion-log.ts';

const notes = () => {
  const log = createConclusionLog('Begins.');
  return { ...createChannelNotes(log), kept: () => log.parts().problems };
};

describe('what is wrong with channels beside the head', () => {
  test('stands while it is so, and stays in the log with its end', () => {
    const { noteTurn, open, kept } = notes();
    noteTurn({ channel: 'pot', isSilent: true, lastS: 500 }, 516);
    noteTurn({ channel: 'condenser', isSilent: true, lastS: 610 }, 626);
    expect(open().map(({ fromS }) => fromS)).toEqual([500, 610]);
    expect(open()[0]?.problem).toContain('The channel pot has sent nothing since 0:08:20');
    noteTurn({ channel: 'pot', isSilent: false, lastS: 700 }, 700);
    expect(open().map(({ fromS }) => fromS)).toEqual([610]);
    expect(kept().map(({ fromS, toS }) => [fromS, toS])).toEqual([
      [500, 700],
      [610, null],
    ]);
  });

  test('is told anew when it comes again', () => {
    const { noteTurn, open, kept } = notes();
    for (const [isSilent, lastS] of [
      [true, 500],
      [false, 700],
      [true, 900],
    ] as const) {
      noteTurn({ channel: 'pot', isSilent, lastS }, lastS + 16);
    }
    expect(open().map(({ fromS }) => fromS)).toEqual([900]);
    expect(kept()).toHaveLength(2);
  });

  test('a barometer may contradict and be silent, and each ends by itself', () => {
    const { noteTurn, notePressure, open } = notes();
    const difference = { sinceS: 100, shownKPa: 98.04, reckonedKPa: 101.3 };
    notePressure(difference, 160);
    notePressure(difference, 161);
    noteTurn({ channel: 'air-pressure', isSilent: true, lastS: 200 }, 216);
    expect(open().map(({ fromS }) => fromS)).toEqual([100, 200]);
    expect(open()[0]?.problem).toContain('shows 98.0 kPa, and the limit is reckoned by 101.3 kPa');
    notePressure(null, 280);
    expect(open().map(({ fromS }) => fromS)).toEqual([200]);
  });

  test('another probe in the head is told from when it is there, anew for each, and stays', () => {
    const { noteOtherProbe, open, kept } = notes();
    for (const sinceS of [null, 1200, 1200, 1800]) noteOtherProbe(sinceS);
    expect(open()).toEqual([
      { fromS: 1800, problem: expect.stringMatching(/^Since 0:30:00 another probe is read/) },
    ]);
    expect(kept().map(({ fromS, toS }) => [fromS, toS])).toEqual([
      [1200, 1800],
      [1800, null],
    ]);
  });
});
