import { vi } from 'vitest';

/** Waits until a check passes, however slow this machine is today: `vi.waitFor` alone gives up after one second of it. */
export function eventually<T>(check: () => T | Promise<T>): Promise<T> {
  return vi.waitFor(check, { timeout: 60_000 });
}
