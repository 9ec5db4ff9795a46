import { z } from 'zod';
import { fail, parseJson, type Result, succeed } from '../result/index.ts';
import { type LineRejection, mostValuesInLine, type RawValue, type WireUnit } from './raw-value.ts';
import { readUnit, readWireNumber } from './wire-number.ts';

/** Members that count or date a reading instead of being one. */
const notReadings =
  /^(?:time|times|timestamp|ts|ms|millis|us|micros|seq|sequence|count|counter|id|index|uptime|version|rssi|battery)$/i;

/** Members that name the channel or the unit. */
const naming = /^(?:channel|name|sensor|units?)$/;

/** Members that hold the reading itself, so that their name says nothing of the channel. */
const plainValue = /^(?:value|val|reading)$/i;

/** Small boards print these in the place of a number. */
const notNumber = /([:,[]\s*)[+-]?(?:nan|inf|infinity)\b/gi;

const objectSchema = z.record(z.string(), z.unknown());
const namesSchema = z.looseObject({
  channel: z.string().optional().catch(undefined),
  name: z.string().optional().catch(undefined),
  sensor: z.string().optional().catch(undefined),
  unit: z.string().optional().catch(undefined),
  units: z.string().optional().catch(undefined),
});

/**
 * Takes the numbers out of one line of JSON: `{"head":78.42,"pot":91.3}`, `[78.42,91.3]`,
 * `{"channel":"head","value":78.42,"unit":"C"}`, objects within objects, or a list of such.
 *
 * `null`, and the bare `nan` that small boards print although JSON has none, mean "no value".
 * Text, true/false, clocks and counters are not readings and are passed over.
 *
 * @example
 * parseJsonLine('{"head":78.42,"pot":91.3}').value[1].value // => 91.3
 * parseJsonLine('{"head":78.').error.kind // => "not-understood"
 */
export function parseJsonLine(line: string): Result<readonly RawValue[], LineRejection> {
  const parsed = parseJson(line.replace(notNumber, '$1null'));
  const values = parsed === undefined ? [] : collect(parsed, null, null);
  if (values.length === 0 || values.length > mostValuesInLine) {
    return fail({ kind: 'not-understood', text: line });
  }
  return succeed(values);
}

function collect(value: unknown, name: string | null, unit: WireUnit | null): RawValue[] {
  if (typeof value === 'number') return [{ name, value, unit }];
  if (value === null) return [{ name, value: null, unit }];
  if (typeof value === 'string') return fromText(value, name, unit);
  if (Array.isArray(value)) {
    return value.flatMap((item, index) =>
      collect(item, name === null ? null : `${name}-${index + 1}`, unit),
    );
  }
  const object = objectSchema.safeParse(value);
  return object.success ? fromObject(object.data, name, unit) : [];
}

function fromObject(
  object: Readonly<Record<string, unknown>>,
  outerName: string | null,
  outerUnit: WireUnit | null,
): RawValue[] {
  const said = namesSchema.parse(object);
  const own = said.channel ?? said.name ?? said.sensor ?? outerName;
  const unit = readUnit(said.unit ?? said.units ?? '') ?? outerUnit;
  const members = Object.entries(object).filter(
    ([member, value]) =>
      !notReadings.test(member) && !(naming.test(member) && typeof value === 'string'),
  );
  const ownIsChannel = own !== outerName && members.length === 1;
  return members.flatMap(([member, value]) => {
    const saysNothing = plainValue.test(member) || ownIsChannel;
    return collect(value, saysNothing ? own : member, unit);
  });
}

function fromText(text: string, name: string | null, unit: WireUnit | null): RawValue[] {
  const number = readWireNumber(text, false);
  if (number.kind === 'neither') return [];
  if (number.kind === 'no-value') return [{ name, value: null, unit }];
  return [{ name, value: number.value, unit: number.unit ?? unit }];
}
