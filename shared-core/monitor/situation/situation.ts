import type { HeadNoise } from '../sense/head-noise.ts';
import type { DepartureEvidence } from './departure-detector.ts';
import { createHeldLevel } from './held-level.ts';
import { createLowestLevel } from './lowest-level.ts';
import type { HeadState } from './vapour-filter.ts';

/** What the head has done so far and does now, as far as its own temperature tells. */
export interface Situation {
  readonly arrivedS: number | null;
  readonly bathedS: number | null;
  /** When the head first came to rest; the convention for the first fraction counts from here. */
  readonly heldS: number | null;
  /** Level the head is held at, on the probe's scale [°C]. */
  readonly levelC: number | null;
  /** The lowest level the vapour held for a while, and the same without its first minutes. */
  readonly lowestLevelC: number | null;
  readonly lowestLaterC: number | null;
  /** Since when no vapour has bathed the bulb; null while it does. */
  readonly recededSinceS: number | null;
  /** How long no vapour has come [s]. */
  readonly absentS: number;
  /** And for how long nothing has warmed the bulb either: what is heated warms it, though the vapour stay below [s]. */
  readonly leftAloneS: number;
  /** The longest time that it was so left alone and vapour came back all the same [s]. */
  readonly longestBreakS: number;
  /** Seconds with vapour at the bulb since it first came, and since the head first held. */
  readonly wetS: number;
  readonly heldWetS: number;
  /** Seconds of undisturbed, bathed bulb since the last upset. */
  readonly calmS: number;
  readonly evidence: DepartureEvidence;
  /** When the test for a departure had fired and the head was clearly above its level; null once the head has gone back or receded. */
  readonly departedS: number | null;
}

/** One second of the head, with the azeotrope on the probe's own scale. */
export interface SituationSecond {
  readonly timeS: number;
  readonly observedC: number | null;
  readonly head: HeadState;
  readonly noise: HeadNoise;
  readonly azeotropeC: number;
  /** The same by what was stated, whatever the run has shown of the offset. */
  readonly statedAzeotropeC: number;
  readonly isFaulty: boolean;
}

export interface SituationWatch {
  second(input: SituationSecond): void;
  now(): Situation;
}

/** A bulb this far below the azeotrope is not yet reached by vapour, and not yet bathed [K]. */
const arrivingK = 15;
const bathedK = 5;
/** What the filter must believe, for so many seconds, before vapour counts as come or gone. */
const comes = 0.6;
const goes = 0.3;
const sureForS = 3;
/** A bulb that has hardly cooled is not said to have lost its vapour [K], [noise]. */
const leastFallK = 0.5;
const fallSds = 4;
/** The head rests when it changes more slowly than this for so long, or has been bathed for so long [K/s], [s]. */
const restingKPerS = 0.012;
const restingForS = 20;
/** Warm glass and rising air warm a bulb that has cooled by less than this [K]. */
const warmedK = 2;
const waitedS = 150;
/** A head that comes back lower than this below its level has found a new one [K]. */
const newLevelK = 0.3;
/** The bulb needs 2.2 times as long from cold to bathed as for the last third of the way (first-order lag). */
const warmingFactor = 2.2;

