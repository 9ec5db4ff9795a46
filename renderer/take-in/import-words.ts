import type { CsvDialect } from '#shared-core';
import type { Encoding } from './file-beginning.ts';

const holdsWords: Readonly<Record<string, string>> = {
  nothing: 'Not used',
  time: 'Time',
  head: 'Head temperature',
  pot: 'Pot temperature',
  'condenser-outlet': 'Condenser outlet temperature',
  room: 'Room temperature',
  ferment: 'Ferment temperature',
  receiver: 'Receiver, mass or volume',
  'air-pressure': 'Air pressure',
  marks: 'Marks',
  notes: 'Remarks',
};

export function holdsName(holds: string): string {
  return holdsWords[holds] ?? `Something else: ${holds}`;
}

const option = <T extends string>(value: T, label: string) => ({ value, label });

export const delimiterOptions = [
  option<CsvDialect['delimiter']>(',', 'Comma'),
  option<CsvDialect['delimiter']>(';', 'Semicolon'),
  option<CsvDialect['delimiter']>('\t', 'Tab'),
  option<CsvDialect['delimiter']>('|', 'Upright line'),
];

export const decimalOptions = [
  option('either', 'Point or comma'),
  option('.', 'Point'),
  option(',', 'Comma'),
] as const;

export const dateOptions = [
  option('day-month', 'Day first'),
  option('month-day', 'Month first'),
] as const;

export const timeUnitOptions = [
  option('s', 's, or a date'),
  option('ms', 'ms'),
  option('min', 'min'),
  option('h', 'h'),
  option('mm:ss', 'mm:ss'),
  option('h:mm', 'h:mm'),
] as const;

export const encodingOptions: readonly { readonly value: Encoding; readonly label: string }[] = [
  option('auto', 'Found by itself'),
  option('utf-8', 'UTF-8'),
  option('utf-16le', 'UTF-16, little end first'),
  option('utf-16be', 'UTF-16, big end first'),
  option('windows-1252', 'Western (Windows-1252)'),
  option('iso-8859-15', 'Western (ISO 8859-15)'),
  option('windows-1250', 'Central European (Windows-1250)'),
  option('windows-1251', 'Cyrillic (Windows-1251)'),
  option('macintosh', 'Western (Mac Roman)'),
  option('gb18030', 'Chinese (GB 18030)'),
  option('shift_jis', 'Japanese (Shift JIS)'),
];

const asWritten = '';
export const unitOptions = [
  option(asWritten, 'As written'),
  ...['°C', '°F', 'K', 'g', 'kg', 'mL', 'kPa', 'hPa', 'Pa', 'mmHg'].map((unit) =>
    option(unit, unit),
  ),
];
