import { type RunInput, standingMarks } from '../run/index.ts';
import { benchAlcoholometer, benchMass, benchVolume } from './bench-doubts.ts';
import type { AmountMeasurement } from './book-liquid.ts';
import type { StrengthMeasurement } from './strength-measurement.ts';

/** One receiver's liquid, as far as the marks tell. */
export interface CutRecord {
  /** Counted from 1 in the order of the receivers. */
  readonly number: number;
  readonly fromS: number;
  readonly toS: number;
  readonly amount: AmountMeasurement | null;
  readonly strength: StrengthMeasurement | null;
}

interface OpenCut {
  number: number;
  fromS: number;
  toS: number;
  amount: AmountMeasurement | null;
  strength: StrengthMeasurement | null;
}

/** As long as it takes to change the receiver and then take the heat off, at the end of a run [s]; chosen here. */
const atTheEndS = 60;

const startOrEnd: ReadonlySet<string> = new Set(['heat-on', 'heat-off', 'receiver-changed']);

/**
 * The cuts of a run from its marks: a receiver ends where the next one was put under; its amount is the volume
 * given then, or else the last volume or mass read in it.
 *
 * The rule for a strength read: while heat is on it belongs to the receiver last taken away, since nobody puts a
 * float into one that is filling; after heat-off to the one in place, once its volume or mass has been read.
 *
 * A last receiver of which nothing was written down is a cut all the same where distillate ran into it: the heat was on, and vapour at the
 * head, for more than a minute after it was put under.
 *
 * @param run inputs in order of time; endS end of the run [s], ≥ 0; vapourUntilS when vapour was last known at the head [s], null if never
 * @returns one record a receiver; amount and strength are null where nobody wrote them down. Without any
 * mark of a volume, mass, strength or change there are no cuts
 *
 * Source: this project's rule; no standard.
 * @example
 * const mark = (timeS, markId, mark) => ({ kind: 'mark', timeS, markId, mark });
 * cutsOfRun({ inputs: [mark(600, 1, { type: 'receiver-changed', volumeMl: 2 }), mark(1800, 2, { type: 'volume-read', volumeMl: 18 })], endS: 2000 }).map((cut) => cut.toS) // => [600, 2000]
 */
export function cutsOfRun(run: {
  readonly inputs: readonly RunInput[];
  readonly endS: number;
  readonly vapourUntilS?: number | null;
}): readonly CutRecord[] {
  const marks = standingMarks(run.inputs);
  // A heat that was only marked when it came back began before the first receiver was taken away.
  const first = marks.find(({ mark }) => startOrEnd.has(mark.type));
  const start = first?.mark.type === 'heat-on' ? first.timeS : 0;
  const cuts: OpenCut[] = [openCut(1, start)];
  let isHeatOff = false;
  /** How long distillate can have run into the receiver in place. */
  let runsUntilS = Number.POSITIVE_INFINITY;
  let isPresentMeasured = false;
  for (const { timeS, mark } of marks) {
    const present = cuts.at(-1) ?? openCut(1, 0);
    switch (mark.type) {
      case 'heat-on':
      case 'heat-off':
        isHeatOff = mark.type === 'heat-off';
        runsUntilS = isHeatOff ? timeS : Number.POSITIVE_INFINITY;
        isPresentMeasured = false;
        break;
      case 'receiver-changed':
        present.toS = timeS;
        if (mark.volumeMl !== null) present.amount = benchVolume(mark.volumeMl, null);
        cuts.push(openCut(present.number + 1, timeS));
        isPresentMeasured = false;
        break;
      case 'volume-read':
        present.amount = benchVolume(mark.volumeMl, null);
        isPresentMeasured = true;
        break;
      case 'mass-read':
        present.amount = benchMass(mark.massG);
        isPresentMeasured = true;
        break;
      case 'strength-read': {
        const taken = cuts.at(-2);
        const of = isHeatOff && isPresentMeasured ? present : (taken ?? present);
        of.strength = benchAlcoholometer(mark.alcoholByVolume, mark.sampleTemperatureC);
        break;
      }
    }
  }
  const last = cuts.at(-1);
  if (last !== undefined) last.toS = run.endS;
  const ranS = Math.min(runsUntilS, run.vapourUntilS ?? 0) - (last?.fromS ?? 0);
  const isFilled = cuts.length > 1 && ranS > atTheEndS;
  return cuts.filter(
    (cut) => cut !== last || isFilled || cut.amount !== null || cut.strength !== null,
  );
}

/**
 * Whether a cut was written down as holding nothing, in whatever strength.
 *
 * @param cut its amount [mL or g] as far as it is known
 *
 * Source: this project's rule; no standard.
 * @example
 * isEmptyCut({ amount: { by: 'mass', massG: { value: 0, standardUncertainty: 0.05 } } }) // => true
 * isEmptyCut({ amount: null }) // => false
 */
export function isEmptyCut({ amount }: Pick<CutRecord, 'amount'>): boolean {
  return amount !== null && (amount.by === 'mass' ? amount.massG : amount.volumeMl).value === 0;
}

function openCut(number: number, fromS: number): OpenCut {
  return { number, fromS, toS: fromS, amount: null, strength: null };
}
