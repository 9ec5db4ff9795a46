// @vitest-environment happy-dom
import { cleanup, fireEvent, screen, within } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { type ProbeStatus, serialSourceSchema } from '#shared-core';
import { fieldNames, type TextField } from '../../../renderer/draft/field-names.ts';
import { PrepareStep } from '../../../renderer/prepare/prepare-step.tsx';
import { safetyLooks } from '../../../renderer/prepare/safety-checks.ts';
import { StepBar } from '../../../renderer/prepare/step-bar.tsx';
import { stepIds, stepTitles, toDoIn } from '../../../renderer/prepare/steps.ts';
import { stillToDo } from '../../../renderer/prepare/still-to-do.ts';
import { firstDraft } from '../../../renderer/stores/prepare-draft.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

const heard: ProbeStatus = {
  state: 'hearing',
  source: serialSourceSchema.parse({ kind: 'serial', path: '/dev/ttyACM0' }),
  path: '/dev/ttyACM0',
  lastLine: '21.43',
  channels: ['head'],
  latest: [
    { kind: 'reading', timeS: 5, channel: 'head', value: 21.43, unit: '°C', quality: 'good' },
  ],
  readingsPerS: 1,
  rejectedLines: 0,
  droppedBytes: 0,
  problem: null,
  advice: null,
};

const confirms = safetyLooks.flatMap(({ checks }) =>
  checks.map(({ id }) => ({ check: id, role: 'teacher' as const })),
);

function show(isReady: boolean) {
  renderInWindow(
    <>
      <StepBar />
      {stepIds.map((step) => (
        <PrepareStep key={step} step={step} lead="">
          <p>{step}</p>
        </PrepareStep>
      ))}
    </>,
    undefined,
    ({ bench, prepare }) => {
      if (!isReady) return;
      bench.getState().dispatch({ type: 'probe', probe: heard });
      prepare.getState().replace({ ...firstDraft, assumed: [], altitudeM: '540', confirms });
    },
  );
  return within(screen.getByRole('navigation', { name: 'Steps of preparing' }))
    .getAllByRole('button')
    .map(({ textContent }) => textContent?.replaceAll('\u00a0', ' '));
}

test('the line of steps says what is left to do in each, then what each has brought', () => {
  expect(show(false)).toEqual([
    '1. Probe ○ 1 to do',
    '2. In the pot ○ 350 mL of 9 % vol, assumed',
    '3. Air pressure ○ 1 to do',
    '4. Before heat ○ 7 looks to do',
  ]);
  cleanup();
  expect(show(true)).toEqual([
    '1. Probe ✓ heard, 21.4 °C',
    '2. In the pot ✓ 350 mL of 9 % vol',
    '3. Air pressure ✓ 95.0 kPa',
    '4. Before heat ✓ all 7 looks',
  ]);
});

test('a step names the next, and leads there by press: its heading has the focus', () => {
  show(false);
  fireEvent.click(screen.getByRole('button', { name: 'Next: In the pot' }));
  expect(document.activeElement).toBe(screen.getByRole('heading', { name: '2. In the pot' }));
  fireEvent.click(screen.getByRole('button', { name: /^1\. Probe/ }));
  expect(document.activeElement).toBe(screen.getByRole('heading', { name: '1. Probe' }));
  expect(screen.queryByRole('button', { name: `Next: ${stepTitles.probe}` })).toBe(null);
});

test('what is missing is told in the step it belongs to, and only there', () => {
  show(false);
  const listed = (step: 'probe' | 'air') =>
    screen
      .getByRole('list', { name: `Still to do under “${stepTitles[step]}”` })
      .textContent?.trim();
  expect([listed('probe'), listed('air')]).toEqual([
    'Connect a probe that is heard',
    'Say how high this room lies, under “Air pressure”',
  ]);
});

test('every entry that may stop a start belongs to one step', () => {
  const problems = (Object.keys(fieldNames) as TextField[]).map((field) => ({
    field,
    message: 'Not a number.',
  }));
  const all = stillToDo(problems, null, firstDraft);
  expect(all).toHaveLength(problems.length + 2);
  expect(stepIds.flatMap((step) => toDoIn(step, all)).toSorted(byField)).toEqual(
    all.toSorted(byField),
  );
});

function byField(one: { readonly field: string }, other: { readonly field: string }): number {
  return one.field.localeCompare(other.field);
}
