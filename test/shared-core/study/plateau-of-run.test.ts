import { describe, expect, test } from 'vitest';
import { azeotrope, defaultRunSettings, type MarkBody, type RunInput } from '#shared-core';
import { azeotropeSlopeKPerKPa } from '../../../shared-core/equilibrium/azeotrope-slope.ts';
import { limitTemperatureC } from '../../../shared-core/equilibrium/limit-temperature.ts';
import { plateauOfRun } from '../../../shared-core/study/plateau-of-run.ts';
import { goodReading } from '../../support/good-reading.ts';

const settings = {
  ...defaultRunSettings,
  pressure: {
    pressureKPa: 101.325,
    standardUncertaintyKPa: 0.3,
    source: 'barometer',
    altitudeM: null,
  },
} as const;
const { temperatureC: azeotropeC } = azeotrope(101.325);

/** A reading every ten seconds. */
const headAt = (headC: (timeS: number) => number, endS: number): readonly RunInput[] =>
  Array.from({ length: endS / 10 }, (_, index) => goodReading(10 * index, headC(10 * index)));
type Timed = readonly [timeS: number, mark: MarkBody];
const marked = (marks: readonly Timed[]): readonly RunInput[] =>
  marks.map(([timeS, mark], index) => ({ kind: 'mark', timeS, markId: index + 1, mark }));
const plateau = (inputs: readonly RunInput[], endS: number) =>
  plateauOfRun({ settings, inputs, endS });

/** Cold, then a plateau from 300 s to 900 s, then up to water. */
const usual = (timeS: number): number =>
  timeS < 300 ? 20 + timeS / 10 : timeS < 900 ? 78.6 : Math.min(99, 78.6 + (timeS - 900) / 20);

