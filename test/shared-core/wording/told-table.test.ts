import { afterEach, expect, test } from 'vitest';
import { explainCsvProblem, readReadingsCsv, setLanguage, told, worded } from '#shared-core';

afterEach(() => setLanguage('en'));

const table = [
  'time (mm:ss),Fühler A (°C),Fühler B (°C)',
  '00:10,20.1,20.0',
  'noon,20.2,20.1',
  '00:30,ab,20.2',
  '00:20,20.3,20.2',
].join('\n');

test('what is said of a table and of its rows is told in German where it is shown', () => {
  const read = readReadingsCsv(table);
  if (!read.ok) throw new Error(explainCsvProblem(read.error));
  setLanguage('de');
  expect(read.value.rejectedRows.map(({ reason }) => told(reason))).toEqual([
    '„noon“ ist keine Zeit',
    '„ab“ in der Spalte „Fühler A (°C)“ ist keine Zahl',
    'die Zeit geht zurück auf 00:20',
  ]);
});

test('titles that pupils gave their columns are shown as they stand in the file, whatever the program calls its own', () => {
  for (const ours of [worded('Mass'), worded('Volume at 20 °C')]) expect(ours).not.toBe('');
  const titles = ['Volume at 20 °C', 'Mass'];
  const problem = explainCsvProblem({ kind: 'no-time-column', titles });
  const unread = explainCsvProblem({ kind: 'no-times-in-column', column: 'Mass' });
  const read = readReadingsCsv('time_s,head_degC,Mass\n0,20,Mass\n1,21,12\n', {
    time: { column: 1 },
    channels: [
      { column: 2, channel: 'head' },
      { column: 3, channel: 'receiver', unit: 'g' },
    ],
  });
  setLanguage('de');
  expect(told(problem)).toContain('"Volume at 20 °C", "Mass"');
  expect(told(unread)).toBe('In der Spalte „Mass“ ist keine Zeit zu lesen.');
  expect(read.ok && read.value.rejectedRows.map(({ reason }) => told(reason))).toEqual([
    '„Mass“ in der Spalte „Mass“ ist keine Zahl',
  ]);
});

test('a table that can’t be read is refused in German, whatever stands in it', () => {
  const problem = explainCsvProblem({ kind: 'no-head-column', titles: ['Zeit {a}', '<b>'] });
  setLanguage('de');
  expect(told(problem)).toBe(
    'Keine Spalte mit der Kopftemperatur wurde gefunden unter "Zeit {a}", "<b>". Einer den Titel „head_degC“ (°C) geben.',
  );
});
