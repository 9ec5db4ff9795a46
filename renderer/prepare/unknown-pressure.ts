import {
  azeotropeSlopeKPerKPa,
  defaultRunSettings,
  pressureAtAltitudeKPa,
  type RunSettings,
  say,
  stationPressure,
} from '#shared-core';
import { type Decimal, quantityWords } from '../words/index.ts';
import { expectedPlateau } from './expected-plateau.ts';

const altitudeAlone = stationPressure({ kind: 'altitude', altitudeM: 0 });

/** Ends of the air pressure where nobody said anything of it [kPa]: from a place in the hills to the sea in fine weather. */
export const unknownPressureKPa = {
  low:
    defaultRunSettings.pressure.pressureKPa -
    2 * defaultRunSettings.pressure.standardUncertaintyKPa,
  high: pressureAtAltitudeKPa(0) + altitudeAlone.expandedUncertaintyKPa,
} as const;

/** Within which pressures the run will be judged: told at once where nobody said any. */
export function pressureWords(
  { pressure }: Pick<RunSettings, 'pressure'>,
  decimal: Decimal,
): string {
  const { pressureKPa, standardUncertaintyKPa, source } = pressure;
  if (source !== 'assumed') {
    const doubt = quantityWords(2 * standardUncertaintyKPa, 1, 'kPa', decimal);
    const told = `${quantityWords(pressureKPa, 1, 'kPa', decimal)} ± ${doubt}`;
    return source === 'steam'
      ? say('{told}, from steam, with what the probe showed in it', { told })
      : told;
  }
  const { low, high } = unknownPressureKPa;
  return say('not known: {low} to {high}', {
    low: quantityWords(low, 0, 'kPa', decimal),
    high: quantityWords(high, 0, 'kPa', decimal),
  });
}

/** What not knowing costs, and what would help. */
export function unknownPressureWords(leastStrengthAbv: number, decimal: Decimal): string {
  const { low, high } = unknownPressureKPa;
  const limit = (pressureKPa: number) =>
    quantityWords(expectedPlateau(pressureKPa, leastStrengthAbv).limitC, 1, '°C', decimal);
  const narrowedK =
    altitudeAlone.expandedUncertaintyKPa *
    azeotropeSlopeKPerKPa(defaultRunSettings.pressure.pressureKPa);
  return say(
    'It may be anything from {low} to {high}. So {strength} may be reached at {limitLow} or only at {limitHigh}: until the head holds, nobody can tell which. Then the program goes by where it holds, less surely: heat off may be called too early or too late. The altitude, even from a map, brings the limit to within ± {narrowed}.',
    {
      low: quantityWords(low, 0, 'kPa', decimal),
      high: quantityWords(high, 0, 'kPa', decimal),
      strength: quantityWords(leastStrengthAbv, 0, '% vol', decimal),
      limitLow: limit(low),
      limitHigh: limit(high),
      narrowed: quantityWords(narrowedK, 1, 'K', decimal),
    },
  );
}
