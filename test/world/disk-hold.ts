import type { Random } from '../../shared-core/random/create-random.ts';
import type { DiskAct } from '../main/support/power-loss-disk.ts';
import type { Fault, FaultKind } from './fault.ts';

/** A disk that answers nothing for a while, as a drive that sleeps, a scanner or a share of the network does, and then goes on in order. */
export interface DiskHold {
  /** Since when it neither takes nor refuses what is written [s of the world]; null while it does. */
  heldSinceS(): number | null;
  /** Anything of it is held. */
  isHeld(): boolean;
  /** What is held waits for this; null where it is not. */
  held(act: DiskAct): Promise<void> | null;
  /** How much waits for it. */
  waiting(): number;
  /** Time has passed: what is held no longer goes on. */
  step(): void;
  /** Whoever asked is gone: what the disk was at may still be done, the rest never is. */
  forget(random: Random): void;
}

export interface DiskHoldParts {
  readonly faults: readonly Fault[];
  readonly isOn: (kind: FaultKind) => boolean;
  readonly nowS: () => number;
}

interface Waiting {
  readonly act: DiskAct;
  readonly goOn: () => void;
}

/** A drive that sleeps holds everything, a scanner what is written, a share that is read by others what is looked at; the length of the fault says which. */
const holds: readonly (readonly DiskAct[])[] = [
  ['look', 'change', 'write', 'sync'],
  ['change', 'write', 'sync'],
  ['look'],
];

export function createDiskHold({ faults, isOn, nowS }: DiskHoldParts): DiskHold {
  let waiting: readonly Waiting[] = [];
  let heldSinceS: number | null = null;

  const heldActs = (): readonly DiskAct[] =>
    isOn('disk-is-held')
      ? faults
          .filter(({ kind, fromS, toS }) => {
            return kind === 'disk-is-held' && fromS <= nowS() && nowS() < toS;
          })
          .flatMap(({ fromS, toS }) => holds[(toS - fromS) % holds.length] ?? [])
      : [];
  const isHeld = (act: DiskAct) => heldActs().includes(act);

  return {
    heldSinceS: () => heldSinceS,
    isHeld: () => heldActs().length > 0 || waiting.length > 0,
    held: (act) =>
      // What comes now goes behind what waits for the same.
      isHeld(act) || waiting.some((before) => before.act === act)
        ? new Promise((goOn) => {
            waiting = [...waiting, { act, goOn }];
          })
        : null,
    waiting: () => waiting.length,
    step() {
      const acts = heldActs();
      if (!acts.includes('write')) heldSinceS = null;
      else heldSinceS ??= nowS();
      const due = waiting.filter(({ act }) => !acts.includes(act));
      waiting = waiting.filter(({ act }) => acts.includes(act));
      for (const { goOn } of due) goOn();
    },
    forget(random) {
      const [first] = waiting;
      waiting = [];
      if (random.uniform() < 0.5) first?.goOn();
    },
  };
}
