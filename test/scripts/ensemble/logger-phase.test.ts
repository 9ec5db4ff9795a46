import { describe, expect, test } from 'vitest';
import { drawRun } from '../../../scripts/ensemble/draw-run.ts';
import { simulateRun } from '../../../scripts/ensemble/simulate-run.ts';
import { analyseRun } from '../../../shared-core/monitor/index.ts';

const run = simulateRun(drawRun('phase/0'));

/** What the monitor says of the run, had a logger read it only every so many seconds, so many off the full ones. */
function readEvery(everyS: number, phaseS: number) {
  const inputs = run.inputs.filter(
    (input) => input.kind !== 'reading' || Math.floor(input.timeS) % everyS === phaseS,
  );
  const silenceS = Math.max(run.settings.probe.silenceS, 3 * everyS);
  const settings = { ...run.settings, probe: { ...run.settings.probe, silenceS } };
  const { events, stages } = analyseRun(settings, inputs, run.endS);
  return {
    endingS: events.find(({ event }) => event === 'plateau-ending')?.timeS ?? Number.NaN,
    tailS: stages.find(({ stage }) => stage === 'tail')?.fromS ?? Number.NaN,
    returned: events.filter(({ event }) => event === 'vapour-returned').length,
  };
}

describe('a run that a slow logger read', () => {
  const everySecond = readEvery(1, 0);

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
      const { endingS, tailS, returned } = readEvery(everyS, phaseS);
      expect(Math.abs(tailS - everySecond.tailS)).toBeLessThanOrEqual(everyS + 5);
      expect(Math.abs(endingS - everySecond.endingS)).toBeLessThanOrEqual(180);
      expect(returned).toBeLessThanOrEqual(everySecond.returned + 1);
    },
  );
});
