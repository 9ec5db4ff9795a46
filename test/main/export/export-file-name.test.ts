import { expect, test } from 'vitest';
import { exportFileName } from '#main';

test.each([
  ['Pear-juice ferment', '20250314T101500Z-pear-juice-ferment.csv'],
  ['Gärung: „Birne“ / 2', '20250314T101500Z-garung-birne-2.csv'],
  ['../../etc/passwd', '20250314T101500Z-etc-passwd.csv'],
  ['発酵', '20250314T101500Z.csv'],
  ['x'.repeat(120), `20250314T101500Z-${'x'.repeat(60)}.csv`],
])(
  'a run named %s is exported under a name that sorts by time and fits every disk',
  (name, file) => {
    expect(exportFileName({ runId: '20250314T101500Z', name }, 'csv')).toBe(file);
  },
);
