import { describe, expect, test } from 'vitest';
import { createProbeSignal, createRandom } from '#shared-core';
import { analyseRun } from '../../../shared-core/monitor/analyse-run.ts';
import { head, barometerSettings as settings } from './support.ts';

/** A head that warms up, rests at a level and, if there is time, leaves it towards water. */
function verdictFor(levelC: number, restS: number, endS: number) {
  const probe = createProbeSignal({
    random: createRandom('verdict'),
    whiteNoiseK: 0.04,
    slowNoiseK: 0.04,
  });
  const temperatureC = (timeS: number): number => {
    if (timeS < 600) return 21 + 0.01 * timeS;
    if (timeS < 680) return 27 + ((timeS - 600) * (levelC - 27)) / 80;
    return Math.min(99, levelC + 0.03 * Math.max(0, timeS - 680 - restS));
  };
  const inputs = Array.from({ length: endS }, (_, timeS) => {
    const value = probe.read(timeS, temperatureC(timeS));
    return value === null ? [] : [head(timeS, value)];
  });
  return analyseRun(settings, inputs.flat(), endS);
}

describe('the verdict on the main fraction', () => {
  test('needs a head that ethanol–water vapour can have: 3.8 K below the azeotrope is none', () => {
    expect(verdictFor(73.7, 600, 2000).verdict).toEqual({
      mainFraction: false,
      because: expect.stringMatching(
        /^No main fraction that can be vouched for: the head stood at 73\.7 °C, 3\.8 K below the azeotrope \(77\.5 °C at 98\.6 kPa\).*Check the air pressure/,
      ),
    });
  });

  test('lets a probe or a barometer be off by as much as they may', () => {
    expect(verdictFor(76.3, 600, 2000).verdict.mainFraction).toBe(true);
  });

  test('does not call a glimpse of a second held', () => {
    const whole = verdictFor(77.7, 1200, 1500);
    const main = whole.stages.find(({ stage }) => stage === 'main-fraction');
    const fromS = main?.fromS ?? 0;
    expect(verdictFor(77.7, 1200, fromS + 2).verdict).toEqual({
      mainFraction: false,
      because: expect.stringMatching(/for only \d s; it takes 30 s to count as held\.$/),
    });
    expect(verdictFor(77.7, 1200, fromS + 60).verdict).toEqual({
      mainFraction: true,
      because: expect.stringMatching(
        /^The vapour stayed stronger than 80 % vol .* the lowest the head held at was 77\.[67] °C\.$/,
      ),
    });
  });
});
