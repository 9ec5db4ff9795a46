import { describe, expect, test } from 'vitest';
import { fermentColumn } from '../../../shared-core/ferment/ferment-columns.ts';
import {
  explainFermentCsvProblem,
  readFermentCsv,
} from '../../../shared-core/ferment/read-ferment-csv.ts';
import { readingAt } from './support/at-hour.ts';

function read(text: string) {
  const found = readFermentCsv(text);
  if (!found.ok) throw new Error(explainFermentCsvProblem(found.error));
  return found.value;
}
function problem(text: string): string {
  const found = readFermentCsv(text);
  return found.ok ? 'no problem' : explainFermentCsvProblem(found.error);
}

describe('what a column says of a ferment', () => {
  test.each([
    ['time_h', { kind: 'time', perS: 3600 }],
    ['Days', { kind: 'time', perS: 86_400 }],
    ['Time (d)', { kind: 'time', perS: 86_400 }],
    ['Tage', { kind: 'time', perS: 86_400 }],
    ['Date', { kind: 'time', perS: null }],
    ['When', { kind: 'time', perS: null }],
    ['Gravity', { kind: 'gravity', scale: 'gravity' }],
    ['S.G.', { kind: 'gravity', scale: 'gravity' }],
    ['Dichte', { kind: 'gravity', scale: 'gravity' }],
    ['Hydrometer', { kind: 'gravity', scale: 'gravity' }],
    ['Extract (°P)', { kind: 'gravity', scale: 'plato' }],
    ['Brix', { kind: 'gravity', scale: 'plato' }],
    ['Oechsle', { kind: 'gravity', scale: 'oechsle' }],
    ['mass_g', { kind: 'mass', perG: 1, isLoss: false }],
    ['Weight (kg)', { kind: 'mass', perG: 1000, isLoss: false }],
    ['Mass lost (g)', { kind: 'mass', perG: 1, isLoss: true }],
    ['Gewichtsverlust', { kind: 'mass', perG: 1, isLoss: true }],
    ['bubbles_per_min', { kind: 'bubbles' }],
    ['Blasen', { kind: 'bubbles' }],
    ['degassed', { kind: 'degassed' }],
    ['entgast', { kind: 'degassed' }],
    ['temperature_C', { kind: 'temperature', isFahrenheit: false }],
    ['Ferment (°F)', { kind: 'temperature', isFahrenheit: true }],
    ['T1', { kind: 'temperature', isFahrenheit: false }],
    ['Room temperature (°C)', null],
    ['Air temp', null],
    ['Pot (°C)', null],
    ['pH', null],
    ['Colour', null],
  ])('%s', (title, column) => {
    expect(fermentColumn(title)).toEqual(column);
  });
});

