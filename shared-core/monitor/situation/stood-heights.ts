/** How high a head has stood for a while. */
export interface StoodHeights {
  /** Takes the mean of one block. */
  see(meanC: number): void;
  /** After an upset: what it stood at is what it came back from. */
  interrupt(): void;
  /** The highest it stood at before it was last upset [°C]. */
  cameBackFromC(): number;
}

/** A height counts when it was held for so many blocks. */
const heightBlocks = 3;

export function createStoodHeights(): StoodHeights {
  let lastMeans: number[] = [];
  let highestC = Number.NEGATIVE_INFINITY;
  let cameBackFromC = Number.NEGATIVE_INFINITY;
  return {
    see: (meanC) => {
      lastMeans = [...lastMeans.slice(1 - heightBlocks), meanC];
      if (lastMeans.length === heightBlocks) highestC = Math.max(highestC, Math.min(...lastMeans));
    },
    interrupt: () => {
      cameBackFromC = Math.max(cameBackFromC, highestC);
      lastMeans = [];
    },
    cameBackFromC: () => cameBackFromC,
  };
}
