import { fail, type Result, succeed } from '../result/index.ts';
import { oneWireCrc8 } from './one-wire-crc8.ts';
import {
  type OneWireBits,
  oneWirePowerOnRaw,
  oneWireTemperatureC,
} from './one-wire-temperature.ts';

/** What a scratchpad says. */
export interface ScratchpadReading {
  readonly temperatureC: number;
  readonly bits: OneWireBits;
  /** The register shows the power-on value, 85 °C: no conversion yet, unless the head really is there. */
  readonly maybePowerOnValue: boolean;
}

/** Why a scratchpad cannot be read. */
export type ScratchpadProblem =
  | { readonly kind: 'wrong-length'; readonly bytes: number }
  /** All ones: nothing pulls the bus down. */
  | { readonly kind: 'no-sensor' }
  /** All zeros, which even has the right checksum: the bus is shorted or the sensor has no power. */
  | { readonly kind: 'bus-shorted' }
  | { readonly kind: 'checksum'; readonly expected: number; readonly found: number }
  | { readonly kind: 'not-a-temperature'; readonly raw: number };

const length = 9;
const lowestC = -55;
const highestC = 125;

/**
 * Reads the nine bytes that a 1/16 °C digital thermometer sends: register (low, high), alarm limits, configuration,
 * three reserved, checksum. Temperature by the register rule `t = raw / 16`, resolution `9 + R1R0` bits.
 *
 * @param bytes the nine bytes, each valid from 0 to 255
 *
 * Source: DS18B20 data sheet, memory map and configuration register.
 *
 * @example
 * const sent = [0x50, 0x05, 0x4b, 0x46, 0x7f, 0xff, 0x0c, 0x10, 0x1c];
 * readScratchpad(sent) // => {"ok":true,"value":{"temperatureC":85,"bits":12,"maybePowerOnValue":true}}
 */
export function readScratchpad(
  bytes: ArrayLike<number>,
): Result<ScratchpadReading, ScratchpadProblem> {
  const held = Array.from(bytes);
  if (held.length !== length) return fail({ kind: 'wrong-length', bytes: held.length });
  if (held.every((byte) => byte === 0xff)) return fail({ kind: 'no-sensor' });
  if (held.every((byte) => byte === 0)) return fail({ kind: 'bus-shorted' });
  const [low = 0, high = 0, , , configuration = 0] = held;
  const expected = oneWireCrc8(held.slice(0, length - 1));
  const found = held[length - 1] ?? 0;
  if (expected !== found) return fail({ kind: 'checksum', expected, found });
  const raw = low + 256 * high;
  const bits = resolutions[(configuration >> 5) & 0b11] ?? 12;
  const sixteenths = (raw << 16) >> 16;
  if (sixteenths < lowestC * 16 || sixteenths > highestC * 16) {
    return fail({ kind: 'not-a-temperature', raw });
  }
  return succeed({
    temperatureC: oneWireTemperatureC(raw, bits),
    bits,
    maybePowerOnValue: raw === oneWirePowerOnRaw,
  });
}

const resolutions: readonly OneWireBits[] = [9, 10, 11, 12];
