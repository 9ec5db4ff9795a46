import { type DistillateCourse, distillateAt, meanStrength } from '../distillate/index.ts';
import { heardPressure, pressureAfter } from '../monitor/index.ts';
import { assumedWords, type RunInput, type RunSettings } from '../run/index.ts';
import { worded } from '../wording/index.ts';
import type { CutRecord } from './cuts-of-run.ts';
import type { StrengthMeasurement } from './strength-measurement.ts';

/** Mean over what came over into the cut; null where the head told nothing of the strength meanwhile. */
export function strengthFromHead(
  { fromS, toS }: CutRecord,
  distillate: DistillateCourse | null,
): StrengthMeasurement | null {
  if (distillate === null) return null;
  const { knownFromS, knownToS } = distillate.strengths;
  if (toS < knownFromS || fromS > knownToS) return null;
  const [fromMl, toMl] = [distillateAt(distillate, fromS), distillateAt(distillate, toS)];
  return { by: 'head-temperature', strengthAbv: meanStrength(distillate.points, fromMl, toMl) };
}

const weighedWords: Readonly<Record<NonNullable<DistillateCourse['basis']>, string>> = {
  'receiver-volume': worded('by what the receiver gained'),
  'receiver-mass': worded('by what the balance under the receiver gained'),
  booked: worded('by the volumes written down, and as at an even heat from one to the next'),
  'drip-rate': worded('as at an even heat, since no volume was written down'),
};

/** What such a strength hangs on: how it was weighed, and the air pressure as it came to be known in the run. */
export function fromHeadWords(
  settings: Pick<RunSettings, 'charge' | 'pressure' | 'probe'>,
  inputs: readonly RunInput[],
  distillate: DistillateCourse | null,
): readonly string[] {
  const pressure = pressureAfter(heardPressure(settings.pressure, inputs), inputs);
  const assumed = assumedWords({ ...settings, pressure }, ['pressure', 'probe-kind']);
  const estimate = worded(
    'Where no strength was measured it is taken from the head temperature while the cut was collected, weighed {how}. That is an estimate, not a measurement.',
    { how: weighedWords[distillate?.basis ?? 'drip-rate'] },
  );
  return [estimate, ...assumed];
}
