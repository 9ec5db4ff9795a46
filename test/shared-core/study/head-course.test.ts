import { describe, expect, test } from 'vitest';
import { defaultRunSettings, type RunInput } from '#shared-core';
import { headCourse, processingStepS } from '../../../shared-core/study/head-course.ts';
import { goodReading } from '../../support/good-reading.ts';

const { probe, pressure } = defaultRunSettings;
const course = (inputs: readonly RunInput[], endS: number, calibrated = probe) =>
  headCourse({ settings: { probe: calibrated, pressure }, inputs, endS });

describe('the interval of the rows', () => {
  test('is the least round one with which a run has no more than 20 000 of them', () => {
    expect([0, 20_000, 20_001, 40_000, 100_000, 200_000, 400_000].map(processingStepS)).toEqual([
      1, 1, 2, 2, 5, 10, 20,
    ]);
    expect(processingStepS(12_000_000)).toBe(600);
    expect(processingStepS(12_000_001)).toBe(601);
    expect(processingStepS(40_000_000)).toBe(2000);
  });
});

describe('the head’s rows', () => {
  test('are means of the good readings of the head, calibrated, in the middle of each second', () => {
    const inputs = [
      goodReading(0.1, 20),
      goodReading(0.9, 22),
      goodReading(1, 30),
      goodReading(1.5, 99, { quality: 'suspect' }),
      goodReading(1.6, 91, { channel: 'pot' }),
      goodReading(4, 40),
    ];
    const calibrated = { ...probe, offsetK: 0.5, gain: 1.1 };
    expect(
      course(inputs, 5, calibrated).map(({ timeS, headC, readings }) => [timeS, headC, readings]),
    ).toEqual([
      [0.5, expect.closeTo(0.5 + 1.1 * 21, 9), 2],
      [1.5, expect.closeTo(0.5 + 1.1 * 30, 9), 1],
      [4.5, expect.closeTo(0.5 + 1.1 * 40, 9), 1],
    ]);
    expect(course([], 5)).toEqual([]);
  });

  test('stand in the middle of longer intervals in a longer run', () => {
    const inputs = [0, 1, 2, 3, 39_999].map((timeS) => goodReading(timeS, 20 + timeS / 1000));
    expect(course(inputs, 40_000).map(({ timeS, readings }) => [timeS, readings])).toEqual([
      [1, 2],
      [3, 2],
      [39_999, 1],
    ]);
  });

  test('leave out what comes too late for an interval that is over', () => {
    const inputs = [
      goodReading(3, 30),
      goodReading(1, 99),
      goodReading(3.5, 32),
      goodReading(5, 50),
    ];
    expect(course(inputs, 6).map(({ timeS, headC }) => [timeS, headC])).toEqual([
      [3.5, 31],
      [5.5, 50],
    ]);
  });

  test('have the pressure of the last barometer that was read by then, in whatever order the marks stand', () => {
    const read = (timeS: number, pressureKPa: number, markId: number): RunInput => ({
      kind: 'mark',
      timeS,
      markId,
      mark: { type: 'pressure-read', pressureKPa },
    });
    const inputs = [
      goodReading(0, 20),
      goodReading(1, 20),
      goodReading(2, 20),
      goodReading(3, 20),
      read(2.5, 97, 2),
      read(1.5, 98, 1),
      { kind: 'mark', timeS: 0, markId: 3, mark: { type: 'heat-on' } } satisfies RunInput,
    ];
    expect(course(inputs, 4).map(({ pressureKPa }) => pressureKPa)).toEqual([101.325, 98, 97, 97]);
    const withdrawn: RunInput = {
      kind: 'mark',
      timeS: 3,
      markId: 4,
      mark: { type: 'mark-withdrawn', withdrawnMarkId: 2 },
    };
    expect(course([...inputs, withdrawn], 4).map(({ pressureKPa }) => pressureKPa)).toEqual([
      101.325, 98, 98, 98,
    ]);
  });
});