describe('a ferment’s table', () => {
  test('has what was read in each row, in its unit', () => {
    const text =
      'Week 10;;;;;;\ntime_h;SG;kg mass;Temp (°F);Blasen;entgast;Colour\n0;1080;1,5;86;;;red\n24;1,05;1,49;;30;ja;red\n;1.04;;;;;\n30;;;;;;red\n48;1.020;NaN;;12;no;\n';
    expect(read(text)).toEqual({
      readings: [
        readingAt(0, { gravity: 1.08, massG: 1500, temperatureC: 30 }),
        readingAt(24, { gravity: 1.05, massG: 1490, bubblesPerMin: 30, isDegassed: true }),
        readingAt(48, { gravity: 1.02, bubblesPerMin: 12 }),
      ],
      problems: ['Line 5: "" is no time.'],
    });
  });

  test('takes extract and degrees Oechsle for the gravity they stand for', () => {
    expect(read('time_h,Plato\n0,9.994\n24,-1\n').readings.map(({ gravity }) => gravity)).toEqual([
      expect.closeTo(1.04, 4),
      expect.closeTo(0.996, 3),
    ]);
    expect(read('time_h,Oechsle\n0,60\n24,-5\n').readings.map(({ gravity }) => gravity)).toEqual([
      1.06, 0.995,
    ]);
  });

  test('tells of what cannot be, by its line', () => {
    const text =
      'time_h,SG,mass_g,temp_C,bubbles\n0,1.3,1500,20,10\n1,0.96,2e7,61,5001\n2,x,1500,-1,-2\n3,0.97,1e7,60,5000\n';
    expect(read(text).problems).toEqual([
      'Line 2: 1.3 in the column "SG" can\'t be a gravity of a ferment (0.97 to 1.2).',
      'Line 3: 0.96 in the column "SG" can\'t be a gravity of a ferment (0.97 to 1.2).',
      'Line 3: 2e7 in the column "mass_g" can\'t be a mass of a ferment (up to 10 t).',
      'Line 3: 61 in the column "temp_C" can\'t be a temperature that yeast survives.',
      'Line 3: 5001 in the column "bubbles" can\'t be a number of bubbles in a minute (0 to 5000).',
      'Line 4: "x" in the column "SG" is not a number.',
      'Line 4: -1 in the column "temp_C" can\'t be a temperature that yeast survives.',
      'Line 4: -2 in the column "bubbles" can\'t be a number of bubbles in a minute (0 to 5000).',
    ]);
    expect(read(text).readings.at(-1)).toEqual(
      readingAt(3, { gravity: 0.97, massG: 1e7, temperatureC: 60, bubblesPerMin: 5000 }),
    );
    expect(read('time_h,Plato\n0,10\n1,41\n2,-9\n').problems).toHaveLength(2);
  });

  test('tells of fifty such lines, and counts the others', () => {
    const rows = Array.from({ length: 60 }, (_, row) => `${row},x\n`).join('');
    const { problems } = read(`time_h,SG\n${rows}60,1.05\n`);
    expect(problems).toHaveLength(51);
    expect(problems.at(-1)).toBe('10 more lines could not be used.');
    const fifty = Array.from({ length: 50 }, (_, row) => `${row},x\n`).join('');
    expect(read(`time_h,SG\n${fifty}60,1.05\n`).problems).toHaveLength(50);
  });

  test('takes masses that begin at nothing and rise for what was lost', () => {
    const masses = (...values: readonly number[]) =>
      read(
        `time_h,mass\n${values.map((mass, at) => `${24 * at},${mass}`).join('\n')}`,
      ).readings.map(({ massG }) => massG);
    expect(masses(0, 20, 50)).toEqual([-0, -20, -50]);
    expect(masses(1, 20)).toEqual([-1, -20]);
    expect(masses(1.5, 20)).toEqual([1.5, 20]);
    expect(masses(1500, 1480)).toEqual([1500, 1480]);
    expect(masses(0, 0)).toEqual([0, 0]);
    expect(read('time_h,mass lost\n0,5\n24,20\n').readings.map(({ massG }) => massG)).toEqual([
      -5, -20,
    ]);
  });

  test('takes a day without an hour for its noon, and the days of a spreadsheet for days', () => {
    const hours = (title: string, ...cells: readonly string[]) =>
      read(`${title};SG\n${cells.map((cell) => `${cell};1,05`).join('\n')}`).readings.map(
        ({ timeH }) => timeH,
      );
    expect(hours('Date', '14.03.2026', '15.03.2026 18:00')).toEqual([0, 30]);
    expect(hours('Date', '2026-03-14', '2026-03-16')).toEqual([0, 48]);
    expect(hours('Time', '46000', '46001')).toEqual([0, 24]);
    expect(hours('Time', '0', '24')).toEqual([0, 24]);
    expect(hours('Days', '0', '1,5')).toEqual([0, 36]);
  });

  test('that cannot be used at all is refused with what would help', () => {
    expect(problem('')).toBe('The file is empty.');
    expect(problem('a\0b')).toBe('The file is not text. Save it as CSV first.');
    expect(problem('SG;pH\n1,05;4\n')).toBe(
      'No time column was found among "SG", "pH", "1,05", "4". Give one the title "time_h" (hours since the yeast went in).',
    );
    expect(problem(' a ; ;b\n')).toContain('among "a", "b".');
    expect(problem('time_h;SG\n0;x\n')).toBe(
      'No row holds a time and a reading among "time_h", "SG". Give the columns the titles "time_h" and "gravity", "mass_g" or "bubbles_per_min".',
    );
    expect(problem('time_h;colour\n0;red\n')).toContain('No row holds a time and a reading');
    const remarks = 'a;b\n'.repeat(21);
    expect(problem(`${remarks}time_h;SG\n0;1,05\n`)).toContain('No time column was found');
    expect(problem(`${'a;b\n'.repeat(20)}time_h;SG\n0;1,05\n`)).toBe('no problem');
  });
});
