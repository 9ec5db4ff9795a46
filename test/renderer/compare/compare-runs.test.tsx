// @vitest-environment happy-dom
import { cleanup, fireEvent, screen, within } from '@testing-library/react';
import { afterEach, beforeAll, describe, expect, test, vi } from 'vitest';
import type { RequestAnswer, RunSummary } from '#shared-core';
import { ChooseRuns, CompareRuns, WhatIf } from '../../../renderer/compare/index.ts';
import { WhatIfResult } from '../../../renderer/compare/what-if-result.tsx';
import type { WindowParts } from '../../../renderer/parts/stores-context.ts';
import type { Film } from '../../../renderer/replay/film.ts';
import { type SimulatedRun, simulatedRun } from '../../support/simulated-run.ts';
import { pearSummary } from '../support/pear-summary.ts';
import { renderInWindow } from '../support/render-in-window.tsx';
import { filmOf, simulatedRecord } from '../support/simulated-film.ts';

const runs: readonly SimulatedRun[] = [
  { name: 'Monday', pressureKPa: 101.3, seed: 1 },
  { name: 'Tuesday', pressureKPa: 92, seed: 2 },
];

const summaryOf = (name: string): RunSummary => ({ ...pearSummary, runId: `id-${name}`, name });

/** Answers `runs/read` with a simulated run; `Gone` is not in the library. */
const request = (async (name: string, body: { runId?: string }) => {
  const run = runs.find((known) => `id-${known.name}` === body.runId);
  if (name !== 'runs/read' || run === undefined) {
    return { ok: false, error: { kind: 'run-not-found', runId: String(body.runId) } };
  }
  const page: RequestAnswer<'runs/read'> = {
    summary: summaryOf(run.name),
    ...simulatedRun(run),
    inputs: [...simulatedRun(run).inputs],
    nextIndex: null,
  };
  return { ok: true, value: page };
}) as WindowParts['service']['request'];

const corrected: RunSummary = {
  ...summaryOf('Tuesday'),
  corrections: ['Corrected after the run: air pressure 101.3 kPa → 92 kPa. Reason: misread'],
};

let film: Film;
beforeAll(async () => {
  film = await filmOf(simulatedRecord(runs[0]!));
});
afterEach(cleanup);

test('both strips of a what-if tell the last stage to the end, as the table below them', () => {
  renderInWindow(<WhatIfResult recorded={film} supposed={film} changed={['air pressure']} />);
  const stages = [...document.querySelectorAll('.what-if-strip li')].map(
    ({ textContent }) => textContent ?? '',
  );
  expect(stages.filter((text) => /lasting/.test(text))).toEqual([]);
  expect(stages.filter((text) => /^Cool-down from .* to the end$/.test(text))).toHaveLength(2);
});

describe('ChooseRuns', () => {
  test('hands on two to four runs in the order ticked; a fifth is for a pack alone', () => {
    const summaries = ['P1', 'P2', 'P3', 'P4', 'P5'].map(summaryOf);
    const onCompare = vi.fn();
    renderInWindow(<ChooseRuns runs={summaries} onCompare={onCompare} />);
    const tick = (name: RegExp) => fireEvent.click(screen.getByRole('checkbox', { name }));
    const go = () => screen.getByRole<HTMLButtonElement>('button', { name: /^Compare/ });
    tick(/P3/);
    expect(go().disabled).toBe(true);
    for (const name of [/P1/, /P2/, /P4/]) tick(name);
    tick(/P5/);
    expect(go().disabled).toBe(true);
    const pack = screen.getByRole<HTMLButtonElement>('button', { name: 'One pack of these 5' });
    expect(pack.disabled).toBe(false);
    tick(/P5/);
    fireEvent.click(go());
    expect(onCompare.mock.calls[0]?.[0].map(({ runId }: RunSummary) => runId)).toEqual([
      'id-P3',
      'id-P1',
      'id-P2',
      'id-P4',
    ]);
  });

  test('offers nothing where there is nothing to compare', () => {
    const { container } = renderInWindow(
      <ChooseRuns runs={[summaryOf('only')]} onCompare={() => {}} />,
    );
    expect(container.textContent).toBe('');
  });
});

describe('CompareRuns', () => {
  test('lays the runs over each other and gives their figures side by side', async () => {
    renderInWindow(
      <CompareRuns runs={runs.map(({ name }) => summaryOf(name))} onClose={() => {}} />,
      request,
    );
    const table = await screen.findByRole('table', { name: 'Runs side by side' });
    expect(
      within(table)
        .getAllByRole('columnheader')
        .map((cell) => cell.textContent),
    ).toEqual(['Run', 'P■ Monday', 'Q★ Tuesday']);
    const pressure = within(table).getByRole('row', { name: /Air pressure/ });
    expect(pressure.textContent).toMatch(/\(101\.30.±.0\.\d\d\).kPa\(92\.00.±.0\.\d\d\).kPa/);
    for (const name of [/Plateau lasted/, /Main fraction lasted/]) {
      const lasted = within(table).getByRole('row', { name });
      expect(lasted.textContent).toMatch(/lasted(\d+ min \(\d+ min – \d+ min\)){2}$/);
    }
    expect(screen.getByRole('img', { name: /P Monday, Q Tuesday/ })).toBeTruthy();
    fireEvent.click(screen.getByRole('radio', { name: 'K above the azeotrope' }));
    expect(screen.getByText('head above the azeotrope, K')).toBeTruthy();
  });

  test('says by the letter of its line what of a run was put right after it', async () => {
    renderInWindow(
      <CompareRuns runs={[summaryOf('Monday'), corrected]} onClose={() => {}} />,
      request,
    );
    const said = await screen.findByText(/^Corrected after the run: air pressure/);
    expect(said.parentElement?.textContent).toMatch(/^Q TuesdayCorrected/);
  });

  test('says which run could not be read', async () => {
    renderInWindow(
      <CompareRuns runs={[summaryOf('Monday'), summaryOf('Gone')]} onClose={() => {}} />,
      request,
    );
    expect(await screen.findByText(/Gone: This run is no longer in the library/)).toBeTruthy();
  });
});

describe('WhatIf', () => {
  test('marks the supposition as one and shows which calls would have been different', async () => {
    renderInWindow(<WhatIf film={film} summary={corrected} onClose={() => {}} />);
    fireEvent.change(screen.getByRole('textbox', { name: 'Least strength' }), {
      target: { value: '88' },
    });
    fireEvent.click(screen.getByRole('button', { name: 'Go through the run again' }));
    const table = await screen.findByRole('table', { name: 'Record and what-if' });
    expect(screen.getByRole('heading', { name: 'What if: this did not happen' })).toBeTruthy();
    expect(screen.getByText(/With another strength limit, \d of \d calls/)).toBeTruthy();
    expect(screen.getByText(/^Corrected after the run: air pressure/)).toBeTruthy();
    const prompt = within(table).getByRole('row', { name: /Heat off, change the receiver/ });
    expect(prompt.textContent).toContain('≠');
  });

  test('asks again where a number is out of range, and computes nothing', () => {
    renderInWindow(<WhatIf film={film} summary={corrected} onClose={() => {}} />);
    fireEvent.change(screen.getByRole('textbox', { name: 'Air pressure' }), {
      target: { value: '1013' },
    });
    expect(screen.getByText('Between 60 and 110 kPa.')).toBeTruthy();
    const go = screen.getByRole<HTMLButtonElement>('button', { name: 'Go through the run again' });
    expect(go.disabled).toBe(true);
  });
});
