// @vitest-environment happy-dom
import { cleanup, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import type { KeptFerment } from '#shared-core';
import { FermentLogDialog } from '../../../renderer/ferment/ferment-log-dialog.tsx';
import { nothingRead } from '../../support/nothing-read.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

const ferment = (sugarG: KeptFerment['stated']['sugarG']): KeptFerment => ({
  fermentId: 'pears',
  stated: {
    name: 'Pears',
    beganAtIso: '2026-05-01T08:00:00.000Z',
    volumeMl: 1000,
    sugarG,
    wentIn: '',
  },
  entries: [
    {
      entryId: 1,
      keptAtIso: '2026-05-01T09:00:00.000Z',
      withdrawnAtIso: null,
      read: {
        ...nothingRead,
        atIso: '2026-05-01T09:00:00.000Z',
        gravity: { indicated: 1.05, temperatureC: 20 },
      },
    },
  ],
  corrections: [],
  unreadableLines: 0,
});

/** The log of a ferment whose warmth can't be read. */
function openLog(kept: KeptFerment): void {
  const answers = { 'ferments/list': { ferments: [kept] } } as Readonly<Record<string, unknown>>;
  const request = async (name: string) =>
    answers[name] === undefined
      ? { ok: false, error: { kind: 'disconnected' } }
      : { ok: true, value: answers[name] };
  renderInWindow(
    <FermentLogDialog planned={null} onClose={() => {}} />,
    request as Parameters<typeof renderInWindow>[1],
    ({ bench }) => bench.getState().dispatch({ type: 'connection', connection: 'open' }),
  );
}

test('a log that can be judged is; one that lies outside it says so and can still be put right', async () => {
  openLog(ferment({ low: 140, high: 150 }));
  expect(await screen.findByRole('status', { name: 'What the log says' })).toBeTruthy();
  cleanup();
  // A thousand times what any vessel here holds.
  openLog(ferment({ low: 2e6, high: 2.1e6 }));
  expect(await screen.findByText(/lies outside what can be judged/)).toBeTruthy();
  expect(screen.queryByText('Reading the log …')).toBeNull();
  expect(screen.getByText(/2100000 g/)).toBeTruthy();
});
