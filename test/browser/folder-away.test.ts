import { renameSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, onTestFailed, test } from 'vitest';
import { type JourneyBench, openBench } from './support/journey-bench.ts';
import { type OpenWindow, openWindow, takeScreenshots } from './support/open-window.ts';
import { startRehearsal } from './support/prepare-run.ts';

let bench: JourneyBench;
const others: OpenWindow[] = [];

beforeAll(async () => {
  bench = await openBench();
});
afterAll(async () => {
  for (const other of others) await other.close();
  await bench?.tidy();
});

/** The stick with the runs is pulled out: where it was nothing can be made. */
function pullOut(): void {
  renameSync(bench.runsFolder, path.join(bench.folder, 'elsewhere'));
  writeFileSync(bench.runsFolder, '');
}
function putIn(): void {
  rmSync(bench.runsFolder);
  renameSync(path.join(bench.folder, 'elsewhere'), bench.runsFolder);
}

const call = 'Take the heat off (flame out';
const callIn = (page: Page) =>
  page.getByRole('region', { name: 'Prompts' }).getByRole('alert').filter({ hasText: call });

async function headShown(page: Page): Promise<number> {
  return Number.parseFloat((await page.locator('.head-value').first().textContent()) ?? '');
}

test('windows opened while the folder of the runs is away show the call, take the answer and have the whole run', async () => {
  const { page, app } = bench;
  onTestFailed(() => bench.explain());
  await startRehearsal(page);
  await callIn(page).waitFor({ timeout: 150_000 });
  pullOut();
  await page.reload();
  await callIn(page).waitFor({ timeout: 20_000 });
  // From the beginning of the run on.
  await page.getByText(/^Warm-up from 0:00:00/).waitFor({ state: 'attached' });
  expect(await headShown(page)).toBeGreaterThan(70);
  await takeScreenshots(page, 'watch-folder-away');
  const viewer = await openWindow(app.viewerUrl);
  others.push(viewer);
  await viewer.page.getByText(call).first().waitFor();
  expect(await headShown(viewer.page)).toBeGreaterThan(70);

  await callIn(page).getByRole('button', { name: 'Heat is off' }).click();
  await callIn(page).waitFor({ state: 'detached' });
  await page.reload();
  await page.getByRole('button', { name: 'Stop …' }).waitFor();
  expect(await callIn(page).count()).toBe(0);
  putIn();
  expect([bench.complaints, viewer.complaints]).toEqual([[], []]);
});
