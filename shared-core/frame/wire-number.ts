import type { WireUnit } from './raw-value.ts';

/** A number with its unit, a word for "no value", or neither. */
export type WireNumber =
  | { readonly kind: 'number'; readonly value: number; readonly unit: WireUnit | null }
  | { readonly kind: 'no-value' }
  | { readonly kind: 'neither' };

const point = /^([+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d{1,3})?)(.*)$/;
const pointOrComma = /^([+-]?(?:\d+[.,]?\d*|[.,]\d+)(?:[eE][+-]?\d{1,3})?)(.*)$/;
const noValue =
  /^[+-]?(?:nan|inf|infinity|null|none|n\/a|open|err|error|fault|overrange|o\.?l\.?|-{2,})$/i;

/** Spellings in the wild; the last ones are UTF-8 degree and ohm signs read as Latin-1. */
const unitSpellings: ReadonlyMap<string, WireUnit> = new Map(
  Object.entries({
    c: '°C',
    '°c': '°C',
    ºc: '°C',
    'â°c': '°C',
    degc: '°C',
    'deg c': '°C',
    celsius: '°C',
    f: '°F',
    '°f': '°F',
    'â°f': '°F',
    degf: '°F',
    'deg f': '°F',
    fahrenheit: '°F',
    k: 'K',
    kelvin: 'K',
    ohm: 'ohm',
    ohms: 'ohm',
    'î©': 'ohm',
    g: 'g',
    kg: 'kg',
    ml: 'mL',
    'cm³': 'mL',
    cm3: 'mL',
    'cm^3': 'mL',
    ccm: 'mL',
    kpa: 'kPa',
    hpa: 'hPa',
    mbar: 'hPa',
    pa: 'Pa',
    mmhg: 'mmHg',
  } as const),
);

/**
 * Reads a strict decimal number with an optional unit; nothing else in the text is tolerated.
 *
 * @example
 * readWireNumber('78.42 C', false) // => {"kind":"number","value":78.42,"unit":"°C"}
 * readWireNumber('78,42', true) // => {"kind":"number","value":78.42,"unit":null}
 * readWireNumber('nan', false) // => {"kind":"no-value"}
 * readWireNumber('78.42x', false) // => {"kind":"neither"}
 */
export function readWireNumber(text: string, decimalComma: boolean): WireNumber {
  const trimmed = text.trim();
  const found = (decimalComma ? pointOrComma : point).exec(trimmed);
  if (found === null) return { kind: noValue.test(trimmed) ? 'no-value' : 'neither' };
  const [, digits = '', rest = ''] = found;
  const unit = readUnit(rest);
  const value = Number(digits.replace(',', '.'));
  if (unit === undefined || !Number.isFinite(value)) return { kind: 'neither' };
  return { kind: 'number', value, unit };
}

/** The unit a text stands for, null for an empty text, undefined when it is no unit. */
export function readUnit(text: string): WireUnit | null | undefined {
  const spelling = text.trim().toLowerCase();
  return spelling === '' ? null : unitSpellings.get(spelling);
}
