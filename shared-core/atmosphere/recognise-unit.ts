import { standardAtmosphere } from './standard-atmosphere.ts';

/** kPa per unit. Exact: bar, atm; conventional: mmHg (ISO 80000-4 annex), inHg = 25.4 mmHg. */
const kPaPerUnit: Readonly<Record<string, number>> = {
  'hPa (mbar)': 0.1,
  mmHg: 0.133322387415,
  inHg: 25.4 * 0.133322387415,
  Pa: 0.001,
  bar: 100,
  atm: 101.325,
};

/** How far from the expected pressure a converted entry may be: extreme weather, or a sea-level value. */
const tolerance = 0.08;

/** The unit in which a number would be a pressure near the expected or the sea-level one; the closest if several. */
export function recogniseUnit(
  entry: number,
  expectedKPa: number,
): { readonly unit: string; readonly stationPressureKPa: number } | undefined {
  const candidates = Object.entries(kPaPerUnit)
    .map(([unit, factor]) => ({ unit, stationPressureKPa: entry * factor }))
    .map((candidate) => ({ candidate, miss: missOf(candidate.stationPressureKPa, expectedKPa) }))
    .filter(({ miss }) => miss <= tolerance)
    .sort((a, b) => a.miss - b.miss);
  return candidates[0]?.candidate;
}

function missOf(pressureKPa: number, expectedKPa: number): number {
  const missFrom = (target: number) => Math.abs(pressureKPa / target - 1);
  return Math.min(missFrom(expectedKPa), missFrom(standardAtmosphere.seaLevelPressureKPa));
}
