import { expect, test } from 'vitest';
import { defaultRunSettings, type RunInput } from '#shared-core';
import type { StageSpan } from '../../../shared-core/stages/stage.ts';
import { processedRows } from '../../../shared-core/study/processed-rows.ts';

/** A table of once a minute, without any mark: the heat comes off at minute 5 of the vapour, and is known to have when the bulb has cooled for four. */
const headsC = [60, 79, 80, 81.5, 83, 84.6, 82.1, 80, 78.4, 75, 70];
const readAt = (minute: number, value: number): RunInput => ({
  kind: 'reading',
  timeS: 60 * minute,
  channel: 'head',
  value,
  unit: '°C',
  quality: 'good',
});
const inputs = headsC.map((value, minute) => readAt(minute, value));
const endS = 60 * headsC.length;
const span = (stage: StageSpan['stage'], fromS: number, toS: number): StageSpan => ({
  stage,
  fromS,
  toS,
  because: '',
});
const running = [span('warm-up', 0, 60), span('main-fraction', 60, 540)];
const ended = span('cool-down', 540, endS);

const withStrength = (stages: readonly StageSpan[], of: readonly RunInput[] = inputs) =>
  processedRows({ settings: defaultRunSettings, inputs: of, stages, endS }).flatMap(
    ({ timeS, vapourAbv }) => (vapourAbv === null ? [] : [Math.round(timeS / 60)]),
  );

test('a bulb that cools without vapour has no strength, though the fall is called only when it has lasted', () => {
  expect(withStrength([...running, ended])).toEqual([1, 2, 3, 4, 5]);
});

test('a head that was hotter for a moment, long before, has strength until it falls at the end', () => {
  const splashed = inputs.map((input, minute) => (minute === 1 ? readAt(minute, 90) : input));
  expect(withStrength([...running, ended], splashed)).toEqual([1, 2, 3, 4, 5]);
});

test('a bulb as warm as vapour has no strength while the run warms up, nor before any stage was called', () => {
  const late = [span('warm-up', 0, 180), span('main-fraction', 180, 540)];
  expect(withStrength(late)).toEqual([3, 4, 5, 6, 7, 8]);
  expect(withStrength([])).toEqual([]);
});

test('each row has its stage and how far it stands above the azeotrope', () => {
  const rows = processedRows({
    settings: defaultRunSettings,
    inputs,
    stages: [...running, ended],
    endS,
  });
  expect(rows.map(({ stage }) => stage)).toEqual([
    'warm-up',
    ...Array(8).fill('main-fraction'),
    'cool-down',
    'cool-down',
  ]);
  expect(rows[2]!.aboveAzeotropeK - rows[1]!.aboveAzeotropeK).toBeCloseTo(1, 9);
});

test('a head that falls while vapour comes on keeps its strength', () => {
  expect(withStrength(running)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
});

test('a strength by steam is known better than by a barometer that is read later: from then on probe and pressure are two doubts', () => {
  const steam = { shownC: 99.9, standardUncertaintyK: 0.03, gapStandardUncertaintyK: 0.06 };
  const { probe, pressure } = defaultRunSettings;
  const settings = {
    probe: { ...probe, standardUncertaintyK: 0.4 },
    pressure: { ...pressure, standardUncertaintyKPa: 1.5, source: 'steam' as const, steam },
  };
  const read = { type: 'pressure-read', pressureKPa: pressure.pressureKPa } as const;
  const mark: RunInput = { kind: 'mark', timeS: 150, markId: 1, mark: read };
  const rows = processedRows({ settings, inputs: [...inputs, mark], stages: running, endS });
  const widthAbv = (minute: number) => {
    const { low, high } = rows[minute]?.vapourAbv ?? { low: Number.NaN, high: Number.NaN };
    return high - low;
  };
  // The head stands at 80 °C in both minutes, before the barometer and after it.
  expect(widthAbv(7) / widthAbv(2)).toBeGreaterThan(3);
  const unread = processedRows({ settings, inputs, stages: running, endS });
  expect(unread[7]?.vapourAbv).toEqual(unread[2]?.vapourAbv);
});
