import {
  createDepartureDetector,
  type DepartureEvidence,
  departureBlockS,
  departureThreshold,
} from './departure-detector.ts';
import type { HeadNoise, HeadState } from './head-filter.ts';

/** What the head has done so far, as far as its own temperature tells. */
export interface PlateauView {
  readonly arrivedS: number | null;
  readonly bathedS: number | null;
  /** When the head first came to rest; the convention for the first fraction counts from here. */
  readonly heldS: number | null;
  /** Level the plateau is held at, on the probe's scale [°C]. */
  readonly levelC: number | null;
  readonly lowestLevelC: number | null;
  readonly recededSinceS: number | null;
  /** How long no vapour has come: since it receded, or since the bulb last stopped rising [s]. */
  readonly absentS: number;
  /** Seconds with vapour at the bulb since it first came, and since the head first held. */
  readonly wetS: number;
  readonly heldWetS: number;
  /** Seconds of undisturbed, bathed bulb since the last upset. */
  readonly calmS: number;
  readonly evidence: DepartureEvidence;
  /** When the sequential test fired; null once the head has gone back or receded. */
  readonly departedS: number | null;
}

/** One second of the head, with the marks of the local scale on the probe's own scale. */
export interface PlateauSecond {
  readonly timeS: number;
  readonly observedC: number | null;
  readonly head: HeadState;
  readonly noise: HeadNoise;
  readonly azeotropeC: number;
  readonly limitC: number;
  readonly suspended: boolean;
}

export interface PlateauWatch {
  second(input: PlateauSecond): void;
  view(): PlateauView;
}

const calmRateKPerS = 0.012;
/** A head that goes on changing slowly is held all the same, once it has been as quiet as that for so long [s]. */
const quietS = 10;
const levelTimeConstantS = 180;
const levelDelayS = 60;
const recallS = 60;
/** Vapour that leaves lets the bulb cool at once; a head that only gets stronger sinks more slowly than this [K/s]. */
const leavingRateKPerS = -0.015;
/** A receded bulb has turned when it has come back by so much [K]. */
const turnK = 2;
/** The column still fills and the head still settles: the level follows before it is held against. */
const settlingS = 120;
/** A slow logger needs as many readings as this for a level, however long they take. */
const fewestLevelBlocks = 12;
/** What one reading may move the level by does not grow with the silence before it [s]. */
const longestLevelStepS = 5;
/** Scatter of a block's mean that no noise model explains [K]. */
const unexplainedSdK = 0.015;

