/** Answers so many requests at once and so many a second; the rest are turned away before any work. */
export function createPace(
  nowMs: () => number,
  { burst, perS }: { readonly burst: number; readonly perS: number },
): () => boolean {
  let left = burst;
  let countedMs = nowMs();
  return () => {
    const now = nowMs();
    left = Math.min(burst, left + ((now - countedMs) / 1000) * perS);
    countedMs = now;
    if (left < 1) return false;
    left -= 1;
    return true;
  };
}
