import {
  concludeFerment,
  type FermentConclusion,
  followFerment,
  gatherEvidence,
  type NinetyInterval,
} from '../../shared-core/ferment/index.ts';
import { type DrawnFerment, drawFerment } from './draw-ferment.ts';
import { readFerment } from './read-ferment.ts';
import { simulateFerment, type TrueFerment } from './simulate-ferment.ts';

/** One ferment, judged at the end of every day on which it was read. */
export interface FermentScore {
  readonly kind: DrawnFerment['kind'];
  readonly strengths: readonly boolean[];
  readonly strengthErrors: readonly number[];
  readonly finishes: readonly boolean[];
  /** Width of the forecast over the time that is left. */
  readonly finishWidths: readonly number[];
  readonly finishedTooEarly: boolean;
  /** Null where it never stuck. */
  readonly stuckTold: boolean | null;
  /** "Stuck" was said while it went on and then ended by itself. */
  readonly falselyStuck: boolean;
  /** "Stuck" was said when it was at its end. */
  readonly stuckAtEnd: boolean;
  /** Hours from its end to "finished"; null where it never ended or that was never said. */
  readonly finishedAfterH: number | null;
  readonly ended: boolean;
  readonly line: string;
}

export interface TruthOfEnd {
  readonly doneH: number | null;
  /** From when it stood still above its end. */
  readonly stuckH: number | null;
}

/** Read off the true course: done within 0.002 of dry, stuck where less than 0.001 a day goes with 0.008 to go. */
export function truthOfEnd({ gravity, dryGravity, stepH }: TrueFerment): TruthOfEnd {
  const doneAt = gravity.findIndex((value) => value <= dryGravity + 0.002);
  const day = 24 / stepH;
  const began = gravity[0] as number;
  const stuckAt = gravity.findIndex(
    (value, index) =>
      began - value > 0.006 &&
      value > dryGravity + 0.008 &&
      index + day < gravity.length &&
      value - (gravity[index + day] as number) < 0.001,
  );
  return {
    doneH: doneAt === -1 ? null : doneAt * stepH,
    stuckH: stuckAt === -1 ? null : stuckAt * stepH,
  };
}

export function scoreFerment(seed: string, index: number): FermentScore {
  const drawn = drawFerment(seed, index);
  const truth = simulateFerment(drawn.setup, drawn.hours);
  const { doneH, stuckH } = truthOfEnd(truth);
  const readings = readFerment(drawn, truth, `${seed}/${index}`);
  const lastH = Math.min(drawn.hours, Math.max((doneH ?? 0) + 120, (stuckH ?? 0) + 120, 120));
  const evidence = gatherEvidence(readings.filter(({ timeH }) => timeH <= lastH));
  const facts = { volumeMl: drawn.statedVolumeMl, sugarG: drawn.statedSugarG };
  const at = (values: Float64Array, timeH: number) =>
    values[Math.min(values.length - 1, Math.round(timeH / truth.stepH))] as number;
  const score = {
    strengths: [] as boolean[],
    strengthErrors: [] as number[],
    finishes: [] as boolean[],
    finishWidths: [] as number[],
    finishedTooEarly: false,
    stuckTold: stuckH === null ? null : false,
    falselyStuck: false,
    stuckAtEnd: false,
    finishedAfterH: null as number | null,
  };
  const told: string[] = [];
  let isWindowOpen = true;
  for (const [step, belief] of indexed(followFerment(evidence, facts))) {
    const piece = evidence[step];
    const next = evidence[step + 1];
    if (piece === undefined) continue;
    if (next !== undefined && Math.floor(next.timeH / 24) === Math.floor(piece.timeH / 24))
      continue;
    if (piece.timeH < 12) continue;
    const verdict = concludeFerment(belief, facts);
    judge(verdict, piece.timeH);
  }
  return {
    kind: drawn.kind,
    ...score,
    ended: doneH !== null,
    line: `${index} ${drawn.kind} g ${drawn.habits.gravityStep} m ${drawn.habits.massStepG}/${drawn.habits.massEveryH?.toFixed(2)} done ${doneH?.toFixed(0)} stuck ${stuckH?.toFixed(0)} dry ${truth.dryGravity.toFixed(4)} | ${told.join(' ')}`,
  };

  function judge(verdict: FermentConclusion, timeH: number): void {
    const gravity = at(truth.gravity, timeH);
    const abv = at(truth.abv, timeH);
    const isStuck = stuckH !== null && timeH >= stuckH;
    const isInside = holds(verdict.strengthAbv, abv);
    score.strengths.push(isInside);
    score.strengthErrors.push(verdict.strengthAbv.value - abv);
    const { state, doneH: forecast } = verdict;
    if (doneH !== null && !isStuck && timeH >= doneH / 2 && timeH < doneH && forecast !== null) {
      score.finishes.push(holds(forecast, doneH));
      score.finishWidths.push((forecast.high - forecast.low) / Math.max(12, doneH - timeH));
    }
    if (state === 'finished' && gravity > truth.dryGravity + 0.004) score.finishedTooEarly = true;
    if (stuckH !== null && timeH >= stuckH && isWindowOpen) {
      if (state === 'stuck') score.stuckTold = true;
      if (timeH >= stuckH + 48) isWindowOpen = false;
    }
    if (state === 'stuck' && stuckH === null) {
      if (gravity <= truth.dryGravity + 0.004) score.stuckAtEnd = true;
      else if (at(truth.gravity, timeH - 24) - gravity > 0.0015 && doneH !== null)
        score.falselyStuck = true;
    }
    if (state === 'finished' && doneH !== null && score.finishedAfterH === null) {
      score.finishedAfterH = timeH - doneH;
    }
    told.push(
      `${timeH.toFixed(0)}h:${state.slice(0, 4)}${isInside ? '' : '!'}(${gravity.toFixed(3)} ${verdict.strengthAbv.value.toFixed(1)}${(verdict.strengthAbv.value - abv).toFixed(1)}±${((verdict.strengthAbv.high - verdict.strengthAbv.low) / 2).toFixed(1)} n${verdict.nearProbability.toFixed(2)} s${verdict.stuckProbability.toFixed(2)} u${(1000 * verdict.aboveUsualEnd).toFixed(0)}${verdict.isStill ? 'S' : ''} ${forecast === null ? '-' : `${forecast.low.toFixed(0)}–${forecast.high.toFixed(0)}`})`,
    );
  }
}

function* indexed<T>(items: Iterable<T>): Generator<readonly [number, T]> {
  let index = 0;
  for (const item of items) {
    yield [index, item];
    index += 1;
  }
}

function holds({ low, high }: NinetyInterval, value: number): boolean {
  return value >= low && value <= high;
}
