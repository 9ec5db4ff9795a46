import type { HeadNoise } from '../sense/head-noise.ts';
import {
  createDepartureDetector,
  type DepartureEvidence,
  departureBlockS,
  departureThreshold,
} from './departure-detector.ts';
import { createHeadBlocks, type HeadBlock } from './head-blocks.ts';
import { createStoodHeights } from './stood-heights.ts';

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

/**
 * The level follows within minutes, and from what was seen a minute ago: quick enough for a pot that weakens, too slow to rise with a
 * departure and hide it [s]; by simulation.
 */
const levelTimeConstantS = 180;
const levelDelayS = 60;
/** The column still fills and the head still settles: the level follows before it is held against. */
const settlingS = 240;
/** A slow logger needs as many readings as this for a level, however long they take. */
const fewestLevelBlocks = 12;
/** A head that settles after the heat was eased, or whose pot weakens, rises by some tenths: only one that rises further is leaving [K]. */
const leavingK = 0.75;
/** Scatter of a block's mean that no noise model explains [K]. */
const unexplainedSdK = 0.015;

export function createHeldLevel(): HeldLevel {
  const detector = createDepartureDetector();
  const blocks = createHeadBlocks();
  const heights = createStoodHeights();
  let levelC: number | null = null;
  let departedS: number | null = null;
  let recent: HeadBlock[] = [];
  let settlingBlocks = 0;
  let settledForS = 0;
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
    const isNew = meanC > Math.max(level, heights.cameBackFromC()) + leavingK;
    if (isNew && logLikelihoodRatio > departureThreshold) departedS ??= timeS;
    if (departedS !== null && logLikelihoodRatio < 1) departedS = null;
  };

  const seeBlock = (level: number, block: HeadBlock, noise: HeadNoise): void => {
    const { timeS, meanC, readings, stepS } = block;
    recent.push(block);
    heights.see(meanC);
    if (settledForS < settlingS || settlingBlocks < 2 * fewestLevelBlocks) {
      levelC = settle(level, meanC, stepS);
      return;
    }
    levelC = follow(level, timeS, stepS);
    detector.see(timeS, meanC - levelC, {
      whiteSdK: Math.hypot(noise.whiteSdK / Math.sqrt(readings), unexplainedSdK),
      slowSdK: noise.slowSdK,
      slowCorrelationS: noise.slowCorrelationS,
    });
    judge(timeS, levelC, meanC);
  };

  /** The head settles again after every upset, and finds its level anew. */
  const interrupt = (): void => {
    detector.restart();
    heights.interrupt();
    blocks.interrupt();
    departedS = null;
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
      blocks.add(observedC);
      if (levelC === null || timeS % departureBlockS !== 0) return;
      seeBlock(levelC, blocks.close(timeS), noise);
    },
    interrupt,
    levelC: () => levelC,
    evidence: () => detector.evidence(),
    departedS: () => departedS,
  };
}
