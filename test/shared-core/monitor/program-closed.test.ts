import { expect, test } from 'vitest';
import { createMonitor, type RunInput } from '#shared-core';
import { head, pearSettings } from './support.ts';

const closed = (timeS: number, state: 'lost' | 'back'): RunInput => ({
  kind: 'link',
  timeS,
  state,
  reason: 'program-closed',
});
const warming = (fromS: number, seconds: number): RunInput[] =>
  Array.from({ length: seconds }, (_, index) =>
    head(fromS + index, 21 + 0.05 * (fromS + index) + 0.06 * (index % 3)),
  );

test('a program that was closed is no fault of the probe: staging waits and nobody is called to the plug', () => {
  const monitor = createMonitor(pearSettings);
  const inputs = [
    ...warming(1, 60),
    closed(60.25, 'lost'),
    closed(140, 'back'),
    ...warming(143, 20),
  ];
  for (const input of inputs) monitor.push(input);
  expect(monitor.verdicts().alarms).toEqual([]);

  // The same run with the plug pulled instead.
  const unplugged = createMonitor(pearSettings);
  for (const input of inputs) {
    unplugged.push(input.kind === 'link' ? { ...input, reason: 'unplugged' } : input);
  }
  expect(unplugged.verdicts().alarms).toMatchObject([{ alarm: 'probe-lost' }]);
});

test('a probe that is not heard once the program is back counts as lost after its usual patience', () => {
  const monitor = createMonitor(pearSettings);
  for (const input of [...warming(1, 60), closed(60.25, 'lost'), closed(140, 'back')]) {
    monitor.push(input);
  }
  monitor.advanceTo(144);
  expect(monitor.verdicts().alarms).toEqual([]);
  monitor.advanceTo(150);
  expect(monitor.verdicts().alarms).toMatchObject([{ alarm: 'probe-lost', raisedS: 146 }]);
});
