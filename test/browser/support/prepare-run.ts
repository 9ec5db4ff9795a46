import type { Page } from 'playwright-core';

/** Types where the probe is and connects. */
export async function connectByPath(page: Page, path: string): Promise<void> {
  await page.getByLabel('Or type where the probe is').fill(path);
  await page.getByRole('button', { name: 'Connect', exact: true }).click();
}

/** Starts the rehearsal and waits until a window shows its warm-up: the one it was started in, or another that looks on. */
export async function startRehearsal(page: Page, seenIn: Page = page): Promise<void> {
  await page.getByRole('button', { name: 'Start the rehearsal' }).click();
  await seenIn
    .getByText(/Warming up/)
    .first()
    .waitFor();
}

/** States the charge, confirms every check of rig and room, and starts the run with the heat on. */
export async function startHeatedRun(page: Page): Promise<void> {
  await page.getByLabel('Altitude of this room').fill('0');
  const assumed = page.getByRole('button', { name: /^This is in the pot/ });
  // Where it was stated before, nothing is left to confirm.
  if (await assumed.isVisible()) await assumed.click();
  for (const check of await page.getByRole('checkbox').all()) await check.check();
  await page.getByRole('button', { name: 'Start the run' }).click();
  await page.getByText(/Saved to/).waitFor();
  await page.getByRole('button', { name: 'Heat on' }).click();
  await page.locator('button[aria-pressed=true]').filter({ hasText: 'Heat on' }).waitFor();
}

export async function stopRun(page: Page): Promise<void> {
  await page.getByRole('button', { name: /^Stop/ }).click();
  await page.getByRole('button', { name: 'Stop recording', exact: true }).click();
  await runIsSaved(page);
}

/** A run is told as over before the disk has all of it: whoever reads the disk waits for that. */
export async function runIsSaved(page: Page): Promise<void> {
  await page.getByText(/This run ended/).waitFor();
  await page.getByText('The run is in the library.').waitFor();
}
