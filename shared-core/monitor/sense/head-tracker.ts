import { lagTimeConstantS } from '../../probe/index.ts';
import type { RunSettings } from '../../run/index.ts';
import { confirmedAfterS, settledAfterS } from '../patience.ts';
import { createVapourFilter, type HeadState } from '../situation/vapour-filter.ts';
import type { HeadNoise } from './head-noise.ts';
import { createNoiseLearner } from './noise-learner.ts';
import { createOtherProbe, type OtherProbe } from './other-probe.ts';
import type { ProbeFault } from './probe-fault.ts';
import { createProbeHealth, type ProbeHealth } from './probe-health.ts';
import { createReadingSteps, withSteps } from './reading-steps.ts';
import type { BinnedSecond } from './second-bin.ts';
import { createSlippedProbe } from './slipped-probe.ts';

/** What is known of the head after one second. */
export interface HeadSecond {
  /** The observation that was used, if one came and was believed. */
  readonly observedC: number | null;
  readonly head: HeadState | null;
  readonly fault: ProbeFault | null;
}

/** What the tracker must know of its surroundings in one second. */
export interface HeadSurroundings {
  readonly plateauC: number | null;
  readonly waterC: number;
  readonly potC: number | null;
  /** True while the head holds undisturbed, so that what remains is noise. */
  readonly holding: boolean;
  /** Where vapour would be expected if it came, on the probe's scale [°C], and how well that is known [K]. */
  readonly vapourGuessC: number;
  readonly vapourGuessSdK: number;
  /** How likely vapour as cool as this is at all. */
  readonly possible: (vapourC: number) => number;
}

/** Screens the head's observations, follows them through the bulb's lag and learns their noise. */
export interface HeadTracker {
  readonly health: ProbeHealth;
  readonly otherProbe: OtherProbe;
  second(timeS: number, binned: BinnedSecond | null, around: HeadSurroundings): HeadSecond;
  noise(): HeadNoise;
}

/** Further off than this, an observation is set aside until others confirm it. */
const surpriseLimit = 4.5;

export function createHeadTracker(settings: RunSettings): HeadTracker {
  const health = createProbeHealth(settings.probe.silenceS);
  const learner = createNoiseLearner();
  const steps = createReadingSteps();
  const slipped = createSlippedProbe();
  const filter = createVapourFilter(lagTimeConstantS(settings.probe.lagT90S), learner.noise());
  let started = false;
  let lastUsedS = 0;
  let surprises = 0;
  let surpriseSign = 0;

  const use = (valueC: number, around: HeadSurroundings): boolean => {
    if (!started) {
      filter.restart(valueC, around.vapourGuessC, around.vapourGuessSdK);
      started = true;
      return true;
    }
    const surprise = filter.surprise(valueC);
    if (Math.abs(surprise) < surpriseLimit) {
      surprises = 0;
    } else {
      surprises = Math.sign(surprise) === surpriseSign ? surprises + 1 : 1;
      surpriseSign = Math.sign(surprise);
      if (surprises < confirmedAfterS) return false;
      filter.loosen(valueC - filter.state().bulbC);
    }
    filter.correct(valueC);
    filter.bound(around.possible);
    return true;
  };

  const noise = (): HeadNoise => withSteps(learner.noise(), steps.stepK());

  return {
    health,
    otherProbe: createOtherProbe(),
    noise,
    second: (timeS, reported, around) => {
      if (started) filter.predict();
      const before = started ? filter.state() : null;
      const { whiteSdK, slowSdK } = noise();
      const noiseSdK = Math.hypot(whiteSdK, slowSdK);
      const binned = slipped.corrected(reported, before?.bulbC ?? null);
      const forgotten = timeS - lastUsedS > settledAfterS;
      const verdict = health.judge(timeS, binned, {
        bulbC: forgotten ? null : (before?.bulbC ?? null),
        noiseSdK,
        plateauC: around.plateauC,
        waterC: around.waterC,
        potC: around.potC,
      });
      slipped.slipped(verdict.probeStepK);
      let observedC: number | null = null;
      if (verdict.accepted !== null && use(verdict.accepted.value - verdict.probeStepK, around)) {
        observedC = verdict.accepted.value - verdict.probeStepK;
        lastUsedS = timeS;
        steps.see(observedC);
        if (around.holding) {
          learner.see(verdict.accepted.timeS, observedC, before?.rateKPerS ?? 0);
          filter.setNoise(noise());
        } else {
          learner.interrupt();
        }
      }
      return {
        observedC,
        head: started ? filter.state() : null,
        fault: verdict.fault,
      };
    },
  };
}
