import path from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, onTestFailed, test } from 'vitest';
import { axeViolations } from './support/check-screen.ts';
import { type JourneyBench, openBench } from './support/journey-bench.ts';
import { letterShares } from './support/letter-shares.ts';
import { takeScreenshot } from './support/open-window.ts';

let bench: JourneyBench;

beforeAll(async () => {
  bench = await openBench();
});
afterAll(() => bench?.tidy());

const ownQuestion = 'What keeps the line level?';

test('the hurried lesson: sound and screen tried, one page printed, a reload and a closed tab in mid-run, the prompt all the same', async () => {
  // The first window is closed on the way, so only the program can still explain itself.
  onTestFailed(() => console.error(bench.app.output()));
  const { page } = bench;
  const viewer = await tryBoth(page);
  await expectOnePage(page, /^Risk checklist/, 'Close');
  await writeQuestion(page);
  await page.getByText('120 times faster').click();
  await rememberIdleWords(page);
  await page.getByRole('button', { name: 'Start the rehearsal' }).click();
  await page.locator('.for-the-class').waitFor();
  await viewer.locator('.classroom .strip').waitFor();
  await expectReadFromTheBackRow(viewer);

  await leavable(page);
  await page.reload();
  await page.getByRole('link', { name: 'Watch', exact: true }).click();
  await page.locator('.for-the-class').waitFor();
  expect(await page.evaluate('window.saidIdle')).toBe(false);
  await page.locator('.for-the-class-first').getByText(ownQuestion).waitFor();
  expect(await viewer.locator('body').textContent()).not.toContain('For the class');
  await expectReadFromTheBackRow(viewer);
  await takeScreenshot(viewer, 'second-screen-run', 'projector');

  await takeHeatOff(await reopen(page));
  expect(bench.complaints).toEqual([]);
});

/** Before the class is in: the call is heard, the card is up and legible to the last row. */
async function tryBoth(page: Page): Promise<Page> {
  await page.getByText('Heard and seen:').click();
  await page.getByRole('button', { name: 'Play the urgent call' }).click();
  await answer(page, 'Was it heard at the still?');
  await page.getByRole('button', { name: 'Show the class a test card' }).click();
  const opened = page.context().waitForEvent('page');
  await page.getByRole('link', { name: 'Open it in a new window' }).click();
  const viewer = await opened;
  await viewer.getByRole('heading', { name: 'The run has not begun' }).waitFor();
  expect(await axeViolations(viewer)).toEqual([]);
  await expectReadFromTheBackRow(viewer);
  await page.getByRole('button', { name: 'Done' }).click();
  await answer(page, 'Is its smallest line read from the back row?');
  return viewer;
}

async function answer(page: Page, question: string): Promise<void> {
  await page.getByRole('group', { name: question }).getByText('Yes', { exact: true }).click();
}

async function expectReadFromTheBackRow(viewer: Page): Promise<void> {
  for (const size of [
    { width: 1280, height: 720 },
    { width: 1920, height: 1080 },
  ]) {
    await viewer.setViewportSize(size);
    // The strip's letters follow the measured height of the screen.
    await viewer.waitForFunction((height) => window.innerHeight === height, size.height);
    await expect
      .poll(async () => (await letterShares(viewer)).least, { timeout: 20_000 })
      .toBeGreaterThanOrEqual(0.043);
    expect((await letterShares(viewer)).head).toBeGreaterThanOrEqual(0.15);
  }
}

/** What a printer would get is one page, on either usual paper. */
async function expectOnePage(page: Page, opener: RegExp, closer: string): Promise<void> {
  await page.getByRole('button', { name: opener }).click();
  await page.getByRole('dialog').waitFor();
  expect(await axeViolations(page)).toEqual([]);
  for (const format of ['A4', 'Letter']) {
    const printed = (await page.pdf({ format })).toString('latin1');
    expect(printed.match(/\/Type \/Page\b/g), format).toHaveLength(1);
  }
  await page.getByRole('dialog').getByRole('button', { name: closer }).click();
}

async function writeQuestion(page: Page): Promise<void> {
  await expectOnePage(page, /^Lesson script/, 'Done');
  await page.getByRole('button', { name: 'Lesson script …' }).click();
  for (const field of await page.getByLabel('Ask', { exact: true }).all())
    await field.fill(ownQuestion);
  await page.getByRole('button', { name: 'Done' }).click();
}

/** From the next load on, whether the page ever says that nothing runs. */
async function rememberIdleWords(page: Page): Promise<void> {
  await page.addInitScript(() => {
    Object.assign(window, { saidIdle: false });
    new MutationObserver(() => {
      const said = document.body?.textContent ?? '';
      if (said.includes('Nothing is running')) Object.assign(window, { saidIdle: true });
    }).observe(document, { subtree: true, childList: true, characterData: true });
  });
}

/** Nothing is on its way any more: what a page that is left gives up would count as a complaint. */
async function leavable(page: Page): Promise<void> {
  await page.waitForLoadState('networkidle');
}

/** The tab is closed by mistake: the page that lies among the runs leads to the run under way. */
async function reopen(page: Page): Promise<Page> {
  const door = pathToFileURL(path.join(bench.runsFolder, 'open-window.html')).href;
  const again = await page.context().newPage();
  again.setDefaultTimeout(60_000);
  await leavable(page);
  await page.close();
  await again.goto(door);
  await again.getByRole('link', { name: 'Watch', exact: true }).click();
  await again.locator('.for-the-class').waitFor();
  await again.getByText(/Saved to/).waitFor();
  return again;
}

/** Answers as prompts come, until the one that asks for the heat to be off, and takes it off. */
async function takeHeatOff(page: Page): Promise<void> {
  const prompts = page.getByRole('region', { name: 'Prompts' });
  const heatOff = prompts.getByRole('button', { name: /^Heat is off/ }).first();
  const attention = prompts.getByRole('button', { name: 'I am at the still' });
  const giveUpMs = Date.now() + 150_000;
  while (!(await heatOff.isVisible())) {
    if (Date.now() > giveUpMs) throw new Error('No heat-off prompt came.');
    if (await attention.isVisible()) await page.keyboard.press('a');
    await page.waitForTimeout(250);
  }
  await heatOff.click();
  await page.locator('button[aria-pressed=true]').filter({ hasText: 'off' }).waitFor();
}
