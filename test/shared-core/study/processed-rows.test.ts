import { expect, test } from 'vitest';
import { defaultRunSettings, type RunInput, type Verdicts } from '#shared-core';
import type { StageSpan } from '../../../shared-core/stages/stage.ts';
import { processedRows } from '../../../shared-core/study/processed-rows.ts';
import type { Estimate } from '../../../shared-core/uncertainty/index.ts';

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

const abv = (value: number): Estimate => ({ value, low: value - 3, high: value + 2 });
/** What the monitor told at each minute; a null where it told none, nothing at all where it was not asked. */
const toldAt = (
  minutes: readonly number[],
  of: (minute: number) => Estimate | null = () => abv(85),
): Verdicts['estimates'] =>
  minutes.map((minute) => ({ timeS: 60 * minute, headVapourAbv: of(minute) }));
/** Of a bulb that is colder than any vapour it tells none. */
const eachMinute = toldAt([0, 1, 2, 3, 4, 5, 6, 7, 8]);

const rowsOf = (
  stages: readonly StageSpan[],
  of: readonly RunInput[] = inputs,
  estimates: Verdicts['estimates'] = eachMinute,
) =>
  processedRows({
    settings: defaultRunSettings,
    inputs: of,
    verdicts: { stages: [...stages], estimates },
    endS,
  });
const minutesOf = (rows: ReturnType<typeof rowsOf>) =>
  rows.map(({ timeS }) => Math.round(timeS / 60));
const withStrength = (...run: Parameters<typeof rowsOf>) =>
  minutesOf(rowsOf(...run).filter(({ vapourAbv }) => vapourAbv !== null));
const bathed = (...run: Parameters<typeof rowsOf>) =>
  minutesOf(rowsOf(...run).filter(({ isBathed }) => isBathed));

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
  const rows = rowsOf([...running, ended]);
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

test('a cool-down that was taken back ended nothing: the strength goes on with the vapour that came back', () => {
  const takenBack = [
    span('warm-up', 0, 60),
    span('main-fraction', 60, 180),
    span('cool-down', 180, 240),
    span('main-fraction', 240, endS),
  ];
  expect(withStrength(takenBack)).toEqual([1, 2, 4, 5, 6, 7, 8]);
  expect(bathed(takenBack)).toEqual([1, 2, 4, 5, 6, 7, 8]);
});

test('the strength is the one that the monitor told, however cold the bulb reads', () => {
  const colder = headsC.map((value, minute) => readAt(minute, value - 12));
  const told = toldAt([1, 2, 3, 4], (minute) => abv(90 - minute));
  const strengths = (of: readonly RunInput[]) =>
    rowsOf(running, of, told).flatMap(({ vapourAbv }) => vapourAbv ?? []);
  expect(strengths(inputs)).toEqual([1, 2, 3, 4].map((minute) => abv(90 - minute)));
  expect(strengths(colder)).toEqual(strengths(inputs));
  // Below any dew point it hangs in vapour where the monitor knows by how much it reads low, and in none where it told nothing.
  expect(bathed(running, colder, told)).toEqual([1, 2, 3, 4]);
  expect(bathed(running, colder, [])).toEqual([]);
});

test('between two minutes the strength lies on a straight line, and there is none where either was withheld or not asked for', () => {
  const everyTen = Array.from({ length: 60 }, (_, index) => readAt(index / 6, 79));
  const told = toldAt([1, 2, 3, 4, 6, 7], (minute) => (minute === 3 ? null : abv(90 - minute)));
  const strengths = rowsOf(running, everyTen, told).flatMap(({ timeS, vapourAbv }) =>
    vapourAbv === null ? [] : [[Math.floor(timeS), vapourAbv.value, vapourAbv.low]],
  );
  const between = (fromS: number, abvFrom: number) =>
    [0, 10, 20, 30, 40, 50, 60].map((s) => {
      const value = s === 0 || s === 60 ? abvFrom - s / 60 : abvFrom - (s + 0.5) / 60;
      return [fromS + s, expect.closeTo(value, 9), expect.closeTo(value - 3, 9)];
    });
  const alone = (timeS: number, value: number) => [timeS, value, value - 3];
  expect(strengths).toEqual([...between(60, 89), alone(240, 86), ...between(360, 84)]);
});
