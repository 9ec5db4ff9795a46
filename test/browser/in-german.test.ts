import process from 'node:process';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, onTestFailed, test } from 'vitest';
import { axeViolations } from './support/check-screen.ts';
import { englishLeft, inGerman, unfoldAll } from './support/english-left.ts';
import { type JourneyBench, openBench } from './support/journey-bench.ts';

let bench: JourneyBench;
beforeAll(async () => {
  bench = await openBench();
});
afterAll(() => bench?.tidy());

/** What is left in English, by the room it stands in. */
const left: Record<string, readonly string[]> = {};

async function look(page: Page, room: string): Promise<void> {
  await unfoldAll(page);
  const found = await englishLeft(page, [bench.runsFolder]);
  if (found.length > 0) left[room] = found;
}

/** Steps and buttons that are wider than their place, for a word in them is. */
const stickingOut = `[...document.querySelectorAll('.step-bar button, main .button')]
  .filter((one) => {
    const { right } = one.getBoundingClientRect();
    return right > one.parentElement.getBoundingClientRect().right + 1;
  })
  .map((one) => one.textContent)`;

/** On so many lines stand the buttons of the marks, undo included. */
const linesOfMarks =
  'new Set([...document.querySelectorAll(".mark-bar .button")].map((one) => one.offsetTop)).size';

async function expectGerman(page: Page, name: string): Promise<void> {
  await look(page, name);
  for (const [width, height] of [
    [1280, 720],
    [390, 844],
  ] as const) {
    await page.setViewportSize({ width, height });
    const sideways = await page.evaluate(
      'document.documentElement.scrollWidth - document.documentElement.clientWidth',
    );
    expect(sideways).toBeLessThanOrEqual(0);
    expect(await page.evaluate(stickingOut)).toEqual([]);
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
  await look(page, 'watch');
  await page.getByRole('button', { name: inGerman('Understand this moment') }).click();
  await look(page, 'understand, warm-up');
  await page.getByRole('button', { name: inGerman('Understand this moment') }).click();
  await page
    .getByRole('alert')
    .filter({ hasText: 'Vorlage wechseln' })
    .first()
    .waitFor({ timeout: 240_000 });
  await expectGerman(page, 'prompt');
  expect(await page.evaluate(linesOfMarks)).toBe(1);
  await lookAtMarks(page);
  await page.keyboard.press('o');
  await lookAtSecondScreens(page);
  await page.getByRole('button', { name: /^Ende/ }).click();
  await page.getByRole('dialog').waitFor();
  await look(page, 'stop');
  await page.getByRole('button', { name: 'Aufzeichnung beenden' }).click();
  await page.getByRole('heading', { name: 'Was herauskam' }).waitFor();
  await expectGerman(page, 'debrief');

  await page.getByRole('link', { name: 'Rückblick' }).first().click();
  await page.getByRole('heading', { name: 'Rückblick' }).waitFor();
  await expectGerman(page, 'library');
  expect(left).toEqual({});
  expect(bench.complaints).toEqual([]);
});

/** What is opened by the keys of the bench, with what can’t be entered. */
async function lookAtMarks(page: Page): Promise<void> {
  for (const key of ['r', 'v', 'm']) {
    await page.keyboard.press(key);
    const dialog = page.getByRole('dialog');
    await dialog.waitFor();
    await look(page, `dialog of ${key}`);
    await dialog.getByRole('textbox').first().fill('abc');
    await dialog.locator('button[type=submit]').click();
    await look(page, `dialog of ${key}, mistakes`);
    await page.keyboard.press('Escape');
    await dialog.waitFor({ state: 'detached' });
  }
  await page.keyboard.press('n');
  await page.locator('.note-drawer').waitFor();
  await look(page, 'note');
  await page.keyboard.type('Klar');
  await page.keyboard.press('Enter');
  await page.locator('.note-drawer').waitFor({ state: 'detached' });
  await page.keyboard.press('d');
  await look(page, 'drops');
  await page.keyboard.press('Escape');
}

/** The classroom view of this window, and a window that only watches. */
async function lookAtSecondScreens(page: Page): Promise<void> {
  await page.getByRole('button', { name: inGerman('Classroom view') }).click();
  await page.getByRole('button', { name: inGerman('Leave') }).waitFor();
  await look(page, 'classroom view');
  await page.getByRole('button', { name: inGerman('Leave') }).click();
  const viewer = await page.context().newPage();
  viewer.setDefaultTimeout(60_000);
  await viewer.goto(bench.app.viewerUrl);
  await viewer.locator('.classroom .strip').waitFor();
  await look(viewer, 'second screen');
  await viewer.close();
}
