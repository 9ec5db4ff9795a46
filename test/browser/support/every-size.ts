import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { axeViolations, smallTargets } from './check-screen.ts';

const sizes = [
  { width: 1280, height: 720 },
  { width: 1920, height: 1080 },
  { width: 390, height: 844 },
] as const;

/**
 * What stands in the page is right in every size of window: no violation of accessibility, no small target, nothing to scroll to
 * sideways. `take` may take a picture of each.
 */
export async function expectEverySizeRight(
  page: Page,
  take?: (width: number) => Promise<unknown>,
): Promise<void> {
  for (const size of sizes) {
    await page.setViewportSize(size);
    expect([await axeViolations(page), await smallTargets(page)]).toEqual([[], []]);
    const hidden = await page.evaluate(
      'document.documentElement.scrollWidth - document.documentElement.clientWidth',
    );
    expect(hidden).toBeLessThanOrEqual(0);
    await take?.(size.width);
  }
  await page.setViewportSize(sizes[0]);
}
