import { describe, expect, test } from 'vitest';
import { gatherSpans, tallyWarmth, usualWarmthBand, warmthBandSchema } from '#shared-core';

const minute = (atIso: string, meanC: number) => ({
  atIso,
  lowC: meanC - 0.5,
  meanC,
  highC: meanC + 0.5,
  minutes: 1,
});

describe('stretches of a ferment’s warmth', () => {
  test('minutes are gathered by ten, each weighed by what was heard', () => {
    const spans = gatherSpans([
      minute('2026-05-01T08:02:00.000Z', 30),
      minute('2026-05-01T08:09:00.000Z', 31),
      minute('2026-05-01T08:10:00.000Z', 20),
    ]);
    expect(spans).toEqual([
      { atIso: '2026-05-01T08:00:00.000Z', lowC: 29.5, meanC: 30.5, highC: 31.5, minutes: 2 },
      { atIso: '2026-05-01T08:10:00.000Z', lowC: 19.5, meanC: 20, highC: 20.5, minutes: 1 },
    ]);
  });

  test('gathering what is gathered changes nothing', () => {
    const once = gatherSpans([
      minute('2026-05-01T08:02:00.000Z', 30),
      minute('2026-05-01T08:15:00.000Z', 31),
    ]);
    expect(gatherSpans(once)).toEqual(once);
  });

  test('hours are counted below, within and above the band', () => {
    const hour = (atIso: string, meanC: number) => ({ ...minute(atIso, meanC), minutes: 60 });
    expect(
      tallyWarmth(
        [
          hour('2026-05-01T00:00:00.000Z', 20),
          hour('2026-05-01T01:00:00.000Z', 30),
          hour('2026-05-01T02:00:00.000Z', 30),
          hour('2026-05-01T03:00:00.000Z', 36),
        ],
        usualWarmthBand,
      ),
    ).toEqual({
      lowC: 19.5,
      meanC: 29,
      highC: 36.5,
      coldestAtIso: '2026-05-01T00:00:00.000Z',
      hottestAtIso: '2026-05-01T03:00:00.000Z',
      heardH: 4,
      belowH: 1,
      aboveH: 1,
    });
  });

  test('a band whose set-point lies outside it is refused at that field', () => {
    const read = warmthBandSchema.safeParse({ lowC: 25, aimC: 35, highC: 34 });
    expect(read.error?.issues[0]).toMatchObject({ path: ['aimC'] });
  });
});
