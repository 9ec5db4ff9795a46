import { densityKgPerM3, massFractionFromAlcoholByVolume } from '../alcoholometry/index.ts';
import { type Mark, type RunInput, standingMarks } from '../run/index.ts';

/** What the volume of distillate was known from. */
export type VolumeBasis = 'table' | 'receiver-volume' | 'receiver-mass' | 'booked' | 'drip-rate';

/** How much distillate had come over by when. */
export interface DistillateOverTime {
  readonly basis: Exclude<VolumeBasis, 'table'>;
  /** Volume [mL] at time [s], neither ever falling. */
  readonly points: readonly { readonly timeS: number; readonly volumeMl: number }[];
}

export interface RunToMeasure {
  readonly inputs: readonly RunInput[];
  /** When vapour reached the head [s]: before it nothing came over. */
  readonly arrivedS: number;
  /** When the heat went off or the run ended [s]. */
  readonly untilS: number;
  /** Volumes of the receivers, measured after the run, with when each was taken away [mL, s]. */
  readonly cuts: readonly { readonly toS: number; readonly volumeMl: number }[];
  /** As somebody measured it [mL/min]; null where nobody did. */
  readonly dripRateMlPerMin: number | null;
  /** Strength of what drips at a time [% vol], to make a volume of a mass; null where it is not known. */
  readonly strengthAt: (timeS: number) => number | null;
}

/**
 * The volume of distillate through a run, from the best that there is: a receiver that is measured all along, volumes and
 * masses written down, or a stated drip rate. Null where nobody measured anything.
 *
 * A receiver that was taken away unmeasured ends what is known, for it was not empty. One whose reading falls was changed: what it held stays counted. A mass becomes a volume by the density of the
 * vapour's strength at 20 °C, `V = Σ Δm/ρ(w)`.
 *
 * @param run inputs in order of time; arrivedS, untilS [s]; drip rate [mL/min]; strength at a time [% vol]
 * @returns points in order of time, the first with 0 mL when vapour arrived
 *
 * Source: density from OIML R 22 (1975); the rest is this project's rule.
 * @example
 * const read = (timeS, markId, volumeMl) => ({ kind: 'mark', timeS, markId, mark: { type: 'volume-read', volumeMl } });
 * const run = { inputs: [read(600, 1, 4), read(900, 2, 7)], cuts: [], arrivedS: 300, untilS: 1000, dripRateMlPerMin: null, strengthAt: () => 80 };
 * distillateOverTime(run)?.points.map(({ volumeMl }) => volumeMl) // => [0, 4, 7]
 * distillateOverTime({ ...run, inputs: [], dripRateMlPerMin: 1.2 })?.points.at(-1) // => { "timeS": 1000, "volumeMl": 14 }
 */
export function distillateOverTime(run: RunToMeasure): DistillateOverTime | null {
  const measured = fromReceiver(run);
  if (measured !== null) return measured;
  const start = { timeS: run.arrivedS, volumeMl: 0 };
  const { booked, isWhole } = bookedVolumes(run);
  const cuts = cutVolumes(run);
  for (const volumes of isWhole ? [booked, cuts] : [cuts, booked]) {
    const points = rising([start, ...volumes], run);
    if (points.length > 1) return { basis: 'booked', points };
  }
  const { dripRateMlPerMin, arrivedS, untilS } = run;
  if (dripRateMlPerMin === null || untilS <= arrivedS) return null;
  const volumeMl = (dripRateMlPerMin * (untilS - arrivedS)) / 60;
  return {
    basis: 'drip-rate',
    points: [
      { timeS: arrivedS, volumeMl: 0 },
      { timeS: untilS, volumeMl },
    ],
  };
}

type Points = DistillateOverTime['points'];

/** A balance or a float under the receiver. */
function fromReceiver(run: RunToMeasure): DistillateOverTime | null {
  const { inputs, arrivedS, strengthAt } = run;
  const points: Points[number][] = [{ timeS: arrivedS, volumeMl: 0 }];
  let before: number | null = null;
  let volumeMl = 0;
  let isMass = false;
  for (const input of inputs) {
    if (input.kind !== 'reading' || input.channel !== 'receiver' || input.quality !== 'good') {
      continue;
    }
    isMass = input.unit === 'g';
    const gained = before === null ? 0 : input.value - before;
    before = input.value;
    if (input.timeS < arrivedS || gained <= 0) continue;
    volumeMl += isMass ? gained / gramsPerMl(strengthAt(input.timeS)) : gained;
    points.push({ timeS: input.timeS, volumeMl });
  }
  if (points.length < 2) return null;
  return { basis: isMass ? 'receiver-mass' : 'receiver-volume', points: rising(points, run) };
}

/** What was written down of receivers, added up; after one that nobody measured the sum is not known any more. */
function bookedVolumes({ inputs, arrivedS, strengthAt }: RunToMeasure): {
  readonly booked: Points;
  readonly isWhole: boolean;
} {
  const booked: Points[number][] = [];
  let earlierMl = 0;
  let presentMl: number | null = null;
  for (const { timeS, mark } of standingMarks(
    inputs.filter((input): input is Mark => input.kind === 'mark'),
  )) {
    if (mark.type === 'receiver-changed') {
      const heldMl: number | null = mark.volumeMl ?? presentMl ?? (timeS < arrivedS ? 0 : null);
      if (heldMl === null) return { booked, isWhole: false };
      earlierMl += heldMl;
      presentMl = null;
      if (mark.volumeMl === null) continue;
    } else if (mark.type === 'volume-read') presentMl = mark.volumeMl;
    else if (mark.type === 'mass-read') presentMl = mark.massG / gramsPerMl(strengthAt(timeS));
    else continue;
    booked.push({ timeS, volumeMl: earlierMl + (presentMl ?? 0) });
  }
  return { booked, isWhole: true };
}

function cutVolumes({ cuts }: RunToMeasure): Points {
  let collectedMl = 0;
  return cuts.map(({ toS, volumeMl }) => {
    collectedMl += volumeMl;
    return { timeS: toS, volumeMl: collectedMl };
  });
}

/** What was read after the heat was off belongs to that moment: the last drops take no vapour with them. */
function rising(points: Points, { arrivedS, untilS }: RunToMeasure): Points {
  const kept: Points[number][] = [];
  for (const { timeS, volumeMl } of points) {
    if (timeS < arrivedS) continue;
    const last = kept.at(-1);
    const at = Math.min(timeS, untilS);
    if (last === undefined || (at > last.timeS && volumeMl >= last.volumeMl)) {
      kept.push({ timeS: at, volumeMl });
    } else if (volumeMl > last.volumeMl) kept[kept.length - 1] = { timeS: last.timeS, volumeMl };
  }
  return kept;
}

/** A distillate of unknown strength is taken for one of 80 % vol: 0.86 g/mL, within 7 % of any from 40 to 96 % vol. */
const usualAbv = 80;

function gramsPerMl(strengthAbv: number | null): number {
  const ethanolMassFraction = massFractionFromAlcoholByVolume({
    alcoholByVolume: strengthAbv ?? usualAbv,
  });
  return densityKgPerM3({ ethanolMassFraction, temperatureC: 20 }) / 1000;
}
