import { type CsvDialect, say } from '#shared-core';
import { namesOf } from '../words/index.ts';
import type { Encoding } from './file-beginning.ts';

const holdsWords: Readonly<Record<string, string>> = {
  nothing: say('Not used'),
  time: say('Time'),
  'finer-time': say('Time, the part below a minute or an hour'),
  marks: say('Marks'),
  notes: say('Remarks'),
};

export function holdsName(holds: string): string {
  const known = namesOf(holds)?.column ?? holdsWords[holds];
  return known ?? say('Something else: {holds}', { holds });
}

const option = <T extends string>(value: T, label: string) => ({ value, label });

export const delimiterOptions = [
  option<CsvDialect['delimiter']>(',', say('Comma')),
  option<CsvDialect['delimiter']>(';', say('Semicolon')),
  option<CsvDialect['delimiter']>('\t', say('Tab')),
  option<CsvDialect['delimiter']>('|', say('Upright line')),
  option<CsvDialect['delimiter']>(' ', say('Spaces')),
];

export const decimalOptions = [
  option('either', say('Point or comma')),
  option('.', say('Point')),
  option(',', say('Comma')),
] as const;

export const dateOptions = [
  option('day-month', say('Day first')),
  option('month-day', say('Month first')),
] as const;

export const timeUnitOptions = [
  option('s', say('s, or a date')),
  option('ms', 'ms'),
  option('min', 'min'),
  option('h', 'h'),
  option('d', say('d, or a date')),
  option('mm:ss', 'mm:ss'),
  option('h:mm', 'h:mm'),
] as const;

export const encodingOptions: readonly { readonly value: Encoding; readonly label: string }[] = [
  option('auto', say('Found by itself')),
  option('utf-8', 'UTF-8'),
  option('utf-16le', say('UTF-16, little end first')),
  option('utf-16be', say('UTF-16, big end first')),
  option('windows-1252', say('Western (Windows-1252)')),
  option('iso-8859-15', say('Western (ISO 8859-15)')),
  option('windows-1250', say('Central European (Windows-1250)')),
  option('windows-1251', say('Cyrillic (Windows-1251)')),
  option('macintosh', say('Western (Mac Roman)')),
  option('gb18030', say('Chinese (GB 18030)')),
  option('shift_jis', say('Japanese (Shift JIS)')),
];

const asWritten = '';
export const unitOptions = [
  option(asWritten, say('As written')),
  ...['°C', '°F', 'K', 'g', 'kg', 'mL', 'kPa', 'hPa', 'Pa', 'mmHg'].map((unit) =>
    option(unit, unit),
  ),
];
