// @vitest-environment happy-dom
import { cleanup, screen, within } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { StackingTable } from '../../../renderer/design/index.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

test('a table that may be stacked is a table to those who hear it, and each cell carries its column in words', () => {
  renderInWindow(
    <StackingTable
      name="Record and what-if"
      corner="Call"
      columns={[
        { key: 'recorded', title: 'As recorded', label: 'As recorded' },
        { key: 'supposed', title: 'What if', label: 'What if' },
      ]}
      rows={[{ name: 'Main fraction', cells: ['yes', '≠ no'], different: [1] }]}
    />,
  );
  const table = screen.getByRole('table', { name: 'Record and what-if' });
  const row = within(table).getByRole('row', { name: /^Main fraction/ });
  expect(
    within(row)
      .getAllByRole('cell')
      .map(({ textContent, dataset }) => [textContent, dataset.label, dataset.different]),
  ).toEqual([
    ['yes', 'As recorded', 'false'],
    ['≠ no', 'What if', 'true'],
  ]);
  expect(within(row).getByRole('rowheader').textContent).toBe('Main fraction');
});
