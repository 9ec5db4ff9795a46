import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { stageLabels } from '#shared-core';
import { type RunningApp, startApp } from '../../scripts/testing/start-app.ts';
import { expectSoundScreen, unfoldMore } from './support/check-screen.ts';
import { type OpenWindow, openWindow, windowSizes } from './support/open-window.ts';
import { writeSimulatedRun } from './support/write-simulated-run.ts';

let folder = '';
let app: RunningApp;
let window: OpenWindow;

const names = ['Pear ferment, first rig', 'Pear ferment, thin air', 'Pear ferment, second rig'];

beforeAll(async () => {
  folder = mkdtempSync(path.join(tmpdir(), 'journey-'));
  const runsFolder = path.join(folder, 'runs');
  for (const [index, pressureKPa] of [99.4, 92, 101.8].entries()) {
    await writeSimulatedRun(runsFolder, { name: names[index] ?? '', pressureKPa, seed: index + 1 });
  }
  app = await startApp(runsFolder);
  window = await openWindow(app.url);
  await window.page.getByRole('link', { name: 'Look back' }).click();
  await window.page.getByRole('heading', { name: names[2] ?? '' }).waitFor();
});
afterAll(async () => {
  await window?.close();
  await app?.stop();
  rmSync(folder, { recursive: true, force: true });
});

afterEach(async () => {
  const back = window.page.getByRole('button', { name: 'Back to the library' });
  if (await back.isVisible()) await back.click();
});

test('a replay is understood at its moment, and at an earlier one by moving the cursor', async () => {
  const { page } = window;
  await page.getByRole('button', { name: `Replay ${names[0]}` }).click();
  await page.getByRole('slider', { name: 'Time in the run' }).fill('1900');
  await page.getByRole('button', { name: 'Annotate …' }).focus();
  await page.keyboard.press('Tab');
  // Straight on to the list: nothing in the drawing takes the focus.
  expect(await page.evaluate('document.activeElement.textContent')).toContain('Warm-up');
  await page.getByRole('button', { name: 'Understand this moment' }).click();
  const boiling = page.getByRole('region', { name: /^Boiling at 99\.4/ });
  await boiling.getByText(/the column has lifted it that far/).waitFor();
  await expectSoundScreen(page, 'understand');

  const cursor = page.getByRole('slider', { name: 'Cursor' });
  await cursor.focus();
  await page.keyboard.press('ArrowLeft');
  await page.getByText('0:31:35').waitFor();
  await cursor.fill('300');
  await boiling.getByText(/No vapour bathes the bulb fully/).waitFor();

  const strip = page.locator('.cursor-reach').first();
  const box = await strip.boundingBox();
  if (box === null) throw new Error('The strip takes no pointer.');
  await page.mouse.click(box.x + box.width * 0.5, box.y + box.height / 2);
  await boiling.getByText(/the column has lifted it that far/).waitFor();
});

test('a class guesses without seeing what the program thinks, by pointer and keyboard, and is scored', async () => {
  const { page } = window;
  await page.getByRole('button', { name: `Guess first: ${names[0]}` }).click();
  await page.getByRole('slider', { name: 'Time in the run' }).fill('2900');
  const shown = await page.locator('main').textContent();
  for (const label of Object.values(stageLabels)) expect(shown).not.toContain(label);

  const paper = page.locator('.cursor-reach');
  const box = await paper.boundingBox();
  if (box === null) throw new Error('The strip takes no pointer.');
  await page.mouse.click(box.x + box.width * 0.34, box.y + box.height / 2);
  await page.getByRole('cell', { name: /0:1\d:\d\d/ }).waitFor();
  await page.getByRole('radio', { name: 'Heat off' }).check();
  await page.getByRole('button', { name: 'Set at 0:48:20' }).press('Enter');
  await page.getByRole('slider', { name: 'A: heat off' }).press('ArrowLeft');
  await expectSoundScreen(page, 'guess');
  await page.getByRole('button', { name: 'Reveal the record' }).press('Enter');
  await page
    .getByRole('region', { name: 'Heat off', exact: true })
    .getByText(/Nearest: group A/)
    .waitFor();
  await expectSoundScreen(page, 'guess-scores');
});

/** All three runs, compared. */
async function layOver(page: Page): Promise<void> {
  await page.getByText('Compare runs').click();
  for (const name of names) await page.getByRole('checkbox', { name: new RegExp(name) }).check();
  await page.getByRole('button', { name: 'Compare these 3' }).click();
  await page.getByRole('table', { name: 'Runs side by side' }).waitFor();
}

