import { type BookEntries, defaultRunSettings, type RunInput, studyRun } from '#shared-core';
import { azeotrope } from '../../../../shared-core/equilibrium/azeotrope.ts';
import type { ProcessedRow } from '../../../../shared-core/study/processed-rows.ts';
import type { RunStudy } from '../../../../shared-core/study/study-run.ts';

const pressureKPa = 98.3;

/** A mark at a time, as it stands in a record. */
export const mark = (
  timeS: number,
  body: Extract<RunInput, { kind: 'mark' }>['mark'],
): RunInput => ({ kind: 'mark', timeS, markId: timeS + 1, mark: body });

/** The head at so many degrees, every ten seconds; no vapour is made of it. */
export function headRows(
  headAtC: (timeS: number) => number,
  endS: number,
): readonly ProcessedRow[] {
  return Array.from({ length: endS / 10 + 1 }, (_, index) => ({
    timeS: 10 * index,
    headC: headAtC(10 * index),
    readings: 10,
    pressureKPa,
    stage: 'main-fraction',
    aboveAzeotropeK: 0,
    isBathed: false,
    vapourAbv: null,
  }));
}

/** 20 °C until 600 s, 78.4 °C from 900 s to 3000 s, then a kelvin a minute. */
export const plainHeadC = (timeS: number): number =>
  timeS < 600
    ? 20
    : timeS < 900
      ? 20 + ((timeS - 600) / 300) * 58.4
      : timeS <= 3000
        ? 78.4
        : 78.4 + (timeS - 3000) / 60;

const about = (value: number, standardUncertainty: number) => ({ value, standardUncertainty });
const at20C = about(20, 0.5);

/** Two receivers of 20 mL and 15 mL, 100 mL left, 50 g of sugar. */
export const plainEntries: BookEntries = {
  cuts: [
    {
      number: 1,
      strength: { by: 'alcoholometer', indicatedAbv: about(90, 0.3), temperatureC: at20C },
    },
    {
      number: 2,
      strength: { by: 'alcoholometer', indicatedAbv: about(60, 0.3), temperatureC: at20C },
    },
  ],
  residue: {
    amount: { by: 'volume', volumeMl: about(100, 1), temperatureC: at20C },
    strength: { by: 'stated', strengthAbv: about(1, 0.1) },
  },
  sugarG: about(50, 1),
};

export const plainInputs: readonly RunInput[] = [
  mark(0, { type: 'heat-on' }),
  mark(2400, { type: 'receiver-changed', volumeMl: 20 }),
  mark(3900, { type: 'heat-off' }),
  mark(4100, { type: 'volume-read', volumeMl: 15 }),
];

/** A run in round numbers, by hand: 250 mL of 12 % vol at 98.3 kPa, of which the head stood at 78.4 °C for 35 min. */
export function plainStudy(changes: Partial<RunStudy> = {}, entries = plainEntries): RunStudy {
  const study = studyRun({
    runId: 'plain',
    name: 'Pear-juice ferment',
    startedAtIso: '2026-03-18T09:15:00.000Z',
    rehearsal: false,
    settings: {
      ...defaultRunSettings,
      charge: { volumeMl: 250, strengthAbv: 12, standardUncertaintyAbv: 0.2 },
      pressure: {
        pressureKPa,
        standardUncertaintyKPa: 0.1,
        source: 'barometer',
        altitudeM: null,
      },
      probe: { ...defaultRunSettings.probe, standardUncertaintyK: 0.1 },
    },
    appVersion: '0.1.0',
    modelVersion: '1',
    inputs: plainInputs,
    endS: 4200,
    entries,
  });
  const azeotropeC = azeotrope(pressureKPa).temperatureC;
  return {
    ...study,
    rows: headRows(plainHeadC, 4200),
    plateau: {
      statistics: {
        span: { fromS: 900, toS: 3000 },
        readings: 211,
        meanC: 78.4,
        medianC: 78.4,
        standardDeviationK: 0.05,
        standardUncertaintyOfMeanK: 0.01,
        lowestC: 78.3,
        highestC: 78.5,
        driftKPerH: about(0.1, 0.05),
      },
      lastedS: { value: 2100, low: 2040, high: 2160 },
      mean: about(78.4, 0.1),
      pressureKPa,
      azeotropeC,
      aboveAzeotropeK: about(78.4 - azeotropeC, 0.11),
      standard: about(79.14, 0.11),
    },
    ...changes,
  };
}
