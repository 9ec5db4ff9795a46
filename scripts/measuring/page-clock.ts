import type { Page } from 'playwright-core';

/** How to turn the page's times into those of this process. */
export interface PageClock {
  /** Add to a time of the page [ms]. */
  readonly offsetMs: number;
  /** Half of the quickest question and answer: the offset is no further off than this [ms]. */
  readonly errorMs: number;
}

const questions = 60;

/** Asks the page for its time again and again; the quickest answer pins the offset best. */
export async function comparePageClock(page: Page): Promise<PageClock> {
  let best: PageClock = { offsetMs: 0, errorMs: Number.POSITIVE_INFINITY };
  for (let asked = 0; asked < questions; asked += 1) {
    const beforeMs = performance.now();
    const pageMs = (await page.evaluate('performance.now()')) as number;
    const afterMs = performance.now();
    const errorMs = (afterMs - beforeMs) / 2;
    if (errorMs < best.errorMs) best = { offsetMs: (beforeMs + afterMs) / 2 - pageMs, errorMs };
  }
  return best;
}
