import { expect, test } from 'vitest';
import { defaultRunSettings, type RunInput } from '#shared-core';
import type { StageSpan } from '../../../shared-core/stages/stage.ts';
import { processedRows } from '../../../shared-core/study/processed-rows.ts';

/** A table of once a minute, without any mark: the heat comes off at minute 5 of the vapour, and is known to have when the bulb has cooled for four. */
const headsC = [60, 79, 80, 81.5, 83, 84.6, 82.1, 80, 78.4, 75, 70];
const inputs = headsC.map(
  (value, minute): RunInput => ({
    kind: 'reading',
    timeS: 60 * minute,
    channel: 'head',
    value,
    unit: '°C',
    quality: 'good',
  }),
);
const endS = 60 * headsC.length;
const span = (stage: StageSpan['stage'], fromS: number, toS: number): StageSpan => ({
  stage,
  fromS,
  toS,
  because: '',
});
const running = [span('warm-up', 0, 60), span('main-fraction', 60, 540)];
const ended = span('cool-down', 540, endS);

const withStrength = (stages: readonly StageSpan[]) =>
  processedRows({ settings: defaultRunSettings, inputs, stages, endS }).flatMap(
    ({ timeS, vapourAbv }) => (vapourAbv === null ? [] : [Math.round(timeS / 60)]),
  );

test('a bulb that cools without vapour has no strength, though the fall is called only when it has lasted', () => {
  expect(withStrength([...running, ended])).toEqual([1, 2, 3, 4, 5]);
});

test('a head that falls while vapour comes on keeps its strength', () => {
  expect(withStrength(running)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
});
