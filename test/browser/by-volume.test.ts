import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type RunningApp, startApp } from '../../scripts/testing/start-app.ts';
import { expectSoundScreen, unfoldMore } from './support/check-screen.ts';
import { type OpenWindow, openWindow } from './support/open-window.ts';
import { writeSimulatedRun } from './support/write-simulated-run.ts';

let folder = '';
let app: RunningApp;
let window: OpenWindow;
const recorded = 'Pear ferment, with volumes';

/** 40 % vol in a simple still, as a table of volumes; our numbers, after Rayleigh’s equation to half a degree. */
const headC = [84, 84, 84.5, 84.5, 85, 85.5, 86, 86.5, 87, 87.5, 88.5, 89.5];

beforeAll(async () => {
  folder = mkdtempSync(path.join(tmpdir(), 'journey-'));
  const rows = headC.map((value, index) => `${index + 1};${String(value).replace('.', ',')}`);
  writeFileSync(
    path.join(folder, 'Gruppe 4.csv'),
    ['Volumen Destillat (mL);Kopftemperatur (°C)', ...rows].join('\n'),
  );
  const runsFolder = path.join(folder, 'runs');
  await writeSimulatedRun(runsFolder, { name: recorded, pressureKPa: 99.4, seed: 1 });
  app = await startApp(runsFolder);
  window = await openWindow(app.url);
  await window.page.getByRole('link', { name: 'Look back' }).click();
  await window.page.getByRole('heading', { name: recorded }).waitFor();
});
afterAll(async () => {
  await window?.close();
  await app?.stop();
  rmSync(folder, { recursive: true, force: true });
});

test('a table of volumes is taken in without times and opens as a curve against volume, with its verdict', async () => {
  const { page, complaints } = window;
  await page
    .getByLabel('Take in a CSV of time and head temperature')
    .setInputFiles(path.join(folder, 'Gruppe 4.csv'));
  await page.getByText(/12 head readings from 1\.0.mL to 12\.0.mL of distillate/).waitFor();
  await page.getByText(/The table has no times/).waitFor();
  await page.getByLabel('Volume in the pot').fill('30');
  await page.getByLabel('Strength of the charge').fill('40');
  await page.getByLabel('Air pressure at the still').fill('101,3');
  await page.getByRole('button', { name: 'Take it in' }).click();
  await page.getByText('Taken in as Gruppe 4.').waitFor();
  await page.getByRole('button', { name: /Replay it|Open it/ }).click();
  await page.getByRole('heading', { name: '“Gruppe 4” against volume' }).waitFor();
  await page.getByText(/At no volume was the vapour as strong as 80.%.vol/).waitFor();
  const figures = page.getByRole('img');
  await page.getByRole('img', { name: /Head temperature of “Gruppe 4”/ }).waitFor();
  const drawn = await figures.evaluateAll((images) =>
    images.map((image) => image.querySelectorAll('path').length),
  );
  // Axes, ticks and curves; a figure without a run has none of them.
  expect(drawn.filter((paths) => paths > 10)).toHaveLength(2);
  await page.getByRole('row', { name: /All together/ }).waitFor();
  await expectSoundScreen(page, 'by-volume-table');
  await page.getByRole('button', { name: 'Back to the library' }).click();
  await page.getByText('a table by volume, without times').waitFor();
  expect(complaints).toEqual([]);
});

test('a recorded run with volumes written down has the same curve behind “More”', async () => {
  const { page, complaints } = window;
  await unfoldMore(page, recorded);
  await page.getByRole('button', { name: `Against volume: ${recorded}` }).click();
  await page.getByText(/Volumes as written down/).waitFor();
  await page.getByRole('img', { name: /Strength of the vapour/ }).waitFor();
  await expectSoundScreen(page, 'by-volume-run');
  await page.getByRole('button', { name: 'Back to the library' }).click();
  expect(complaints).toEqual([]);
});
