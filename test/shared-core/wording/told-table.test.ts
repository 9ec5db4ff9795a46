import { afterEach, expect, test } from 'vitest';
import { explainCsvProblem, readReadingsCsv, setLanguage, told } from '#shared-core';

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

test('a table that can’t be read is refused in German, whatever stands in it', () => {
  const problem = explainCsvProblem({ kind: 'no-head-column', titles: ['Zeit {a}', '<b>'] });
  setLanguage('de');
  expect(told(problem)).toBe(
    'Keine Spalte mit der Kopftemperatur wurde gefunden unter "Zeit {a}", "<b>". Einer den Titel „head_degC“ (°C) geben.',
  );
});
