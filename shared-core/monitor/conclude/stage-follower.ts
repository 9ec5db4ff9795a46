import type { Stage } from '../../stages/index.ts';
import { even, sure } from '../certainty.ts';
import { isBlind } from '../sense/probe-fault.ts';
import type { HeadNow } from '../situation/head-course.ts';
import { bathedK } from '../situation/vapour-arrival.ts';
import type { HeadState } from '../situation/vapour-filter.ts';

/** The stage a run is in, since when, and how likely. Nothing is final: what the evidence takes back is called anew. */
export interface StageFollower {
  /** Takes one second; a blind one leaves the stage as it was. */
  second(timeS: number, now: HeadNow, around: AroundStage): void;
  stage(): Stage;
  sinceS(): number;
  probability(): number;
}

export interface AroundStage {
  /** True once the head has held and the person's convention for the first fraction is met. */
  readonly firstFractionOver: boolean;
  readonly isHeatOff: boolean;
}

/** What one second says about the stage. */
interface StageSecond extends Pick<HeadNow, 'situation' | 'outlook'>, AroundStage {
  readonly head: HeadState;
}

/** Vapour that is stronger again must be so for this long before a tail is taken back [s of vapour]. */
const backForS = 90;
/**
 * So long after heat was marked off vapour may come back. Where nobody marked it, heat taken away for two minutes needs twice that until
 * vapour is back; in the tail a wrong end costs nothing, and half of it is enough [s without vapour]; by trial on simulated runs.
 */
const comesBackWithinS = 240;

/** Who has once left the still alone for so long may do it again: the end must be clearly longer than any break so far. */
const longerThanEver = 1.5;

export function createStageFollower(): StageFollower {
  let stage: Stage = 'warm-up';
  let sinceS = 0;
  /** The stage that vapour coming back would go on with. */
  let before: Stage = 'warm-up';
  let strongAgainS = 0;
  let probability = 1;
  /** The surest it has been that vapour had come. */
  let everWet = 0;

  const next = (now: StageSecond): Stage => {
    const { situation, outlook, firstFractionOver } = now;
    if (situation.bathedS === null) return 'warm-up';
    if (stage === 'cool-down') return situation.recededSinceS === null ? before : 'cool-down';
    if (hasEnded(stage, now)) return 'cool-down';
    if (situation.recededSinceS !== null) return stage;
    if (stage === 'warm-up') return 'first-fraction';
    if (stage === 'first-fraction') {
      if (!firstFractionOver) return stage;
      if (outlook.passedOfLate < even) return 'main-fraction';
      return outlook.passedOfLate > sure ? 'tail' : stage;
    }
    if (stage === 'main-fraction') return outlook.passedOfLate > even ? 'tail' : stage;
    return strongAgainS >= backForS ? 'main-fraction' : stage;
  };

  return {
    second: (timeS, { head, fault, situation, outlook }, around) => {
      if (head === null || isBlind(fault)) return;
      everWet = Math.max(everWet, head.wet);
      const isStrong = outlook.passedOfLate < 1 - sure;
      if (stage === 'tail' && situation.recededSinceS === null)
        strongAgainS = isStrong ? strongAgainS + 1 : 0;
      const now = { head, situation, outlook, ...around };
      const to = next(now);
      probability = probabilityOf(to, now, everWet);
      if (to === stage) return;
      if (to === 'cool-down') before = stage;
      sinceS = to === 'cool-down' ? (situation.recededSinceS ?? timeS) : timeS;
      strongAgainS = 0;
      stage = to;
    },
    stage: () => stage,
    sinceS: () => sinceS,
    probability: () => probability,
  };
}

function hasEnded(stage: Stage, { situation, head, isHeatOff }: StageSecond): boolean {
  // Without vapour for that long a bulb has cooled; one that stays as warm stands in some.
  if (head.vapourC - head.bulbC < bathedK) return false;
  const { leftAloneS, longestBreakS } = situation;
  const patience = patienceFor(stage, isHeatOff);
  // Who says that the heat is off needs not be guessed at.
  return leftAloneS > (isHeatOff ? patience : Math.max(patience, longerThanEver * longestBreakS));
}

function patienceFor(stage: Stage, isHeatOff: boolean): number {
  const inStageS = stage === 'tail' ? comesBackWithinS / 2 : comesBackWithinS;
  return isHeatOff ? inStageS : 2 * inStageS;
}

/** How likely the stage is by what decides it: the limit for main fraction and tail, the time without vapour for the end. */
function probabilityOf(stage: Stage, now: StageSecond, everWet: number): number {
  const { outlook, situation, head } = now;
  switch (stage) {
    case 'main-fraction':
      return 1 - outlook.passedOfLate;
    case 'tail':
      return outlook.passedOfLate;
    case 'cool-down':
      return 1 - Math.exp(-situation.leftAloneS / (comesBackWithinS / 2));
    case 'first-fraction':
      return everWet;
    case 'warm-up':
      return 1 - head.wet;
  }
}