describe('the plateau of a run', () => {
  test('is where the head stays within a kelvin, with its mean and what that is at the pressure of the day', () => {
    const found = plateau(headAt(usual, 1500), 1500)!;
    expect(found.statistics.span.fromS).toBeGreaterThan(295);
    expect(found.statistics.span.fromS).toBeLessThan(325);
    expect(found.statistics.span.toS).toBeGreaterThan(880);
    expect(found.statistics.span.toS).toBeLessThan(935);
    expect(found.mean.value).toBeCloseTo(78.6, 1);
    expect([found.pressureKPa, found.azeotropeC]).toEqual([
      expect.closeTo(101.325, 9),
      expect.closeTo(azeotropeC, 9),
    ]);
    expect(found.aboveAzeotropeK.value).toBeCloseTo(found.mean.value - azeotropeC, 9);
    expect(found.standard.value).toBeCloseTo(found.mean.value, 9);
  });

  test('is known as well as probe and scatter let it be, and above the azeotrope as well as the barometer besides', () => {
    const { mean, aboveAzeotropeK, standard, statistics } = plateau(headAt(usual, 1500), 1500)!;
    const ofMean = statistics.standardUncertaintyOfMeanK;
    expect(mean.standardUncertainty).toBeCloseTo(Math.hypot(0.25, ofMean), 9);
    expect(aboveAzeotropeK.standardUncertainty).toBeCloseTo(
      Math.hypot(0.25, ofMean, azeotropeSlopeKPerKPa(101.325) * 0.3),
      9,
    );
    expect(standard.standardUncertainty).toBe(aboveAzeotropeK.standardUncertainty);
  });

  describe('lasted', () => {
    const lasted = (headC: (timeS: number) => number, endS = 1500, leastStrengthAbv = 80) => {
      const run = {
        settings: { ...settings, leastStrengthAbv },
        inputs: headAt(headC, endS),
        endS,
      };
      const { statistics, lastedS } = plateauOfRun(run)!;
      const { fromS, toS } = statistics.span;
      expect(lastedS.value).toBeCloseTo(toS - fromS, 1);
      return lastedS;
    };

    test('as long as its stretch, to the means it is made of where its ends are sharp', () => {
      const { value, low, high } = lasted(usual);
      expect(low).toBeLessThanOrEqual(600);
      expect(high).toBeGreaterThanOrEqual(600);
      expect([low, value, high]).toEqual([580, 590, 620]);
    });

    test('the less surely, the more the head is noisy where it rises slowly', () => {
      const rising = (timeS: number) =>
        usual(Math.min(timeS, 899)) + Math.max(0, timeS - 500) / 300;
      const shaken = (timeS: number) => rising(timeS) + (timeS % 40 < 20 ? 0.1 : -0.1);
      const widthS = ({ low, high }: ReturnType<typeof lasted>) => high - low;
      expect(widthS(lasted(rising))).toBeLessThan(120);
      expect(widthS(lasted(shaken))).toBeGreaterThan(150);
    });

    test('as surely as the limit is known on this probe, where that is what ends it', () => {
      const limitC = limitTemperatureC({ leastStrengthAbv: 90, pressureKPa: 101.325 });
      const through = (timeS: number) => limitC - 0.5 + timeS / 1200;
      const { value, low, high } = lasted(through, 1500, 90);
      const kPerS = 1 / 1200;
      const doubtK = 2 * Math.hypot(0.25, azeotropeSlopeKPerKPa(101.325) * 0.3);
      expect(Math.abs(value - 0.5 / kPerS)).toBeLessThan(40);
      // Half a kelvin and more is all that lies below the limit, and a kelvin is all that the ruler takes.
      expect(doubtK).toBeGreaterThan(0.5);
      expect(low).toBe(0);
      expect(Math.abs(high - 1 / kPerS)).toBeLessThan(60);
    });
  });

  test('is no shorter than two minutes', () => {
    const held = (forS: number) => (timeS: number) =>
      timeS < 300 ? 20 : timeS < 300 + forS ? 78.6 : 79.6 + (timeS - 300 - forS) / 10;
    expect(plateau(headAt(held(100), 900), 900)).toBeNull();
    expect(plateau(headAt(held(200), 900), 900)).not.toBeNull();
  });

  test('is not hotter than vapour of the least strength, nor far below the azeotrope', () => {
    const limitC = limitTemperatureC({ leastStrengthAbv: 80, pressureKPa: 101.325 });
    const at = (headC: number) =>
      plateau(
        headAt(() => headC, 900),
        900,
      ) !== null;
    expect([at(limitC - 0.05), at(limitC + 0.05)]).toEqual([true, false]);
    expect([at(azeotropeC - 4.9), at(azeotropeC - 5.1)]).toEqual([true, false]);
  });

  test('is the longest of several', () => {
    const twice = (timeS: number): number =>
      timeS < 200 ? 78.4 : timeS < 300 ? 60 : timeS < 800 ? 79.6 : 60;
    expect(plateau(headAt(twice, 900), 900)!.mean.value).toBeCloseTo(79.6, 3);
    const turned = (timeS: number) => twice(890 - timeS);
    expect(plateau(headAt(turned, 900), 900)!.mean.value).toBeCloseTo(79.6, 3);
  });

  test('is the first of two that are equally long', () => {
    const twice = (timeS: number): number =>
      timeS < 300 ? 78.4 : timeS < 600 ? 60 : timeS < 900 ? 79.6 : 60;
    expect(plateau(headAt(twice, 1200), 1200)!.mean.value).toBeCloseTo(78.4, 3);
  });

  test('lasts from its first reading to its last, of a logger that reads twice a minute', () => {
    const slow = headAt(usual, 1500).filter(({ timeS }) => timeS % 30 === 0);
    const { span, readings } = plateau(slow, 1500)!.statistics;
    // From 300 s on; at 900 s the head begins to climb, and at 930 s it is 1.5 K above. Rows stand in the middle of their second.
    expect([span, readings]).toEqual([{ fromS: 300.5, toS: 900.5 }, 21]);
  });

  test('is not where the heat was off by the marks, until it was on again', () => {
    const readings = headAt(() => 78.5, 1000);
    const span = (...marks: Timed[]) => {
      const found = plateau([...readings, ...marked(marks)], 1000);
      return found && [found.statistics.span.fromS, found.statistics.span.toS];
    };
    const [fromS, toS] = span([300, { type: 'heat-off' }])!;
    expect(fromS).toBeLessThan(20);
    expect(toS).toBeGreaterThan(270);
    expect(toS).toBeLessThanOrEqual(310);
    const later = span([300, { type: 'heat-off' }], [400, { type: 'heat-on' }])!;
    expect(later[0]).toBeGreaterThanOrEqual(390);
    expect(later[1]).toBeGreaterThan(970);
    // Heat that goes on twice went on at the first; heat that was on from the beginning is no break.
    expect(
      span([300, { type: 'heat-off' }], [400, { type: 'heat-on' }], [900, { type: 'heat-on' }]),
    ).toEqual(later);
    expect(span([500, { type: 'heat-on' }])![1]).toBeGreaterThan(970);
    expect(span([0, { type: 'heat-off' }])).toBeNull();
  });

  test('is not held across a silence', () => {
    const broken = headAt(() => 78.5, 900).filter(({ timeS }) => timeS < 300 || timeS > 700);
    const { span } = plateau(broken, 900)!.statistics;
    expect(span.toS).toBeLessThan(310);
  });

  test('is seen through a probe that scatters by half a kelvin', () => {
    const noisy = Array.from({ length: 900 }, (_, timeS) => ({
      ...(headAt(() => 78.6, 10)[0] as Extract<RunInput, { kind: 'reading' }>),
      timeS,
      value: 78.6 + (timeS % 2 === 0 ? 0.7 : -0.7),
    }));
    const { span, meanC } = plateau(noisy, 900)!.statistics;
    expect(span.toS - span.fromS).toBeGreaterThan(850);
    expect(meanC).toBeCloseTo(78.6, 2);
  });

  test('goes by the pressure that was read in the middle of it', () => {
    const readings = headAt(() => 77.9, 1000);
    const marks = marked([[100, { type: 'pressure-read', pressureKPa: 98.6 }]]);
    const found = plateau([...readings, ...marks], 1000)!;
    expect(found.pressureKPa).toBeGreaterThan(98.6);
    expect(found.pressureKPa).toBeLessThan(98.95);
    expect(found.standard.value).toBeCloseTo(
      77.9 + azeotropeC - azeotrope(found.pressureKPa).temperatureC,
      9,
    );
  });
});
