import { bubblePressureKPa } from '../../shared-core/equilibrium/index.ts';

/** The yardstick: Newton in T with a numeric slope, from a fixed start, as one would first write it. */
export function plainBubblePointC(ethanolMoleFraction: number, pressureKPa: number): number {
  let temperatureC = 90;
  for (let step = 0; step < 50; step++) {
    const pressure = bubblePressureKPa({ ethanolMoleFraction, temperatureC });
    const above = bubblePressureKPa({ ethanolMoleFraction, temperatureC: temperatureC + 1e-4 });
    const change = ((pressure - pressureKPa) * 1e-4) / (above - pressure);
    temperatureC -= change;
    if (Math.abs(change) < 1e-9) break;
  }
  return temperatureC;
}
