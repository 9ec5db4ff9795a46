import { useState } from 'react';
import type { RunView } from '../stores/index.ts';

/** Whether the diagrams are open, and the time of the run they stand at. */
export interface Understanding {
  readonly isOpen: boolean;
  readonly setOpen: (isOpen: boolean) => void;
  /** The cursor's time, never later than the run itself. */
  readonly timeS: number;
  readonly latestS: number;
  /** The cursor moves with the run. */
  readonly isFollowing: boolean;
  readonly setTimeS: (timeS: number) => void;
  readonly follow: () => void;
}

/** The cursor on the run's strip: it follows the run until someone moves it back. */
export function useUnderstanding(view: RunView): Understanding {
  const [isOpen, setOpen] = useState(false);
  const [heldS, setHeldS] = useState<number | null>(null);
  const latestS = Math.max(view.snapshot?.timeS ?? 0, view.lastInputS);
  const timeS = heldS === null ? latestS : Math.min(heldS, latestS);
  return {
    isOpen,
    setOpen,
    timeS,
    latestS,
    isFollowing: heldS === null,
    setTimeS: (wantedS) => setHeldS(wantedS >= latestS ? null : Math.max(0, wantedS)),
    follow: () => setHeldS(null),
  };
}
