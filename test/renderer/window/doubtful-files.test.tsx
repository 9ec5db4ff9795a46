// @vitest-environment happy-dom
import { cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import type { RequestAnswer, RequestName } from '#shared-core';
import { DoubtfulFiles } from '../../../renderer/window/doubtful-files.tsx';
import { renderInWindow } from '../support/render-in-window.tsx';
import { recording, runUnderWay } from '../support/running-run.ts';

type DoubtfulFile = RequestAnswer<'kept-files/doubtful'>['files'][number];

const files: readonly DoubtfulFile[] = [
  { name: 'kept-rigs.json', holds: 'rigs', state: 'newer' },
  { name: 'known-probes.json', holds: 'probes', state: 'not-understood' },
  { name: 'ferment-1.jsonl', holds: 'ferment', state: 'not-understood' },
];

function show(state: 'idle' | 'recording') {
  const request = async (name: RequestName) =>
    name === 'kept-files/doubtful'
      ? { ok: true, value: { files } }
      : { ok: false, error: { kind: 'disconnected' } };
  renderInWindow(<DoubtfulFiles />, request as never, (parts) => {
    runUnderWay(parts, [], { ...recording, state });
  });
}

afterEach(cleanup);

test('a person is told what cannot be read, what becomes of it and what to do, until it is read', async () => {
  show('idle');
  const note = await screen.findByRole('status');
  const [newer, damaged, ferment] = [...note.querySelectorAll('p')].map((p) => p.textContent);
  expect(newer).toContain('A newer version of this program wrote “kept-rigs.json”');
  expect(damaged).toContain('stays beside it as “known-probes.json.not-understood”');
  expect(ferment).toContain('left as it is and not listed');
  fireEvent.click(screen.getByRole('button', { name: 'Understood' }));
  expect(screen.queryByRole('status')).toBeNull();
});

test('beside a run it is not said', async () => {
  show('recording');
  await new Promise((resolve) => setTimeout(resolve, 0));
  expect(screen.queryByRole('status')).toBeNull();
});
