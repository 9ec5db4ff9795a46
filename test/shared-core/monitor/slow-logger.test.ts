import { describe, expect, test } from 'vitest';
import { defaultRunSettings } from '#shared-core';
import { analyseRun } from '../../../shared-core/monitor/analyse-run.ts';
import { head } from './support.ts';

const settings = { ...defaultRunSettings, attentionCheckS: null };

/** Seconds at which the probe was reported, for readings of a warming head at these times. */
function faultsAt(times: readonly number[], endS: number): readonly number[] {
  const inputs = times.map((timeS, index) => head(timeS, 21 + 0.01 * timeS + 0.06 * (index % 3)));
  return analyseRun(settings, inputs, endS).alarms.flatMap(({ alarm, raisedS }) =>
    /^(probe|bulb)-/.test(alarm) ? [raisedS] : [],
  );
}

const every = (stepS: number, endS: number) =>
  Array.from({ length: endS / stepS + 1 }, (_, index) => index * stepS);

describe('a slow logger', () => {
  test.each([1, 5, 10, 30, 60])('of one reading in %i s is no silent probe', (stepS) => {
    expect(faultsAt(every(stepS, 1800), 1800)).toEqual([]);
  });

  test('that falls silent is told of after three of its intervals', () => {
    const [raisedS, ...others] = faultsAt(every(30, 600), 900);
    expect({ raisedS, others }).toEqual({ raisedS: expect.any(Number), others: [] });
    expect(raisedS).toBeGreaterThan(690);
    expect(raisedS).toBeLessThan(700);
  });

  test('is waited for 30 s before its first reading and three minutes before its pace is known', () => {
    expect(faultsAt([], 60).map((timeS) => timeS > 30 && timeS < 40)).toEqual([true]);
    expect(faultsAt([0], 175)).toEqual([]);
    expect(faultsAt([0], 300).map((timeS) => timeS > 180 && timeS < 190)).toEqual([true]);
  });
});
