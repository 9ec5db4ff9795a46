import { describe, expect, test } from 'vitest';
import { defaultRunSettings, planRun } from '#shared-core';
import { planRequestFrom } from '../../../renderer/plan/plan-request-from.ts';
import { planSentence } from '../../../renderer/plan/plan-words.ts';
import { recoveryAtMeanStrength } from '../../../renderer/plan/recovery-at.ts';

describe('planSentence', () => {
  test('tells time, volume and strength as ranges, each with its unit', () => {
    const plan = planRun({ ...planRequestFrom(defaultRunSettings, 1), runs: 8 });
    expect(planSentence(plan, 80, '.')).toMatch(
      /^Vapour reaches the head after \d+–\d+ min\. Then expect \d+–\d+\u00a0mL above 80\u00a0% vol, over \d+–\d+ min, at \d+–\d+\u00a0% vol on average\.$/,
    );
  });

  test('where no main fraction is to be expected, says why and what would help', () => {
    const rig = { description: '', plates: 1, heatW: null, columnLossW: null };
    const plan = planRun({ ...planRequestFrom({ ...defaultRunSettings, rig }, 4), runs: 8 });
    const sentence = planSentence(plan, 80, '.');
    expect(sentence).toContain('No main fraction above 80\u00a0% vol is to be expected');
    expect(sentence).toMatch(/would help: .*(plates|limit)/);
  });
});

test('a plan asks within the planner’s ranges even where the settings allow more', () => {
  const { leastStrengthAbv, uncertainty } = planRequestFrom(
    {
      ...defaultRunSettings,
      leastStrengthAbv: 96,
      charge: { ...defaultRunSettings.charge, standardUncertaintyAbv: 9 },
    },
    1,
  );
  expect([leastStrengthAbv, uncertainty?.strengthAbv]).toEqual([94, 5]);
});

const point = (recoveredFraction: number, value: number) => {
  const estimate = { value, low: value, high: value };
  return { recoveredFraction, strengthAbv: estimate, vapourStrengthAbv: estimate };
};

test('the share collected at a mean strength is read off the curve between its points', () => {
  const curve = [point(0.2, 92), point(0.4, 90), point(0.6, 86)];
  expect([recoveryAtMeanStrength(curve, 88), recoveryAtMeanStrength(curve, 50)]).toEqual([
    0.5,
    null,
  ]);
});
