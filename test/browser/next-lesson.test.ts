import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, onTestFailed, test } from 'vitest';
import { cautionsAt } from '#shared-core';
import { type RunningApp, startApp } from '../../scripts/testing/start-app.ts';
import { expectSoundScreen } from './support/check-screen.ts';
import {
  filled,
  keyS,
  modelTimeS,
  modelWords,
  type Operator,
  pressed,
} from './support/keystroke-level.ts';
import { type OpenWindow, openWindow, takeFailure, takeScreenshot } from './support/open-window.ts';
import { stopRun } from './support/prepare-run.ts';
import { readRecordedRun, runIds } from './support/recorded-run.ts';
import { createSerialPair, type SerialPair } from './support/serial-pair.ts';

/** Steps that teach nothing in Prepare: each press and each field filled in is one. */
function counted() {
  let steps = 0;
  const operators: Operator[] = [];
  return {
    press: async (button: Locator) => {
      await button.click();
      steps += 1;
      operators.push(...pressed);
    },
    fill: async (field: Locator, text: string) => {
      await field.fill(text);
      steps += 1;
      operators.push(...filled(text));
    },
    steps: () => steps,
    /** By the keystroke-level model, and printed: what hands and head take. */
    timeS: (name: string, secondsAKey: number) => {
      console.log(`${name}: ${modelWords(steps, operators)}`);
      return modelTimeS(operators, secondsAKey);
    },
  };
}

let folder: string;
let cable: SerialPair;
let talking: NodeJS.Timeout;

beforeAll(async () => {
  folder = mkdtempSync(path.join(tmpdir(), 'journey-'));
  cable = await createSerialPair(folder);
  talking = setInterval(() => cable.send('head 21.4\n'), 500);
});
afterAll(async () => {
  clearInterval(talking);
  await cable?.unplug();
  rmSync(folder, { recursive: true, force: true });
});

/** The program as it is opened for a lesson: a new address, a browser that has never seen it. */
async function openProgram(): Promise<{ app: RunningApp; window: OpenWindow }> {
  const app = await startApp(path.join(folder, 'runs'));
  const window = await openWindow(app.url, { isFirst: true });
  onTestFailed(async () => {
    console.error(app.output(), await window.page.locator('body').textContent());
    await takeFailure(window.page);
  });
  return { app, window };
}

async function confirmChecks(page: Page, press: (box: Locator) => Promise<void>): Promise<number> {
  const boxes = await page.getByRole('checkbox').all();
  for (const box of boxes) await press(box);
  return boxes.length;
}

