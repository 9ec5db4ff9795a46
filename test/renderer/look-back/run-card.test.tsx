// @vitest-environment happy-dom
import { cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, expect, test, vi } from 'vitest';
import type { RunSummary } from '#shared-core';
import { RunCard } from '../../../renderer/look-back/run-card.tsx';
import { pearSummary } from '../support/pear-summary.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

const summary: RunSummary = {
  ...pearSummary,
  name: 'Monday',
  damagedRecords: 1,
  leftOut: ['1 damaged record was skipped; the rest is good.'],
};

const buttons = () => screen.getAllByRole('button').map((button) => button.textContent);

function renderCard(run: RunSummary, request?: Parameters<typeof renderInWindow>[1]) {
  const onOpen = vi.fn();
  renderInWindow(<RunCard run={run} onOpen={onOpen} onChanged={() => {}} />, request);
  return onOpen;
}

afterEach(cleanup);

test('a run shows what is mostly done with it, and the rest when asked for more', () => {
  const onOpen = renderCard(summary);
  expect(buttons()).toEqual(['Replay', 'Guess first', 'More']);
  const more = screen.getByRole('button', { name: 'More for Monday' });
  fireEvent.click(more);
  expect(more.getAttribute('aria-expanded')).toBe('true');
  const unfolded = document.getElementById(more.getAttribute('aria-controls') ?? '');
  expect([...(unfolded?.querySelectorAll('button') ?? [])].map((one) => one.textContent)).toEqual([
    'Books',
    'Against volume',
    'Prove by burning …',
    'What if …',
    'Export CSV',
    'Export pack',
    'Name and notes …',
    'Correct charge …',
    'Remove …',
  ]);
  fireEvent.click(screen.getByRole('button', { name: 'Books of Monday' }));
  expect(onOpen.mock.calls).toEqual([['books']]);
  fireEvent.click(more);
  expect(buttons()).toEqual(['Replay', 'Guess first', 'More']);
});

test('the plateau of a run is told with its interval, as the comparison and the report tell it', () => {
  renderCard({ ...summary, plateau: { value: 78.4074, standardUncertainty: 0.109 } });
  expect(screen.getByText(/^Plateau at/).textContent).toContain(
    'Plateau at (78.41\u00a0±\u00a00.22)\u00a0°C',
  );
});

test('whoever comes back from a run finds the focus on it', () => {
  renderInWindow(<RunCard run={summary} isReturnedTo onOpen={() => {}} onChanged={() => {}} />);
  expect(document.activeElement?.getAttribute('aria-label')).toBe('Replay Monday');
});

test('what was put right after a run stands on its card: all that is told of it hangs on that', () => {
  const corrections = [
    'Corrected after the run: charge 350 mL of 9 % vol → 300 mL of 10 % vol. Reason: misread',
  ];
  renderCard({ ...summary, corrections });
  expect(
    screen.getByText(/^Corrected after the run: charge 350.mL of 9.%.vol → 300.mL/),
  ).toBeTruthy();
});

test.each([
  [{ ended: 'cut-off' }, /· cut off, saved up to its last second$/],
  [{ ended: 'cut-off', unsure: true }, /· cut off · perhaps not all on the disk yet$/],
  [{ ended: 'clean', unsure: true }, /min · perhaps not all on the disk yet$/],
] as const)('a run is told as saved only where it surely is: %j', (found, words) => {
  renderCard({ ...summary, ...found });
  expect(screen.getByText(words)).toBeTruthy();
});

test('what is missing from its record is told', () => {
  renderCard(summary);
  expect(screen.getByText('✕ 1 damaged record was skipped; the rest is good.')).toBeTruthy();
});

test.each([
  ['header-lost', /can’t be opened: its beginning is damaged/],
  ['nothing-recorded', /Nothing was recorded of this run.*No reading is missing/],
  ['log-missing', /its record is not in its folder “20260302T090000Z” any more/],
  ['not-permitted', /This account may not read this run/],
  ['read-failed', /The disk does not give this run \(EIO\)/],
] as const)(
  'a run that can’t be opened (%s) says why and what to do, and its files can be saved',
  (why, words) => {
    const asked = vi.fn(async () => ({ ok: false, error: { kind: 'disconnected' } }) as const);
    const nothing = { durationS: 0, readings: 0, ended: 'cut-off' } as const;
    renderCard({ ...summary, ...nothing, unreadable: { why, message: 'EIO' } }, asked);
    expect(screen.getByText(words)).toBeTruthy();
    expect(screen.queryByText(/cut off|No plateau/)).toBeNull();
    expect(buttons()).toEqual(['Save its files', 'Remove …']);
    fireEvent.click(screen.getByRole('button', { name: 'Save the files of Monday' }));
    expect(asked.mock.calls).toEqual([
      ['packs/make-files', { packId: expect.any(String), runId: summary.runId }],
    ]);
  },
);

test('a run named like its folder is a run like any other', () => {
  renderCard({ ...summary, name: summary.runId });
  expect(buttons()).toEqual(['Replay', 'Guess first', 'More']);
});
