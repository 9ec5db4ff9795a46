// @vitest-environment happy-dom
import { cleanup, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { createMonitor, defaultRunSettings, type RunInput } from '#shared-core';
import { runViewAfter } from '../../../renderer/stores/index.ts';
import { WatchRun } from '../../../renderer/watch/watch-run.tsx';
import { plainSnapshot } from '../../support/plain-snapshot.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

const reading = (channel: string, timeS: number, value: number): RunInput => ({
  kind: 'reading',
  timeS,
  channel,
  value,
  unit: '°C',
  quality: 'good',
});

/** Watch, live, after the pot's probe has stopped at 60 s. */
function watchAt(untilS: number): string {
  const monitor = createMonitor(defaultRunSettings);
  for (let timeS = 1; timeS <= untilS; timeS += 1) {
    monitor.push(reading('head', timeS, 21 + 0.01 * (timeS % 3)));
    if (timeS <= 60) monitor.push(reading('pot', timeS, 20 + timeS / 10));
  }
  const settings = defaultRunSettings;
  const run = { runId: 'r1', name: '', settings, origin: 'live', startedAtIso: null } as const;
  const opened = runViewAfter(null, { type: 'opened', run });
  const snapshot = plainSnapshot(monitor.snapshot());
  const view = runViewAfter(opened, { type: 'snapshot', runId: 'r1', snapshot })!;
  renderInWindow(<WatchRun view={view} />, undefined, ({ bench }) =>
    bench.getState().dispatch({ type: 'connection', connection: 'open' }),
  );
  const said = screen
    .queryAllByRole('status')
    .map(({ textContent }) => textContent ?? '')
    .filter((text) => text.includes('The channel pot'));
  cleanup();
  return said.join(' ');
}

test('a probe beside the head that has stopped is told of in Watch, with since when', () => {
  expect(watchAt(70)).toBe('');
  expect(watchAt(90)).toContain('The channel pot has sent nothing since 0:01:00');
});
