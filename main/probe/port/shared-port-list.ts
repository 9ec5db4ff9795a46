import type { PortInfo } from '#shared-core';

type ListPorts = () => Promise<readonly PortInfo[]>;

/** Listing starts a program of the system's on Linux and asks every device on Windows. */
const leastGapMs = 500;

/**
 * However many ask at once or one after the other, the ports are looked for at most twice a second: who asks while a look is due or
 * under way gets its answer, so nobody is told of ports as they were before a plug was pushed in.
 */
export function sharePortList(
  list: ListPorts,
  { nowMs, wait }: { readonly nowMs: () => number; readonly wait: (ms: number) => Promise<void> },
): ListPorts {
  let next: Promise<readonly PortInfo[]> | null = null;
  let startedMs = Number.NEGATIVE_INFINITY;

  async function look(): Promise<readonly PortInfo[]> {
    const dueMs = startedMs + leastGapMs - nowMs();
    if (dueMs > 0) await wait(dueMs);
    startedMs = nowMs();
    return list();
  }

  return () => {
    next ??= look().finally(() => {
      next = null;
    });
    return next;
  };
}
