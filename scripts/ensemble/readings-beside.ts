import { densityKgPerM3, type RunInput } from '#shared-core';
import { massFractionFromAlcoholByVolume } from '../../shared-core/alcoholometry/index.ts';
import type { BatchState } from '../../shared-core/column/index.ts';
import type { DrawnRun } from './draw-run.ts';

const everyS = 5;
/** A school balance shows tenths of a gram; a probe in the pot is off by some tenths of a kelvin, like any other. */
const balanceQuantumG = 0.1;
const potBiasSdK = 0.4;
const potNoiseSdK = 0.05;

/** What the instruments beside the head say of a second: a balance under the receiver, a probe in the pot. */
export function createReadingsBeside({
  beside,
  besideRandom: random,
}: DrawnRun): (sample: BatchState) => readonly RunInput[] {
  const potBiasK = potBiasSdK * random.normal();
  return ({ timeS, receiver, potTemperatureC }) => {
    if (timeS % everyS !== 0) return [];
    const made: RunInput[] = [];
    const report = (channel: string, value: number, unit: 'g' | '°C'): void => {
      made.push({ kind: 'reading', timeS, channel, value, unit, quality: 'good' });
    };
    if (beside.includes('balance')) report('receiver', shownG(receiver), 'g');
    if (beside.includes('pot-probe')) {
      report('pot', potTemperatureC + potBiasK + potNoiseSdK * random.normal(), '°C');
    }
    return made;
  };
}

/** What a school balance shows of a receiver [g]. */
export function shownG({ volumeMl, strengthAbv }: BatchState['receiver']): number {
  if (volumeMl === 0) return 0;
  const ethanolMassFraction = massFractionFromAlcoholByVolume({ alcoholByVolume: strengthAbv });
  const massG = (volumeMl * densityKgPerM3({ ethanolMassFraction, temperatureC: 20 })) / 1000;
  return balanceQuantumG * Math.round(massG / balanceQuantumG);
}
