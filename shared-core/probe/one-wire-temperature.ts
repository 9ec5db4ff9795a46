import { requireInRange } from '../result/index.ts';

/** Resolutions of a 1/16 °C digital thermometer. */
export type OneWireBits = 9 | 10 | 11 | 12;

/** What the register holds from power-on until the first conversion: 85 °C exactly. */
export const oneWirePowerOnRaw = 0x0550;

const lowestC = -55;
const highestC = 125;

/**
 * Temperature from the 16-bit register of a 1/16 °C digital thermometer: two's complement, `t = raw / 16`, after
 * clearing the 12 − bits lowest bits, which are undefined at lower resolution.
 *
 * @param raw register [1], a whole number 0 … 65 535 (low byte + 256 × high byte)
 * @param bits resolution, 9, 10, 11 or 12
 * @returns temperature [°C], −55 … 125
 * @throws OutOfRangeError for another register value or a temperature that the sensor cannot report
 *
 * Source: DS18B20 data sheet, temperature register format and data relationship table.
 *
 * @example
 * oneWireTemperatureC(0x0191) // => 25.0625
 * oneWireTemperatureC(0xff5e) // => -10.125
 * oneWireTemperatureC(0x0197, 9) // => 25
 */
export function oneWireTemperatureC(raw: number, bits: OneWireBits = 12): number {
  requireInRange('register', Number.isInteger(raw) ? raw : Number.NaN, 0, 0xffff, '');
  const defined = raw & (0xffff << (12 - bits));
  const temperatureC = ((defined << 16) >> 16) / 16;
  requireInRange('temperature', temperatureC, lowestC, highestC, '°C');
  return temperatureC;
}

/**
 * The register for a temperature: the inverse of {@link oneWireTemperatureC}, `raw = 16 t` rounded to the step of the
 * resolution, as 16-bit two's complement.
 *
 * @param temperatureC [°C], −55 … 125
 * @param bits resolution, 9, 10, 11 or 12
 * @returns register, 0 … 65 535
 * @throws OutOfRangeError outside this range
 *
 * Source: DS18B20 data sheet, temperature register format.
 *
 * @example
 * oneWireRaw(85) // => 1360
 * oneWireRaw(-0.5) // => 65528
 */
export function oneWireRaw(temperatureC: number, bits: OneWireBits = 12): number {
  requireInRange('temperature', temperatureC, lowestC, highestC, '°C');
  const step = 2 ** (12 - bits);
  return (Math.round((temperatureC * 16) / step) * step) & 0xffff;
}
