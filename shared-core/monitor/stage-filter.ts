import type { Stage } from '../snapshot/index.ts';
import { stages } from '../snapshot/index.ts';
import { normalCumulative } from './bias-belief.ts';

/** What one second says about the stage. Temperatures are relative, on the probe's scale. */
export interface StageEvidence {
  /** Vapour temperature less the azeotrope's, bias included [K]; null when nothing could be read. */
  readonly aboveAzeotropeK: number | null;
  /** Vapour temperature less that at the strength limit, bias included [K]. */
  readonly aboveLimitK: number;
  readonly sdK: number;
  readonly bathed: boolean;
  /** True once the head has held and the person's convention for the first fraction is met. */
  readonly firstFractionOver: boolean;
  /** True while the head still sinks towards its plateau, as a column does that is filling. */
  readonly sinking: boolean;
  readonly receded: boolean;
  /** How long no vapour has come [s]. */
  readonly absentS: number;
  readonly heat: 'off' | 'on' | 'eased' | 'unknown';
}

/** A left-to-right filter over stage × condition. */
export interface StageFilter {
  second(evidence: StageEvidence): void;
  /** Probability of each stage, conditions summed. */
  probability(stage: Stage): number;
  /** The stage that is called: never an earlier one than before. */
  called(): Stage;
}

// Hidden states: each stage with its bulb in vapour or, after the warm-up, with vapour receded.
const warmUp = 0;
const first = 1;
const firstReceded = 2;
const main = 3;
const mainReceded = 4;
const tail = 5;
const tailReceded = 6;
const coolDown = 7;
const stateCount = 8;
const recededInRun = [firstReceded, mainReceded, tailReceded] as const;
const recededStates = [...recededInRun, coolDown] as const;
const stageOfState = [0, 1, 1, 2, 2, 3, 3, 4] as const;

/** Seconds stand for so much less than independent evidence: noise is correlated over 10–20 s. */
const temper = 1 / 12;
const callAt = 0.9;

/**
 * Hidden semi-Markov filter: forward recursion over eight states with hazards that depend on the time
 * spent (a recession that lasts becomes the end of the run) and on the convention for the first
 * fraction. Emissions are uniform over the temperatures a state allows, with soft edges.
 *
 * Source: S.-Z. Yu, "Hidden semi-Markov models", Artificial Intelligence 174 (2010) 215; from memory.
 */
