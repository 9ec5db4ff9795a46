// @vitest-environment happy-dom
import { cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, expect, test, vi } from 'vitest';
import type { RunSummary } from '#shared-core';
import { RunCard } from '../../../renderer/look-back/run-card.tsx';
import { renderInWindow } from '../support/render-in-window.tsx';

const summary: RunSummary = {
  runId: '20260302T090000Z',
  name: 'Monday',
  notes: '',
  startedAtIso: '2026-03-02T09:00:00.000Z',
  durationS: 3000,
  readings: 3000,
  ended: 'clean',
  rehearsal: false,
  plateauC: 78,
  heatOffCalledS: 2800,
  damagedRecords: 1,
};

const buttons = () => screen.getAllByRole('button').map((button) => button.textContent);

function renderCard(run: RunSummary) {
  const onOpen = vi.fn();
  renderInWindow(<RunCard run={run} onOpen={onOpen} onChanged={() => {}} />);
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
    'What if …',
    'Export CSV',
    'Export pack',
    'Name and notes …',
    'Remove …',
  ]);
  fireEvent.click(screen.getByRole('button', { name: 'Books of Monday' }));
  expect(onOpen.mock.calls).toEqual([['books']]);
  fireEvent.click(more);
  expect(buttons()).toEqual(['Replay', 'Guess first', 'More']);
});

test('whoever comes back from a run finds the focus on it', () => {
  renderInWindow(<RunCard run={summary} isReturnedTo onOpen={() => {}} onChanged={() => {}} />);
  expect(document.activeElement?.getAttribute('aria-label')).toBe('Replay Monday');
});

test('one damaged record is told as one', () => {
  renderCard(summary);
  expect(screen.getByText('▲ 1 damaged record was skipped; the rest is good.')).toBeTruthy();
});

test('a run without a header left says so, and can only be removed', () => {
  renderCard({ ...summary, name: summary.runId, durationS: 0, readings: 0, ended: 'cut-off' });
  expect(screen.getByText(/This run can’t be read/)).toBeTruthy();
  expect(screen.queryByText(/cut off/)).toBeNull();
  expect(buttons()).toEqual(['Remove …']);
});
