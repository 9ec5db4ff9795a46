import { platinumTemperatureC } from '../probe/index.ts';
import { OutOfRangeError } from '../result/index.ts';
import type { WireUnit } from './raw-value.ts';
import type { SerialSource } from './serial-source.ts';

type Setting = SerialSource['unit'];

/**
 * Degrees Celsius from a number as the probe writes it; null when it cannot be a temperature.
 *
 * The unit in the line wins over the setting, except that `ohm` in the line leaves the setting to
 * say which sensor (Pt100 unless it says Pt1000). °F: t = (f − 32)·5/9; K: t = T − 273.15, exact by
 * definition.
 *
 * @example
 * celsiusFrom(351.3, 'K', '°C') // ≈ 78.15 ± 1e-9
 * celsiusFrom(138.5055, null, 'ohm-pt100') // ≈ 100 ± 0.001
 */
export function celsiusFrom(
  value: number,
  written: WireUnit | null,
  setting: Setting,
): number | null {
  if (written === 'ohm') return platinum(value, setting === 'ohm-pt1000' ? 1000 : 100);
  switch (written ?? setting) {
    case '°F':
      return ((value - 32) * 5) / 9;
    case 'K':
      return value < 0 ? null : value - 273.15;
    case 'ohm-pt1000':
      return platinum(value, 1000);
    case 'ohm-pt100':
      return platinum(value, 100);
    case '°C':
      return value;
    default:
      return null;
  }
}

/** An open or shorted sensor has a resistance that no platinum thermometer can have. */
function platinum(ohm: number, r0: number): number | null {
  try {
    return platinumTemperatureC(ohm, r0);
  } catch (error) {
    if (error instanceof OutOfRangeError) return null;
    throw error;
  }
}
