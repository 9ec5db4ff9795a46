// @vitest-environment happy-dom
import { cleanup, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import type { EventBody } from '#shared-core';
import { WatchPlace } from '../../../renderer/watch/index.ts';
import { renderInWindow } from '../support/render-in-window.tsx';
import { recording } from '../support/running-run.ts';

const idle: EventBody<'recording'> = { ...recording, state: 'idle', runId: null, savedToS: null };

function heading(status: EventBody<'recording'> | null): string | null {
  renderInWindow(<WatchPlace />, undefined, ({ bench }) => {
    if (status) bench.getState().dispatch({ type: 'recording', recording: status });
  });
  const { textContent } = screen.getByRole('heading', { level: 1 });
  cleanup();
  return textContent;
}

afterEach(cleanup);

test('a window says that nothing is running only once it knows, and never of a run that is not saved', () => {
  expect([
    heading(null),
    heading(recording),
    heading({ ...recording, state: 'failed' }),
    heading(idle),
  ]).toEqual([
    'Looking for a run …',
    'Opening the run under way …',
    'Opening the run under way …',
    'Nothing is running',
  ]);
});
