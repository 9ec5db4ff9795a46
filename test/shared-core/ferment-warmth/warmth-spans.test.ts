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

  test('stretches stand in the order in which they begin, and a long minute weighs more', () => {
    const long = { ...minute('2026-05-01T08:01:00.000Z', 24), minutes: 3 };
    expect(
      gatherSpans([
        minute('2026-05-01T08:31:00.000Z', 20),
        long,
        minute('2026-05-01T08:05:00.000Z', 32),
        minute('2026-05-01T08:11:00.000Z', 22),
      ]),
    ).toEqual([
      // (3 · 24 + 32)/4 = 26.
      { atIso: '2026-05-01T08:00:00.000Z', lowC: 23.5, meanC: 26, highC: 32.5, minutes: 4 },
      { atIso: '2026-05-01T08:10:00.000Z', lowC: 21.5, meanC: 22, highC: 22.5, minutes: 1 },
      { atIso: '2026-05-01T08:30:00.000Z', lowC: 19.5, meanC: 20, highC: 20.5, minutes: 1 },
    ]);
  });

  test('it is the same which of two minutes of a stretch comes first', () => {
    const [long, short] = [
      { ...minute('2026-05-01T08:01:00.000Z', 24), minutes: 3 },
      minute('2026-05-01T08:05:00.000Z', 32),
    ];
    expect(gatherSpans([short, long])).toEqual(gatherSpans([long, short]));
  });

  test('the coldest and the hottest are the first of their kind, wherever they stand, and an hour weighs as an hour', () => {
    const at = (hour: number, meanC: number, minutes: number) => ({
      ...minute(`2026-05-01T0${hour}:00:00.000Z`, meanC),
      minutes,
    });
    expect(
      tallyWarmth(
        [at(0, 30, 10), at(1, 36, 20), at(2, 20, 40), at(3, 36, 20), at(4, 20, 10)],
        usualWarmthBand,
      ),
    ).toEqual({
      lowC: 19.5,
      meanC: (300 + 720 + 800 + 720 + 200) / 100,
      highC: 36.5,
      coldestAtIso: '2026-05-01T02:00:00.000Z',
      hottestAtIso: '2026-05-01T01:00:00.000Z',
      heardH: 100 / 60,
      belowH: 50 / 60,
      aboveH: 40 / 60,
    });
    expect(tallyWarmth([at(0, 25, 5), at(1, 34, 5)], usualWarmthBand)).toMatchObject({
      belowH: 0,
      aboveH: 0,
    });
    expect(tallyWarmth([], usualWarmthBand)).toBeNull();
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
    const isTaken = (lowC: number, aimC: number, highC: number) =>
      warmthBandSchema.safeParse({ lowC, aimC, highC }).success;
    expect([
      isTaken(25, 30, 34),
      isTaken(30, 30, 34),
      isTaken(25, 34, 34),
      isTaken(0, 20, 45),
      isTaken(-1, 20, 45),
    ]).toEqual([true, false, false, true, false]);
    expect(
      warmthBandSchema.safeParse({ lowC: 25, aimC: 30, highC: 46 }).error?.issues,
    ).toMatchObject([{ path: ['highC'], message: 'An upper end from 0 to 45 °C, please' }]);
  });
});
