import { densityKgPerM3, moleFractionFromMassFraction } from '../alcoholometry/index.ts';
import { requireInRange } from '../result/index.ts';
import { coverageFactor95, type Estimate } from '../uncertainty/index.ts';
import { instrumentShare } from './instrument-share.ts';
import { type DerivedQuantity, propagateUncertainty } from './propagate-uncertainty.ts';
import type { Quantity } from './quantity.ts';
import { measuredStrength, type StrengthMeasurement } from './strength-measurement.ts';

/** How much liquid there is. */
export type AmountMeasurement =
  | { readonly by: 'volume'; readonly volumeMl: Quantity; readonly temperatureC: Quantity }
  | { readonly by: 'mass'; readonly massG: Quantity };

/** A liquid as measured: charge, cut, residue or hold-up. */
export interface LiquidMeasurement {
  readonly name: string;
  readonly amount: AmountMeasurement;
  readonly strength: StrengthMeasurement;
}

/** A liquid in the books. */
export interface BookedLiquid {
  readonly name: string;
  readonly massG: DerivedQuantity;
  readonly ethanolG: DerivedQuantity;
  /** Volume at 20 °C [mL]. */
  readonly volumeMl: DerivedQuantity;
  /** Pure ethanol, as volume at 20 °C [mL]. */
  readonly ethanolMl: DerivedQuantity;
  /** [% vol at 20 °C], 95 % interval. */
  readonly strengthAbv: Estimate;
  readonly ethanolMassFraction: Estimate;
  readonly ethanolMoleFraction: number;
  /** What the error of a shared instrument is worth here, signed [g for one standard uncertainty]; null without one. */
  readonly instrument: {
    readonly name: string;
    readonly massG: number;
    readonly ethanolG: number;
  } | null;
}

const ethanolGPerMlAt20C = densityKgPerM3({ ethanolMassFraction: 1, temperatureC: 20 }) / 1000;

/**
 * Mass, ethanol and volume at 20 °C of a liquid: `m = V ρ(w, t)`, `m_ethanol = w m`, `V20 = m/ρ(w, 20)`, each
 * with its uncertainty budget over amount, temperature and strength.
 *
 * @param measurement amount: volumeMl [mL] 0 … 1e6 at temperatureC [°C] −20 … 40, or massG [g] 0 … 1e6; strength:
 * see {@link measuredStrength}
 * @returns masses [g], volumes [mL at 20 °C], strength [% vol at 20 °C], standard uncertainties
 * @throws OutOfRangeError outside these ranges
 *
 * Source: OIML R 22 (1975), general formula; JCGM 100:2008, equation (10).
 * @example
 * const exact = (value) => ({ value, standardUncertainty: 0 });
 * const cut = { name: 'Cut 1', amount: { by: 'volume', volumeMl: exact(100), temperatureC: exact(20) }, strength: { by: 'stated', strengthAbv: exact(40) } };
 * bookLiquid(cut).ethanolMl.value // ≈ 40 ± 1e-6
 * bookLiquid(cut).massG.value // ≈ 94.80452 ± 0.0001
 */
export function bookLiquid({ name, amount, strength }: LiquidMeasurement): BookedLiquid {
  const { ethanolMassFraction, alcoholByVolume: strengthAbv } = measuredStrength(strength);
  const fraction = {
    name: 'Strength',
    reason: strengthReasons[strength.by],
    value: ethanolMassFraction.value,
    standardUncertainty:
      (ethanolMassFraction.high - ethanolMassFraction.low) / (2 * coverageFactor95),
  };
  const inputs =
    amount.by === 'mass'
      ? [fraction, { name: 'Mass', reason: 'the balance', ...amount.massG }]
      : [
          fraction,
          { name: 'Volume', reason: 'the measuring cylinder', ...amount.volumeMl },
          { name: 'Temperature', reason: 'of the liquid measured', ...amount.temperatureC },
        ];
  const [, size] = inputs;
  requireInRange(`amount of ${name}`, size?.value ?? 0, 0, 1e6, amount.by === 'mass' ? 'g' : 'mL');
  const massOf = ([w = 0, of = 0, temperatureC = 20]: readonly number[]) =>
    amount.by === 'mass'
      ? of
      : (of * densityKgPerM3({ ethanolMassFraction: w, temperatureC })) / 1000;
  const ethanolOf = (values: readonly number[]) => (values[0] ?? 0) * massOf(values);
  const share = instrumentShare(strength);
  const rest = inputs.slice(1).map(({ value }) => value);
  const changeOf = (of: (values: readonly number[]) => number, change: number) => {
    const [low, high] = [fraction.value - change, fraction.value + change].map((w) =>
      Math.min(1, Math.max(0, w)),
    ) as [number, number];
    const span = high - low;
    return span === 0 ? 0 : ((of([high, ...rest]) - of([low, ...rest])) * change) / span;
  };
  return {
    name,
    massG: propagateUncertainty(inputs, massOf),
    ethanolG: propagateUncertainty(inputs, ethanolOf),
    volumeMl: propagateUncertainty(
      inputs,
      (values) =>
        (1000 * massOf(values)) /
        densityKgPerM3({ ethanolMassFraction: values[0] ?? 0, temperatureC: 20 }),
    ),
    ethanolMl: propagateUncertainty(inputs, (values) => ethanolOf(values) / ethanolGPerMlAt20C),
    strengthAbv,
    ethanolMassFraction,
    ethanolMoleFraction: moleFractionFromMassFraction(ethanolMassFraction.value),
    instrument:
      share === null
        ? null
        : {
            name: share.name,
            massG: changeOf(massOf, share.massFraction),
            ethanolG: changeOf(ethanolOf, share.massFraction),
          },
  };
}

const strengthReasons: Readonly<Record<StrengthMeasurement['by'], string>> = {
  stated: 'the strength as stated',
  label: 'the strength on the label',
  'head-temperature': 'the head temperature while it was collected',
  refractometer: 'the refractometer and its scale',
  'gas-chromatograph': 'the chromatogram and its standards',
  alcoholometer: 'the alcoholometer and its temperature, through OIML R 22',
  hydrometer: 'the hydrometer and its temperature, through OIML R 22',
  pycnometer: 'the weighings of the pycnometer, through OIML R 22',
  balance: 'mass and volume of the sample, through OIML R 22',
};
