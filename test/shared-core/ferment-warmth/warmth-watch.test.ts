import { describe, expect, test } from 'vitest';
import { createWarmthWatch } from '#shared-core';
import { diesFromC } from '../../../shared-core/ferment-warmth/warmth-alarms.ts';

const band = { lowC: 25, aimC: 30, highC: 34 };
const minuteMs = 60_000;
const iso = (minute: number) => new Date(minute * minuteMs).toISOString();
const minuteAt = (minute: number, meanC: number) => ({
  atIso: iso(minute),
  lowC: meanC,
  meanC,
  highC: meanC,
  minutes: 1,
});

/** A watch that has heard so many minutes of each temperature, one after the other. */
function heard(...stretches: readonly (readonly [minutes: number, meanC: number])[]) {
  const watch = createWarmthWatch(band, 0);
  let minute = 0;
  for (const [minutes, meanC] of stretches) {
    for (const end = minute + minutes; minute < end; minute += 1)
      watch.see(minuteAt(minute, meanC));
  }
  return watch;
}
const standing = (watch: ReturnType<typeof heard>) =>
  watch.now().standing.map(({ alarm, sinceIso }) => `${alarm} since ${sinceIso.slice(11, 16)}`);

describe('a ferment that is kept warm', () => {
  test('within its band nothing is said, and its last minute is told', () => {
    const watch = heard([90, 30.25]);
    expect(watch.now()).toEqual({
      temperatureC: 30.25,
      heardAtIso: iso(90),
      ratePerH: 0,
      standing: [],
    });
  });

  test('cold counts from its first minute, but is told after thirty', () => {
    expect(standing(heard([60, 30], [29, 24]))).toEqual([]);
    expect(standing(heard([60, 30], [30, 24]))).toEqual(['cold since 01:00']);
  });

  test('a lid that was lifted for ten minutes is no alarm', () => {
    expect(standing(heard([60, 30], [10, 20], [60, 30]))).toEqual([]);
  });

  test('it goes when it has been warm again for five minutes, by more than a third of a kelvin', () => {
    expect(standing(heard([40, 24], [4, 26]))).toEqual(['cold since 00:00']);
    expect(standing(heard([40, 24], [6, 26]))).toEqual([]);
    expect(standing(heard([40, 24], [60, 25.2]))).toEqual(['cold since 00:00']);
  });

  test('too warm is told after a quarter of an hour, far too hot after three minutes and alone', () => {
    expect(standing(heard([15, 34.5]))).toEqual(['hot since 00:00']);
    expect(standing(heard([3, diesFromC + 1]))).toEqual(['too-hot since 00:00']);
    expect(standing(heard([30, diesFromC + 1]))).toEqual(['too-hot since 00:00']);
  });

  test('ten minutes without a word are told, with the moment of the last one', () => {
    const watch = heard([60, 30]);
    watch.advanceTo(69 * minuteMs);
    expect(standing(watch)).toEqual([]);
    watch.advanceTo(70 * minuteMs);
    expect(standing(watch)).toEqual(['unheard since 01:00']);
    expect(watch.now().heardAtIso).toBe(iso(60));
  });

  test('a gap that is only read afterwards is told as well, until it has been heard for five minutes', () => {
    const watch = heard([60, 30]);
    watch.see(minuteAt(120, 30));
    expect(standing(watch)).toEqual(['unheard since 01:00']);
    for (let minute = 121; minute < 127; minute += 1) watch.see(minuteAt(minute, 30));
    expect(standing(watch)).toEqual([]);
  });

  test('one that was never heard is told of too', () => {
    const watch = createWarmthWatch(band, 0);
    watch.advanceTo(10 * minuteMs);
    expect(standing(watch)).toEqual(['unheard since 00:00']);
    expect(watch.now()).toMatchObject({ temperatureC: null, heardAtIso: null, ratePerH: null });
  });

  test('a clock that was put back changes nothing that is known', () => {
    const watch = heard([60, 30]);
    const before = watch.now();
    watch.see(minuteAt(10, 99));
    watch.advanceTo(5 * minuteMs);
    expect(watch.now()).toEqual(before);
  });

  test('silence counts only once it is longer than a minute, from what was heard last', () => {
    const watch = heard([60, 30]);
    for (let minute = 61; minute <= 69; minute += 1) {
      watch.advanceTo(minute * minuteMs);
      watch.see(minuteAt(minute, 30));
      watch.advanceTo((minute + 2) * minuteMs);
    }
    expect(standing(watch)).toEqual([]);
    expect(watch.now().heardAtIso).toBe(iso(70));
    const joined = createWarmthWatch(band, 0);
    for (let minute = 0; minute < 60; minute += 2) joined.see(minuteAt(minute, 30));
    joined.advanceTo(61 * minuteMs);
    expect(standing(joined)).toEqual([]);
  });

  test('a minute that begins just as long after the last as it lasts itself is no gap; a longer wait is one', () => {
    const saidAfter = (gapMin: number) => {
      const watch = heard([60, 30]);
      watch.see({ ...minuteAt(60 + gapMin, 30), minutes: 1 });
      watch.see(minuteAt(61 + gapMin, 30));
      return standing(watch);
    };
    expect([saidAfter(0), saidAfter(1), saidAfter(9)]).toEqual([[], [], []]);
    expect(saidAfter(10)).toEqual(['unheard since 01:00']);
  });

  test('minutes that were heard twice count once', () => {
    const watch = heard([29, 24]);
    watch.see(minuteAt(28, 24));
    watch.see(minuteAt(27, 99));
    expect(watch.now()).toMatchObject({ temperatureC: 24, heardAtIso: iso(29), standing: [] });
    watch.see(minuteAt(29, 24));
    expect(standing(watch)).toEqual(['cold since 00:00']);
  });

  test('within a third of a kelvin of the end it stays as it stands: hot and far too hot as cold', () => {
    expect(standing(heard([20, 34.5], [60, 33.8]))).toEqual(['hot since 00:00']);
    expect(standing(heard([20, 34.5], [60, 33.6]))).toEqual([]);
    expect(standing(heard([60, 33.8]))).toEqual([]);
    expect(standing(heard([4, diesFromC + 0.1], [60, diesFromC - 0.2]))).toEqual([
      'too-hot since 00:00',
    ]);
    expect(standing(heard([4, diesFromC + 0.1], [60, diesFromC - 0.4]))).toEqual([
      'hot since 00:00',
    ]);
    expect(standing(heard([60, 25], [60, 34]))).toEqual([]);
  });

  test('where the band reaches further than yeast lives, far too hot begins at its end', () => {
    const watch = createWarmthWatch({ lowC: 25, aimC: 35, highC: 41 }, 0);
    for (let minute = 0; minute < 60; minute += 1) watch.see(minuteAt(minute, 40));
    expect(standing(watch)).toEqual([]);
    for (let minute = 60; minute < 64; minute += 1) watch.see(minuteAt(minute, 42));
    expect(standing(watch)).toEqual(['too-hot since 01:00']);
  });

  test('no rate is told before a quarter of an hour was heard, and none of what lies further back than twenty minutes', () => {
    const rising = (minutes: number) => {
      const watch = createWarmthWatch(band, 0);
      for (let minute = 0; minute < minutes; minute += 1)
        watch.see(minuteAt(minute, 25 + minute / 60));
      return watch.now().ratePerH;
    };
    expect(rising(0)).toBeNull();
    expect(rising(15)).toBeNull();
    expect(rising(16)).toBeCloseTo(1, 9);
    const bent = createWarmthWatch(band, 0);
    for (let minute = 0; minute <= 60; minute += 1) {
      bent.see(minuteAt(minute, minute <= 40 ? 29 : minute === 41 ? 25 : 30));
    }
    // From minute 40 to minute 60: from 29 to 30 °C in 20 minutes.
    expect(bent.now().ratePerH).toBeCloseTo(3, 9);
  });

  test('the rate is that of the last twenty minutes', () => {
    const watch = createWarmthWatch(band, 0);
    for (let minute = 0; minute < 120; minute += 1) {
      watch.see(minuteAt(minute, minute < 100 ? 25 : 25 + (minute - 99) / 30));
    }
    expect(watch.now().ratePerH).toBeCloseTo(2, 6);
  });

  test('what was recorded and what is heard lead to the same', () => {
    const minutes = Array.from({ length: 600 }, (_, minute) =>
      minuteAt(minute, 29 + 7 * Math.sin(minute / 90)),
    );
    const live = createWarmthWatch(band, 0);
    for (const minute of minutes) {
      live.see(minute);
      live.advanceTo(Date.parse(minute.atIso) + minuteMs);
    }
    const again = createWarmthWatch(band, 0);
    for (const minute of minutes) again.see(minute);
    expect(again.now()).toEqual(live.now());
  });
});
