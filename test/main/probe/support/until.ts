/** Waits until the condition holds; fails with what was being waited for. */
export async function until(what: string, condition: () => boolean, patienceS = 60): Promise<void> {
  const endsAt = performance.now() + 1000 * patienceS;
  while (!condition()) {
    if (performance.now() > endsAt) throw new Error(`Waited ${patienceS} s for: ${what}`);
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
}

export function pause(seconds: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 1000 * seconds));
}
