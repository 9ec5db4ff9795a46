/** Notices a head that swings up and down again and again, as when a pot bumps or a column floods. */
export interface SurgeWatch {
  /** Takes one second's observation; true while the head is surging. */
  see(timeS: number, valueC: number, noiseSdK: number): boolean;
}

/** So many turns within the window make a surge [s]. */
const turnsNeeded = 5;
const windowS = 150;
/** A smaller swing is the boiling itself [K]; chosen here. */
const leastSwingK = 0.8;
/**
 * A pot bumps several times a minute. A swing that takes longer either way is a hand with a flame, which needs a quarter of a
 * minute at least to see, take away and put back; common practice, no source [s].
 */
const longestSwingS = 24;

/** Counts turning points whose swing is larger than six standard deviations of the noise, and quick. */
export function createSurgeWatch(): SurgeWatch {
  let turns: number[] = [];
  let highestC = Number.NEGATIVE_INFINITY;
  let lowestC = Number.POSITIVE_INFINITY;
  let direction = 0;
  let turnedS = Number.NEGATIVE_INFINITY;
  const turn = (timeS: number, valueC: number, to: 1 | -1): void => {
    if (timeS - turnedS <= longestSwingS) turns.push(timeS);
    direction = to;
    turnedS = timeS;
    highestC = valueC;
    lowestC = valueC;
  };
  return {
    see: (timeS, valueC, noiseSdK) => {
      const swingK = Math.max(leastSwingK, 6 * noiseSdK);
      highestC = Math.max(highestC, valueC);
      lowestC = Math.min(lowestC, valueC);
      if (direction >= 0 && valueC < highestC - swingK) turn(timeS, valueC, -1);
      else if (direction <= 0 && valueC > lowestC + swingK) turn(timeS, valueC, 1);
      turns = turns.filter((turnS) => timeS - turnS < windowS);
      return turns.length >= turnsNeeded;
    },
  };
}
