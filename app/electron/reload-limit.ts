/** A window that falls over this often is not helped by another try. */
export const mostReloads = 3;
export const reloadsCountedForMs = 10 * 60 * 1000;

/**
 * Whether a window that fell over may be loaded again, and the reload times to remember. Recording and
 * alarms live outside the window, so giving up on it loses nothing.
 */
export function decideReload(
  earlierReloadsMs: readonly number[],
  nowMs: number,
): { readonly reload: boolean; readonly reloadsMs: readonly number[] } {
  const recent = earlierReloadsMs.filter((timeMs) => nowMs - timeMs < reloadsCountedForMs);
  if (recent.length >= mostReloads) return { reload: false, reloadsMs: recent };
  return { reload: true, reloadsMs: [...recent, nowMs] };
}
