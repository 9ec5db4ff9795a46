import { lastsAfterS } from '../patience.ts';
import type { HeadNoise } from '../sense/head-noise.ts';
import { createDepartureDetector, departureThreshold } from './departure-detector.ts';
import { createHeadBlocks, type HeadBlock } from './head-blocks.ts';
import { createStoodHeights } from './stood-heights.ts';

/** The level a head is held at, and whether it is leaving it. */
export interface HeldLevel {
  /** Begins at a level; a column that has just filled goes on settling for some minutes. */
  begin(levelC: number): void;
  /** Takes one second's reading of a bathed bulb; before it has begun at a level nothing is held against it. */
  see(timeS: number, observedC: number, noise: HeadNoise): void;
  /** After an upset: what was seen before it says nothing of a ramp after it. */
  interrupt(): void;
  levelC(): number | null;
  /** When the sequential test had fired and the head was clearly above its level, or would soon be; null once the head has gone back or was upset. */
  departedS(): number | null;
}

/** The column still fills and the head still settles: its level is what it was of late, before it is held against it [s]. */
const settlingS = 240;
/**
 * A head that settles after the heat was eased, or whose pot weakens, rises by a little: only one that is further above its level, or
 * will be if its rise lasts, is leaving [K].
 */
const leavingK = 0.4;
/** Real heads stray by 0.005 … 0.04 K within minutes (`test/reference/real-traces`): a random walk of so much in one [K²/s]. */
const wanderK2PerS = 0.025 ** 2 / 60;
/** Evidence that is too little to go on by. */
const goneBack = 1;

export function createHeldLevel(): HeldLevel {
  const detector = createDepartureDetector();
  const blocks = createHeadBlocks();
  const heights = createStoodHeights();
  let levelC: number | null = null;
  let departedS: number | null = null;
  let settlingBlocks = 0;
  let settledForS = 0;

  const settle = (level: number, { meanC, stepS }: HeadBlock): number => {
    settlingBlocks += 1;
    settledForS += stepS;
    return level + (meanC - level) / Math.min(settlingBlocks, lastsAfterS / stepS);
  };

  /**
   * Where a head has stood before and came back from, as one heated by hand does, it leaves nothing, and of its rises nobody knows
   * how far they go. That of a head that never came back is taken a minute further.
   */
  const judge = ({ timeS, meanC }: HeadBlock): void => {
    const { logLikelihoodRatio, levelC: fromC, slopeKPerS } = detector.evidence();
    if (departedS !== null && logLikelihoodRatio < goneBack) {
      departedS = null;
      heights.comeBack();
    }
    if (departedS !== null) return;
    levelC = fromC;
    const cameBackFromC = heights.cameBackFromC();
    const aboveK =
      cameBackFromC === null
        ? meanC + slopeKPerS * lastsAfterS - fromC
        : meanC - Math.max(fromC, cameBackFromC);
    if (aboveK > leavingK && logLikelihoodRatio > departureThreshold) departedS = timeS;
  };

  const seeBlock = (level: number, block: HeadBlock, noise: HeadNoise): void => {
    const { timeS, meanC, readings } = block;
    heights.see(meanC);
    if (settledForS < settlingS) {
      levelC = settle(level, block);
      return;
    }
    detector.see(timeS, meanC, {
      whiteSdK: noise.whiteSdK / Math.sqrt(readings),
      slowSdK: noise.slowSdK,
      wanderK2PerS,
    });
    judge(block);
  };

  /** The head settles again after every upset, and finds its level anew. */
  const interrupt = (): void => {
    detector.restart();
    heights.comeBack();
    blocks.interrupt();
    departedS = null;
    settlingBlocks = 0;
    settledForS = 0;
  };

  return {
    begin: (beginC) => {
      levelC = beginC;
      interrupt();
    },
    see: (timeS, observedC, noise) => {
      const isOver = blocks.add(timeS, observedC);
      if (levelC === null || !isOver) return;
      seeBlock(levelC, blocks.close(timeS), noise);
    },
    interrupt,
    levelC: () => levelC,
    departedS: () => departedS,
  };
}
