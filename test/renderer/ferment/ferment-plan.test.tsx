// @vitest-environment happy-dom
import { cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { FermentButtons } from '../../../renderer/ferment/index.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

function openPlan() {
  renderInWindow(<FermentButtons />);
  fireEvent.click(screen.getByRole('button', { name: 'Plan the ferment' }));
}
const type = (name: RegExp, value: string) =>
  fireEvent.change(screen.getByRole('textbox', { name, hidden: true }), { target: { value } });
const said = () =>
  screen.getByRole('status', { hidden: true }).textContent?.replaceAll('\u00a0', ' ');

test('both strengths, the gas and the sugar to weigh are said, with the cautions of that week', () => {
  openPlan();
  fireEvent.change(screen.getByRole('combobox', { hidden: true }), { target: { value: 'hexose' } });
  type(/Mass of it/, '168.3');
  // 168.3 g/L: 10.0 % vol by law, 10.3 in practice, 10.9 by the equation.
  expect(said()).toContain('In practice 10.0 to 10.3 % vol; by the equation, at most 10.9 % vol.');
  expect(said()).toContain('46 L of gas');
  expect(document.body.textContent).toContain('Never seal a vessel that ferments.');
});

test('a fruit by its table is said to be too wide, and a full vessel too full', () => {
  openPlan();
  fireEvent.change(screen.getByRole('combobox', { hidden: true }), { target: { value: 'apple' } });
  type(/The vessel holds/, '1100');
  expect(said()).toContain('measure its gravity');
  expect(said()).toContain('Too full');
});

test('an entry that is no number is told at its field and nothing is claimed', () => {
  openPlan();
  type(/Everything together/, 'much');
  expect(screen.queryByRole('status', { hidden: true })).toBeNull();
  expect(document.body.textContent).toContain('A number from 50 to');
  type(/Everything together/, '1000,5');
  expect(said()).toContain('In practice');
});
