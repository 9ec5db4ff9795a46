import type { Random } from '../../shared-core/random/create-random.ts';
import type { Ask } from './asking.ts';
import type { Judge } from './judge.ts';
import type { KeptThings } from './kept-things.ts';
import type { TakenIn } from './taken-in.ts';

/** A run under way, and each reading that was heard of it so far. */
export interface RunNow {
  readonly runId: string;
  readonly heard: readonly string[];
}

/** What somebody at the second desk has at hand. */
export interface Hands {
  readonly random: Random;
  readonly judge: Judge;
  readonly kept: KeptThings;
  readonly takenIn: TakenIn;
  /** Of the program that runs now; one that is killed meanwhile never answers. */
  readonly ask: Ask;
  /** A number that nothing in this world had before. */
  fresh(): number;
  /** Recorded runs that are over. */
  runsOver(): readonly string[];
  runNow(): RunNow | null;
}

export type Deed = (hands: Hands) => Promise<void>;
