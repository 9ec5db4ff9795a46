import { worded } from '../wording/index.ts';
import type { BookedLiquid } from './book-liquid.ts';
import type { MeasuredInput } from './propagate-uncertainty.ts';
import type { Quantity } from './quantity.ts';

/** Which of a liquid's masses is meant. */
export type Substance = 'massG' | 'ethanolG';

/**
 * Several liquids as inputs of a sum: each with the error that is its own, then one input of value 0 for every
 * instrument that several readings share. Its error is in all of them at once, so its parts add up with their signs,
 * `u = |Σ cᵢ|`; that is the correlated law of propagation with r = 1.
 *
 * Source: JCGM 100:2008, equation (16) and 5.2.2; F.1.2.4 (a common error as an input of its own).
 */
export function inputsOfSum(
  parts: readonly BookedLiquid[],
  substance: Substance,
): readonly MeasuredInput[] {
  const shared = new Map<string, { sumG: number; names: string[] }>();
  for (const { name, instrument } of parts) {
    if (instrument === null) continue;
    const found = shared.get(instrument.name) ?? { sumG: 0, names: [] };
    found.sumG += instrument[substance];
    found.names.push(name);
    shared.set(instrument.name, found);
  }
  return [
    ...parts.map((part) => ({
      name: part.name,
      reason: 'as booked [g]',
      value: part[substance].value,
      standardUncertainty: ownUncertaintyG(part, substance),
    })),
    ...[...shared].map(([name, { sumG, names }]) => ({
      name: worded('{name} itself', { name }),
      reason: `common to ${names.join(', ')} [g]`,
      value: 0,
      standardUncertainty: Math.abs(sumG),
    })),
  ];
}

/** The sum of {@link inputsOfSum} with its standard uncertainty [g]. */
export function sumOfLiquids(parts: readonly BookedLiquid[], substance: Substance): Quantity {
  const inputs = inputsOfSum(parts, substance);
  return {
    value: inputs.reduce((sum, { value }) => sum + value, 0),
    standardUncertainty: Math.hypot(...inputs.map((input) => input.standardUncertainty)),
  };
}

function ownUncertaintyG(part: BookedLiquid, substance: Substance): number {
  const whole = part[substance].standardUncertainty;
  return Math.sqrt(Math.max(0, whole ** 2 - (part.instrument?.[substance] ?? 0) ** 2));
}
