import { expect, test } from 'vitest';
import { createMonitor, defaultRunSettings, type RunInput } from '#shared-core';
import { head } from './support.ts';

const dayS = 86_400;
const warming = (fromS: number): RunInput[] =>
  Array.from({ length: 120 }, (_, index) =>
    head(fromS + index, 21 + 0.1 * index + 0.06 * (index % 3)),
  );

test('after days of silence a replay says what was said live, minute by minute', () => {
  const settings = { ...defaultRunSettings, attentionCheckS: null };
  const live = createMonitor(settings, { forecasts: false });
  const replay = createMonitor(settings, { forecasts: false });
  const inputs = [...warming(0), ...warming(2.6 * dayS)];
  let waitedS = 0;
  for (const input of inputs) {
    for (; waitedS < input.timeS; waitedS += 60) live.advanceTo(waitedS);
    live.push(input);
    replay.push(input);
  }
  for (const monitor of [live, replay]) monitor.advanceTo(5 * dayS);
  expect(replay.verdicts()).toEqual(live.verdicts());
  expect(replay.takeChanges()).toEqual(live.takeChanges());
});
