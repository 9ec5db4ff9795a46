/** How high a head has stood for a while. */
export interface StoodHeights {
  /** Takes the mean of one block. */
  see(meanC: number): void;
  /** It was upset, or went back by itself: what it stood at is what it came back from. */
  comeBack(): void;
  /** The highest it stood at before it last came back [°C]; null while it never did. */
  cameBackFromC(): number | null;
}

/** A height counts when it was held for so many blocks. */
const heightBlocks = 3;

export function createStoodHeights(): StoodHeights {
  let lastMeans: number[] = [];
  let highestC: number | null = null;
  let cameBackFromC: number | null = null;
  return {
    see: (meanC) => {
      lastMeans = [...lastMeans.slice(1 - heightBlocks), meanC];
      if (lastMeans.length < heightBlocks) return;
      const heldC = Math.min(...lastMeans);
      if (highestC === null || heldC > highestC) highestC = heldC;
    },
    comeBack: () => {
      cameBackFromC = highestC;
      lastMeans = [];
    },
    cameBackFromC: () => cameBackFromC,
  };
}