test('three runs are laid over each other', async () => {
  const { page } = window;
  await layOver(page);
  expect(await page.locator('.trace').count()).toBe(3);
  await expectSoundScreen(page, 'compare');
  expect(await crampedCells(page)).toEqual([]);
});

/** Cells of the comparison on a phone whose label breaks in two, or whose figure runs into the next cell. */
async function crampedCells(page: Page): Promise<readonly string[]> {
  await page.setViewportSize(windowSizes.phone);
  const cramped = await page.evaluate(() =>
    [...document.querySelectorAll('.compare .stacking td')].flatMap((cell) => {
      const label = getComputedStyle(cell, '::before');
      const isBroken = parseFloat(label.height) > 1.9 * parseFloat(label.fontSize);
      const isSpilt = cell.scrollWidth > cell.clientWidth;
      return isBroken || isSpilt ? [cell.textContent ?? ''] : [];
    }),
  );
  await page.setViewportSize(windowSizes.projector);
  return cramped;
}

test('a comparison on paper is whole, as narrow as the sheet may be, without what only a finger uses', async () => {
  const { page } = window;
  await layOver(page);
  await page.emulateMedia({ media: 'print' });
  // A printer lays the page out anew and tells no observer: what was drawn for the screen is measured before any of them is called.
  const printed = await page.evaluate(() => {
    const overlay = document.querySelector<HTMLElement>('.overlay');
    const drawing = overlay?.querySelector('svg');
    if (!overlay || !drawing) return null;
    const onScreenPx = drawing.viewBox.baseVal.width;
    overlay.style.width = '500px';
    const { right, width, height } = drawing.getBoundingClientRect();
    const isShown = (element: Element) => element.getClientRects().length > 0;
    overlay.style.width = '';
    return {
      wasWider: onScreenPx > 500,
      isWhole: width <= 500 && right <= overlay.getBoundingClientRect().left + 500,
      isInShape: Math.abs(width / height - onScreenPx / drawing.viewBox.baseVal.height) < 0.05,
      buttons: [...document.querySelectorAll('button, .masthead')].filter(isShown).length,
    };
  });
  await page.emulateMedia({ media: 'screen' });
  expect(printed).toEqual({ wasWider: true, isWhole: true, isInShape: true, buttons: 0 });
});

test('a replay on paper has no gap below its strip, and all of it is on the sheets', async () => {
  const { page } = window;
  await page.getByRole('button', { name: `Replay ${names[0]}` }).click();
  await page.getByRole('slider', { name: 'Time in the run' }).fill('1900');
  await page.getByRole('button', { name: 'Understand this moment' }).click();
  await page.getByRole('region', { name: /^Boiling at 99\.4/ }).waitFor();
  await page.emulateMedia({ media: 'print' });
  const screen = page.viewportSize();
  const onPaper = [];
  // A4 upright less its margins, and a sheet as wide as a screen.
  for (const width of [688, 1100]) {
    await page.setViewportSize({ width, height: 1000 });
    onPaper.push(
      await page.evaluate(() => {
        const of = (selector: string) => document.querySelector(selector);
        const bottomPx = of('.strip-box svg')?.getBoundingClientRect().bottom ?? 0;
        const nextPx = of('.findings')?.getBoundingClientRect().top ?? 0;
        const main = of('main');
        // On a wide sheet it stands beside the strip.
        return {
          hasGap: nextPx > bottomPx + 48,
          isCut: (main?.scrollHeight ?? 0) > (main?.clientHeight ?? 0) + 1,
        };
      }),
    );
  }
  await page.emulateMedia({ media: 'screen' });
  if (screen !== null) await page.setViewportSize(screen);
  expect(onPaper).toEqual([
    { hasGap: false, isCut: false },
    { hasGap: false, isCut: false },
  ]);
});

test('a what-if is marked as one beside the record', async () => {
  const { page } = window;
  await unfoldMore(page, names[0] ?? '');
  await page.getByRole('button', { name: `What if … for ${names[0]}` }).click();
  await page.getByRole('textbox', { name: 'Least strength' }).fill('88');
  await page.getByRole('button', { name: 'Go through the run again' }).press('Enter');
  await page.getByRole('heading', { name: 'What if: this did not happen' }).waitFor();
  await expectSoundScreen(page, 'what-if');
});

test('the page complained about nothing', () => {
  expect(window.complaints).toEqual([]);
});
