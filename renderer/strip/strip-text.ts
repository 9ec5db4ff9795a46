import { createContext, useContext } from 'react';

/** Height of the strip's type in pixels; axis room and the stages' height follow from it. */
export const StripTextContext = createContext(15);

export interface StripMeasures {
  readonly textPx: number;
  readonly axisWidthPx: number;
  readonly axisHeightPx: number;
  readonly footPx: number;
  /** About the width of a letter, for choosing which name fits. */
  readonly letterPx: number;
}

export function useStripMeasures(): StripMeasures {
  return stripMeasures(useContext(StripTextContext));
}

export function stripMeasures(textPx: number): StripMeasures {
  return {
    textPx,
    axisWidthPx: Math.ceil(textPx * 4.5),
    axisHeightPx: Math.ceil(textPx * 2),
    footPx: Math.ceil(textPx * 3),
    letterPx: textPx * 0.56,
  };
}