export function createSituationWatch(): SituationWatch {
  const level = createHeldLevel();
  const lowest = createLowestLevel();
  let arrivedS: number | null = null;
  let bathedS: number | null = null;
  let heldS: number | null = null;
  let recededSinceS: number | null = null;
  let lastWetS = 0;
  let lastWarmedS = 0;
  let longestBreakS = 0;
  /** The coolest it has been since it was last in vapour or warmed [°C]. */
  let troughC = Number.POSITIVE_INFINITY;
  let otherForS = 0;
  /** What was believed of vapour at the last reading: between two of a slow logger only what time allows is known. */
  let wet = 0;
  let readS = 0;
  let restedForS = 0;
  let undisturbedSinceS = 0;
  let wetS = 0;
  let wetAtHoldS = 0;
  let nowS = 0;

  const upset = (timeS: number): void => {
    level.interrupt();
    undisturbedSinceS = timeS;
  };

  const arrive = ({ timeS, head, azeotropeC }: SituationSecond): void => {
    const isWet = wet > comes;
    if (isWet && head.bulbC > azeotropeC - arrivingK) arrivedS ??= timeS;
    if (!isWet || head.bulbC < azeotropeC - bathedK) return;
    bathedS = timeS;
    wetS = Math.min(60, Math.round(warmingFactor * (timeS - (arrivedS ?? timeS))));
    undisturbedSinceS = timeS;
    lastWetS = timeS;
    lastWarmedS = timeS;
  };

  const settle = ({ timeS, head }: SituationSecond): void => {
    const isResting = wet > comes && Math.abs(head.rateKPerS) < restingKPerS;
    restedForS = isResting ? restedForS + 1 : 0;
    if (restedForS < restingForS && wetS < waitedS) return;
    heldS = timeS - restedForS;
    wetAtHoldS = wetS - restedForS;
    level.begin(head.vapourC);
    upset(timeS);
  };

  /** Vapour has come or gone when the filter has been sure of it for some seconds. */
  const followVapour = ({ timeS, observedC, head, noise }: SituationSecond): void => {
    if (observedC === null) return;
    if (wet > comes) lastWetS = timeS;
    const noiseK = fallSds * Math.hypot(noise.whiteSdK, noise.slowSdK);
    troughC = Math.min(troughC, head.bulbC);
    if (wet > comes || head.bulbC > troughC + Math.max(warmedK, noiseK)) {
      if (recededSinceS !== null) longestBreakS = Math.max(longestBreakS, timeS - lastWarmedS);
      lastWarmedS = timeS;
      troughC = head.bulbC;
    }
    const fallK = Math.max(leastFallK, noiseK);
    const isOther =
      recededSinceS === null ? wet < goes && head.bulbC < head.vapourC - fallK : wet > comes;
    otherForS = isOther ? otherForS + timeS - readS : 0;
    if (otherForS < sureForS) return;
    otherForS = 0;
    if (recededSinceS === null) {
      recededSinceS = Math.max(lastWetS, timeS - sureForS);
    } else {
      recededSinceS = null;
      const levelC = level.levelC();
      if (levelC !== null && head.vapourC < levelC - newLevelK) level.begin(head.vapourC);
    }
    upset(timeS);
  };

  return {
    second: (input) => {
      const { timeS, observedC, head, noise } = input;
      nowS = timeS;
      if (input.isFaulty) {
        undisturbedSinceS = timeS;
        return;
      }
      if (observedC !== null) wet = head.wet;
      // Before the head has first come to rest in vapour any rest may be its level; afterwards no bulb that cools by the hour is.
      if (heldS === null || wet > comes) lowest.see(head, input.statedAzeotropeC);
      if (bathedS === null) arrive(input);
      if (bathedS === null) return;
      followVapour(input);
      if (observedC !== null) readS = timeS;
      if (recededSinceS !== null) {
        undisturbedSinceS = timeS;
        return;
      }
      wetS += 1;
      if (heldS === null) settle(input);
      if (heldS !== null && observedC !== null) level.see(timeS, observedC, noise);
    },
    now: () => ({
      arrivedS,
      bathedS,
      heldS,
      levelC: level.levelC(),
      lowestLevelC: lowest.lowestC(),
      lowestLaterC: lowest.lowestLaterC(),
      recededSinceS,
      absentS: recededSinceS === null ? 0 : nowS - lastWetS,
      leftAloneS: recededSinceS === null ? 0 : nowS - lastWarmedS,
      longestBreakS,
      wetS,
      heldWetS: heldS === null ? 0 : wetS - wetAtHoldS,
      calmS: bathedS === null ? 0 : nowS - undisturbedSinceS,
      evidence: level.evidence(),
      departedS: level.departedS(),
    }),
  };
}
