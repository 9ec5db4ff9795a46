import type { Random } from '../../shared-core/random/create-random.ts';

/** A folder that goes and comes back, be it between two looks at a file of one and the same deed. */
export interface VanishingFolder {
  isAway(): boolean;
  /** As one look at the disk finds it. */
  isAwayNow(): boolean;
}

/** Looks that still find nothing where it is about to be back. */
const mostLooks = 6;

export function createVanishingFolder(isDue: () => boolean, random: Random): VanishingFolder {
  let looksLeft = 0;
  return {
    isAway: () => isDue() || looksLeft > 0,
    isAwayNow() {
      if (isDue()) {
        looksLeft = random.integer(0, mostLooks);
        return true;
      }
      if (looksLeft === 0) return false;
      looksLeft -= 1;
      return true;
    },
  };
}
