import { describe, expect, test } from 'vitest';
import { alarmCatalogue, createMonitor, type RunInput } from '#shared-core';
import { analyseRun } from '../../../shared-core/monitor/analyse-run.ts';
import { mark, pearSettings, simulatedReadings } from './support.ts';

const calm = simulatedReadings({ durationS: 2250 });

/** The calm run without the readings from each `[fromS, toS]`. */
function without(...gaps: readonly (readonly [fromS: number, toS: number])[]): RunInput[] {
  return calm.filter(({ timeS }) => !gaps.some(([fromS, toS]) => timeS > fromS && timeS < toS));
}

const answer = (timeS: number, markId: number): RunInput =>
  mark(timeS, markId, { type: 'alarm-acknowledged', alarm: 'probe-lost' });

/** Inputs in the order of their times. */
const inOrder = (...inputs: readonly RunInput[]): RunInput[] =>
  inputs.toSorted((a, b) => a.timeS - b.timeS);

describe('a probe that drops out again and again', () => {
  const gaps = [
    [1400, 1410],
    [1500, 1512],
    [1700, 1709],
  ] as const;

  test('is one alarm while nobody answers, which says how often and what to do, and ends once it is quiet', () => {
    const { alarms, problems } = analyseRun(pearSettings, without(...gaps), 2250);
    expect(alarms.map(({ alarm, raisedS }) => [alarm, raisedS < 1410])).toEqual([
      ['probe-lost', true],
    ]);
    expect(alarms[0]?.because).toMatch(/dropped out 3 times in 5 min\.$/);
    expect(alarms[0]?.clearedS).toBeGreaterThan(1709 + 300);
    expect(alarms[0]?.clearedS).toBeLessThan(1709 + 310);
    expect(problems.length).toBe(3);
  });

  test('says so among the prompts, while the sentence tells of the run as soon as it reads', () => {
    const monitor = createMonitor(pearSettings);
    const at = new Map<number, ReturnType<typeof monitor.snapshot>>();
    for (const input of without(...gaps)) {
      if (!at.has(Math.floor(input.timeS))) {
        at.set(Math.floor(input.timeS), monitor.advanceTo(input.timeS));
      }
      monitor.push(input);
    }
    const during = at.get(1512);
    expect(during?.stage.condition).toBe('probe-suspect');
    expect([during?.sentence, during?.act]).toEqual([
      'The head cannot be read: the probe sends nothing.',
      `${alarmCatalogue['probe-lost'].act} Check the plug at the computer and the cable up to the still.`,
    ]);
    const between = at.get(1600);
    expect(between?.stage).toMatchObject({ stage: 'main-fraction', condition: null });
    expect(between?.sentence).toContain('main fraction');
    expect(between?.alarms.map(({ alarm, state }) => [alarm, state])).toEqual([
      ['probe-lost', 'unacknowledged'],
    ]);
    expect(between?.alarms[0]?.act).toBe(
      'Check the plug at the computer and the cable up to the still.',
    );
    expect(at.get(2200)?.alarms[0]).toMatchObject({ state: 'returned-unacknowledged', act: null });
  });

  test('is two alarms when it has been quiet for minutes between', () => {
    const { alarms } = analyseRun(pearSettings, without([1400, 1410], [2000, 2012]), 2250);
    expect(alarms.map(({ raisedS }) => raisedS > 2000)).toEqual([false, true]);
    expect(alarms[1]?.because).not.toContain('times');
  });

  test('calls a person who has answered only when it stays away, and then within half a minute', () => {
    const raised = (...gapsHere: readonly (readonly [fromS: number, toS: number])[]) =>
      analyseRun(pearSettings, inOrder(...without(...gapsHere), answer(1408, 1)), 2250).alarms.map(
        ({ raisedS }) => raisedS,
      );
    expect(raised([1400, 1410], [1500, 1512], [1700, 1709])).toHaveLength(1);
    const lost = raised([1400, 1410], [1500, 1512], [1700, 2250]);
    expect(lost).toHaveLength(2);
    expect(lost[1]).toBeGreaterThan(1700);
    expect(lost[1]).toBeLessThanOrEqual(1730);
  });

  test('ends with the answer once readings are back', () => {
    const inputs = inOrder(...without([1400, 1410], [1500, 1512]), answer(1530, 1));
    const { alarms } = analyseRun(pearSettings, inputs, 2250);
    expect(alarms).toHaveLength(1);
    expect(alarms[0]?.clearedS).toBeLessThanOrEqual(1540);
  });
});

test('who has been called is not told of weak distillate before the vapour can have gone', () => {
  const { alarms } = analyseRun(pearSettings, simulatedReadings({ durationS: 5400 }), 5400);
  const at = (name: string) => alarms.find(({ alarm }) => alarm === name)?.raisedS ?? Number.NaN;
  expect(at('over-limit') - at('plateau-departure')).toBeGreaterThanOrEqual(
    pearSettings.reactionTimeS + 60,
  );
});
