// @vitest-environment happy-dom
import { cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import type { MarkBody } from '#shared-core';
import { MeasureForm } from '../../../renderer/measure/index.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

test('tells the strength at 20 °C while the reading is typed, then hands the mark on', () => {
  const made: MarkBody[] = [];
  renderInWindow(<MeasureForm cuts={2} chargeMl={350} canAct onMark={(mark) => made.push(mark)} />);
  fireEvent.change(screen.getByLabelText('Liquid'), { target: { value: 'cut-2' } });
  fireEvent.change(screen.getByLabelText('Measured with'), { target: { value: 'alcoholometer' } });
  fireEvent.change(screen.getByLabelText('Strength on the scale'), { target: { value: '88,5' } });
  const told = () => screen.getByRole('status').textContent?.replaceAll('\u00a0', ' ');
  expect(told()).toMatch(
    /^Strength at 20 °C: 88\.5 % vol, between 8\d\.\d–8\d\.\d % vol \(95 %\)$/,
  );
  fireEvent.change(screen.getByLabelText(/^Temperature of the liquid/), {
    target: { value: '30' },
  });
  // By the table of OIML R 22 an alcoholometer reads too high in warm liquid.
  expect(told()).toMatch(/^Strength at 20 °C: 8[56]\.\d % vol/);
  fireEvent.click(screen.getByRole('button', { name: 'Keep measurement' }));
  expect(made).toEqual([
    {
      type: 'liquid-strength',
      liquid: 'cut-2',
      alcoholByVolume: 88.5,
      temperatureC: 30,
      strengthUncertaintyAbv: 0.5,
      temperatureUncertaintyK: 0.5,
    },
  ]);
});

test('shows the uncertainty that will be kept, and widens the strength by the one that is typed', () => {
  const made: MarkBody[] = [];
  renderInWindow(<MeasureForm cuts={2} chargeMl={350} canAct onMark={(mark) => made.push(mark)} />);
  fireEvent.change(screen.getByLabelText('Measured with'), { target: { value: 'alcoholometer' } });
  fireEvent.change(screen.getByLabelText('Strength on the scale'), { target: { value: '40' } });
  expect(screen.getByLabelText<HTMLInputElement>('± strength').value).toBe('0.5');
  expect(screen.getByLabelText<HTMLInputElement>('± temperature').value).toBe('2');
  fireEvent.change(screen.getByLabelText(/^Temperature of the liquid/), {
    target: { value: '20' },
  });
  expect(screen.getByLabelText<HTMLInputElement>('± temperature').value).toBe('0.5');
  fireEvent.change(screen.getByLabelText('± strength'), { target: { value: '3' } });
  const told = screen.getByRole('status').textContent?.replaceAll('\u00a0', ' ');
  expect(told).toMatch(
    /^Strength at 20 °C: 40\.0 % vol, between 3[34]\.\d–4[56]\.\d % vol \(95 %\)$/,
  );
});

test('asks what the scale of a refractometer shows before it keeps a reading', () => {
  const made: MarkBody[] = [];
  renderInWindow(<MeasureForm cuts={2} chargeMl={350} canAct onMark={(mark) => made.push(mark)} />);
  fireEvent.change(screen.getByLabelText('Measured with'), { target: { value: 'refractometer' } });
  expect(screen.getByText(/one reading stands for two strengths/)).toBeTruthy();
  fireEvent.change(screen.getByLabelText('Reading of the refractometer'), {
    target: { value: '40' },
  });
  const keep = () => fireEvent.click(screen.getByRole('button', { name: 'Keep measurement' }));
  keep();
  expect(screen.getByText('Say what its scale shows.')).toBeTruthy();
  fireEvent.change(screen.getByLabelText('Its scale shows'), { target: { value: 'volume' } });
  keep();
  expect(made).toMatchObject([{ type: 'liquid-refractometer', scale: 'volume', percent: 40 }]);
});

test('a volume beyond the charge is asked about once, and kept if the person insists', () => {
  const made: MarkBody[] = [];
  renderInWindow(<MeasureForm cuts={2} chargeMl={350} canAct onMark={(mark) => made.push(mark)} />);
  fireEvent.change(screen.getByLabelText('Volume'), { target: { value: '3500' } });
  const keep = () => fireEvent.click(screen.getByRole('button', { name: 'Keep measurement' }));
  keep();
  expect(made).toEqual([]);
  expect(screen.getByText(/More than the 350 mL that went into the pot/)).toBeTruthy();
  keep();
  expect(made).toMatchObject([{ type: 'liquid-volume', volumeMl: 3500 }]);
});
