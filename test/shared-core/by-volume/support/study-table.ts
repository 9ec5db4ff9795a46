import {
  defaultRunSettings,
  explainCsvProblem,
  type RunSettings,
  readReadingsCsv,
  studyRun,
} from '#shared-core';

/** A thermometer read to whole degrees: half a mark, evenly spread. */
const wholeDegreeK = 0.5 / Math.sqrt(3);

/** What is said of a table by volume when it is taken in. */
export interface StatedTable {
  readonly chargeMl: number;
  readonly chargeAbv: number;
  readonly pressureKPa: number;
  readonly plates: number;
  readonly leastAbv: number;
  readonly firstMl: number;
  /** Beside that of reading whole degrees [K]. */
  readonly noiseK: number;
}

/** Standard uncertainty of the thermometer in such a table [K]. */
export const probeDoubtK = ({ noiseK }: Pick<StatedTable, 'noiseK'>): number =>
  Math.hypot(wholeDegreeK, noiseK);

/** A table by volume as it is read, and as it is studied with what was stated of it. */
export function studyTable(text: string, stated: StatedTable) {
  const read = readReadingsCsv(text);
  if (!read.ok) throw new Error(explainCsvProblem(read.error));
  const settings: RunSettings = {
    ...defaultRunSettings,
    charge: {
      ...defaultRunSettings.charge,
      volumeMl: stated.chargeMl,
      strengthAbv: stated.chargeAbv,
    },
    pressure: {
      pressureKPa: stated.pressureKPa,
      standardUncertaintyKPa: 0.2,
      source: 'barometer',
      altitudeM: null,
    },
    probe: {
      ...defaultRunSettings.probe,
      offsetK: 0,
      gain: 1,
      standardUncertaintyK: probeDoubtK(stated),
    },
    rig: { ...defaultRunSettings.rig, plates: stated.plates },
    leastStrengthAbv: stated.leastAbv,
    firstFraction: { kind: 'volume', volumeMl: stated.firstMl },
  };
  const study = studyRun({
    runId: 'table',
    name: 'Table',
    startedAtIso: '',
    rehearsal: false,
    imported: true,
    settings,
    appVersion: '0',
    modelVersion: '1',
    inputs: read.value.inputs,
    endS: read.value.endS,
  });
  return { read: read.value, study };
}
