/** Notices a head that swings up and down again and again, as when a pot bumps or a column floods. */
export interface SurgeWatch {
  /** Takes one second's observation; true while the head is surging. */
  see(timeS: number, valueC: number, noiseSdK: number): boolean;
}

/** So many turns within the window make a surge. */
const turnsNeeded = 4;
const windowS = 120;
const leastSwingK = 0.8;

/** Counts turning points whose swing is larger than six standard deviations of the noise. */
export function createSurgeWatch(): SurgeWatch {
  let turns: number[] = [];
  let extremeC: number | null = null;
  let direction = 0;
  return {
    see: (timeS, valueC, noiseSdK) => {
      const swingK = Math.max(leastSwingK, 6 * noiseSdK);
      extremeC ??= valueC;
      if (direction >= 0 && valueC > extremeC) extremeC = valueC;
      else if (direction <= 0 && valueC < extremeC) extremeC = valueC;
      else if (Math.abs(valueC - extremeC) > swingK) {
        direction = valueC > extremeC ? 1 : -1;
        extremeC = valueC;
        turns.push(timeS);
      }
      turns = turns.filter((turnS) => timeS - turnS < windowS);
      return turns.length >= turnsNeeded;
    },
  };
}
