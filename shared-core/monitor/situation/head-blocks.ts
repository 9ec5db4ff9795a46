import { departureBlockS } from './departure-detector.ts';

/** The mean of the readings of one block of time. */
export interface HeadBlock {
  readonly timeS: number;
  readonly meanC: number;
  readonly readings: number;
  /** Time it stands for [s]. */
  readonly stepS: number;
}

/** Gathers readings of the head into blocks. */
export interface HeadBlocks {
  /** Whether a block has ended since the reading before: on whatever seconds a logger reads, some reading is the first after one. */
  add(timeS: number, observedC: number): boolean;
  /** The block that ends at `timeS`, in which at least one reading came. */
  close(timeS: number): HeadBlock;
  /** Forgets what has come since the last block. */
  interrupt(): void;
}

/** What one reading may move the level by does not grow with the silence before it [s]. */
const longestLevelStepS = 5;

export function createHeadBlocks(): HeadBlocks {
  let sum = 0;
  let readings = 0;
  let readS = 0;
  let lastS = 0;
  const interrupt = (): void => {
    sum = 0;
    readings = 0;
  };
  return {
    add: (timeS, observedC) => {
      const hasEnded = Math.floor(timeS / departureBlockS) > Math.floor(readS / departureBlockS);
      sum += observedC;
      readings += 1;
      readS = timeS;
      return hasEnded;
    },
    close: (timeS) => {
      const stepS = Math.min(longestLevelStepS, Math.max(departureBlockS, timeS - lastS));
      const block = { timeS, meanC: sum / readings, readings, stepS };
      lastS = timeS;
      interrupt();
      return block;
    },
    interrupt,
  };
}
