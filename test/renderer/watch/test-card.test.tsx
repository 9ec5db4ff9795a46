// @vitest-environment happy-dom
import { cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { WatchPlace } from '../../../renderer/watch/index.ts';
import { renderInWindow } from '../support/render-in-window.tsx';
import { recording } from '../support/running-run.ts';

afterEach(cleanup);

const texts = (name: string) =>
  [...screen.getByRole('list', { name }).children].map(({ textContent }) => textContent);

test('a window for the class opens in the view for the class: before a run with a card of every line and stage', () => {
  renderInWindow(<WatchPlace />, undefined, ({ bench }) => {
    const { dispatch } = bench.getState();
    dispatch({ type: 'connection', connection: 'open' });
    const app = {
      version: '1',
      modelVersion: '1',
      shell: 'loopback',
      platform: 'linux',
      runsFolder: '/runs',
      mayCommand: false,
      secondScreen: null,
    } as const;
    dispatch({ type: 'app', app });
    const idle = { ...recording, state: 'idle', runId: null, savedToS: null } as const;
    dispatch({ type: 'recording', recording: idle });
  });
  screen.getByRole('heading', { level: 1, name: 'The run has not begun' });
  expect(document.querySelector('#place')?.classList.contains('classroom')).toBe(true);
  expect([texts('Lines of the run'), texts('What comes over, in order')]).toEqual([
    ['the head, as measured', 'what is expected', 'where the head may hold', 'what somebody did'],
    ['Warm-up', 'Low-boiling first fraction', 'Main ethanol fraction', 'Water-rich tail'],
  ]);
  fireEvent.click(screen.getByRole('button', { name: 'Leave' }));
  fireEvent.click(screen.getByRole('button', { name: 'Classroom view' }));
  screen.getByRole('button', { name: 'Full screen' });
});
