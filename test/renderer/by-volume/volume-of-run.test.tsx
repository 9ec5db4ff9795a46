// @vitest-environment happy-dom
import { cleanup, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import type { Mark, MarkBody, RunSummary } from '#shared-core';
import { VolumeOfRun } from '../../../renderer/by-volume/index.ts';
import { renderInWindow } from '../support/render-in-window.tsx';
import { filmOf, simulatedRecord } from '../support/simulated-film.ts';

afterEach(cleanup);

const summary = { runId: 'pear', name: 'Pear', imported: false } as unknown as RunSummary;
const volumeMarks = new Set(['receiver-changed', 'volume-read', 'mass-read']);

test('a run whose receivers were measured after it is set against their volumes, as in its report', async () => {
  const record = simulatedRecord({ name: 'Pear', pressureKPa: 99.4, seed: 1 });
  const film = await filmOf({
    ...record,
    inputs: record.inputs.filter(
      (input) => input.kind !== 'mark' || !volumeMarks.has(input.mark.type),
    ),
  });
  const measured: readonly MarkBody[] = [
    { type: 'liquid-volume', liquid: 'cut-1', volumeMl: 28, temperatureC: 20 },
    { type: 'liquid-strength', liquid: 'cut-1', alcoholByVolume: 88, temperatureC: 20 },
  ];
  const lateMarks = measured.map(
    (mark, index): Mark => ({ kind: 'mark', timeS: film.endS, markId: 900 + index, mark }),
  );
  const show = (marks: readonly Mark[]) =>
    renderInWindow(
      <VolumeOfRun film={film} summary={summary} lateMarks={marks} onClose={() => {}} />,
    );
  const { unmount } = show([]);
  expect(screen.queryByRole('table', { name: /^Cuts by the temperature/ })).toBeNull();
  unmount();
  show(lateMarks);
  const table = screen.getByRole('table', { name: /^Cuts by the temperature/ });
  expect(table.textContent).toContain('28.0\u00a0mL');
});