export function createStageFilter(): StageFilter {
  const belief = new Float64Array(stateCount);
  const next = new Float64Array(stateCount);
  const likelihood = new Float64Array(stateCount);
  belief[warmUp] = 1;
  let calledIndex = 0;

  const move = (from: number, to: number, hazardPerS: number): void => {
    const share = (belief[from] as number) * Math.min(0.5, hazardPerS);
    next[from] = (next[from] as number) - share;
    next[to] = (next[to] as number) + share;
  };

  const transit = (evidence: StageEvidence): void => {
    next.set(belief);
    if (evidence.bathed) move(warmUp, first, 0.2);
    if (evidence.firstFractionOver) {
      // A head that never came below the limit has no main fraction: the tail follows the first one.
      const overLimit = overLimitProbability(evidence);
      move(first, main, (evidence.sinking ? 0.02 : 0.3) * (1 - overLimit));
      if (!evidence.sinking) move(first, tail, 1 / 600 + 0.3 * overLimit);
    }
    move(main, tail, evidence.sinking ? 1e-5 : 1 / 900);
    move(first, firstReceded, 1 / 300);
    move(main, mainReceded, 1 / 300);
    move(tail, tailReceded, 1 / 300);
    if (!evidence.receded) {
      // Only then: mass that came back too soon would be lost, and the end of the run gain by its loss.
      move(firstReceded, first, 1 / 60);
      move(mainReceded, main, 1 / 60);
      move(tailReceded, tail, 1 / 60);
    }
    const ending = endingHazardPerS(evidence, patience);
    move(firstReceded, coolDown, ending);
    move(mainReceded, coolDown, ending);
    move(tailReceded, coolDown, endingHazardPerS(evidence, patienceInTail));
    belief.set(next);
  };

  const emit = (aboveAzeotropeK: number, evidence: StageEvidence): void => {
    const belowBand = normalCumulative((-0.9 - aboveAzeotropeK) / Math.hypot(edgeK(evidence), 0.3));
    const overLimit = overLimitProbability(evidence);
    const inBand = Math.max(1e-6, (1 - belowBand) * (1 - overLimit));
    const floor = 1e-6;
    likelihood.fill(floor);
    if (evidence.receded) {
      // The head cools through any temperature once vapour has left it.
      for (const state of recededStates) likelihood[state] = 1 / 60;
    } else {
      likelihood[warmUp] = floor + (evidence.bathed ? belowBand / 200 : 1 / 60);
      // The first vapour through a dry column is weak: the first fraction may start above the limit.
      likelihood[first] = floor + (1 - belowBand) / 4;
      likelihood[main] = floor + inBand / 4;
      likelihood[tail] = floor + overLimit / 4;
      // A run is over only once vapour has left; a head that rests too low is in vapour all the same.
      for (const state of recededInRun) likelihood[state] = floor + belowBand / 60;
    }
    let sum = 0;
    for (let state = 0; state < stateCount; state += 1) {
      const mass = (belief[state] as number) * (likelihood[state] as number) ** temper;
      belief[state] = mass;
      sum += mass;
    }
    for (let state = 0; state < stateCount; state += 1) {
      belief[state] = (belief[state] as number) / sum;
    }
  };

  const probabilityFrom = (index: number): number => {
    let sum = 0;
    for (let state = 0; state < stateCount; state += 1) {
      if ((stageOfState[state] as number) >= index) sum += belief[state] as number;
    }
    return sum;
  };

  /** What was called is no longer in doubt: mass left behind is dropped, so no stage comes back. */
  const dropEarlier = (): void => {
    let sum = 0;
    for (let state = 0; state < stateCount; state += 1) {
      if ((stageOfState[state] as number) < calledIndex) belief[state] = 0;
      sum += belief[state] as number;
    }
    for (let state = 0; state < stateCount; state += 1) {
      belief[state] = (belief[state] as number) / sum;
    }
  };

  return {
    second: (evidence) => {
      if (evidence.aboveAzeotropeK === null) return;
      transit(evidence);
      emit(evidence.aboveAzeotropeK, evidence);
      let reached = calledIndex;
      for (let index = calledIndex + 1; index < stages.length; index += 1) {
        if (probabilityFrom(index) >= callAt) reached = index;
      }
      if (reached === calledIndex) return;
      calledIndex = reached;
      dropEarlier();
    },
    probability: (stage) => {
      const index = stages.indexOf(stage);
      return probabilityFrom(index) - probabilityFrom(index + 1);
    },
    called: () => stages[calledIndex] ?? 'warm-up',
  };
}

/**
 * Heat taken away for two minutes needs some five until vapour is back; in the tail a wrong end costs
 * nothing, so less patience is needed. A heat-off mark shortens it by little: heat is also marked off for a change
 * of receiver, and a run that is called over falls silent for good.
 */
const patience = { markedS: 240, unmarkedS: 420 } as const;
const patienceInTail = { markedS: 120, unmarkedS: 240 } as const;

function endingHazardPerS(
  { absentS, heat }: StageEvidence,
  { markedS, unmarkedS }: { readonly markedS: number; readonly unmarkedS: number },
): number {
  const patienceS = heat === 'off' ? markedS : unmarkedS;
  if (absentS < patienceS) return 1e-6;
  return heat === 'off' ? 1 / 30 : Math.min(0.2, (absentS - patienceS) / 3000);
}

/** The soft edge of a temperature border: the estimate's spread and the model's own [K]. */
function edgeK({ sdK }: StageEvidence): number {
  return Math.hypot(sdK, 0.05);
}

function overLimitProbability(evidence: StageEvidence): number {
  return normalCumulative(evidence.aboveLimitK / edgeK(evidence));
}
