import { describe, expect, test } from 'vitest';
import { drawRun } from '../../../scripts/ensemble/draw-run.ts';
import { scoreRun } from '../../../scripts/ensemble/score-run.ts';
import { simulateRun } from '../../../scripts/ensemble/simulate-run.ts';
import { readTruth } from '../../../scripts/ensemble/truth.ts';
import { quantile } from '../../../scripts/measuring/quantile.ts';

// A dozen keeps this file quick; scripts/ensemble.ts measures the same on hundreds.
const scores = Array.from({ length: 12 }, (_, index) => {
  const run = simulateRun(drawRun(`unit/${index}`));
  return scoreRun(run, readTruth(run));
});
const numbers = (values: readonly (number | null)[]): number[] =>
  values.filter((value): value is number => value !== null);

describe('the monitor on simulated runs it knows nothing of', () => {
  test('misses no heat-off call and makes no false one', () => {
    expect({
      missed: scores.filter(({ call }) => call.missed).length,
      falseCalls: scores.reduce((sum, { call }) => sum + call.falseCalls, 0),
    }).toEqual({ missed: 0, falseCalls: 0 });
  });

  test('calls early enough to keep weak distillate out, and late enough to lose little', () => {
    const weak = numbers(scores.map(({ call }) => call.weakShare));
    const lost = numbers(scores.map(({ call }) => call.lostShare));
    expect(weak.length).toBeGreaterThan(8);
    expect(quantile(weak, 0.5)).toBeLessThanOrEqual(0.02);
    expect(quantile(weak, 0.9)).toBeLessThanOrEqual(0.06);
    expect(quantile(lost, 0.5)).toBeLessThanOrEqual(0.03);
  });

  test('agrees with the true stage 97 % of the time and never goes back', () => {
    const mean =
      scores.reduce((sum, { stageAgreement }) => sum + stageAgreement, 0) / scores.length;
    expect(mean).toBeGreaterThanOrEqual(0.97);
    expect(scores.filter(({ wentBackward }) => wentBackward)).toEqual([]);
  });

  test('raises at most six alarms an hour before the heat comes off', () => {
    expect(Math.max(...scores.map(({ alarmsPerHour }) => alarmsPerHour))).toBeLessThanOrEqual(6);
  });

  test('forecast intervals hold the true end far more often than not', () => {
    const forecasts = scores.flatMap((score) => score.forecasts);
    expect(forecasts.length).toBeGreaterThan(15);
    const covered = forecasts.filter(({ covered: inside }) => inside).length / forecasts.length;
    expect(covered).toBeGreaterThanOrEqual(0.75);
  });
});
