// @vitest-environment happy-dom
import { cleanup, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { createMonitor } from '#shared-core';
import { WatchRun } from '../../../renderer/watch/watch-run.tsx';
import { plainSnapshot } from '../../support/plain-snapshot.ts';
import { simulatedRun } from '../../support/simulated-run.ts';
import { openedRun } from '../support/opened-run.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

test('nothing is expected, and no reading asked for, once a run is over', () => {
  const { settings, inputs } = simulatedRun({ name: 'pear', pressureKPa: 99.4, seed: 1 });
  const monitor = createMonitor(settings);
  for (const input of inputs) {
    if (input.kind === 'reading' && input.timeS < 1620) monitor.push(input);
  }
  const snapshot = plainSnapshot(monitor.snapshot());
  const ahead = [null, snapshot.timeS].map((endedS) => {
    renderInWindow(<WatchRun view={{ ...openedRun(), snapshot, settings, endedS }} />);
    const rows = screen.queryAllByText(/^Heat off, at/).length;
    cleanup();
    return rows;
  });
  expect(ahead).toEqual([1, 0]);
});
