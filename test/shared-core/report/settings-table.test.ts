import { expect, test } from 'vitest';
import { booksOfRun, defaultRunSettings } from '#shared-core';
import { settingsTable } from '../../../shared-core/report/report-tables.ts';
import { plainReport } from './support/plain-report.ts';

const plain = plainReport();

function rowsWith(pressure: (typeof plain)['settings']['pressure']): readonly string[] {
  const study = { ...plain, settings: { ...plain.settings, pressure } };
  return settingsTable(study).rows.map((row) => row.join(': '));
}

test('a report says that the air pressure was found by steam, what the probe showed there, and what that leaves in doubt', () => {
  const steam = { shownC: 99.42, standardUncertaintyK: 0.03, gapStandardUncertaintyK: 0.06 };
  const { pressure } = defaultRunSettings;
  const bySteam = rowsWith({ ...pressure, pressureKPa: 99.3, source: 'steam', steam });
  expect(bySteam.find((row) => row.startsWith('Air pressure'))).toContain(
    'from steam of boiling water, by this probe',
  );
  const shown = bySteam.find((row) => row.startsWith('Head probe in steam'));
  expect(shown).toMatch(/99\.42.*shown; probe and air pressure together leave u = 0\.0\d+ K/);
  const assumed = rowsWith(pressure);
  expect(assumed.filter((row) => row.includes('team'))).toEqual([]);
});

test('a report says what of the charge nobody stated, in its settings and in its books', () => {
  const charge = { ...plain.settings.charge, assumed: ['volume', 'strength'] as const };
  const settings = { ...plain.settings, charge: { ...charge, assumed: [...charge.assumed] } };
  const rowOf = (of: typeof settings | typeof plain.settings) =>
    settingsTable({ ...plain, settings: of }).rows.find(([name]) => name === 'Charge')?.[1];
  expect(rowOf(settings)).toBe(
    `${rowOf(plain.settings)}; volume and strength assumed, nobody stated it`,
  );
  const run = { inputs: [], verdicts: { estimates: [], events: [] }, endS: 60 };
  expect(booksOfRun({ ...run, settings }).assumptions).toEqual([
    `Nobody stated the volume of the charge: ${charge.volumeMl} mL is assumed.`,
    `Nobody stated the strength of the charge: ${charge.strengthAbv} % vol is assumed.`,
  ]);
  expect(booksOfRun({ ...run, settings: plain.settings }).assumptions).toEqual([]);
});

test('a report says of a probe whose kind nobody chose that it is assumed', () => {
  const rowOf = (probe: typeof plain.settings.probe) =>
    settingsTable({ ...plain, settings: { ...plain.settings, probe } }).rows.find(
      ([name]) => name === 'Head probe',
    )?.[1];
  const { probe } = plain.settings;
  expect(rowOf({ ...probe, assumed: ['probe-kind'] })).toBe(
    `${rowOf(probe)}; its kind assumed, nobody stated it`,
  );
});
