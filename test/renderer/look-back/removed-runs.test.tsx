// @vitest-environment happy-dom
import { cleanup, fireEvent, screen, waitFor } from '@testing-library/react';
import { afterEach, expect, test, vi } from 'vitest';
import type { RunSummary } from '#shared-core';
import { RemovedRuns } from '../../../renderer/look-back/removed-runs.tsx';
import { pearSummary } from '../support/pear-summary.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

const removed: RunSummary = { ...pearSummary, name: 'Monday' };

afterEach(cleanup);

function renderBin(runs: readonly RunSummary[]) {
  const asked: unknown[] = [];
  const onRestored = vi.fn();
  renderInWindow(
    <RemovedRuns after={[]} onRestored={onRestored} />,
    async (name, body) => {
      asked.push([name, body]);
      const value = name === 'runs/trashed' ? { runs } : body;
      return { ok: true, value } as never;
    },
    ({ bench }) => {
      const { dispatch } = bench.getState();
      dispatch({ type: 'connection', connection: 'open' });
      const app = {
        version: '1',
        modelVersion: '1',
        shell: 'loopback',
        platform: 'linux',
        runsFolder: '/runs',
        mayCommand: true,
        secondScreen: null,
      } as const;
      dispatch({ type: 'app', app });
    },
  );
  return { asked, onRestored };
}

test('a removed run is put back by one press, and the library read anew', async () => {
  const { asked, onRestored } = renderBin([removed]);
  fireEvent.click(await screen.findByText('Removed runs (1 run)'));
  fireEvent.click(screen.getByRole('button', { name: 'Put back Monday' }));
  await waitFor(() => expect(onRestored).toHaveBeenCalledOnce());
  expect(asked).toEqual([
    ['runs/trashed', {}],
    ['runs/restore', { runId: removed.runId }],
  ]);
});

test('where nothing was removed there is nothing to see', async () => {
  const { asked } = renderBin([]);
  await waitFor(() => expect(asked).toHaveLength(1));
  expect(screen.queryByText(/Removed runs/)).toBeNull();
});