test('from opening to a run: twelve presses and fields and under three minutes the first time, two and the checks the next, each check anew', async () => {
  const first = await openProgram();
  const { page } = first.window;
  const { press, fill, steps, timeS } = counted();
  await press(page.getByRole('dialog').getByRole('button', { name: 'Go on' }));
  await takeScreenshot(page, 'prepare-first', 'projector');
  await expectFourSteps(page);
  await fill(page.getByLabel('Or type where the probe is'), cable.path);
  await press(page.getByRole('button', { name: 'Connect', exact: true }));
  await fill(page.getByLabel('Altitude of this room'), '540');
  await page.getByText('Heard clearly').waitFor();
  await confirmChecks(page, press);
  await press(page.getByRole('button', { name: 'Start the run' }));
  await page.getByText(/Saved to/).waitFor();
  expect(steps()).toBeLessThanOrEqual(12);
  // Most of the three minutes are left for looking at the still and for reading what is new.
  expect(timeS('First time', keyS.worst)).toBeLessThanOrEqual(180);
  await stopRun(page);
  await page.goto(`${page.url().split('#')[0]}#prepare`);
  await keepRig(page, 'Lab 2, short column');
  await first.window.close();
  await first.app.stop();

  const next = await openProgram();
  const again = counted();
  const nextPage = next.window.page;
  await again.press(nextPage.getByRole('button', { name: 'Same as last time' }));
  await nextPage.getByText('Heard clearly').waitFor();
  // All that a kept set-up can’t bring is in the last step: there it leads, by sight and by ear.
  expect(await stepAtHand(nextPage)).toEqual(['4. Before heat', '4. Before heat']);
  expect(await nextPage.getByRole('checkbox', { checked: true }).count()).toBe(0);
  await nextPage.getByRole('button', { name: 'Lab 2, short column' }).waitFor();
  await expectSoundScreen(nextPage, 'prepare-next');
  const checks = await confirmChecks(nextPage, again.press);
  await again.press(nextPage.getByRole('button', { name: 'Start the run' }));
  await nextPage.getByText(/Saved to/).waitFor();
  expect([again.steps() - checks, checks]).toEqual([2, 7]);
  expect(again.timeS('Next time', keyS.worst)).toBeLessThanOrEqual(60);
  await stopRun(nextPage);
  expect([...first.window.complaints, ...next.window.complaints]).toEqual([]);
  await next.window.close();
  await next.app.stop();

  const [one, two] = runIds(path.join(folder, 'runs')).map(
    (runId) => readRecordedRun(path.join(folder, 'runs'), runId).header,
  );
  const { safetyConfirms: _, ...known } = one?.settings ?? { safetyConfirms: [] };
  expect(two?.settings).toMatchObject(known);
  // Each check of the seven looks is in the record by itself.
  expect(two?.settings.safetyConfirms).toHaveLength(cautionsAt('prepare').length);
  expect(two?.source).toEqual(one?.source);
});

/** The step that the line of steps names, and the heading that has the focus. */
async function stepAtHand(page: Page): Promise<readonly (string | null)[]> {
  return [
    await page.locator('[aria-current=step] .step-name').textContent(),
    await page.evaluate(() => document.activeElement?.textContent ?? null),
  ];
}

/** A step is a screen of the usual laptop; going on and back leads to its heading and loses nothing. */
async function expectFourSteps(page: Page): Promise<void> {
  const before = page.viewportSize();
  await page.setViewportSize({ width: 1366, height: 768 });
  await page.getByLabel('Volume in the pot').fill('400');
  const bar = page.getByRole('navigation', { name: 'Steps of preparing' });
  for (const name of ['1. Probe', '2. In the pot', '3. Air pressure', '4. Before heat']) {
    await bar.getByRole('button', { name }).click();
    await expect.poll(() => stepAtHand(page)).toEqual([name, name]);
    const screen = await page.getByRole('region', { name }).evaluate((step) => ({
      top: step.getBoundingClientRect().top,
      end: step.lastElementChild?.getBoundingClientRect().bottom ?? Infinity,
    }));
    expect(screen.top, name).toBeGreaterThanOrEqual(0);
    expect(screen.end, name).toBeLessThanOrEqual(768);
  }
  await page.getByRole('group', { name: 'Who is looking' }).waitFor();
  await bar.getByRole('button', { name: '2. In the pot' }).click();
  expect(await page.getByLabel('Volume in the pot').inputValue()).toBe('400');
  await page.getByRole('button', { name: 'Next: Air pressure' }).click();
  await expect.poll(() => stepAtHand(page)).toEqual(['3. Air pressure', '3. Air pressure']);
  await page
    .getByRole('list', { name: 'Still to do under “Air pressure”' })
    .getByRole('button')
    .click();
  expect(await page.evaluate(() => document.activeElement?.getAttribute('data-field'))).toBe(
    'altitudeM',
  );
  if (before !== null) await page.setViewportSize(before);
}

async function keepRig(page: Page, name: string): Promise<void> {
  await page.getByText('Keep this set-up under a name').click();
  await page.getByLabel('Name of the rig').fill(name);
  await page.getByRole('button', { name: 'Keep', exact: true }).click();
  await page.getByText(`Kept as “${name}”`).waitFor();
}
