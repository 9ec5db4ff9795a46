import { powerOnC } from '../../frame/index.ts';
import type { LinkChange, Reading } from '../../run/index.ts';
import { createBelievableSteps, type ExpectedStep } from './believable-steps.ts';
import { createFrozenWatch } from './frozen-watch.ts';
import { createHotWatch, type HottestThings } from './hot-watch.ts';
import type { ProbeFault } from './probe-fault.ts';
import { createReadingPace } from './reading-pace.ts';
import type { BinnedSecond } from './second-bin.ts';

/** What the rest of the monitor expects of the head, to judge a reading by. */
export type HeadExpectation = ExpectedStep & HottestThings;

/** The judgement of one second. */
export interface HealthVerdict {
  /** The observation the staging may use, if any. */
  readonly accepted: BinnedSecond | null;
  /** Size of a step that was put down to the probe in this second [K]; 0 otherwise. */
  readonly probeStepK: number;
  readonly fault: ProbeFault | null;
}

/** Judges the head probe second by second. */
export interface ProbeHealth {
  seeReading(reading: Reading, calibratedC: number): boolean;
  seeLink(change: LinkChange): void;
  judge(timeS: number, binned: BinnedSecond | null, expected: HeadExpectation): HealthVerdict;
}

/** A probe that slipped is told of for so long. */
const stepHoldS = 45;
/** One jump is a knock, and three are its echo; more within half a minute are a loose contact; chosen here. */
const manyJumps = 4;
const nothingAccepted = { accepted: null, probeStepK: 0 };

/** @param silenceS silence after which the probe counts as lost [s] */
export function createProbeHealth(silenceS: number): ProbeHealth {
  const frozenWatch = createFrozenWatch();
  const hotWatch = createHotWatch();
  const steps = createBelievableSteps();
  const pace = createReadingPace();
  let frozen = false;
  let lostFor: Loss | null = null;
  /** Since when the program has been listening; never while it was closed. */
  let listensSinceS = 0;
  let lastValueC: number | null = null;
  /** When a reading last came that no head can have, and one that no head can have come to; null since a good one. */
  let impossibleS: number | null = null;
  let unbelievedS: number | null = null;
  let stepUntilS = Number.NEGATIVE_INFINITY;

  /** Where nothing has been accepted for too long: what comes instead, if anything does. */
  const noReadingFault = (timeS: number): ProbeFault | null => {
    const quietS = timeS - Math.max(pace.lastS() ?? 0, listensSinceS);
    if (lostFor !== null && lostFor !== 'program-closed' && quietS > 2) return lostFor;
    const patienceS = Math.max(silenceS, pace.patienceS(impossibleS !== null));
    if (quietS <= patienceS) return lostFor === 'program-closed' ? lostFor : null;
    if (isWithin(impossibleS, timeS, patienceS)) return 'open-circuit';
    return isWithin(unbelievedS, timeS, patienceS) ? 'spikes' : 'silent';
  };

  const accept = (
    timeS: number,
    binned: BinnedSecond,
    expected: HeadExpectation,
  ): Omit<HealthVerdict, 'fault'> => {
    const gapS = Math.max(1, timeS - (pace.lastS() ?? timeS));
    const { believed, probeStepK } = steps.judge(binned, expected, gapS);
    if (!believed) {
      unbelievedS = timeS;
      return nothingAccepted;
    }
    if (probeStepK !== 0) stepUntilS = timeS + stepHoldS;
    pace.see(timeS);
    lastValueC = binned.value;
    impossibleS = null;
    unbelievedS = null;
    hotWatch.see(timeS, binned.value, expected);
    return { accepted: binned, probeStepK };
  };

  return {
    /** Also screens what other layers may have let through: values no head can have. */
    seeReading: (reading, calibratedC) => {
      const possible = Number.isFinite(calibratedC) && calibratedC > -40 && calibratedC < 140;
      if (reading.quality === 'bad' || !possible) {
        impossibleS = reading.timeS;
        return false;
      }
      if (reading.value === powerOnC && !isNear(lastValueC, calibratedC, 2)) return false;
      frozen = frozenWatch.see(reading.value);
      lostFor = null;
      return reading.quality === 'good' || isNear(lastValueC, calibratedC, 2);
    },
    seeLink: ({ state, reason, timeS }) => {
      const loss = lossBy(reason);
      const isProgram = loss === 'program-closed';
      if (isProgram) listensSinceS = state === 'lost' ? Number.POSITIVE_INFINITY : timeS;
      if (state === 'lost') lostFor = loss;
      // Whether the probe is still there, only a reading tells.
      else if (!isProgram) lostFor = null;
    },
    judge: (timeS, binned, expected) => {
      steps.fade();
      const { accepted, probeStepK } =
        binned === null ? nothingAccepted : accept(timeS, binned, expected);
      const fault =
        noReadingFault(timeS) ??
        (timeS < stepUntilS ? 'step' : null) ??
        (steps.jumps() > manyJumps ? 'spikes' : null) ??
        (frozen ? 'frozen' : null) ??
        hotWatch.fault(timeS);
      return { accepted, probeStepK, fault };
    },
  };
}

/** Whether it is the probe's own line that was lost, or whoever listened to it. */
type Loss = 'lost' | 'reader-stopped' | 'program-closed';

function lossBy(reason: LinkChange['reason']): Loss {
  if (reason === 'program-closed' || reason === 'clock-stepped') return 'program-closed';
  return reason === 'reader-stopped' ? reason : 'lost';
}

function isNear(known: number | null, valueC: number, withinK: number): boolean {
  return known !== null && Math.abs(known - valueC) <= withinK;
}

function isWithin(sinceS: number | null, timeS: number, withinS: number): boolean {
  return sinceS !== null && timeS - sinceS <= withinS;
}
