import { describe, expect, test } from 'vitest';
import { drawRun } from '../../../scripts/ensemble/draw-run.ts';
import { simulateRun } from '../../../scripts/ensemble/simulate-run.ts';
import { analyseRun } from '../../../shared-core/monitor/index.ts';

const run = simulateRun(drawRun('phase/0'));

interface Logger {
  readonly everyS: number;
  /** So many seconds off the full ones. */
  readonly phaseS: number;
  readonly stepK: number;
}

/** What the monitor says of the run, had such a logger read it. */
function readBy({ everyS, phaseS, stepK }: Logger) {
  const inputs = run.inputs.flatMap((input) => {
    if (input.kind !== 'reading' || input.value === null) return [input];
    if (Math.floor(input.timeS) % everyS !== phaseS) return [];
    return [{ ...input, value: stepK * Math.round(input.value / stepK) }];
  });
  const silenceS = Math.max(run.settings.probe.silenceS, 3 * everyS);
  const settings = { ...run.settings, probe: { ...run.settings.probe, silenceS } };
  const { alarms, events, stages } = analyseRun(settings, inputs, run.endS);
  const tailS = stages.find(({ stage }) => stage === 'tail')?.fromS ?? Number.NaN;
  const timesOf = (kind: string): number[] =>
    events.flatMap(({ event, timeS }) => (event === kind && timeS < tailS ? [timeS] : []));
  return {
    tailS,
    endingsS: timesOf('plateau-ending'),
    returns: timesOf('vapour-returned').length,
    surged: alarms.some(({ alarm }) => alarm === 'surging'),
  };
}

const fine = { everyS: 1, phaseS: 0, stepK: 1e-4 };
const everySecond = readBy(fine);

describe('a run that a simple logger read', () => {
  // A rule that looked only at full seconds of some kind heard nothing of a logger that reads on others.
  test.each([
    [2, 0],
    [2, 1],
    [10, 0],
    [10, 5],
    [10, 7],
  ])(
    'every %s s, on whatever seconds (%s off), is judged like one read every second',
    (everyS, phaseS) => {
      const { endingsS, tailS, returns } = readBy({ ...fine, everyS, phaseS });
      expect(Math.abs(tailS - everySecond.tailS)).toBeLessThanOrEqual(everyS + 5);
      expect(endingsS.length).toBe(1);
      expect(Math.abs((endingsS[0] ?? 0) - (everySecond.endingsS[0] ?? 0))).toBeLessThanOrEqual(
        180,
      );
      expect(returns).toBeLessThanOrEqual(everySecond.returns + 1);
    },
  );

  // A reading that stands at a whole kelvin and then goes to the next is no vapour that comes and goes, no surge and no departure.
  test.each([
    [1, 0.5],
    [1, 1],
    [10, 0.5],
    [10, 1],
    [30, 1],
  ])('every %s s, in steps of %s K, is judged like one read finely', (everyS, stepK) => {
    const { endingsS, tailS, returns, surged } = readBy({ ...fine, everyS, stepK });
    expect(Math.abs(tailS - everySecond.tailS)).toBeLessThanOrEqual(everyS + 20);
    expect(endingsS.length).toBe(1);
    expect(returns).toBeLessThanOrEqual(everySecond.returns + 1);
    expect(surged).toBe(false);
  });
});
