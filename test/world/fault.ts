import type { Random } from '../../shared-core/random/create-random.ts';

/** What can go wrong in the world, and for how long it stays so. */
export const faultKinds = [
  // The line of the head's probe.
  'noise-on-the-line',
  'line-hangs-up',
  'probe-at-another-port',
  'line-is-slow-to-open',
  'line-floods',
  'line-stutters',
  'probe-is-mute',
  // The line of the second probe, where there is one.
  'second-line-hangs-up',
  'second-line-is-noisy',
  // The disk.
  'disk-is-full',
  'disk-writes-half',
  'syncs-fail',
  'disk-is-slow',
  'disk-is-held',
  'disk-is-read-only',
  'folder-vanishes',
  // The computer.
  'power-cut',
  'program-killed',
  'desk-is-killed',
  'program-stands-still',
  'wall-clock-is-set',
  'computer-sleeps',
  'computer-sleeps-untold',
  // Other programs.
  'scanner-holds-files',
  'folder-is-taken',
  'second-program',
  'folder-is-littered',
  'run-is-tidied-away',
  // Windows.
  'window-reloads',
  'window-is-slow',
  'windows-vanish',
  'socket-breaks',
  'viewer-gives-orders',
  // The person.
  'person-writes-a-note',
  'heat-by-hand',
  'volumes-are-read',
  'prompts-are-answered',
  'person-stops-the-run',
  'probe-is-let-go',
  'rehearsal-is-held',
  // Who sits at the second desk.
  'runs-are-put-in-order',
  'tables-are-taken-in',
  'tables-are-given-out',
  'set-ups-are-kept',
  'ferments-are-written-down',
  'everything-is-looked-at',
] as const;

export type FaultKind = (typeof faultKinds)[number];

export interface Fault {
  readonly kind: FaultKind;
  /** Seconds of the world, which begins with the run. */
  readonly fromS: number;
  readonly toS: number;
}

/** Nothing goes on so late that the program could not come back before the end [s]. */
const recoveryS = 90;
/** Of a fault as a rule, and of one in eight [s]. */
const usualS = 20;
const longS = 200;

export function drawFaults(random: Random, lengthS: number): readonly Fault[] {
  const lastS = lengthS - recoveryS;
  const most = 4 + Math.ceil(lengthS / 120);
  return Array.from({ length: random.integer(0, most) }, () => {
    const fromS = random.integer(5, Math.max(5, lastS - 5));
    const meanS = random.uniform() < 0.125 ? longS : usualS;
    const toS = Math.min(lastS, fromS + 1 + Math.round(random.exponential() * meanS));
    return {
      kind: faultKinds[random.integer(0, faultKinds.length - 1)] ?? 'person-writes-a-note',
      fromS,
      toS,
    };
  }).sort((a, b) => a.fromS - b.fromS);
}

/**
 * Leaves out what the failure does not need: halves first, then ever smaller pieces, until no single fault can go.
 * The seed stays, and every stream of chance has a name of its own, so the rest of the world is the same.
 */
export async function shrinkFaults(
  faults: readonly Fault[],
  stillFails: (faults: readonly Fault[]) => Promise<boolean>,
): Promise<readonly Fault[]> {
  let kept = faults;
  for (let size = Math.ceil(kept.length / 2); size >= 1; ) {
    let removed = false;
    for (let start = 0; start < kept.length; start += size) {
      const without = [...kept.slice(0, start), ...kept.slice(start + size)];
      if (!(await stillFails(without))) continue;
      kept = without;
      removed = true;
      break;
    }
    if (!removed) size = size === 1 ? 0 : Math.ceil(size / 2);
  }
  return kept;
}
