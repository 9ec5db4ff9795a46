import {
  alcoholByVolume,
  densityKgPerM3,
  moleFractionFromMassFraction,
} from '../alcoholometry/index.ts';
import { requireInRange } from '../result/index.ts';
import { coverageFactor95, type Estimate, mapEstimate } from '../uncertainty/index.ts';
import type { BookedLiquid } from './book-liquid.ts';
import type { Quantity } from './quantity.ts';
import { sumOfLiquids } from './sum-liquids.ts';

/** Liquids poured together. */
export interface PooledLiquid {
  readonly massG: Quantity;
  readonly ethanolG: Quantity;
  /** At 20 °C. */
  readonly volumeMl: Quantity;
  /** [% vol at 20 °C], 95 % interval. */
  readonly strengthAbv: Estimate;
  /** Its standard uncertainty (k = 1), half of that interval over 1.96. */
  readonly strengthUncertaintyAbv: number;
  readonly ethanolMassFraction: number;
  readonly ethanolMoleFraction: number;
}

/**
 * Several liquids poured together: masses add, `m = Σ mᵢ`, `m_ethanol = Σ m_ethanol,i`; the strength follows.
 * Volumes at 20 °C do not simply add (ethanol and water contract): the volume is that of the mixture.
 *
 * The strength `w = Σ mᵢwᵢ/m` has the interval of one that is alone; of several, each end by itself, `Δw² = Σ (mᵢΔwᵢ/m)² + Σ ((wᵢ − w)Δmᵢ/m)²`, where what
 * readings share by their instrument adds up before it is squared.
 *
 * @param parts at least one booked liquid with some mass
 * @returns mass and ethanol [g] with standard uncertainties (errors of a shared instrument add up), volume at 20 °C [mL],
 * strength [% vol at 20 °C]; the volume’s standard uncertainty takes those of the parts for independent
 * @throws OutOfRangeError when there is no liquid at all
 *
 * Source: conservation of mass; OIML R 22 (1975); JCGM 100:2008, equations (10) and (16).
 * @example
 * const exact = (value) => ({ value, standardUncertainty: 0 });
 * const liquid = (volumeMl, abv) => bookLiquid({ name: '', amount: { by: 'volume', volumeMl: exact(volumeMl), temperatureC: exact(20) }, strength: { by: 'stated', strengthAbv: exact(abv) } });
 * poolLiquids([liquid(50, 96), liquid(50, 0)]).volumeMl.value // ≈ 96.96 ± 0.01
 * poolLiquids([liquid(50, 90), liquid(20, 90)]).strengthAbv.value // ≈ 90 ± 1e-9
 */
export function poolLiquids(parts: readonly BookedLiquid[]): PooledLiquid {
  const massG = sumOfLiquids(parts, 'massG');
  const ethanolG = sumOfLiquids(parts, 'ethanolG');
  requireInRange('mass', massG.value, 1e-9, 1e9, 'g');
  const ethanolMassFraction = Math.min(1, ethanolG.value / massG.value);
  const pool = { parts, massG: massG.value, fraction: ethanolMassFraction };
  const within = {
    value: ethanolMassFraction,
    low: Math.max(0, ethanolMassFraction - reach(pool, 'low')),
    high: Math.min(1, ethanolMassFraction + reach(pool, 'high')),
  };
  const strengthAbv = mapEstimate(within, (fraction) =>
    alcoholByVolume({ ethanolMassFraction: fraction }),
  );
  return {
    massG,
    ethanolG,
    volumeMl: {
      value: (1000 * massG.value) / densityKgPerM3({ ethanolMassFraction, temperatureC: 20 }),
      standardUncertainty: Math.hypot(...parts.map((part) => part.volumeMl.standardUncertainty)),
    },
    strengthAbv,
    strengthUncertaintyAbv: (strengthAbv.high - strengthAbv.low) / (2 * coverageFactor95),
    ethanolMassFraction,
    ethanolMoleFraction: moleFractionFromMassFraction(ethanolMassFraction),
  };
}

interface Pool {
  readonly parts: readonly BookedLiquid[];
  readonly massG: number;
  readonly fraction: number;
}

/** From the mean to one end of its 95 % interval [kg/kg]. */
function reach({ parts, massG, fraction }: Pool, end: 'low' | 'high'): number {
  const shared = new Map<string, number>();
  const squares = parts.map((part) => {
    const { value, low, high } = part.ethanolMassFraction;
    const share = part.massG.value / massG;
    const whole = share * Math.abs(part.ethanolMassFraction[end] - value);
    const amount = (coverageFactor95 * part.massG.standardUncertainty * (value - fraction)) / massG;
    const standard = (high - low) / (2 * coverageFactor95);
    const common = Math.min(1, standard > 0 ? Math.abs(ofInstrument(part)) / standard : 0);
    if (part.instrument !== null) {
      const { name } = part.instrument;
      shared.set(name, (shared.get(name) ?? 0) + common * whole);
    }
    return whole ** 2 * (1 - common ** 2) + amount ** 2;
  });
  return Math.hypot(Math.sqrt(squares.reduce((sum, one) => sum + one, 0)), ...shared.values());
}

/** What one standard uncertainty of the instrument does to a strength [kg/kg]. */
function ofInstrument({ instrument, massG, ethanolMassFraction }: BookedLiquid): number {
  if (instrument === null || massG.value === 0) return 0;
  return (instrument.ethanolG - ethanolMassFraction.value * instrument.massG) / massG.value;
}
