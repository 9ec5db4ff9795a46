import { createRandom } from '../random/index.ts';
import { advanceFerments } from './advance-ferments.ts';
import type { FermentFacts } from './ferment-log.ts';
import { degas, noGasYet, spendGas, usualGasG } from './gas-budget.ts';
import type { Evidence } from './gather-evidence.ts';
import { drawFerments, type PossibleFerments } from './possible-ferments.ts';
import { renewFerments, weightsOf } from './renew-ferments.ts';
import { takeInEvidence } from './take-in-evidence.ts';

/** What the log says up to one of its readings. */
export interface FermentBelief {
  readonly cloud: PossibleFerments;
  readonly timeH: number;
  /** Warmth beside 20 °C that the speed goes with [K]. */
  readonly warmthK: number;
  readonly temperatureC: number | null;
  /** Evidence so far, with how likely each gravity was misread. */
  readonly evidence: readonly Evidence[];
  readonly gravityDoubts: readonly { readonly evidence: Evidence; readonly probability: number }[];
}

/** Hours after which a temperature says nothing of the present. */
const temperatureKeepsH = 30;
/** A log that begins later than this counts from its first reading [h]. */
const latestBeginningH = 72;

/**
 * Follows a ferment through its evidence and gives what is believed after each piece. What is given is changed by the next
 * step: whoever keeps it takes what they need at once. Method: particle filter, `du/dt = −k u^n` with a wandering k for each.
 *
 * @param evidence in time order, any number
 * @param facts volume [mL] > 0 and, where known, sugar [g] > 0
 * @returns one belief for each piece of evidence
 *
 * Source: sequential Monte Carlo; see {@link renewFerments}.
 * @example
 * [...followFerment([], { volumeMl: 1000, sugarG: null })].length // => 0
 */
export function* followFerment(
  evidence: readonly Evidence[],
  facts: FermentFacts,
): Generator<FermentBelief> {
  const random = createRandom('ferment');
  // A probe that hangs in it from the first hour says how warm it is, not how sweet it was.
  const first = evidence.find(tellsOfSugar) ?? evidence[0];
  if (first === undefined) return;
  const originH = first.timeH > latestBeginningH ? first.timeH : 0;
  const cloud = drawFerments(random, facts, first.gravity);
  const gravityDoubts: { evidence: Evidence; probability: number }[] = [];
  let temperature: { readonly atH: number; readonly valueC: number } | null = null;
  let [warmthK, timeH, budget] = [0, first.timeH - originH, noGasYet];
  let isEndTold = facts.sugarG !== null;
  const isWeighed = evidence.some(({ massG }) => massG !== null);
  for (const [at, piece] of evidence.entries()) {
    // Before the next step, not after the last: what is said at the end is what the readings said.
    if (at > 0) renewFerments(cloud, random, isEndTold);
    if (piece.temperatureC !== null) temperature = { atH: piece.timeH, valueC: piece.temperatureC };
    else if (temperature !== null && piece.timeH - temperature.atH > temperatureKeepsH)
      temperature = null;
    const nowC = temperature?.valueC ?? null;
    const nowK = nowC === null ? 0 : warmthOf(nowC);
    const atH = Math.max(timeH, piece.timeH - originH);
    cloud.lostAtEvidence.set(cloud.lost);
    advanceFerments(cloud, timeH, atH, (warmthK + nowK) / 2, random);
    [warmthK, timeH] = [nowK, atH];
    if (isWeighed) {
      budget = spendGas(budget, meanGasG(cloud, facts.volumeMl), nowC, facts.volumeMl);
      if (piece.isDegassed) budget = degas(budget);
    }
    // The first gravity was believed, or not, when the ferments were drawn.
    const gravity = piece === first ? null : piece.gravity;
    const surroundings = { facts, warmthK, budget };
    const doubt = takeInEvidence(cloud, { ...piece, timeH, gravity }, surroundings, random);
    if (doubt !== null) gravityDoubts.push({ evidence: piece, probability: doubt });
    isEndTold ||= piece.gravity !== null;
    yield {
      cloud,
      timeH,
      warmthK,
      temperatureC: nowC,
      evidence: evidence.slice(0, at + 1),
      gravityDoubts,
    };
  }
}

function tellsOfSugar({ gravity, massG, bubblesPerMin }: Evidence): boolean {
  return gravity !== null || massG !== null || bubblesPerMin !== null;
}

/** Gas made in all, by the possible ferments on the average [g]. */
function meanGasG(cloud: PossibleFerments, volumeMl: number): number {
  const weights = weightsOf(cloud);
  return weights.reduce(
    (sum, weight, index) =>
      sum + weight * usualGasG(cloud, index, volumeMl) * (cloud.gasYield[index] as number),
    0,
  );
}

/** Yeast works no faster above some 32 °C, and hardly at all below 8 °C. */
function warmthOf(temperatureC: number): number {
  return Math.min(12, Math.max(-12, temperatureC - 20));
}
