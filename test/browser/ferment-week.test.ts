import { appendFileSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import type { Page } from 'playwright-core';
import { expect, onTestFinished, test } from 'vitest';
import { fermentFileText, warmthFileText } from '../../scripts/soak/ferment-files.ts';
import { startApp } from '../../scripts/testing/start-app.ts';
import { pearWeek } from '../shared-core/study/support/pear-week.ts';
import { expectEverySizeRight } from './support/every-size.ts';
import { openWindow } from './support/open-window.ts';

const hourMs = 3_600_000;

/** A week that ended an hour ago, on the disk as the program keeps it; the first of two is kept warm still. */
function writeWeek(runsFolder: string, fermentId: string, name: string, isKept: boolean): void {
  const nowMs = Math.floor(Date.now() / 60_000) * 60_000;
  const beganAtIso = new Date(nowMs - 168 * hourMs).toISOString();
  const { kept, warmth } = pearWeek({ fermentId, name, beganAtIso, hasWarmth: isKept });
  appendFileSync(
    path.join(runsFolder, `ferment-${fermentId}.jsonl`),
    fermentFileText({ ...kept, fermentId }, beganAtIso),
  );
  if (!isKept || warmth.band === null) return;
  appendFileSync(
    path.join(runsFolder, `warmth-${fermentId}.jsonl`),
    warmthFileText({ band: warmth.band, source: null, sinceIso: beganAtIso }, warmth.minutes),
  );
}

test('a ferment’s week is found beside the runs, replayed as it was known then, and shown to the room and on the second screen', async () => {
  const folder = mkdtempSync(path.join(tmpdir(), 'journey-'));
  const runsFolder = path.join(folder, 'runs');
  mkdirSync(runsFolder, { recursive: true });
  writeWeek(runsFolder, 'pear-b', 'Pear juice', true);
  writeWeek(runsFolder, 'pear-a', 'Pear juice, second group', false);
  const app = await startApp(runsFolder);
  const { page, complaints, close } = await openWindow(app.url);
  const second = await openWindow(app.viewerUrl);
  onTestFinished(async () => {
    await close();
    await second.close();
    await app.stop();
    rmSync(folder, { recursive: true, force: true });
  });

  // The room sees the ferment while no run is under way.
  const room = second.page;
  await room.getByRole('heading', { name: 'Pear juice, day 8' }).waitFor();
  await room.getByText('Strength now').waitFor();
  await room.getByText('It may go into the still.').waitFor();
  await room.getByText('Never seal a vessel that ferments.').waitFor();
  await lookAt(room, 'second-screen');

  await page.getByRole('link', { name: 'Look back' }).click();
  const list = page.getByRole('list', { name: 'Ferments, newest first' });
  await list.getByRole('listitem').nth(1).waitFor();
  await page.getByRole('button', { name: /Compare them: one pack of these 2/ }).waitFor();
  await lookAt(page, 'library');
  await list.getByRole('button', { name: 'Replay Pear juice', exact: true }).click();
  const facts = page.locator('.ferment-facts');
  await facts.getByText('Finished').waitFor();
  await page.getByRole('slider', { name: 'Time in the week' }).fill('50');
  await facts.getByText('At work').waitFor();
  expect(await facts.textContent()).toMatch(/Gravity1\.0[1-4]\d/);
  expect(await facts.textContent()).toMatch(/\d\.\d.% vol \(/);
  await page.getByText('The line stands at day 3, hour 2.').waitFor();
  await lookAt(page, 'replay');
  await page.getByRole('button', { name: 'Back to the library' }).click();
  await page.getByRole('button', { name: 'Classroom view of Pear juice', exact: true }).click();
  await page.getByRole('heading', { name: 'Pear juice, day 8' }).waitFor();
  await page.getByText('Strength now').waitFor();
  await lookAt(page, 'classroom');
  await page.keyboard.press('Escape');
  await list.waitFor();
  expect([...complaints, ...second.complaints]).toEqual([]);
});

async function lookAt(page: Page, name: string): Promise<void> {
  await expectEverySizeRight(page, async (width) => {
    const folder = process.env.FERMENT_PICTURES;
    if (folder === undefined) return;
    for (const theme of ['light', 'dark', 'projector']) {
      const before = await page.evaluate('document.documentElement.dataset.theme');
      await page.evaluate(`document.documentElement.dataset.theme = '${theme}'`);
      await page.screenshot({ path: `${folder}/${name}-${width}-${theme}.png` });
      await page.evaluate(`document.documentElement.dataset.theme = '${before}'`);
    }
  });
}
