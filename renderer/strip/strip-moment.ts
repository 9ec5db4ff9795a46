import { createContext, type ReactNode, useContext } from 'react';
import type { DrawnPoint, Mark, SeriesPoint } from '#shared-core';
import type { RunView } from '../stores/index.ts';

/** What moves on the strip with every reading, apart from the frame that mostly stands still. */
export interface StripMoment {
  readonly view: RunView;
  readonly drawn: readonly DrawnPoint[];
  /** Readings of the head that are not believed. */
  readonly doubtful: readonly DrawnPoint[];
  readonly marks: readonly Mark[];
  readonly nowS: number;
  /** The head as last read; null while it is not heard. */
  readonly head: SeriesPoint | null;
  /** Layers a place adds on top. */
  readonly extra: ReactNode;
}

export const StripMomentContext = createContext<StripMoment | null>(null);

export function useStripMoment(): StripMoment {
  const moment = useContext(StripMomentContext);
  if (moment === null) throw new Error('no StripMomentContext above this layer');
  return moment;
}
