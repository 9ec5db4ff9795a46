// @vitest-environment happy-dom
import { cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import type { EventBody } from '#shared-core';
import type { WindowParts } from '../../../renderer/parts/index.ts';
import { MainWindow } from '../../../renderer/window/index.ts';
import { nothingRecorded } from '../support/nothing-recorded.ts';
import { renderInWindow } from '../support/render-in-window.tsx';
import { runUnderWay } from '../support/running-run.ts';

afterEach(() => {
  cleanup();
  window.location.hash = '';
});

const newHere = { last: null, rigs: [], hasRehearsed: false };
/** Look back in a window at whose address nobody was before. */
function open(rigs: typeof newHere | null, status?: EventBody<'recording'>) {
  window.location.hash = 'look-back';
  let opened: WindowParts | null = null;
  renderInWindow(<MainWindow />, undefined, (parts) => {
    runUnderWay(parts, [], status, false);
    if (rigs) parts.bench.getState().dispatch({ type: 'rigs', rigs });
    opened = parts;
  });
  return opened as unknown as WindowParts;
}

test('the cautions open once by themselves, and not again once they were closed', () => {
  const { preferences } = open(newHere, nothingRecorded);
  expect(screen.getByRole('dialog').textContent).toContain('This program is no safety device.');
  fireEvent.click(screen.getByRole('button', { name: 'Go on' }));
  expect([screen.queryByRole('dialog'), preferences.getState().welcomed]).toEqual([null, true]);
});

test('nothing opens above a run under way, nor where nobody could look yet whether a run was had here', () => {
  open(newHere);
  expect(screen.queryByRole('dialog')).toBe(null);
  cleanup();
  open(null, nothingRecorded);
  expect(screen.queryByRole('dialog')).toBe(null);
});
