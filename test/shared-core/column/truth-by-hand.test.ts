import { describe, expect, test } from 'vitest';
import type { BatchState } from '../../../shared-core/column/batch-state.ts';
import { truthMarkers } from '../../../shared-core/column/truth-markers.ts';

/** What the markers are read off, by hand: minute by minute. */
function samplesOf(
  ...minutes: readonly (readonly [
    bathed: number,
    strengthAbv: number,
    headC: number,
    more?: Partial<BatchState>,
  ])[]
): readonly BatchState[] {
  return minutes.map(
    ([bathedFraction, headVapourStrengthAbv, headVapourTemperatureC, more], at) => ({
      timeS: 60 * at,
      bathedFraction,
      headVapourStrengthAbv,
      headVapourTemperatureC,
      distillateVolumeMl: at,
      potVolumeMl: 100 - at,
      aboveLimitMl: 2 * at,
      belowLimitMl: at,
      ...more,
    }),
  ) as unknown as readonly BatchState[];
}

const dry = [0, 0, 20] as const;
const strong = [1, 90, 78.5] as const;
const weak = [1, 70, 85] as const;

describe('the truth of a run', () => {
  test('is read off its samples', () => {
    const samples = samplesOf(dry, [0.95, 92, 78.2], strong, strong, strong, weak, weak);
    expect(truthMarkers(samples, 80)).toEqual({
      vapourArrivalS: 60,
      firstDropS: 60,
      // 78.2 °C is more than 0.15 K from the next: the head holds from the minute after.
      plateauStartS: 120,
      plateauLeftS: null,
      limitReachedS: 300,
      strongestAbv: 92,
      strongestS: 60,
      aboveLimitMl: 12,
      belowLimitMl: 6,
      nearDryS: null,
    });
  });

  test('of a run without vapour, or without a sample, is nothing', () => {
    const nothing = {
      vapourArrivalS: null,
      plateauStartS: null,
      plateauLeftS: null,
      limitReachedS: null,
      strongestAbv: null,
      strongestS: null,
      nearDryS: null,
    };
    expect(truthMarkers(samplesOf(dry, [0.94, 90, 78]), 80)).toMatchObject(nothing);
    expect(truthMarkers([], 80)).toEqual({
      ...nothing,
      firstDropS: null,
      aboveLimitMl: 0,
      belowLimitMl: 0,
    });
  });

  test('has a plateau that is left 0.3 K above its lowest after five minutes, by what is bathed', () => {
    const plateau = Array.from({ length: 8 }, () => strong);
    const risen = (headC: number) => [1, 88, headC] as const;
    const left = (...after: readonly (readonly [number, number, number])[]) =>
      truthMarkers(samplesOf(...plateau, ...after), 80).plateauLeftS;
    expect([
      left(risen(78.79)),
      left(risen(78.81)),
      left(risen(78.81), strong),
      left([0.5, 88, 90], risen(78.81)),
      left([0.5, 88, 90]),
    ]).toEqual([null, 480, null, 540, null]);
  });

  test('knows no lowest from the first five minutes, in which light volatiles come', () => {
    const low = [1, 94, 77.9] as const;
    const samples = samplesOf(low, low, strong, strong, strong, strong, strong, strong);
    // Counted from 78.5 °C, held to the end.
    expect(truthMarkers(samples, 80).plateauLeftS).toBeNull();
  });

  test('reaches the limit where the vapour last was stronger, unless it only went away', () => {
    const limit = (...minutes: readonly (readonly [number, number, number])[]) =>
      truthMarkers(samplesOf(...minutes), 80).limitReachedS;
    expect([
      limit(strong, weak, strong, weak),
      limit(strong, strong, dry),
      limit(strong, dry, weak),
      limit([1, 80, 82.7], [1, 79.9, 82.8]),
      limit(weak, weak),
      limit(strong, dry, [1, 80, 82]),
    ]).toEqual([180, null, 120, 60, null, null]);
  });

  test('is nearly dry below a twentieth of what was charged', () => {
    const pot = (...volumesMl: readonly number[]) =>
      truthMarkers(
        samplesOf(...volumesMl.map((potVolumeMl) => [0, 0, 20, { potVolumeMl }] as const)),
        80,
      ).nearDryS;
    expect([pot(200, 10), pot(200, 10, 9.9)]).toEqual([null, 120]);
  });

  test('drips from 0.05 mL on, and holds once it has held for a minute', () => {
    const drop = (distillateVolumeMl: number) =>
      truthMarkers(samplesOf([1, 90, 78.5, { distillateVolumeMl }]), 80);
    expect([drop(0.049).firstDropS, drop(0.05).firstDropS, drop(1).plateauStartS]).toEqual([
      null,
      0,
      null,
    ]);
    const rising = [78.5, 78.64, 78.78, 78.92].map((headC) => [1, 90, headC] as const);
    expect(truthMarkers(samplesOf(...rising), 80).plateauStartS).toBe(0);
    const steep = [78.5, 78.66, 78.82, 78.98].map((headC) => [1, 90, headC] as const);
    expect(truthMarkers(samplesOf(...steep), 80).plateauStartS).toBeNull();
  });
});
