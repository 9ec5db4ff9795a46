// @vitest-environment happy-dom
import { cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import type { MarkBody } from '#shared-core';
import { VolumeDialog } from '../../../renderer/watch/volume-dialog.tsx';
import { heardProbe } from '../support/heard-probe.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

test('a volume beyond the charge is marked only when it is pressed a second time, unchanged', () => {
  const made: MarkBody[] = [];
  renderInWindow(
    <VolumeDialog
      kind="volume-read"
      chargeMl={350}
      onMark={(mark) => made.push(mark)}
      onClose={() => {}}
    />,
  );
  const type = (value: string) =>
    fireEvent.change(screen.getByLabelText('Volume in the receiver now'), { target: { value } });
  const press = () => fireEvent.click(screen.getByRole('button', { name: 'Mark the volume' }));
  type('4000');
  press();
  type('400');
  press();
  expect(made).toEqual([]);
  expect(screen.getByText(/More than the 350 mL/)).toBeTruthy();
  press();
  expect(made).toEqual([{ type: 'volume-read', volumeMl: 400 }]);
});

test('a rehearsal has a simulated receiver, marked as it stands when it is read; other runs have none', () => {
  const made: MarkBody[] = [];
  const shown = (rehearsedReceiverMl: number | undefined) =>
    renderInWindow(
      <VolumeDialog
        kind="receiver-changed"
        chargeMl={350}
        onMark={(mark) => made.push(mark)}
        onClose={() => {}}
      />,
      undefined,
      ({ bench }) => {
        bench.getState().dispatch({ type: 'probe', probe: { ...heardProbe, rehearsedReceiverMl } });
      },
    );
  const { unmount } = shown(undefined);
  expect(screen.queryByText(/simulated receiver/)).toBeNull();
  unmount();
  shown(12.5);
  expect(screen.getByText(/^The simulated receiver shows 12\.5\smL, and fills on\.$/)).toBeTruthy();
  fireEvent.click(screen.getByRole('button', { name: 'Mark what it shows now' }));
  expect(made).toEqual([{ type: 'receiver-changed', volumeMl: 12.5 }]);
});
