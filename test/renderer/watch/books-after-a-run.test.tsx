// @vitest-environment happy-dom
import { cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { defaultRunSettings, type RunInput } from '#shared-core';
import type { WindowParts } from '../../../renderer/parts/stores-context.ts';
import { WatchEnded } from '../../../renderer/watch/watch-ended.tsx';
import { openedRun } from '../support/opened-run.ts';
import { pearSummary } from '../support/pear-summary.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

const weighed: RunInput = {
  kind: 'mark',
  timeS: 50,
  markId: 1,
  mark: { type: 'liquid-mass', liquid: 'residue', massG: 31.4, massUncertaintyG: 0.05 },
};

const request = (async (name: string) =>
  name === 'runs/read'
    ? {
        ok: true,
        value: {
          summary: pearSummary,
          settings: defaultRunSettings,
          endS: 60,
          inputs: [weighed],
          nextIndex: null,
        },
      }
    : { ok: false, error: { kind: 'disconnected' } }) as WindowParts['service']['request'];

test('books that were opened from the run that has just ended lead back to it, and say so', async () => {
  renderInWindow(<WatchEnded view={{ ...openedRun(), endedS: 60 }} stripExtra={null} />, request);
  const books = screen.getByRole('button', { name: 'Books' });
  await expect.poll(() => books.hasAttribute('disabled')).toBe(false);
  fireEvent.click(books);
  fireEvent.click(await screen.findByRole('button', { name: 'Back to the run' }));
  expect(await screen.findByRole('button', { name: 'Books' })).toBeTruthy();
});

test('what was entered and the tables made of it tell by how many standard uncertainties they go', async () => {
  renderInWindow(<WatchEnded view={{ ...openedRun(), endedS: 60 }} stripExtra={null} />, request);
  const books = screen.getByRole('button', { name: 'Books' });
  await expect.poll(() => books.hasAttribute('disabled')).toBe(false);
  fireEvent.click(books);
  const entered = await screen.findByText('Residue: (31.40 ± 0.05) g');
  const measurements = entered.closest('section');
  expect(measurements?.textContent).toContain(
    '± here as it was entered, k = 1; in the tables k = 2.',
  );
});
