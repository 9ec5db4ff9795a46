import process from 'node:process';

/**
 * Of a mutant a test is to fail while the mutation tool still listens: what a whole program does in tens of milliseconds has this long
 * there. Elsewhere no limit but the test's own [s].
 */
const longestS = Number(process.env.MUTANTS_PATIENCE_S ?? Number.POSITIVE_INFINITY);

/** Waits until the condition holds; fails with what was being waited for. */
export async function until(what: string, condition: () => boolean, mostS = 60): Promise<void> {
  const patienceS = Math.min(mostS, longestS);
  const endsAt = performance.now() + 1000 * patienceS;
  while (!condition()) {
    if (performance.now() > endsAt) throw new Error(`Waited ${patienceS} s for: ${what}`);
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
}

export function pause(seconds: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 1000 * seconds));
}
