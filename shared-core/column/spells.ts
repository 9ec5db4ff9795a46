import type { RandomSource } from './random-source.ts';

/** Spells that come at random, asked for in order of time. */
export interface Spells {
  /** Whether a spell covers this time, or has passed unseen since the last question. */
  covers(timeS: number): boolean;
}

/** Poisson arrivals of spells with exponential length; a length of 0 touches one question only. */
export function createSpells(random: RandomSource, perHour: number, meanLengthS: number): Spells {
  const waitS = () => (perHour > 0 ? (3600 / perHour) * random.exponential() : Infinity);
  let startS = waitS();
  let lengthS = meanLengthS * random.exponential();
  return {
    covers: (timeS) => {
      let hit = false;
      while (startS <= timeS) {
        hit = true;
        if (timeS < startS + lengthS) break;
        startS += lengthS + waitS();
        lengthS = meanLengthS * random.exponential();
      }
      return hit;
    },
  };
}
