import { fail, type Result, succeed } from '../result/index.ts';
import { type LineRejection, mostValuesInLine, type RawValue } from './raw-value.ts';
import { readUnit, readWireNumber } from './wire-number.ts';

export interface PlainTextOptions {
  readonly decimalComma: boolean;
}

const pair = /^([A-Za-z][^=:]{0,31}?)\s*[=:]\s*(.+)$/;
const name = /^[A-Za-z][A-Za-z0-9 _.#-]{0,31}$/;
const wholeNumbersWithComma = /^[+-]?\d+,\d+\s*[^\d,]*$/;

/**
 * Takes the numbers, and their names and units if any, out of one line of text.
 *
 * Understands a lone number, `name=number` or `name: number` lists, `name,number,name,number`, and
 * bare numbers in a row, divided by comma, semicolon, tab or spaces. It is strict: a line with
 * anything else in it is rejected whole, because half-understood noise looks like a temperature.
 * `78,42` is rejected as ambiguous unless the person has said that the probe writes a decimal comma.
 *
 * @example
 * parsePlainText('head,78.42,pot,91.3', { decimalComma: false }).value[1].value // => 91.3
 * parsePlainText('78,42', { decimalComma: false }).error.kind // => "ambiguous-comma"
 */
export function parsePlainText(
  line: string,
  options: PlainTextOptions,
): Result<readonly RawValue[], LineRejection> {
  const text = line.trim();
  const fields = fieldsOf(text, options.decimalComma);
  if (!options.decimalComma && looksLikeDecimalComma(text)) {
    return fail({ kind: 'ambiguous-comma', text: line });
  }
  const values: RawValue[] = [];
  let pendingName: string | null = null;
  for (const [index, field] of fields.entries()) {
    const previous = values.at(-1);
    const unit = readUnit(field);
    if (unit && previous?.unit === null && pendingName === null) {
      const next = fields[index + 1];
      const nextIsNumber = next !== undefined && isNumber(next, options);
      if (!nextIsNumber || previous.name === null) {
        values[values.length - 1] = { ...previous, unit };
        continue;
      }
    }
    const [, pairName, pairNumber] = pair.exec(field) ?? [];
    const number = readWireNumber(pairNumber ?? field, options.decimalComma);
    if (number.kind === 'neither' || (pairName !== undefined && pendingName !== null)) {
      if (pendingName !== null || pairName !== undefined || !name.test(field)) {
        return fail({ kind: 'not-understood', text: line });
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
    return fail({ kind: 'not-understood', text: line });
  }
  return succeed(values);
}

function fieldsOf(text: string, decimalComma: boolean): readonly string[] {
  if (isWhole(text, decimalComma)) return [text];
  if (/[;\t]/.test(text)) return text.split(/[;\t]/).map((field) => field.trim());
  if (!decimalComma && text.includes(',')) return text.split(',').map((field) => field.trim());
  return text.replace(/\s*([=:])\s*/g, '$1').split(/\s+/);
}

function isWhole(text: string, decimalComma: boolean): boolean {
  const [, , number = text] = pair.exec(text) ?? [];
  return readWireNumber(number, decimalComma).kind !== 'neither';
}

function isNumber(field: string, options: PlainTextOptions): boolean {
  return readWireNumber(field, options.decimalComma).kind !== 'neither';
}

function looksLikeDecimalComma(text: string): boolean {
  return text
    .split(/[;\t]/)
    .map((field) => pair.exec(field.trim())?.[2] ?? field.trim())
    .some((field) => wholeNumbersWithComma.test(field));
}
