// @vitest-environment happy-dom
import { cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { type ProbeStatus, serialSourceSchema } from '#shared-core';
import type { WindowParts } from '../../../renderer/parts/stores-context.ts';
import { OthersCalibration } from '../../../renderer/prepare/others-calibration.tsx';
import { stillToDo } from '../../../renderer/prepare/still-to-do.ts';
import { firstDraft, type PrepareDraft } from '../../../renderer/stores/prepare-draft.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

const path = '/dev/ttyACM0';
const mine = '10c4 ea60 0001';
const others = '10c4 ea60 0002';
const asked = 'Say whether the calibration belongs to this probe';
const correction = { offsetK: -0.42, gain: 1, standardUncertaintyK: 0.2 };

const probe: ProbeStatus = {
  state: 'hearing',
  source: serialSourceSchema.parse({ kind: 'serial', path }),
  path,
  device: mine,
  lastLine: '20.1',
  channels: ['head'],
  latest: [],
  readingsPerS: 1,
  rejectedLines: 0,
  droppedBytes: 0,
  problem: null,
  advice: null,
};

function open(change: Partial<PrepareDraft>, heard = probe): WindowParts {
  let opened: WindowParts | null = null;
  renderInWindow(<OthersCalibration />, undefined, (parts) => {
    opened = parts;
    parts.prepare.getState().replace({ ...firstDraft, ...change });
    parts.bench.getState().dispatch({ type: 'probe', probe: heard });
  });
  if (opened === null) throw new Error('nothing was rendered');
  return opened;
}

const toDo = ({ prepare }: WindowParts) =>
  stillToDo([], probe, prepare.getState().draft).map(({ words }) => words);

test('a calibration that was made with another probe is told of beside this one, and must be decided on before the run starts', () => {
  const parts = open({ correction, correctionOf: others });
  expect(screen.getByRole('status').textContent).toContain('−0.42\u00a0K at the plateau');
  expect(toDo(parts)).toContain(asked);
  fireEvent.click(screen.getByRole('button', { name: 'Go on without it' }));
  expect(parts.prepare.getState().draft).toMatchObject({ correction: null, correctionOf: null });
  expect(screen.queryByRole('status')).toBeNull();
  expect(toDo(parts)).not.toContain(asked);
});

test('whoever knows that it belongs to this probe says so, and it stays in use', () => {
  const parts = open({ correction, correctionOf: others });
  fireEvent.click(screen.getByRole('button', { name: 'It belongs to this probe' }));
  expect(parts.prepare.getState().draft).toMatchObject({ correction, correctionOf: mine });
  expect(toDo(parts)).not.toContain(asked);
});

test.each<[string, Partial<PrepareDraft>, Partial<ProbeStatus>]>([
  ['it was made with this one', { correction, correctionOf: mine }, {}],
  ['nobody knows what it was made with', { correction, correctionOf: null }, {}],
  ['there is none', { correction: null, correctionOf: null }, {}],
  ['no probe is heard', { correction, correctionOf: others }, { state: 'lost' }],
  [
    'the simulated still is rehearsed on',
    { correction, correctionOf: others },
    { source: { kind: 'demo', rig: 'glass-bead-column', timeScale: 20, seed: 1 } },
  ],
])('nothing is asked where %s', (_, draft, heard) => {
  open(draft, { ...probe, ...heard });
  expect(screen.queryByRole('status')).toBeNull();
});
