import { describe, expect, test } from 'vitest';
import { createProbeSignal, createRandom } from '#shared-core';
import { limitTemperatureC } from '../../../shared-core/equilibrium/limit-temperature.ts';
import { analyseRun } from '../../../shared-core/monitor/analyse-run.ts';
import { head, barometerSettings as settings } from './support.ts';

const arrivalS = 680;
const limitC = limitTemperatureC({ leastStrengthAbv: 80, pressureKPa: 98.6 });

/** Vapour arrives at 680 s, and the head then rises at once and for good. */
function alarmsFor(levelC: number, slopeKPerS: number) {
  const probe = createProbeSignal({
    random: createRandom('unheld'),
    whiteNoiseK: 0.04,
    slowNoiseK: 0.04,
  });
  const temperatureC = (timeS: number): number => {
    if (timeS < 600) return 21 + 0.01 * timeS;
    if (timeS < arrivalS) return 27 + ((timeS - 600) * (levelC - 27)) / 80;
    return Math.min(98, levelC + slopeKPerS * (timeS - arrivalS));
  };
  const inputs = Array.from({ length: 1800 }, (_, timeS) => {
    const value = probe.read(timeS, temperatureC(timeS));
    return value === null ? [] : [head(timeS, value)];
  });
  return analyseRun(settings, inputs.flat(), 1800).alarms;
}

describe('a head that rises past the limit without ever holding', () => {
  test.each([
    [78.5, 0.05],
    [80, 0.02],
  ])(
    'from %f °C at %f K/s is called off about when it reaches the limit, with the reason',
    (levelC, slopeKPerS) => {
      const limitS = arrivalS + (limitC - levelC) / slopeKPerS;
      const calls = alarmsFor(levelC, slopeKPerS).filter(
        ({ alarm }) => alarm === 'plateau-departure',
      );
      expect(calls).toHaveLength(1);
      expect(calls[0]?.raisedS).toBeGreaterThan(limitS - 30);
      expect(calls[0]?.raisedS).toBeLessThan(limitS + 30);
      expect(calls[0]?.because).toMatch(
        /The limit of 80 % vol \(8\d\.\d °C on this probe\) (is just about reached: \d\d % sure|is reached, \d\d % sure|comes within \d min by)/,
      );
    },
  );

  test('in less than half a minute brings no fraction worth a call, only the warning of weak vapour', () => {
    const names = alarmsFor(80, 0.12).map(({ alarm }) => alarm);
    expect(names).not.toContain('plateau-departure');
    expect(names).toContain('over-limit');
  });
});
