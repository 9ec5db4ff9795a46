import type { Door } from './door-file.ts';

/** Longest wait for a program of this computer. */
const answerWithinMs = 2000;

/** Whether the program that wrote this door is still there; what a crash left behind leads nowhere. */
export async function isDoorOpen({ address, key }: Door): Promise<boolean> {
  try {
    const answer = await fetch(address, {
      method: 'POST',
      body: new URLSearchParams({ key }),
      redirect: 'manual',
      signal: AbortSignal.timeout(answerWithinMs),
    });
    return answer.status === 303;
  } catch {
    return false;
  }
}
