import type { LinkChange } from '../../run/index.ts';

/** Whether the probe in the head is still the one that the run began with. */
export interface OtherProbe {
  /** @param wasHeard whether the head was heard before in the run: one that comes before its first reading is the run's own */
  seeLink(change: LinkChange, wasHeard: boolean): void;
  /** Since when another is in its place [s]; null while none is. */
  sinceS(): number | null;
}

export function createOtherProbe(): OtherProbe {
  let sinceS: number | null = null;
  return {
    seeLink: ({ reason, timeS }, wasHeard) => {
      if (reason === 'probe-changed' && wasHeard) sinceS = timeS;
    },
    sinceS: () => sinceS,
  };
}
