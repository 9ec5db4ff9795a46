import { describe, expect, test } from 'vitest';
import { bareTimeUnit, columnRole, isClockFormat } from '../../../shared-core/csv/column-title.ts';

const time = (perS: number | null) => ({ kind: 'time', perS });
const channel = (name: string, unit: string | null = null) => ({
  kind: 'channel',
  channel: name,
  unit,
});
const temperature = (name: string, unit: string | null = null) => ({
  kind: 'temperature',
  name,
  unit,
});
const other = (name: string, unit: string | null = null) => ({ kind: 'other', name, unit });

describe('what a column holds, by its title', () => {
  test.each([
    ['time_s', time(1)],
    ['Time', time(null)],
    ['t', time(null)],
    ['Time (ms)', time(0.001)],
    ['Elapsed time [min]', time(60)],
    ['Run time, h', time(3600)],
    ['Zeit/s', time(1)],
    ['Laufzeit (Minuten)', time(60)],
    ['Seconds', time(1)],
    ['Elapsed (days)', time(86_400)],
    ['Date/Time', time(null)],
    ['Date and time', time(null)],
    ['Datum & Uhrzeit', time(null)],
    ['fecha y hora', time(null)],
    ['horodatage', time(null)],
    ['Timestamp', time(null)],
  ])('a time: %s', (title, role) => {
    expect(columnRole(title)).toEqual(role);
  });

  test.each([
    ['Elapsed (mm:ss)', { ...time(null), twoParts: 'mm:ss' }],
    ['Time [h:mm]', { ...time(null), twoParts: 'h:mm' }],
    ['Time hh:mm:ss', time(null)],
    ['Uhrzeit (HH:MM:SS)', time(null)],
    ['Time (mm:ss.0)', { ...time(null), twoParts: 'mm:ss' }],
    ['Date (hh:mm)', { kind: 'date' }],
    ['Datum', { kind: 'date' }],
    ['date', { kind: 'date' }],
  ])('a clock or a date: %s', (title, role) => {
    expect(columnRole(title)).toEqual(role);
  });

  test.each([
    ['head_degC', channel('head', '°C')],
    ['still-7_mL', channel('still-7', 'mL')],
    ['ph_1', channel('ph')],
    ['Head temperature [°F]', channel('head', '°F')],
    ['Kopftemperatur', channel('head')],
    ['T_head', channel('head')],
    ['Vapor temp.', channel('head')],
    ['Tête (°C)', channel('head', '°C')],
    ['Pot', channel('pot')],
    ['Sumpf/°C', channel('pot', '°C')],
    ['Siedekolben', channel('pot')],
    ['Tpot', channel('pot')],
    ['Condenser head', channel('condenser-outlet')],
    ['Kühler (°C)', channel('condenser-outlet', '°C')],
    ['Water outlet', channel('condenser-outlet')],
    ['Room', channel('room')],
    ['Air temperature', channel('room')],
    ['Fermenter', channel('ferment')],
    ['Gärung', channel('ferment')],
    ['Balance (g)', channel('receiver', 'g')],
    ['Distillate (mL)', channel('receiver', 'mL')],
    ['Vorlage', channel('receiver')],
    ['Pressure (hPa)', channel('air-pressure', 'hPa')],
    ['Luftdruck', channel('air-pressure')],
  ])('a channel: %s', (title, role) => {
    expect(columnRole(title)).toEqual(role);
  });

  test.each([
    ['Temp [°C]', temperature('temp', '°C')],
    ['Temperature 2', temperature('temperature-2')],
    ['T1', temperature('t1')],
    ['Probe 3 (K)', temperature('probe-3', 'K')],
    ['°C', temperature('c')],
    ['Jacket (°C)', temperature('jacket', '°C')],
    ['Distillate temperature (°C)', temperature('distillate-temperature', '°C')],
    ['Fühler', temperature('f-hler')],
  ])('a temperature without a place: %s', (title, role) => {
    expect(columnRole(title)).toEqual(role);
  });

  test.each([
    ['Head quality', { kind: 'quality', of: 'head' }],
    ['pot_quality', { kind: 'quality', of: 'pot' }],
    ['marks', { kind: 'marks' }],
    ['Remarks', { kind: 'notes' }],
    ['Bemerkungen', { kind: 'notes' }],
    ['Kommentar', { kind: 'notes' }],
    ['observaciones', { kind: 'notes' }],
    ['pH', other('ph')],
    ['Reflux ratio (1)', other('reflux-ratio-1')],
    ['elapsed d', other('elapsed-d')],
    ['3rd column', other('rd-column')],
    ['', other('column')],
    ['Stirrer speed (rpm)', other('stirrer-speed-rpm')],
  ])('something else: %s', (title, role) => {
    expect(columnRole(title)).toEqual(role);
  });
});

test('a title that is nothing but a unit of time', () => {
  expect([' s ', '(min)', '[h]', 'MS', 'tage', 'seconds'].map(bareTimeUnit)).toEqual(
    [1, 60, 3600, 0.001, 86_400, 1].map(time),
  );
  expect(['t', 'time s', '°C', '', 'constructor'].map(bareTimeUnit)).toEqual([
    null,
    null,
    null,
    null,
    null,
  ]);
});

test('how a clock is written, as in a row of units', () => {
  expect(
    ['hh:mm:ss', 'h:mm', '(mm:ss)', 'mmm:ss', 'HH:MM:SS.000'].map((text) => isClockFormat(text)),
  ).toEqual([true, true, true, true, true]);
  expect(['s', 'time hh:mm', '10:15', 'mm'].map((text) => isClockFormat(text))).toEqual([
    false,
    false,
    false,
    false,
  ]);
});