export function createPlateauWatch(): PlateauWatch {
  const detector = createDepartureDetector();
  let arrivedS: number | null = null;
  let bathedS: number | null = null;
  let heldS: number | null = null;
  let calmSinceS: number | null = null;
  let quietForS = 0;
  let levelC: number | null = null;
  let lowestLevelC: number | null = null;
  let recededSinceS: number | null = null;
  let undisturbedSinceS = 0;
  let departedS: number | null = null;
  let nowS = 0;
  let returnAboveC = 0;
  let lowestC = Number.POSITIVE_INFINITY;
  let lowestS = 0;
  let highestC = 0;
  let rising = false;
  let absentSinceS = 0;
  let wetS = 0;
  let wetAtHoldS = 0;
  let belowCount = 0;
  let minuteAgo: number[] = [];
  let backCount = 0;
  let blockSum = 0;
  let blockCount = 0;
  let recent: { readonly timeS: number; readonly meanC: number }[] = [];
  let settlingBlocks = 0;
  let settledForS = 0;
  let lastBlockS = 0;

  /** Vapour is back from when the bulb turned; the rest of the time it only has to warm up. */
  const returningS = (): number => (recededSinceS === null || !rising ? 0 : nowS - lowestS);

  /** Follows a receded bulb down, up again when vapour comes, and perhaps down once more. */
  const followTurns = (timeS: number, observedC: number): void => {
    if (!rising) {
      if (observedC < lowestC) {
        lowestC = observedC;
        lowestS = timeS;
      }
      if (observedC < lowestC + turnK) return;
      rising = true;
      highestC = observedC;
    }
    absentSinceS = timeS;
    highestC = Math.max(highestC, observedC);
    if (observedC > highestC - turnK) return;
    wetS += timeS - lowestS;
    rising = false;
    lowestC = observedC;
    lowestS = timeS;
  };

  const upset = (timeS: number): void => {
    detector.restart();
    undisturbedSinceS = timeS;
    departedS = null;
    blockSum = 0;
    blockCount = 0;
    recent = [];
  };

  const arrive = ({ timeS, head, azeotropeC }: PlateauSecond): void => {
    if (arrivedS === null && head.bulbC > azeotropeC - 15) arrivedS = timeS;
    if (bathedS === null && head.bulbC > azeotropeC - 5) {
      bathedS = timeS;
      // The bulb needs 2.2 times as long from cold to here as for the last third of the way (first-order lag).
      wetS = Math.min(60, Math.round(2.2 * (timeS - (arrivedS ?? timeS))));
      undisturbedSinceS = timeS;
    }
  };

  const settle = ({ timeS, head, azeotropeC }: PlateauSecond): void => {
    // Far below the azeotrope only a long rest is believed to be vapour (pressure entered wrongly).
    const near = head.vapourC > azeotropeC - 1.5;
    const calmRate = near ? calmRateKPerS : calmRateKPerS / 4;
    const calm = head.vapourC > azeotropeC - 8 && Math.abs(head.rateKPerS) < calmRate;
    calmSinceS = calm ? (calmSinceS ?? timeS) : null;
    const patienceS = near ? 20 : 150;
    // For a while, not for the moment at which a rate changes its sign.
    quietForS = near && Math.abs(head.rateKPerS) < 3 * calmRateKPerS ? quietForS + 1 : 0;
    const waited = bathedS !== null && timeS - bathedS > 150 && quietForS > quietS;
    if ((calmSinceS !== null && timeS - calmSinceS >= patienceS) || waited) {
      heldS = calmSinceS ?? timeS;
      levelC = head.vapourC;
      upset(timeS);
    }
  };

  /**
   * A drop that noise cannot explain, below the held level or below where the head was a minute ago
   * (in the tail it stands well above that level), with its way back.
   */
  const followRecession = (input: PlateauSecond): void => {
    const { timeS, observedC, head, noise, azeotropeC, limitC } = input;
    if (levelC === null) return;
    const noiseSdK = Math.hypot(noise.whiteSdK, noise.slowSdK);
    if (recededSinceS === null) {
      minuteAgo.push(head.bulbC);
      if (minuteAgo.length > recallS) minuteAgo.shift();
      if (observedC === null) return;
      const heldC = Math.min(levelC, limitC) - Math.max(0.7, 4 * noiseSdK);
      const recentC = (minuteAgo[0] as number) - Math.max(1.2, 6 * noiseSdK);
      const isLeaving =
        head.rateKPerS < leavingRateKPerS || observedC < boilingFloorC(azeotropeC, noiseSdK);
      const below = isLeaving && observedC < Math.max(heldC, recentC);
      belowCount = below ? belowCount + 1 : 0;
      if (belowCount < 3) return;
      recededSinceS = timeS - 3;
      wetS = Math.max(0, wetS - 3);
      lowestC = observedC;
      lowestS = timeS;
      rising = false;
      absentSinceS = timeS;
      returnAboveC = Math.max(heldC, recentC);
      backCount = 0;
      upset(timeS);
      return;
    }
    undisturbedSinceS = timeS;
    if (observedC === null) return;
    followTurns(timeS, observedC);
    // Without vapour the bulb can only cool: one that rests or rises at the boiling point is in vapour again.
    const wet = observedC > boilingFloorC(azeotropeC, noiseSdK);
    const holds = wet && head.rateKPerS > -0.006 && head.rateKPerS < 0.03;
    backCount = holds ? backCount + 1 : 0;
    if (backCount >= (observedC > returnAboveC ? 8 : 25)) {
      wetS += returningS();
      recededSinceS = null;
      minuteAgo = [];
      if (observedC <= returnAboveC) {
        levelC = head.bulbC;
        settlingBlocks = 0;
        settledForS = 0;
      }
      upset(timeS);
    }
  };

  const settleLevel = (meanC: number, stepS: number): void => {
    settlingBlocks += 1;
    settledForS += stepS;
    const within = Math.max(fewestLevelBlocks, levelDelayS / stepS);
    levelC = (levelC as number) + (meanC - (levelC as number)) / Math.min(settlingBlocks, within);
  };

  /** The level follows what the head was a minute ago, so that a ramp that has just begun does not lift it. */
  const followLevel = (timeS: number, stepS: number): void => {
    const oldest = recent[0];
    if (oldest === undefined || recent.length <= fewestLevelBlocks) return;
    if (timeS - oldest.timeS < levelDelayS) return;
    recent.shift();
    const level = levelC as number;
    const unmoved = detector.evidence().logLikelihoodRatio < 5;
    if (!unmoved && oldest.meanC >= level) return;
    const timeConstantS = oldest.meanC < level ? levelTimeConstantS / 2 : levelTimeConstantS;
    levelC = level + (oldest.meanC - level) * (stepS / timeConstantS);
    lowestLevelC = lowestLevelC === null ? levelC : Math.min(lowestLevelC, levelC);
  };

  const closeBlock = (timeS: number, noise: HeadNoise, sampled: number): void => {
    const meanC = blockSum / blockCount;
    const stepS = Math.min(longestLevelStepS, Math.max(departureBlockS, timeS - lastBlockS));
    lastBlockS = timeS;
    blockSum = 0;
    blockCount = 0;
    if (levelC === null) return;
    recent.push({ timeS, meanC });
    if (settledForS < settlingS || settlingBlocks < 2 * fewestLevelBlocks) {
      settleLevel(meanC, stepS);
      return;
    }
    followLevel(timeS, stepS);
    detector.see(timeS, meanC - levelC, {
      whiteSdK: Math.hypot(noise.whiteSdK / Math.sqrt(sampled), unexplainedSdK),
      slowSdK: noise.slowSdK,
      slowCorrelationS: noise.slowCorrelationS,
    });
    const evidence = detector.evidence();
    if (departedS === null) {
      if (evidence.logLikelihoodRatio > departureThreshold) departedS = timeS;
    } else if (evidence.logLikelihoodRatio < 1) {
      departedS = null;
    }
  };

  return {
    second: (input) => {
      const { timeS, observedC, noise } = input;
      nowS = timeS;
      if (input.suspended) {
        undisturbedSinceS = timeS;
        return;
      }
      arrive(input);
      if (bathedS === null) return;
      const wet =
        heldS !== null ? recededSinceS === null : input.head.vapourC > input.azeotropeC - 3;
      if (wet) wetS += 1;
      if (heldS === null) {
        settle(input);
        wetAtHoldS = wetS;
        return;
      }
      followRecession(input);
      if (recededSinceS !== null) return;
      if (observedC !== null) {
        blockSum += observedC;
        blockCount += 1;
      }
      if (timeS % departureBlockS === 0 && blockCount > 0) closeBlock(timeS, noise, blockCount);
    },
    view: () => ({
      arrivedS,
      bathedS,
      heldS,
      levelC,
      lowestLevelC,
      recededSinceS,
      absentS: recededSinceS === null ? 0 : nowS - absentSinceS,
      wetS: wetS + returningS(),
      heldWetS: heldS === null ? 0 : wetS + returningS() - wetAtHoldS,
      calmS: bathedS === null ? 0 : nowS - undisturbedSinceS,
      evidence: detector.evidence(),
      departedS,
    }),
  };
}

/** No bulb in ethanol–water vapour reads less than this, for all that scale and noise leave open [°C]. */
function boilingFloorC(azeotropeC: number, noiseSdK: number): number {
  return azeotropeC - Math.max(1.2, 5 * noiseSdK);
}
