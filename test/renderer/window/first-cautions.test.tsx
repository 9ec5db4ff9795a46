// @vitest-environment happy-dom
import { cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { MainWindow } from '../../../renderer/window/index.ts';
import { renderInWindow } from '../support/render-in-window.tsx';
import { runUnderWay } from '../support/running-run.ts';

afterEach(() => {
  cleanup();
  window.location.hash = '';
});

test('the cautions open once by themselves, and not again once they were closed', () => {
  window.location.hash = 'look-back';
  let welcomed: () => boolean = () => false;
  renderInWindow(<MainWindow />, undefined, (parts) => {
    runUnderWay(parts, [], undefined, false);
    welcomed = () => parts.preferences.getState().welcomed;
  });
  expect(screen.getByRole('dialog').textContent).toContain('This program is no safety device.');
  fireEvent.click(screen.getByRole('button', { name: 'Go on' }));
  expect([screen.queryByRole('dialog'), welcomed()]).toEqual([null, true]);
});
