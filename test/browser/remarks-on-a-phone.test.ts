import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { createRunLibrary, nodeFileLayer, systemClock } from '#main';
import { startApp } from '../../scripts/testing/start-app.ts';
import { openWindow, takeScreenshot } from './support/open-window.ts';
import { writeSimulatedRun } from './support/write-simulated-run.ts';

test('on a phone what a replay hangs on is told above its drawing, which stays on the first screen', async () => {
  const folder = mkdtempSync(path.join(tmpdir(), 'journey-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  const runsFolder = path.join(folder, 'runs');
  const runId = await writeSimulatedRun(runsFolder, { name: 'Pear', pressureKPa: 99.4, seed: 1 });
  const setUp = { files: nodeFileLayer, clock: systemClock, runsFolder, mayWrite: () => true };
  const library = createRunLibrary(setUp);
  const charge = { volumeMl: 340, strengthAbv: 9, standardUncertaintyAbv: 0.5 };
  const corrected = await library.correct(runId, { charge, reason: 'the flask was read again' });
  expect(corrected.ok).toBe(true);
  const app = await startApp(runsFolder);
  onTestFinished(() => app.stop());
  const { page, close } = await openWindow(app.url, { size: 'phone' });
  onTestFinished(close);
  await page.getByRole('link', { name: 'Look back' }).click();
  await page.getByRole('button', { name: 'Replay Pear' }).click();
  const told = page.getByText('What to know of this record');
  await told.waitFor();
  const strip = page.locator('.strip').first();
  const topOf = async (part: typeof strip) => (await part.boundingBox())?.y ?? Number.NaN;
  const before = await strip.boundingBox();
  await takeScreenshot(page, 'replay-remarks', 'phone');
  expect(await topOf(told)).toBeLessThan(before?.y ?? Number.NaN);
  // The drawing itself, above the controls that stay at the foot.
  expect((before?.y ?? Number.NaN) + 256).toBeLessThan(844);
  await told.click();
  await page
    .getByText(/the flask was read again/)
    .filter({ visible: true })
    .waitFor();
  await takeScreenshot(page, 'replay-remarks-open', 'phone');
  await page.setViewportSize({ width: 1280, height: 720 });
  expect(await told.isVisible()).toBe(false);
  expect(
    await page
      .locator('.watch-side')
      .getByText(/the flask was read again/)
      .isVisible(),
  ).toBe(true);
});
