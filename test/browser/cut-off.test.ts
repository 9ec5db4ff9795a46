import { afterAll, beforeAll, expect, onTestFailed, test } from 'vitest';
import { axeViolations } from './support/check-screen.ts';
import { type JourneyBench, openBench } from './support/journey-bench.ts';
import { takeScreenshots } from './support/open-window.ts';
import { startRehearsal } from './support/prepare-run.ts';

let bench: JourneyBench;

beforeAll(async () => {
  bench = await openBench();
});
afterAll(() => bench?.tidy());

test('a window whose program was ended never shows what it heard last as if it were so now', async () => {
  const { page, app } = bench;
  onTestFailed(() => bench.explain());
  await startRehearsal(page);
  expect(await page.locator('.head-readout[data-stale=true]').count()).toBe(0);

  await app.kill();
  await page.getByText('Connection lost').waitFor();
  await page.getByRole('heading', { name: /has lost its connection/ }).waitFor();
  await page.getByText('Go by the thermometer in the still head.').waitFor();
  await page.locator('.head-readout[data-stale=true]').getByText('not the present value').waitFor();
  expect(await page.getByRole('button', { name: /Heat on$/ }).isEnabled()).toBe(false);
  expect(await axeViolations(page)).toEqual([]);
  await takeScreenshots(page, 'watch-cut-off');

  await page.getByRole('button', { name: 'Classroom view' }).click();
  await page.getByText('Go by the thermometer in the still head.').waitFor();
  expect(await axeViolations(page)).toEqual([]);
  await page.keyboard.press('Escape');
  // The focus is back where the view was opened from.
  await page.locator('button:focus').filter({ hasText: 'Classroom view' }).waitFor();
});
