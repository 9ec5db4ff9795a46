import { moleFractionFromStrength, strengthFromMoleFraction } from '../alcoholometry/index.ts';
import { azeotrope, bubblePoint } from '../equilibrium/index.ts';
import type { ChargeSetting } from '../run/index.ts';
import type { Estimate } from '../uncertainty/index.ts';
import { boilingLiquidMoleFraction } from './boiling-liquid.ts';
import { moleFractionEstimate } from './mole-fraction-estimate.ts';

/** What is known at one moment that can tell the strength of the pot. */
export interface PotClues {
  readonly charge: ChargeSetting;
  readonly pressureKPa: number;
  /** The pot's own probe [°C], if there is one. */
  readonly potTemperatureC: number | null;
  /** Standard uncertainty of the pot's probe [K]. */
  readonly probeStandardUncertaintyK: number;
  /** From the balance of what has come over [% vol]. */
  readonly balanceAbv: Estimate | null;
  /** Vapour has reached the head, so that the charge is no longer what it was. */
  readonly hasDistilled: boolean;
}

/** Where an estimate of the pot comes from. */
export type PotBasis = 'pot-probe' | 'balance' | 'as-charged';

/** The pot as a point of the T–x–y diagram. */
export interface PotEstimate {
  readonly basis: PotBasis;
  readonly ethanolMoleFraction: Estimate;
  readonly strengthAbv: Estimate;
  /** The temperature it boils at; `isBoiling` says whether it does. */
  readonly boilsAtC: Estimate;
  readonly isBoiling: boolean;
}

/** Bumping, superheat and the depth of the liquid over the bulb [K]; common practice, no source. */
const potBulbDoubtK = 0.3;

/**
 * The pot's liquid: from its own probe through the bubble curve once it boils, else from the balance, else as
 * charged while nothing has come over. 95 % intervals, `± 2 √(u_probe² + 0.3²)` on the temperature.
 *
 * A pot probe more than that below the bubble point of the charge only says that the pot does not boil yet.
 *
 * @param clues temperatures [°C], pressure [kPa] 20 … 200, strengths [% vol]
 * @returns the estimate, or null when nothing tells the strength of the pot
 * @example
 * const charge = { volumeMl: 350, strengthAbv: 9, standardUncertaintyAbv: 0.5 };
 * const clues = { charge, pressureKPa: 101.325, potTemperatureC: null, probeStandardUncertaintyK: 0.25, balanceAbv: null, hasDistilled: false };
 * potEstimate(clues).strengthAbv // => {"value":9,"low":8,"high":10}
 * potEstimate({ ...clues, potTemperatureC: 96 }).ethanolMoleFraction.value // ≈ 0.0134 ± 0.002
 * potEstimate({ ...clues, hasDistilled: true }) // => null
 */
export function potEstimate(clues: PotClues): PotEstimate | null {
  const { charge, pressureKPa, potTemperatureC, balanceAbv, hasDistilled } = clues;
  if (potTemperatureC !== null) {
    const reachK = 2 * Math.hypot(clues.probeStandardUncertaintyK, potBulbDoubtK);
    const chargeBoilsAtC = boilsAt(moleFractionFromStrength(charge.strengthAbv), pressureKPa);
    const coldest = Math.max(azeotrope(pressureKPa).temperatureC, chargeBoilsAtC - reachK);
    if (potTemperatureC >= coldest) return fromPotProbe(potTemperatureC, reachK, pressureKPa);
    if (!hasDistilled) return fromStrength(asCharged(charge), 'as-charged', pressureKPa, false);
  }
  if (balanceAbv !== null) return fromStrength(balanceAbv, 'balance', pressureKPa, true);
  if (hasDistilled) return null;
  return fromStrength(asCharged(charge), 'as-charged', pressureKPa, false);
}

function asCharged({ strengthAbv, standardUncertaintyAbv }: ChargeSetting): Estimate {
  return {
    value: strengthAbv,
    low: Math.max(0, strengthAbv - 2 * standardUncertaintyAbv),
    high: Math.min(100, strengthAbv + 2 * standardUncertaintyAbv),
  };
}

function fromPotProbe(temperatureC: number, reachK: number, pressureKPa: number): PotEstimate {
  const liquidAt = (atC: number) =>
    boilingLiquidMoleFraction({ temperatureC: Math.min(150, atC), pressureKPa });
  const ethanolMoleFraction = {
    value: liquidAt(temperatureC),
    low: liquidAt(temperatureC + reachK),
    high: liquidAt(temperatureC - reachK),
  };
  return {
    basis: 'pot-probe',
    ethanolMoleFraction,
    strengthAbv: {
      value: strengthFromMoleFraction(ethanolMoleFraction.value),
      low: strengthFromMoleFraction(ethanolMoleFraction.low),
      high: strengthFromMoleFraction(ethanolMoleFraction.high),
    },
    boilsAtC: { value: temperatureC, low: temperatureC - reachK, high: temperatureC + reachK },
    isBoiling: true,
  };
}

function fromStrength(
  strengthAbv: Estimate,
  basis: PotBasis,
  pressureKPa: number,
  isBoiling: boolean,
): PotEstimate {
  const ethanolMoleFraction = moleFractionEstimate(strengthAbv);
  return {
    basis,
    ethanolMoleFraction,
    strengthAbv,
    boilsAtC: {
      value: boilsAt(ethanolMoleFraction.value, pressureKPa),
      low: boilsAt(ethanolMoleFraction.high, pressureKPa),
      high: boilsAt(ethanolMoleFraction.low, pressureKPa),
    },
    isBoiling,
  };
}

function boilsAt(ethanolMoleFraction: number, pressureKPa: number): number {
  return bubblePoint({ ethanolMoleFraction, pressureKPa }).temperatureC;
}
