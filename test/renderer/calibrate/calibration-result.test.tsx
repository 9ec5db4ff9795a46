// @vitest-environment happy-dom
import { cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import type { correctionFrom } from '#shared-core';
import { CalibrationResult } from '../../../renderer/calibrate/calibration-result.tsx';
import { firstDraft } from '../../../renderer/stores/prepare-draft.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

type Correction = NonNullable<ReturnType<typeof correctionFrom>>;

const byIce = { offsetK: -0.37, gain: 1, standardUncertaintyK: 0.23 };
const byBoth = { offsetK: -0.37, gain: 1.001, standardUncertaintyK: 0.1 };

afterEach(cleanup);

/** What is shown while the correction by ice alone is in use, and these points have been taken. */
function shown(correction: Correction | null) {
  renderInWindow(
    <CalibrationResult correction={correction} hasBoth device={null} />,
    undefined,
    ({ prepare }) => prepare.getState().replace({ ...firstDraft, correction: byIce }),
  );
  return [
    screen.getAllByRole('status').map(({ textContent }) => textContent?.slice(0, 20)),
    screen.queryAllByRole('button').map(({ textContent }) => textContent),
  ];
}

test('a point taken after a correction came into use is offered beside it, and takes its place when asked to', () => {
  expect(shown({ ok: true, value: byBoth })).toEqual([
    ['In use: At the plate', 'By the points taken '],
    ['Go on without it', 'Use this one instead'],
  ]);
  fireEvent.click(screen.getByRole('button', { name: 'Use this one instead' }));
  // −0.37 K and a thousandth of 78 K.
  expect(screen.getByRole('status').textContent).toContain('−0.29\u00a0K');
  expect(screen.queryByRole('button', { name: 'Use this one instead' })).toBe(null);
});

test('points that cannot be used are told beside what is in use, and what is in use is offered no second time', () => {
  const swapped: Correction = { ok: false, error: { kind: 'points-swapped' } };
  expect(shown(swapped)).toEqual([
    ['In use: At the plate', 'The probe showed les'],
    ['Go on without it'],
  ]);
  cleanup();
  expect(shown({ ok: true, value: byIce })).toEqual([
    ['In use: At the plate'],
    ['Go on without it'],
  ]);
});
