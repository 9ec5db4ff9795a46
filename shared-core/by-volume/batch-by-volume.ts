import { moleFractionFromStrength, strengthFromMoleFraction } from '../alcoholometry/index.ts';
import { distillateAboveStages, equilibriumCurve } from '../column/index.ts';
import { dewPoint } from '../equilibrium/index.ts';
import { requireInRange } from '../result/index.ts';
import { molarVolumeMlPerMol } from '../thermo/index.ts';

/** A batch whose course is to be worked out. */
export interface BatchToExpect {
  /** Volume charged at 20 °C [mL] > 0. */
  readonly chargeMl: number;
  /** Its strength [% vol at 20 °C], 0.1 … 90. */
  readonly chargeAbv: number;
  /** [kPa], 50 … 110 */
  readonly pressureKPa: number;
  /** How much distillate is of interest [mL], less than the charge. */
  readonly upToMl: number;
  /** Null for a simple still, whose distillate is the vapour over the pot. */
  readonly column: { readonly plates: number; readonly refluxRatio: number } | null;
}

/** What is expected when so much has come over. */
export interface ExpectedPoint {
  readonly volumeMl: number;
  /** Dew temperature of the distillate's vapour [°C]. */
  readonly headC: number;
  /** [% vol at 20 °C] */
  readonly strengthAbv: number;
}

const steps = 120;
/** Below this the pot is water as far as a thermometer can tell [mol/mol]. */
const leastPotMoleFraction = 2e-5;

/**
 * The head temperature and the strength of the distillate against its volume, as a batch is expected to give them: a simple
 * still by Rayleigh's equation `dx/dW = (y − x)/W`, or a column of `plates` equilibrium stages above the pot at a constant reflux ratio
 * (McCabe–Thiele steps at each pot composition, no hold-up). Stepped in equal volumes of distillate, by the midpoint rule.
 *
 * @param batch charge [mL], its strength [% vol], pressure [kPa], volume of interest [mL], column or none
 * @returns points from 0 mL on, `headC` [°C] the dew temperature of what comes over; ends early where the pot holds no ethanol any more
 * @throws OutOfRangeError outside the ranges given
 *
 * Source: Lord Rayleigh, Phil. Mag. 4 (1902) 521; Perry's Handbook, section 13, Batch Distillation, whose example
 * (100 mol of 18 % to 70 mol of residue of 6 %) the test repeats.
 * @example
 * const batch = { chargeMl: 30, chargeAbv: 40, pressureKPa: 101.325, upToMl: 12, column: null };
 * batchByVolume(batch)[0].strengthAbv // ≈ 79 ± 2
 * batchByVolume({ ...batch, column: { plates: 5, refluxRatio: 5 } })[0].strengthAbv > 90 // => true
 */
export function batchByVolume(batch: BatchToExpect): readonly ExpectedPoint[] {
  const { chargeMl, chargeAbv, pressureKPa, upToMl, column } = batch;
  requireInRange('charge', chargeMl, 1e-6, 1e9, 'mL');
  requireInRange('strength of the charge', chargeAbv, 0.1, 90, '% vol');
  requireInRange('distillate', upToMl, 1e-9, chargeMl, 'mL');
  const equilibrium = equilibriumCurve(pressureKPa);
  const charged = moleFractionFromStrength(chargeAbv);
  const distillateOver = (x: number) =>
    column === null || column.plates === 0
      ? equilibrium(x)
      : distillateAboveStages(equilibrium, x, column.refluxRatio, column.plates + 1);
  const at = (volumeMl: number, y: number): ExpectedPoint => ({
    volumeMl,
    headC: dewPoint({ ethanolMoleFraction: y, pressureKPa }).temperatureC,
    strengthAbv: strengthFromMoleFraction(y),
  });
  let pot = { mol: chargeMl / molarVolumeMlPerMol(charged), x: charged };
  const stepMl = upToMl / steps;
  const points = [at(0, distillateOver(pot.x))];
  for (let step = 1; step <= steps; step++) {
    const half = drawn(pot, distillateOver(pot.x), stepMl / 2);
    if (half === null) break;
    const next = drawn(pot, distillateOver(half.x), stepMl);
    if (next === null) break;
    pot = next;
    // The last point lies at the last volume to the bit, so that a reading there has one beside it.
    points.push(at((step / steps) * upToMl, distillateOver(pot.x)));
  }
  return points;
}

interface Pot {
  readonly mol: number;
  readonly x: number;
}

/** What is left when so much of this composition has gone; null when nothing worth distilling would be. */
function drawn(pot: Pot, y: number, volumeMl: number): Pot | null {
  const goneMol = volumeMl / molarVolumeMlPerMol(y);
  const mol = pot.mol - goneMol;
  const ethanolMol = pot.mol * pot.x - goneMol * y;
  return mol <= 0 || ethanolMol <= leastPotMoleFraction * mol ? null : { mol, x: ethanolMol / mol };
}
