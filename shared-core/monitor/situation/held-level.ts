import type { HeadNoise } from '../sense/head-noise.ts';
import {
  createDepartureDetector,
  type DepartureEvidence,
  departureBlockS,
  departureThreshold,
} from './departure-detector.ts';

/** The level a head is held at, and whether it is leaving it. */
export interface HeldLevel {
  /** Begins at a level; a column that has just filled goes on settling for some minutes. */
  begin(levelC: number): void;
  /** Takes one second's reading of a bathed bulb. */
  see(timeS: number, observedC: number, noise: HeadNoise): void;
  /** After an upset: what was seen before it says nothing of a ramp after it. */
  interrupt(): void;
  levelC(): number | null;
  evidence(): DepartureEvidence;
  /** When the sequential test had fired and the head was clearly above its level; null once the head has gone back or was upset. */
  departedS(): number | null;
}

const levelTimeConstantS = 180;
const levelDelayS = 60;
/** The column still fills and the head still settles: the level follows before it is held against. */
const settlingS = 240;
/** A slow logger needs as many readings as this for a level, however long they take. */
const fewestLevelBlocks = 12;
/** What one reading may move the level by does not grow with the silence before it [s]. */
const longestLevelStepS = 5;
/** A head that settles after the heat was eased, or whose pot weakens, rises by some tenths: only one that rises further is leaving [K]. */
const leavingK = 0.75;
/** A height counts when it was held for so many blocks. */
const heightBlocks = 3;
/** Scatter of a block's mean that no noise model explains [K]. */
const unexplainedSdK = 0.015;

export function createHeldLevel(): HeldLevel {
  const detector = createDepartureDetector();
  let levelC: number | null = null;
  let departedS: number | null = null;
  let sum = 0;
  let count = 0;
  let recent: { readonly timeS: number; readonly meanC: number }[] = [];
  let settlingBlocks = 0;
  let settledForS = 0;
  let lastBlockS = 0;
  /** The highest the head has stood since it was last upset, and in all the time before. */
  let lastMeans: number[] = [];
  let highestC = Number.NEGATIVE_INFINITY;
  let cameBackFromC = Number.NEGATIVE_INFINITY;

  const keepHeight = (meanC: number): void => {
    lastMeans = [...lastMeans.slice(1 - heightBlocks), meanC];
    if (lastMeans.length === heightBlocks) highestC = Math.max(highestC, Math.min(...lastMeans));
  };

  const settle = (level: number, meanC: number, stepS: number): number => {
    settlingBlocks += 1;
    settledForS += stepS;
    const within = Math.max(fewestLevelBlocks, levelDelayS / stepS);
    return level + (meanC - level) / Math.min(settlingBlocks, within);
  };

  /** The level follows what the head was a minute ago, so that a ramp that has just begun does not lift it. */
  const follow = (level: number, timeS: number, stepS: number): number => {
    const oldest = recent[0];
    if (oldest === undefined || recent.length <= fewestLevelBlocks) return level;
    if (timeS - oldest.timeS < levelDelayS) return level;
    recent.shift();
    const unmoved = detector.evidence().logLikelihoodRatio < 5;
    if (!unmoved && oldest.meanC >= level) return level;
    const timeConstantS = oldest.meanC < level ? levelTimeConstantS / 2 : levelTimeConstantS;
    return level + (oldest.meanC - level) * (stepS / timeConstantS);
  };

  /** Where a head has stood before and came back from, as one heated by hand does, it leaves nothing. */
  const judge = (timeS: number, level: number, meanC: number): void => {
    const { logLikelihoodRatio } = detector.evidence();
    const isNew = meanC > Math.max(level, cameBackFromC) + leavingK;
    const rises = logLikelihoodRatio > departureThreshold && isNew;
    if (departedS === null && rises) departedS = timeS;
    if (departedS !== null && logLikelihoodRatio < 1) departedS = null;
  };

  const closeBlock = (level: number, timeS: number, noise: HeadNoise): void => {
    const meanC = sum / count;
    const sampled = count;
    const stepS = Math.min(longestLevelStepS, Math.max(departureBlockS, timeS - lastBlockS));
    lastBlockS = timeS;
    sum = 0;
    count = 0;
    recent.push({ timeS, meanC });
    keepHeight(meanC);
    if (settledForS < settlingS || settlingBlocks < 2 * fewestLevelBlocks) {
      levelC = settle(level, meanC, stepS);
      return;
    }
    levelC = follow(level, timeS, stepS);
    detector.see(timeS, meanC - levelC, {
      whiteSdK: Math.hypot(noise.whiteSdK / Math.sqrt(sampled), unexplainedSdK),
      slowSdK: noise.slowSdK,
      slowCorrelationS: noise.slowCorrelationS,
    });
    judge(timeS, levelC, meanC);
  };

  /** The head settles again after every upset, and finds its level anew. */
  const interrupt = (): void => {
    detector.restart();
    cameBackFromC = Math.max(cameBackFromC, highestC);
    lastMeans = [];
    departedS = null;
    sum = 0;
    count = 0;
    recent = [];
    settlingBlocks = 0;
    settledForS = 0;
  };

  return {
    begin: (beginC) => {
      levelC = beginC;
      interrupt();
    },
    see: (timeS, observedC, noise) => {
      sum += observedC;
      count += 1;
      if (levelC !== null && timeS % departureBlockS === 0) closeBlock(levelC, timeS, noise);
    },
    interrupt,
    levelC: () => levelC,
    evidence: () => detector.evidence(),
    departedS: () => departedS,
  };
}
