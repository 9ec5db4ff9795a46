import { afterAll, beforeAll, expect, onTestFailed, test } from 'vitest';
import { type JourneyBench, openBench } from './support/journey-bench.ts';
import { type OpenWindow, openWindow } from './support/open-window.ts';

let bench: JourneyBench;
const others: OpenWindow[] = [];

beforeAll(async () => {
  bench = await openBench();
});
afterAll(async () => {
  for (const other of others) await other.close();
  await bench?.tidy();
});

async function openOther(url: string): Promise<OpenWindow> {
  const other = await openWindow(url);
  others.push(other);
  return other;
}

test('an address works once, a reload keeps its window, and a second window only watches', async () => {
  const { page, app } = bench;
  onTestFailed(() => bench.explain());
  await page.getByRole('button', { name: 'Start the rehearsal' }).click();
  await page
    .getByText(/Warming up/)
    .first()
    .waitFor();
  await page.reload();
  await page.locator('button:enabled').filter({ hasText: 'Note' }).waitFor();

  const stranger = await openOther(app.url);
  await stranger.page.getByText('This address was used before.').waitFor();

  const viewer = await openOther(app.viewerUrl);
  await viewer.page.getByText('view only').waitFor();
  await viewer.page.getByRole('link', { name: 'Watch' }).click();
  await viewer.page
    .getByText(/Warming up/)
    .first()
    .waitFor();
  const enabled = await viewer.page
    .getByRole('region', { name: 'Marks' })
    .locator('button:enabled')
    .count();
  expect(enabled).toBe(0);
  expect([...bench.complaints, ...viewer.complaints]).toEqual([]);
});
