import { powerOnC } from '../../frame/index.ts';
import type { LinkChange, Reading } from '../../run/index.ts';
import { createFrozenWatch } from './frozen-watch.ts';
import type { ProbeFault } from './probe-fault.ts';
import type { BinnedSecond } from './second-bin.ts';

/** What the rest of the monitor expects of the head, to judge a reading by. */
export interface HeadExpectation {
  /** Where the bulb should be now; null before the first reading or after a long gap. */
  readonly bulbC: number | null;
  /** Noise of one second's observation [K]. */
  readonly noiseSdK: number;
  /** The held plateau on the probe's scale; null before the head has held. */
  readonly plateauC: number | null;
  readonly waterC: number;
  readonly potC: number | null;
}

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

/** Chosen here: no vapour front heats a bulb faster, no wet bulb cools faster [K/s]. */
const fastestRiseKPerS = 20;
const fastestFallKPerS = 8;
/** On a plateau vapour gets hotter only as fast as the pot weakens; a fast tail is some 0.1 K/s. */
const fastestRiseAbovePlateauKPerS = 0.5;
const confirmSeconds = 3;
const stepHoldS = 45;
const beforeFirstS = 30;
/** Before so many intervals nobody knows a logger's pace: a slow one must not count as silent. */
const intervalsToKnow = 2;
/** But a probe that falls silent at once must be told of: loggers slower than once a minute are rare. */
const unknownPaceS = 180;

/** @param silenceS silence after which the probe counts as lost [s] */
export function createProbeHealth(silenceS: number): ProbeHealth {
  const frozenWatch = createFrozenWatch();
  let frozen = false;
  let lostFor: 'link' | 'program' | null = null;
  /** Since when the program has been listening; never while it was closed. */
  let listensSinceS = 0;
  let lastGoodS: number | null = null;
  let lastValueC: number | null = null;
  let intervalS = 1;
  let intervals = 0;
  let badSinceGood = 0;
  let pending: { readonly valueC: number; readonly count: number } | null = null;
  let jumps = 0;
  let stepUntilS = Number.NEGATIVE_INFINITY;
  let hotSinceS: number | null = null;
  let overPotSinceS: number | null = null;

  /** Also screens what other layers may have let through: values no head can have. */
  const seeReading = (reading: Reading, calibratedC: number): boolean => {
    const possible = Number.isFinite(calibratedC) && calibratedC > -40 && calibratedC < 140;
    if (reading.quality === 'bad' || !possible) {
      badSinceGood += 1;
      return false;
    }
    if (reading.value === powerOnC && !isNear(lastValueC, calibratedC, 2)) return false;
    frozen = frozenWatch.see(reading.value);
    lostFor = null;
    return reading.quality === 'good' || isNear(lastValueC, calibratedC, 2);
  };

  const noReadingFault = (timeS: number): ProbeFault | null => {
    const quietS = timeS - Math.max(lastGoodS ?? 0, listensSinceS);
    if (lostFor === 'link' && quietS > 2) return 'lost';
    const patienceS =
      lastGoodS === null
        ? beforeFirstS
        : intervals < intervalsToKnow && badSinceGood === 0
          ? unknownPaceS
          : 3 * intervalS;
    if (quietS <= Math.max(silenceS, patienceS))
      return lostFor === 'program' ? 'program-closed' : null;
    if (badSinceGood > 0) return 'open-circuit';
    return 'silent';
  };

  const judgeValue = (
    timeS: number,
    binned: BinnedSecond,
    expected: HeadExpectation,
  ): HealthVerdict => {
    const gapS = lastGoodS === null ? 60 : Math.max(1, timeS - lastGoodS);
    const from = expected.bulbC;
    const change = from === null ? 0 : binned.value - from;
    const slack = 1 + 6 * expected.noiseSdK;
    const abovePlateau = expected.plateauC !== null && binned.value > expected.plateauC + 1;
    const riseLimit = abovePlateau
      ? slack + fastestRiseAbovePlateauKPerS * gapS
      : slack + fastestRiseKPerS * gapS;
    const believable = change <= riseLimit && change >= -(slack + fastestFallKPerS * gapS);
    if (believable) {
      pending = null;
      return accept(timeS, binned, 0);
    }
    jumps += 1;
    const same = pending !== null && Math.abs(binned.value - pending.valueC) < slack;
    pending = { valueC: binned.value, count: same && pending !== null ? pending.count + 1 : 1 };
    if (pending.count < confirmSeconds) {
      return { accepted: null, probeStepK: 0, fault: null };
    }
    pending = null;
    const byProbe = change > 0 && abovePlateau;
    if (byProbe) stepUntilS = timeS + stepHoldS;
    return accept(timeS, binned, byProbe ? change : 0);
  };

  const accept = (timeS: number, binned: BinnedSecond, probeStepK: number): HealthVerdict => {
    if (lastGoodS !== null && timeS > lastGoodS) {
      const wholeGapS = timeS - lastGoodS;
      if (intervals < intervalsToKnow) {
        // The shorter of the first two: the longer may hold an outage.
        intervalS = intervals === 0 ? wholeGapS : Math.min(intervalS, wholeGapS);
        intervals += 1;
      } else {
        intervalS += 0.2 * (Math.min(wholeGapS, 4 * intervalS + 1) - intervalS);
      }
    }
    lastGoodS = timeS;
    lastValueC = binned.value;
    badSinceGood = 0;
    return { accepted: binned, probeStepK, fault: null };
  };

  return {
    seeReading,
    seeLink: ({ state, reason, timeS }) => {
      const isProgram = reason === 'program-closed';
      if (isProgram) listensSinceS = state === 'lost' ? Number.POSITIVE_INFINITY : timeS;
      if (state === 'lost') lostFor = isProgram ? 'program' : 'link';
      // Whether the probe is still there, only a reading tells.
      else if (!isProgram) lostFor = null;
    },
    judge: (timeS, binned, expected) => {
      jumps *= 0.97;
      const verdict =
        binned === null
          ? { accepted: null, probeStepK: 0, fault: null }
          : judgeValue(timeS, binned, expected);
      const value = verdict.accepted?.value ?? null;
      if (value !== null) {
        hotSinceS = value > expected.waterC + 1.5 ? (hotSinceS ?? timeS) : null;
        const overPot = expected.potC !== null && value > expected.potC + 2;
        overPotSinceS = overPot ? (overPotSinceS ?? timeS) : null;
      }
      const fault =
        noReadingFault(timeS) ??
        (timeS < stepUntilS ? 'step' : null) ??
        (jumps > 4 ? 'spikes' : null) ??
        (frozen ? 'frozen' : null) ??
        lasting(hotSinceS, timeS, 'above-boiling-water') ??
        lasting(overPotSinceS, timeS, 'hotter-than-pot');
      return { ...verdict, fault };
    },
  };
}

function isNear(known: number | null, valueC: number, withinK: number): boolean {
  return known !== null && Math.abs(known - valueC) <= withinK;
}

function lasting(sinceS: number | null, timeS: number, fault: ProbeFault): ProbeFault | null {
  return sinceS !== null && timeS - sinceS > 60 ? fault : null;
}
