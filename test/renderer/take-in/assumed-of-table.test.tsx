// @vitest-environment happy-dom
import { cleanup, fireEvent, screen, waitFor } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { defaultRunSettings, type RequestName, writeSettingsFile } from '#shared-core';
import { readBeginning } from '../../../renderer/take-in/file-beginning.ts';
import { MapFile } from '../../../renderer/take-in/map-file.tsx';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

const rows = Array.from({ length: 30 }, (_, index) => `${index * 10},${20 + index}`);
const table = new File([`time / s,head / °C\n${rows.join('\n')}\n`], 'lesson.csv');

/** What a table is taken in with. */
async function takenWith(stateRest: () => void): Promise<unknown> {
  const said: unknown[] = [];
  const request = async (name: RequestName, body: unknown) => {
    if (name === 'imports/finish') said.push(body);
    return { ok: true, value: { importId: 'i1', receivedBytes: table.size, runId: 'r1' } } as never;
  };
  const beginning = await readBeginning(table);
  if (beginning.kind !== 'read') throw new Error(beginning.sentence);
  renderInWindow(
    <MapFile file={table} beginning={beginning} onTaken={() => {}} onCancel={() => {}} />,
    request as never,
    ({ bench }) => {
      const app = { shell: 'loopback', version: '0', runsFolder: '/runs', mayCommand: true };
      bench.getState().dispatch({ type: 'connection', connection: 'open' });
      bench.getState().dispatch({ type: 'app', app: app as never });
    },
  );
  stateRest();
  const take = await screen.findByRole<HTMLButtonElement>('button', { name: 'Take it in' });
  await waitFor(() => expect(take.disabled).toBe(false));
  fireEvent.click(take);
  await waitFor(() => expect(said).toHaveLength(1));
  cleanup();
  return said[0];
}

test('the kind of probe that a table was measured with is assumed, unless the settings taken with it say', async () => {
  const type = (name: string, value: string) =>
    fireEvent.change(screen.getByLabelText(name), { target: { value } });
  expect(
    await takenWith(() => {
      type('Volume in the pot', '300');
      type('Strength of the charge', '10');
      type('Air pressure at the still', '98.2');
    }),
  ).toMatchObject({ settings: { probe: { assumed: ['probe-kind'] } } });
  const file = writeSettingsFile({ settings: defaultRunSettings, startedAtIso: '' });
  const known = await takenWith(() => {
    const input = document.querySelector<HTMLInputElement>('input[type=file]');
    if (input === null) throw new Error('Nowhere to give the settings.');
    fireEvent.change(input, { target: { files: [new File([file], 'settings.json')] } });
  });
  expect(JSON.stringify(known)).not.toContain('probe-kind');
});
