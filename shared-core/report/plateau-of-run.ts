import {
  atStandardPressureC,
  longestPlateau,
  type PlateauStatistics,
  plateauStatistics,
  type Quantity,
} from '../bookkeeping/index.ts';
import { azeotrope } from '../equilibrium/index.ts';
import type { RunSettings } from '../run/index.ts';
import type { ProcessedRow } from './processed-rows.ts';

/** The plateau of a run: what was read, and what it means at the local pressure. */
export interface RunPlateau {
  readonly statistics: PlateauStatistics;
  /** Mean with everything in it: scatter and the probe [°C], k = 1. */
  readonly mean: Quantity;
  readonly pressureKPa: number;
  readonly azeotropeC: number;
  readonly aboveAzeotropeK: Quantity;
  /** As it would read at 101.325 kPa [°C], k = 1. */
  readonly standard: Quantity;
}

/** Height of the band that counts as a plateau [K]: about 10 % vol of vapour strength near the azeotrope. */
export const plateauBandK = 1;
/** A shorter stretch than this is no plateau [s]; common practice, no source. */
const leastPlateauS = 60;

/** The longest steady stretch while vapour bathes the bulb; null when the head never held. */
export function plateauOfRun(
  rows: readonly ProcessedRow[],
  settings: Pick<RunSettings, 'probe' | 'pressure'>,
): RunPlateau | null {
  const bathed = rows
    .filter(({ stage }) => stage === 'first-fraction' || stage === 'main-fraction')
    .map(({ timeS, headC, pressureKPa }) => ({ timeS, temperatureC: headC, pressureKPa }));
  const span = longestPlateau(bathed, plateauBandK);
  if (span === null || span.toS - span.fromS < leastPlateauS) return null;
  const held = bathed.filter(({ timeS }) => timeS >= span.fromS && timeS <= span.toS);
  if (held.length < 3) return null;
  const statistics = plateauStatistics(held);
  const pressureKPa = held.reduce((sum, row) => sum + row.pressureKPa, 0) / held.length;
  const azeotropeC = azeotrope(pressureKPa).temperatureC;
  const perKPa =
    azeotrope(pressureKPa + 0.5).temperatureC - azeotrope(pressureKPa - 0.5).temperatureC;
  const fromPressureK = perKPa * settings.pressure.standardUncertaintyKPa;
  const standardUncertainty = Math.hypot(
    settings.probe.standardUncertaintyK,
    statistics.standardUncertaintyOfMeanK,
  );
  const withPressure = Math.hypot(standardUncertainty, fromPressureK);
  return {
    statistics,
    mean: { value: statistics.meanC, standardUncertainty },
    pressureKPa,
    azeotropeC,
    aboveAzeotropeK: {
      value: statistics.meanC - azeotropeC,
      standardUncertainty: withPressure,
    },
    standard: {
      value: atStandardPressureC({ temperatureC: statistics.meanC, pressureKPa }),
      standardUncertainty: withPressure,
    },
  };
}
