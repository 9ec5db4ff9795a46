import process from 'node:process';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, onTestFailed, test } from 'vitest';
import { axeViolations } from './support/check-screen.ts';
import { type JourneyBench, openBench } from './support/journey-bench.ts';

let bench: JourneyBench;
beforeAll(async () => {
  bench = await openBench();
});
afterAll(() => bench?.tidy());

/** Words that only English has, in any sentence of some length. */
const english = /\b(?:the|and|of|with|has|have|from|which|your|this)\b/gi;

/** What a person sees and a screen reader is told; what was typed or read from a device has no language. */
async function saidIn(page: Page): Promise<string> {
  const texts = await page.locator('main, .masthead, .unseen, [role=alert]').allInnerTexts();
  const labels = await page.evaluate(
    `[...document.querySelectorAll('[aria-label]')].map((one) => one.getAttribute('aria-label')).join('\\n')`,
  );
  return [...texts, labels].join('\n');
}

async function expectGerman(page: Page, name: string): Promise<void> {
  const said = await saidIn(page);
  expect(said.split('\n').filter((line) => line.match(english) !== null)).toEqual([]);
  for (const [width, height] of [
    [1280, 720],
    [390, 844],
  ] as const) {
    await page.setViewportSize({ width, height });
    const sideways = await page.evaluate(
      'document.documentElement.scrollWidth - document.documentElement.clientWidth',
    );
    expect(sideways).toBeLessThanOrEqual(0);
    const folder = process.env.GERMAN_PICTURES;
    if (folder !== undefined) await page.screenshot({ path: `${folder}/${name}-${width}.png` });
  }
  await page.setViewportSize({ width: 1280, height: 720 });
}

test('chosen in Display, the window says a whole run in German, from Prepare to the replay, and what it announces too', async () => {
  const { page } = bench;
  onTestFailed(() => bench.explain());
  await page.getByRole('button', { name: 'Display and sound' }).click();
  await page.getByRole('radio', { name: 'Deutsch' }).click({ force: true });
  await page.locator('html[lang=de]').waitFor();
  await page.getByRole('button', { name: 'Probelauf starten' }).waitFor();
  expect(await axeViolations(page)).toEqual([]);
  await expectGerman(page, 'prepare');

  await page.getByRole('button', { name: 'Probelauf starten' }).click();
  await page
    .getByText(/\d\d,\d/)
    .first()
    .waitFor();
  await page
    .getByRole('alert')
    .filter({ hasText: 'Vorlage wechseln' })
    .first()
    .waitFor({ timeout: 240_000 });
  await expectGerman(page, 'prompt');
  await page.keyboard.press('o');
  await page.getByRole('button', { name: /^Ende/ }).click();
  await page.getByRole('button', { name: 'Aufzeichnung beenden' }).click();
  await page.getByRole('heading', { name: 'Was herauskam' }).waitFor();
  await expectGerman(page, 'debrief');

  await page.getByRole('link', { name: 'Rückblick' }).first().click();
  await page.getByRole('heading', { name: 'Rückblick' }).waitFor();
  await expectGerman(page, 'library');
  expect(bench.complaints).toEqual([]);
});
