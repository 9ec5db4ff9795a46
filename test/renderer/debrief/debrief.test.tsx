// @vitest-environment happy-dom
import { cleanup, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { Debrief } from '../../../renderer/debrief/index.ts';
import { pearSummary } from '../support/pear-summary.ts';
import { renderInWindow } from '../support/render-in-window.tsx';
import { filmOf, simulatedRecord } from '../support/simulated-film.ts';

afterEach(cleanup);

test('what a run had to do without is told as soon as it has ended', async () => {
  const missing = '3 readings are missing between 0:01:01 and 0:11:00.';
  const summary = { ...pearSummary, leftOut: [missing] };
  const film = await filmOf(simulatedRecord({ name: 'Pear ferment', pressureKPa: 99.4, seed: 1 }));
  const agreement = { kind: 'nothing-recorded' } as const;
  renderInWindow(<Debrief progress={{ step: 'ready', film, summary, lateMarks: [], agreement }} />);
  expect(screen.getByText(`✕ ${missing}`)).toBeTruthy();
});
