// @vitest-environment happy-dom
import { cleanup, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import type { RequestAnswer } from '#shared-core';
import type { WindowParts } from '../../../renderer/parts/stores-context.ts';
import { useFilm } from '../../../renderer/replay/index.ts';
import { problemWords } from '../../../renderer/words/index.ts';
import { simulatedRun } from '../../support/simulated-run.ts';
import { pearSummary } from '../support/pear-summary.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

function Shown() {
  const progress = useFilm('some-run');
  return <p>{progress.step === 'failed' ? problemWords(progress.problem) : progress.step}</p>;
}

test('a run on which the monitor fails is told as such, and not gone through for ever', async () => {
  const run = simulatedRun({ name: 'Monday', pressureKPa: 101.3, seed: 1 });
  const { settings } = run;
  const page: RequestAnswer<'runs/read'> = {
    ...run,
    summary: { ...pearSummary },
    // No boundary lets this pass: it stands for whatever the monitor trips over.
    settings: { ...settings, pressure: { ...settings.pressure, pressureKPa: Number.NaN } },
    inputs: [...run.inputs],
    nextIndex: null,
  };
  renderInWindow(<Shown />, (async () => ({
    ok: true,
    value: page,
  })) as unknown as WindowParts['service']['request']);
  expect(await screen.findByText(/^Something went wrong inside the program .*kept/)).toBeTruthy();
});
