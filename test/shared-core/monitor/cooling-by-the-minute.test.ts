import { describe, expect, test } from 'vitest';
import { analyseRun } from '../../../shared-core/monitor/analyse-run.ts';
import { head, mark, barometerSettings as settings } from './support.ts';

/** A plateau of 77.9 °C from 900 s on that rises past the limit, and a bulb that cools when the heat is taken off at 3000 s. */
function headC(timeS: number): number {
  if (timeS < 900) return 21;
  const vapourC = 77.9 + Math.max(0, timeS - 2700) * (1.5 / 60);
  const risen = vapourC - (vapourC - 21) * Math.exp(-(timeS - 900) / 6);
  return timeS < 3020 ? risen : 21 + (risenTo - 21) * Math.exp(-(timeS - 3020) / 500);
}
const risenTo = 77.9 + 320 * (1.5 / 60);

describe('a still that cools after the heat was taken off', () => {
  test.each([1, 10, 20, 30, 40, 60])(
    'has cooled down, and gives no main fraction again, by a logger of one reading in %d s',
    (everyS) => {
      const readings = Array.from({ length: Math.floor(6000 / everyS) + 1 }, (_, index) =>
        head(index * everyS, headC(index * everyS) + 0.02 * Math.sin(index * 1.7)),
      );
      const off = mark(3000.5, 1, { type: 'heat-off' });
      const inputs = [...readings, off].sort((a, b) => a.timeS - b.timeS);
      const silenceS = Math.max(5, 3 * everyS);
      const { stages } = analyseRun(
        { ...settings, probe: { ...settings.probe, silenceS } },
        inputs,
        6000,
      );
      expect(stages.map(({ stage }) => stage)).toEqual([
        'warm-up',
        'first-fraction',
        'main-fraction',
        'tail',
        'cool-down',
      ]);
    },
  );
});
