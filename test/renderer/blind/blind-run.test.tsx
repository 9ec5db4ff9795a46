// @vitest-environment happy-dom
import { cleanup, fireEvent, screen, within } from '@testing-library/react';
import { afterEach, beforeAll, describe, expect, test } from 'vitest';
import { stageLabels } from '#shared-core';
import { courseOfFilm } from '../../../renderer/blind/course-of-film.ts';
import { BlindRun } from '../../../renderer/blind/index.ts';
import type { Film } from '../../../renderer/replay/film.ts';
import { bandOnProbe } from '../../../renderer/strip/index.ts';
import { pearSummary } from '../support/pear-summary.ts';
import { renderInWindow } from '../support/render-in-window.tsx';
import { filmOf, simulatedRecord } from '../support/simulated-film.ts';

const advised = 'From 0:20:00 on nobody was advised: the monitor had failed.';
const summary = { ...pearSummary, leftOut: [advised] };

let film: Film;

beforeAll(async () => {
  film = await filmOf(simulatedRecord({ name: 'Pear ferment', pressureKPa: 99.4, seed: 1 }));
});
afterEach(cleanup);

const showUpTo = (timeS: number) =>
  fireEvent.change(screen.getByRole('slider', { name: 'Time in the run' }), {
    target: { value: String(timeS) },
  });
const pick = (name: string) => fireEvent.click(screen.getByRole('radio', { name }));

describe('BlindRun', () => {
  test('hides stages, band, prompts and marks until the record is revealed', () => {
    const { container } = renderInWindow(
      <BlindRun film={film} summary={summary} onClose={() => {}} />,
    );
    showUpTo(film.endS);
    const text = container.textContent ?? '';
    for (const hidden of [
      ...Object.values(stageLabels),
      'azeotrope',
      'record:',
      'prompt came',
      'Heat eased',
      advised,
    ]) {
      expect(text).not.toContain(hidden);
    }
    expect(container.querySelector('.recorded-line')).toBe(null);
  });

  test('neither scale nor trace tells when the heat was taken off', () => {
    const { container } = renderInWindow(
      <BlindRun film={film} summary={summary} onClose={() => {}} />,
    );
    const slider = screen.getByRole<HTMLInputElement>('slider', { name: 'Time in the run' });
    expect(Number(slider.max) % 1800).toBe(0);
    expect(Number(slider.max)).toBeGreaterThan(film.endS);
    const heatOffS = courseOfFilm(film).heatOffS ?? 0;
    showUpTo(heatOffS);
    const trace = () => container.querySelector('.curve')?.getAttribute('d');
    const upToHeatOff = trace();
    showUpTo(film.endS);
    expect(trace()).toBe(upToHeatOff);
    expect(screen.getByText(/No more is shown until you reveal it/)).toBeTruthy();
  });

  test('takes guesses of several groups by button and slider and scores them kindly', () => {
    renderInWindow(<BlindRun film={film} summary={summary} onClose={() => {}} />);
    const reveal = screen.getByRole<HTMLButtonElement>('button', { name: 'Reveal the record' });
    expect(reveal.disabled).toBe(true);
    showUpTo(2400);
    pick('Heat off');
    fireEvent.click(screen.getByRole('button', { name: 'Set at 0:40:00' }));
    pick('B');
    fireEvent.change(screen.getByRole('slider', { name: 'B: heat off' }), {
      target: { value: '2200' },
    });
    fireEvent.click(reveal);
    const scores = screen.getByRole('region', { name: 'Heat off' });
    const rows = within(scores).getAllByRole('row').slice(1);
    expect(rows.map((row) => within(row).getByRole('rowheader').textContent)).toEqual([
      'Group A',
      'Group B',
    ]);
    expect(rows[0]?.textContent).toMatch(/−\d+\ss−\d\.\d\sK−\d\.\d\smL\+\d\.\d\s% vol/);
    expect(screen.getByText(`✕ ${advised}`)).toBeTruthy();
    expect(within(scores).getByText(/Nearest: group A/)).toBeTruthy();
    fireEvent.click(screen.getByRole('button', { name: 'Hide it and guess anew' }));
    expect(screen.getByRole('table', { name: 'Guesses so far' }).textContent).not.toContain('0:40');
  });

  test('reveals the band where the run strip draws it: on the scale of this probe', async () => {
    // A probe that reads 1 K low, as the monitor finds out while the head holds where no vapour can.
    const record = simulatedRecord({ name: 'Pear ferment', pressureKPa: 99.4, seed: 1 });
    const low = record.inputs.map((input) =>
      input.kind === 'reading' && input.channel === 'head'
        ? { ...input, value: input.value - 1 }
        : input,
    );
    const lowFilm = await filmOf({ ...record, inputs: low });
    const plateau = lowFilm.frames.at(-1)?.snapshot?.plateau;
    if (!plateau) throw new Error('no snapshot');
    expect(plateau.probeReadsHighK).toBeLessThan(-0.5);
    const { container } = renderInWindow(
      <BlindRun film={lowFilm} summary={summary} onClose={() => {}} />,
    );
    showUpTo(2400);
    fireEvent.click(screen.getByRole('button', { name: 'Set at 0:40:00' }));
    fireEvent.click(screen.getByRole('button', { name: 'Reveal the record' }));
    const band = container.querySelector('rect[fill="url(#texture-band)"]');
    const axis = container.querySelector('.recharts-yAxis .recharts-cartesian-axis-line');
    const [above, below] = ['y1', 'y2'].map((end) => Number(axis?.getAttribute(end)));
    if (!above || !below) throw new Error('no axis');
    // The whole scale goes from 10 to 105 °C.
    const celsiusAt = (y: number) => 10 + (95 * (below - y)) / (below - above);
    const top = Number(band?.getAttribute('y'));
    const { limitC, azeotropeC } = bandOnProbe(plateau);
    expect(celsiusAt(top)).toBeCloseTo(limitC, 6);
    expect(celsiusAt(top + Number(band?.getAttribute('height')))).toBeCloseTo(azeotropeC, 6);
  });
});
