import type { RunSettings } from '../../run/index.ts';
import { even } from '../certainty.ts';
import { settledAfterS } from '../patience.ts';
import type { HeadTracker } from '../sense/head-tracker.ts';
import { isBlind, type ProbeFault } from '../sense/probe-fault.ts';
import type { BinnedSecond } from '../sense/second-bin.ts';
import { createLimitWatch, type LimitOutlook } from './limit-outlook.ts';
import type { LimitScale } from './limit-scale.ts';
import {
  modelSdK,
  ofOtherProbe,
  priorScale,
  probabilityPossible,
  type ScaleBelief,
  type ScaleBeliefs,
  scaleBeliefs,
  toleranceK,
} from './scale-belief.ts';
import { createSituationWatch, type Situation } from './situation.ts';
import { createSurgeWatch } from './surge-watch.ts';
import type { HeadState } from './vapour-filter.ts';
import type { VapourScale } from './vapour-scale.ts';

/** The head at one second: what was read, what is believed of it, and how it stands to the limit. */
export interface HeadNow {
  readonly head: HeadState | null;
  readonly fault: ProbeFault | null;
  readonly lastTrustedC: number | null;
  readonly situation: Situation;
  readonly belief: ScaleBelief;
  readonly outlook: LimitOutlook;
  readonly surging: boolean;
}

/** What the head's second hangs on besides its own reading. */
export interface HeadAround {
  readonly potC: number | null;
  /** True where noise may be learned: vapour holds, nobody has just touched the heat. */
  readonly isQuiet: boolean;
  /** True where the heat is off, as far as anybody has said and the head does not belie. */
  readonly isHeatOff: boolean;
}

export interface HeadCourse {
  second(timeS: number, binned: BinnedSecond | null, around: HeadAround): HeadNow;
  now(): HeadNow;
  /** There is nothing to call off any more before the vapour is strong again. */
  disarm(): void;
}

/** Where vapour would come to the head before any has, above the azeotrope [K]: strong or nearly steam. */
const guessAboveK = 4;
const guessSdK = 6;
/** How often the offset is worked out anew [s]. */
const believedEveryS = 10;

/** Follows the head from reading to outlook, second by second. */
export function createHeadCourse(
  settings: RunSettings,
  tracker: HeadTracker,
  limitScale: LimitScale,
): HeadCourse {
  const watch = createSituationWatch();
  const limitWatch = createLimitWatch(limitScale.scale().limitC);
  const surgeWatch = createSurgeWatch();
  let scale = limitScale.scale();
  let belief = priorScale(settings, scale);
  let now: HeadNow = {
    head: null,
    fault: null,
    lastTrustedC: null,
    situation: watch.now(),
    belief,
    outlook: limitWatch.outlook(),
    surging: false,
  };

  const possible = (vapourC: number): number =>
    hasHeld(now.situation, vapourC) ? 1 : probabilityPossible(belief, vapourC, scale.azeotropeC);

  const read = (timeS: number, binned: BinnedSecond | null, around: HeadAround) => {
    const { situation, head } = now;
    const isCalm = situation.recededSinceS === null && situation.calmS >= settledAfterS;
    return tracker.second(timeS, binned, {
      plateauC: isCalm ? situation.levelC : null,
      waterC: scale.waterC,
      potC: around.potC,
      holding: around.isQuiet && isCalm && (head?.wet ?? 0) > even,
      vapourGuessC: scale.azeotropeC + belief.meanK + guessAboveK,
      vapourGuessSdK: Math.hypot(guessSdK, belief.sdK),
      possible,
    });
  };

  const learnScale = createScaleLearner();
  const believe = (timeS: number, situation: Situation): void => {
    const isNew = limitScale.scale() !== scale;
    if (!isNew && timeS % believedEveryS !== 0) return;
    scale = limitScale.scale();
    belief = learnScale(limitScale.settings(), scale, situation, tracker);
  };

  return {
    second: (timeS, binned, around) => {
      const { head, fault, observedC } = read(timeS, binned, around);
      if (head !== null) {
        watch.second({
          timeS,
          observedC,
          head,
          noise: tracker.noise(),
          azeotropeC: scale.azeotropeC + belief.meanK,
          statedAzeotropeC: scale.azeotropeC,
          isFaulty: isBlind(fault),
          isHeatOff: around.isHeatOff,
        });
      }
      const situation = watch.now();
      believe(timeS, situation);
      if (head !== null && !isBlind(fault)) {
        const { reactionTimeS } = settings;
        limitWatch.second({ head, situation, belief, limitC: scale.limitC, reactionTimeS });
      }
      const { whiteSdK, slowSdK } = tracker.noise();
      const surging =
        observedC === null
          ? now.surging
          : surgeWatch.see(timeS, observedC, Math.hypot(whiteSdK, slowSdK));
      const lastTrustedC = observedC ?? now.lastTrustedC;
      const outlook = limitWatch.outlook();
      now = { head, fault, lastTrustedC, situation, belief, outlook, surging };
      return now;
    },
    now: () => now,
    disarm: () => limitWatch.disarm(),
  };
}

/** What held before is vapour, whatever the offset or the lightest volatiles make it read. */
const hasHeld = ({ lowestLevelC }: Situation, vapourC: number): boolean =>
  lowestLevelC !== null && vapourC > lowestLevelC - toleranceK;

type LearnScale = (
  settings: RunSettings,
  scale: VapourScale,
  situation: Situation,
  tracker: Pick<HeadTracker, 'noise' | 'otherProbe'>,
) => ScaleBelief;

/** The belief by what the run has shown; worked out anew only when something new was shown, which is seldom in hours of a plateau. */
function createScaleLearner(): LearnScale {
  let stated: {
    readonly by: readonly [RunSettings, VapourScale];
    readonly beliefs: ScaleBeliefs;
  } | null = null;
  let last: { readonly shown: readonly unknown[]; readonly belief: ScaleBelief } | null = null;

  const beliefsBy = (settings: RunSettings, scale: VapourScale): ScaleBeliefs => {
    if (stated?.by[0] !== settings || stated.by[1] !== scale)
      stated = { by: [settings, scale], beliefs: scaleBeliefs(settings, scale) };
    return stated.beliefs;
  };

  return (settings, scale, { lowestLevelC, lowestLaterC }, { noise, otherProbe }) => {
    const { slowSdK } = noise();
    const isOther = otherProbe.sinceS() !== null;
    const shown = [settings, scale, lowestLevelC, lowestLaterC, slowSdK, isOther];
    if (last?.shown.every((part, index) => Object.is(part, shown[index]))) return last.belief;
    const lowestSdK = Math.hypot(modelSdK, slowSdK / 2);
    const { prior, by } = beliefsBy(settings, scale);
    const learnt =
      lowestLevelC === null ? prior : by({ lowestC: lowestLevelC, lowestSdK, lowestLaterC });
    const belief = isOther ? ofOtherProbe(learnt, settings.probe) : learnt;
    last = { shown, belief };
    return belief;
  };
}
