// @vitest-environment happy-dom
import { cleanup, fireEvent, screen, waitFor } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import {
  type RequestAnswer,
  type RequestName,
  serialSourceSchema,
  setUpSchema,
} from '#shared-core';
import type { WindowParts } from '../../../renderer/parts/stores-context.ts';
import { Invitation } from '../../../renderer/prepare/invitation.tsx';
import { KeepRig } from '../../../renderer/prepare/keep-rig.tsx';
import { RigBar } from '../../../renderer/prepare/rig-bar.tsx';
import { firstDraft } from '../../../renderer/stores/prepare-draft.ts';
import { FirstCautions } from '../../../renderer/window/first-cautions.tsx';
import { nothingRecorded } from '../support/nothing-recorded.ts';
import { renderInWindow } from '../support/render-in-window.tsx';
import { runUnderWay } from '../support/running-run.ts';

type KnownRigs = RequestAnswer<'rigs/list'>;

const keptAtIso = '2026-01-01T09:00:00.000Z';
const setUp = setUpSchema.parse({
  name: 'Pear',
  charge: { volumeMl: 420, strengthAbv: 8.5 },
  source: serialSourceSchema.parse({ kind: 'serial', path: '/dev/ttyACM0' }),
  altitudeM: 540,
});
const moved = {
  ...setUp,
  source: serialSourceSchema.parse({ kind: 'serial', path: '/dev/ttyACM4' }),
};
const known: KnownRigs = {
  last: { keptAtIso, setUp },
  rigs: [{ name: 'Lab 2', keptAtIso, setUp: { ...setUp, leastStrengthAbv: 70 } }],
  hasRehearsed: true,
};

function show(element: React.ReactElement, told: KnownRigs, fill?: (parts: WindowParts) => void) {
  const asked: [RequestName, unknown][] = [];
  let parts: WindowParts | undefined;
  const request = async (name: RequestName, body: unknown) => {
    asked.push([name, body]);
    return { ok: true, value: told } as never;
  };
  renderInWindow(element, request as never, (made) => {
    parts = made;
    made.bench.getState().dispatch({ type: 'rigs', rigs: told });
    fill?.(made);
  });
  return { asked, draft: () => parts?.prepare.getState().draft };
}

afterEach(cleanup);

test('the set-up of the last lesson comes by one press, with its probe where it is plugged in today, and without a check', async () => {
  const { asked, draft } = show(
    <RigBar canAct />,
    { ...known, last: { keptAtIso, setUp: moved } },
    (parts) => {
      const confirms = [{ check: 'attended', role: 'teacher' as const }];
      parts.prepare.getState().replace({ ...firstDraft, stationPressure: '1013', confirms });
    },
  );
  fireEvent.click(screen.getByRole('button', { name: 'Same as last time' }));
  await waitFor(() => expect(draft()?.chargeVolumeMl).toBe('420'));
  expect(draft()).toMatchObject({ altitudeM: '540', stationPressure: '', confirms: [] });
  await waitFor(() => expect(asked).toContainEqual(['probe/connect', { source: moved.source }]));
  await screen.findByText(/Filled in as in “last time”/);
});

test('a rig comes under the name the teacher gave it', async () => {
  const { draft } = show(<RigBar canAct />, known);
  fireEvent.click(screen.getByRole('button', { name: 'Lab 2' }));
  await waitFor(() => expect(draft()?.leastStrengthAbv).toBe('70'));
});

test('before the first lesson nothing offers a last one, and a viewer fills in nothing', () => {
  show(<RigBar canAct />, { last: null, rigs: [], hasRehearsed: false });
  expect(document.body.textContent).toBe('');
  cleanup();
  const { asked } = show(<RigBar canAct={false} />, known);
  expect(screen.getByRole<HTMLButtonElement>('button', { name: 'Lab 2' }).disabled).toBe(true);
  expect(asked).toEqual([]);
});

test('a rig is kept under its name, replaced by that name, and taken away', async () => {
  const { asked } = show(<KeepRig canAct />, known, (parts) => {
    parts.prepare.getState().replace({ ...firstDraft, altitudeM: '12' });
  });
  const field = screen.getByLabelText('Name of the rig');
  fireEvent.change(field, { target: { value: 'Lab 2 ' } });
  fireEvent.click(screen.getByRole('button', { name: 'Replace' }));
  await screen.findByText(/Kept as “Lab 2”/);
  expect(asked[0]).toMatchObject(['rigs/keep', { name: 'Lab 2', setUp: { altitudeM: 12 } }]);
  fireEvent.click(screen.getByRole('button', { name: 'Take away: Lab 2' }));
  await waitFor(() => expect(asked[1]).toEqual(['rigs/forget', { name: 'Lab 2' }]));
});

test('the rehearsal is explained until it was had once, then it is one line', () => {
  show(<Invitation canAct />, { ...known, last: null, hasRehearsed: false });
  expect(screen.getByText(/A simulated still plays/)).toBeTruthy();
  cleanup();
  show(<Invitation canAct />, known);
  expect(screen.queryByText(/A simulated still plays/)).toBe(null);
  expect(screen.getByRole('button', { name: 'Start the rehearsal' })).toBeTruthy();
});

test('the cautions do not open again for a bench that has had a run, whatever the window’s address', () => {
  const openAt = (told: KnownRigs) => {
    show(<FirstCautions />, told, (parts) => runUnderWay(parts, [], nothingRecorded, false));
    const isOpen = screen.queryByRole('dialog') !== null;
    cleanup();
    return isOpen;
  };
  expect([openAt({ ...known, last: null }), openAt(known)]).toEqual([true, false]);
});
