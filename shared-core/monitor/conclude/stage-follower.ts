import type { Stage } from '../../stages/index.ts';
import { isBlind } from '../sense/probe-fault.ts';
import type { HeadNow } from '../situation/head-course.ts';
import { createStageCaller } from './stage-caller.ts';

/** The stage, since when, and how likely; blind seconds leave it as it was. */
export interface StageFollower {
  second(timeS: number, now: HeadNow, around: AroundStage): void;
  stage(): Stage;
  sinceS(): number;
  probability(): number;
}

export interface AroundStage {
  readonly firstFractionOver: boolean;
  readonly isHeatOff: boolean;
}

export function createStageFollower(): StageFollower {
  const caller = createStageCaller();
  let stage: Stage = 'warm-up';
  let sinceS = 0;
  return {
    second: (timeS, { head, fault, situation, outlook }, around) => {
      if (head === null || isBlind(fault)) return;
      caller.second({ head, situation, outlook, ...around });
      if (caller.stage() === stage) return;
      stage = caller.stage();
      sinceS = stage === 'cool-down' ? (situation.recededSinceS ?? timeS) : timeS;
    },
    stage: () => stage,
    sinceS: () => sinceS,
    probability: caller.probability,
  };
}
