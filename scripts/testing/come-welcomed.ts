import type { Page } from 'playwright-core';

/** Opens pages as for somebody who has read the cautions before: they stand in the way of nothing then. */
export async function comeWelcomed(page: Page): Promise<void> {
  await page.addInitScript(() => {
    if (localStorage.getItem('preferences') !== null) return;
    localStorage.setItem('preferences', JSON.stringify({ welcomed: true }));
  });
}
