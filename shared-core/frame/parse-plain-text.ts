import { fail, type Result, succeed } from '../result/index.ts';
import { parseBalanceLine } from './parse-balance-line.ts';
import { type LineRejection, mostValuesInLine, type RawValue } from './raw-value.ts';
import { readUnit, readWireNumber } from './wire-number.ts';

export interface PlainTextOptions {
  readonly decimalComma: boolean;
}

const pair = /^([A-Za-z][^=:]{0,31}?)\s*[=:]\s*(.+)$/;
/** `Sensor 0: 28ff64: 78.4`: a name of several parts before the number. */
const longPair = /^([A-Za-z][^=;,\t]{0,62}?[^=:;,\s])\s*[=:]\s*([^=:]+)$/;
const name = /^[A-Za-z][A-Za-z0-9 _.#-]{0,31}$/;
const wholeNumbersWithComma = /^[+-]?\d+,\d+\s*[^\d,]*$/;
/** Dates and times of day, as loggers put them before their numbers. */
const timeStamp =
  /^(?:\d{4}-\d\d-\d\d|\d{1,2}[./]\d{1,2}[./]\d{2,4})?[T ]?(?:\d{1,2}:\d\d(?::\d\d(?:[.,]\d{1,6})?)?Z?)?$/;

/**
 * Takes the numbers, and their names and units if any, out of one line of text.
 *
 * Understands a lone number, `name=number` or `name: number` lists, `name,number,name,number`, and
 * bare numbers in a row, divided by comma, semicolon, tab or spaces; the lines of balances; a date or time of day before them; and `$…*hh`
 * with its checksum (the exclusive or of all characters between, as NMEA 0183 has it; from memory). It is strict: a line with
 * anything else in it is rejected whole, because half-understood noise looks like a temperature.
 * `78,42` is rejected as ambiguous unless the person has said that the probe writes a decimal comma, or the line
 * shows it: its fields are divided by semicolons, or a unit stands behind the digits.
 *
 * @example
 * parsePlainText('head,78.42,pot,91.3', { decimalComma: false }).value[1].value // => 91.3
 * parsePlainText('78,42', { decimalComma: false }).error.kind // => "ambiguous-comma"
 * parsePlainText('head;78,42', { decimalComma: false }).value[0].value // => 78.42
 * parsePlainText('$TEMP,78.4*5A', { decimalComma: false }).error.kind // => "checksum"
 */
export function parsePlainText(
  line: string,
  options: PlainTextOptions,
): Result<readonly RawValue[], LineRejection> {
  const text = unwrapped(line.trim());
  if (text === null) return fail({ kind: 'checksum', text: line });
  const weighed = parseBalanceLine(text);
  if (weighed !== null) return succeed([weighed]);
  const decimalComma = options.decimalComma || showsDecimalComma(text);
  if (!decimalComma && looksLikeDecimalComma(text)) {
    return fail({ kind: 'ambiguous-comma', text: line });
  }
  const fields = fieldsOf(text, decimalComma).filter((field) => !isTimeStamp(field));
  return valuesOf(fields, decimalComma) ?? fail({ kind: 'not-understood', text: line });
}

/** The text between `$` and `*`, or null when its checksum is wrong; any other text as it is. */
function unwrapped(text: string): string | null {
  const [, body, written] = /^\$([^*]*)(?:\*([0-9A-Fa-f]{2}))?$/.exec(text) ?? [];
  if (body === undefined) return text;
  if (written === undefined) return body;
  let sum = 0;
  for (const character of body) sum ^= character.charCodeAt(0);
  return sum === Number.parseInt(written, 16) ? body : null;
}

/** The numbers with the names before and the units behind them; null when anything is left over. */
function valuesOf(
  fields: readonly string[],
  decimalComma: boolean,
): Result<readonly RawValue[], never> | null {
  const values: RawValue[] = [];
  let pendingName: string | null = null;
  for (const [index, field] of fields.entries()) {
    const previous = values.at(-1);
    const unit = readUnit(field);
    if (unit && previous?.unit === null && pendingName === null) {
      const next = fields[index + 1];
      const nextIsNumber = next !== undefined && isNumber(next, decimalComma);
      if (!nextIsNumber || previous.name === null) {
        values[values.length - 1] = { ...previous, unit };
        continue;
      }
    }
    const [, pairName, pairNumber] = pairIn(field, decimalComma);
    const number = readWireNumber(pairNumber ?? field, decimalComma);
    if (number.kind === 'neither' || (pairName !== undefined && pendingName !== null)) {
      if (pendingName !== null || pairName !== undefined || !name.test(field)) {
        return null;
      }
      pendingName = field;
      continue;
    }
    values.push({
      name: pairName ?? pendingName,
      value: number.kind === 'number' ? number.value : null,
      unit: number.kind === 'number' ? number.unit : null,
    });
    pendingName = null;
  }
  if (pendingName !== null || values.length === 0 || values.length > mostValuesInLine) {
    return null;
  }
  return succeed(values);
}

/** Name and number of a field that holds both. */
function pairIn(field: string, decimalComma: boolean): readonly (string | undefined)[] {
  const found = pair.exec(field);
  const isPair = found !== null && isNumber(found[2] ?? '', decimalComma);
  return (isPair ? found : (longPair.exec(field) ?? found)) ?? [];
}

function isTimeStamp(field: string): boolean {
  return /\d[:./-]\d+[:./-]|\d:\d/.test(field) && timeStamp.test(field);
}

function fieldsOf(text: string, decimalComma: boolean): readonly string[] {
  if (isWhole(text, decimalComma)) return [text];
  if (/[;\t]/.test(text)) return text.split(/[;\t]/).map((field) => field.trim());
  if (!decimalComma && text.includes(',')) return text.split(',').map((field) => field.trim());
  return text.replace(/\s*([=:])\s*/g, '$1').split(/\s+/);
}

function isWhole(text: string, decimalComma: boolean): boolean {
  const [, , number = text] = pairIn(text, decimalComma);
  return isNumber(number, decimalComma);
}

function isNumber(field: string, decimalComma: boolean): boolean {
  return readWireNumber(field, decimalComma).kind !== 'neither';
}

/** Where semicolons or tabs divide the fields, or a unit follows the digits, a comma between digits can only be decimal. */
function showsDecimalComma(text: string): boolean {
  if (!looksLikeDecimalComma(text)) return false;
  return /[;\t]/.test(text) || /\d,\d+\s*(?:[°º]|\u00c2\u00b0)?\s*[CFK]\b/.test(text);
}

function looksLikeDecimalComma(text: string): boolean {
  return text
    .split(/[;\t]/)
    .map((field) => pair.exec(field.trim())?.[2] ?? field.trim())
    .some((field) => wholeNumbersWithComma.test(field));
}
