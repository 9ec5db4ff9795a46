// @vitest-environment happy-dom
import { cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import type { WindowParts } from '../../../renderer/parts/stores-context.ts';
import { RunEnded } from '../../../renderer/watch/run-ended.tsx';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

test('the readings of a run that has just ended are asked for as a table with one press', async () => {
  const asked: unknown[] = [];
  const request = (async (name: string, body: unknown) => {
    asked.push({ name, body });
    return { ok: false, error: { kind: 'disconnected' } };
  }) as WindowParts['service']['request'];
  renderInWindow(
    <RunEnded runId="run-7" progress={{ step: 'reading' }} onBooks={() => {}} />,
    request,
  );
  fireEvent.click(screen.getByRole('button', { name: 'Export CSV' }));
  await expect.poll(() => asked.length).toBeGreaterThan(0);
  expect(JSON.stringify(asked[0])).toContain('"run-7"');
});
