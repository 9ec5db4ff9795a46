// @vitest-environment happy-dom
import { cleanup, fireEvent, screen, waitFor } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import type { RequestName } from '#shared-core';
import { createNoteDraftStore } from '../../../renderer/stores/index.ts';
import { MainWindow } from '../../../renderer/window/index.ts';
import { renderInWindow } from '../support/render-in-window.tsx';
import { heatOffPrompt, runUnderWay } from '../support/running-run.ts';

function show(isTaken: boolean) {
  window.location.hash = 'watch';
  const asked: unknown[] = [];
  const request = async (name: RequestName, body: unknown) => {
    if (name === 'run/mark') asked.push((body as { mark: unknown }).mark);
    return isTaken
      ? ({ ok: true, value: { markId: 1, timeS: 1 } } as never)
      : ({ ok: false, error: { kind: 'disconnected' } } as never);
  };
  renderInWindow(<MainWindow />, request as never, (parts) => runUnderWay(parts, [heatOffPrompt]));
  fireEvent.click(screen.getByRole('button', { name: 'Note' }));
  return asked;
}

const field = () => screen.getByRole<HTMLTextAreaElement>('textbox', { name: /see or do/ });

afterEach(() => {
  cleanup();
  window.location.hash = '';
});

test('a note is no dialog: a prompt stays in reach beside it, and Enter keeps the note', async () => {
  const asked = show(true);
  expect(screen.queryByRole('dialog')).toBeNull();
  expect(document.activeElement).toBe(field());
  expect(screen.getByRole('button', { name: /^Heat is off/ })).toBeDefined();
  fireEvent.change(field(), { target: { value: 'first drop, cloudy' } });
  fireEvent.keyDown(field(), { key: 'Enter' });
  await waitFor(() => expect(asked).toEqual([{ type: 'note', text: 'first drop, cloudy' }]));
  await waitFor(() => expect(screen.queryByRole('textbox', { name: /see or do/ })).toBeNull());
});

test('a half-written note is there again after Escape, after another place, and when it could not be kept', async () => {
  show(false);
  fireEvent.change(field(), { target: { value: 'froth at the ne' } });
  fireEvent.keyDown(field(), { key: 'Escape' });
  fireEvent.click(screen.getByRole('button', { name: 'Note' }));
  expect(field().value).toBe('froth at the ne');
  fireEvent.keyDown(field(), { key: 'Enter' });
  await screen.findAllByText(/connection to the recorder was lost/);
  expect(field().value).toBe('froth at the ne');
});

test('a half-written note outlives a reload', () => {
  const kept = new Map<string, string>();
  const storage = {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  };
  createNoteDraftStore(storage).getState().write('froth at the ne');
  expect(createNoteDraftStore(storage).getState().text).toBe('froth at the ne');
});
