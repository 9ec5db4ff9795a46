import { expect, test } from 'vitest';
import { fermentTable, type KeptFerment } from '#shared-core';
import { readFermentCsv } from '../../../shared-core/ferment/read-ferment-csv.ts';
import { readingsOfFerment } from '../../../shared-core/ferment/readings-of-ferment.ts';

const read: KeptFerment['entries'][number]['read'] = {
  atIso: '2026-05-02T08:00:00Z',
  gravity: { indicated: 1.045, temperatureC: 20 },
  massG: 1480.5,
  temperatureC: 29.5,
  bubblesPerMin: 24,
  ph: null,
  refractometerPercent: null,
  treatments: ['degassed'],
  note: 'a comma, "quotes"',
};
const kept = {
  stated: { beganAtIso: '2026-05-01T08:00:00Z' },
  entries: [
    { entryId: 1, keptAtIso: '2026-05-02T08:00:00Z', read, withdrawnAtIso: null },
    {
      entryId: 2,
      keptAtIso: '2026-05-02T09:00:00Z',
      read: { ...read, gravity: { indicated: 1.2, temperatureC: 20 } },
      withdrawnAtIso: '2026-05-02T10:00:00Z',
    },
  ],
};

test('a ferment’s table is read back as it was kept, the probe’s temperatures among it and nothing withdrawn', () => {
  const table = readFermentCsv(
    fermentTable(kept, [
      { timeH: 12, temperatureC: 30.25 },
      { timeH: 36, temperatureC: 30.5 },
    ]),
  );
  if (!table.ok) throw new Error(JSON.stringify(table.error));
  const heard = (timeH: number, temperatureC: number) => ({
    timeH,
    temperatureC,
    gravity: null,
    massG: null,
    bubblesPerMin: null,
    isDegassed: false,
  });
  expect(table.value.problems).toEqual([]);
  expect(table.value.readings).toEqual([
    heard(12, 30.25),
    ...readingsOfFerment(kept),
    heard(36, 30.5),
  ]);
});

test.each([
  ['newest on top', 'date,gravity', (day: number) => `2026-11-${10 + day}T09:00,`, true],
  ['the days of a spreadsheet', 'Time,SG', (day: number) => `${46_336.4 + day},`, false],
  ['a month by its name', 'When,Hydrometer', (day: number) => `Nov ${10 + day} 2026 09:00,`, false],
])('a table of days and gravities is read: %s', (_, titles, moment, isNewestFirst) => {
  const rows = [1.06, 1.036, 1.02, 1.008].map((gravity, day) => `${moment(day)}${gravity}`);
  const table = readFermentCsv([titles, ...(isNewestFirst ? rows.toReversed() : rows)].join('\n'));
  if (!table.ok) throw new Error(JSON.stringify(table.error));
  const { readings, problems } = table.value;
  expect(problems).toEqual([]);
  expect(readings.map(({ timeH, gravity }) => [Math.round(timeH), gravity])).toEqual([
    [0, 1.06],
    [24, 1.036],
    [48, 1.02],
    [72, 1.008],
  ]);
});
