import type { BatchSetup } from './batch-setup.ts';
import { teachingRigs } from './teaching-rigs.ts';

/**
 * The demonstration run: a pear-juice ferment through a column of wire rings in a teaching laboratory.
 * The heat is eased when the pot boils and vapour climbs the column, as a careful person does.
 *
 * Source: an imagined scenario; no formula, only the fixed table of numbers below, [SI units as named].
 * @example
 * pearFermentSetup().charge.volumeMl // => 250
 */
export function pearFermentSetup(): BatchSetup & { readonly pressureKPa: number } {
  return {
    charge: {
      volumeMl: 250,
      strengthAbv: 11,
      lightVolatiles: { acetaldehydeMgPerL: 60, methanolMgPerL: 120, ethylAcetateMgPerL: 60 },
    },
    rig: teachingRigs.wirePacking,
    pressureKPa: 99.4,
    roomTemperatureC: 20,
    schedule: [
      { timeS: 0, kind: 'heat-on', powerW: 130 },
      { timeS: 760, kind: 'heat-eased', powerW: 64 },
    ],
    leastStrengthAbv: 80,
  };
}
