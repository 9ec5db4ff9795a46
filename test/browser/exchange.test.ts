import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { type RunningApp, startApp } from '../../scripts/testing/start-app.ts';
import { simulatedRun } from '../support/simulated-run.ts';
import { expectSoundScreen, unfoldMore } from './support/check-screen.ts';
import { type OpenWindow, openWindow, takeScreenshots } from './support/open-window.ts';
import { writeSimulatedRun } from './support/write-simulated-run.ts';

let folder = '';
let app: RunningApp;
let window: OpenWindow;

const recorded = 'Pear ferment, recorded here';
const imported = 'Prüfstand 3';

/** What another logger made of a run: °F with a decimal comma, month first, Windows letters, a bad row. */
function oddTable(): Buffer {
  const { inputs } = simulatedRun({ name: imported, pressureKPa: 99.4, seed: 7 });
  const rows = inputs.flatMap((input, index) => {
    if (input.kind !== 'reading' || input.channel !== 'head' || input.timeS % 10 !== 0) return [];
    const clock = new Date(Date.UTC(2026, 2, 4, 10) + 1000 * input.timeS);
    const [, month, day] = clock.toISOString().slice(0, 10).split('-');
    const fahrenheit = (32 + 1.8 * input.value).toFixed(2).replace('.', ',');
    return [`${index};${month}/${day}/2026 ${clock.toISOString().slice(11, 19)};${fahrenheit};ok`];
  });
  rows[4] = rows[4]?.replace(/;[^;]*;ok$/, ';Fühler ab;ok') ?? '';
  return Buffer.from(['Prüfstand 3', 'Nr;Uhr;Fühler A;Güte', ...rows].join('\r\n'), 'latin1');
}

beforeAll(async () => {
  folder = mkdtempSync(path.join(tmpdir(), 'journey-'));
  const runsFolder = path.join(folder, 'runs');
  await writeSimulatedRun(runsFolder, { name: recorded, pressureKPa: 99.4, seed: 1 });
  writeFileSync(path.join(folder, `${imported}.csv`), oddTable());
  writeFileSync(
    path.join(folder, 'picture.csv'),
    Uint8Array.from({ length: 5000 }, (_, index) => (index * 31) % 256),
  );
  app = await startApp(runsFolder);
  window = await openWindow(app.url);
  await window.page.getByRole('link', { name: 'Look back' }).click();
  await window.page.getByRole('heading', { name: recorded }).waitFor();
});
afterEach(async () => {
  const back = window.page.getByRole('button', { name: 'Back to the library' });
  if (await back.isVisible()) await back.click();
});
afterAll(async () => {
  await window?.close();
  await app?.stop();
  rmSync(folder, { recursive: true, force: true });
});

const chooseFile = (page: Page, name: string) =>
  page
    .getByLabel('Take in a CSV of time and head temperature')
    .setInputFiles(path.join(folder, name));

test('a file that is no table ends in a sentence', async () => {
  const { page } = window;
  await chooseFile(page, 'picture.csv');
  await page.getByText('The file is not text. Save it as CSV first.').waitFor();
  await page.getByRole('button', { name: 'Back to the library' }).click();
});

test('a table with odd columns is taken in as the person says, with its bad rows by line', async () => {
  const { page } = window;
  await chooseFile(page, `${imported}.csv`);
  await page
    .getByRole('region', { name: 'First lines of the file' })
    .getByText(/Fühler A/)
    .waitFor();
  await page.getByLabel('Column 2 holds').selectOption('Time');
  await page.getByLabel('Column 3 holds').selectOption('Head temperature');
  await page.getByLabel('Column 1 holds').selectOption('Not used');
  await page.getByLabel('Unit').first().selectOption('°F');
  await page.getByLabel('Decimal sign').selectOption('Comma');
  await page.getByLabel('Dates like 03/04/2026').selectOption('Month first');
  await page.getByText(/head readings from 0:00:00/).waitFor();
  await page.getByText(/Line 7: "Fühler ab" in the column "Fühler A" is not a number/).waitFor();
  await expectSoundScreen(page, 'take-in');
  // What no table tells is asked, and nothing is taken over unasked.
  await page.getByLabel('Volume in the pot').fill('250');
  await page.getByLabel('Strength of the charge').fill('11');
  await page.getByLabel('Air pressure at the still').fill('99,4');
  await page.getByRole('button', { name: 'Take it in' }).click();
  await page.getByText(`Taken in as ${imported}.`).waitFor();
  expect(await page.locator('.import-rejected li').allTextContents()).toEqual([
    'Line 7: "Fühler ab" in the column "Fühler A" is not a number.',
  ]);
  await page.getByRole('button', { name: 'Replay it' }).click();
  await page.getByRole('slider', { name: 'Time in the run' }).waitFor();
  await page.getByRole('button', { name: 'Back to the library' }).click();
  await page
    .locator('p')
    .filter({ hasText: /· imported/ })
    .waitFor();
});

test('measurements made after the run complete its balance, and can be withdrawn', async () => {
  const { page } = window;
  await unfoldMore(page, imported);
  await page.getByRole('button', { name: `Books of ${imported}` }).click();
  const keep = page.getByRole('button', { name: 'Keep measurement' });
  const measure = async (liquid: string, instrument: string, values: readonly string[]) => {
    await page.getByLabel('Liquid', { exact: true }).selectOption(liquid);
    await page.getByLabel('Measured with').selectOption(instrument);
    const fields = page.locator('.measure-fields').first().getByRole('textbox');
    for (const [index, value] of values.entries()) await fields.nth(index).fill(value);
    await keep.click();
  };
  await measure('Cut 1', 'Measuring cylinder', ['28', '20']);
  await page.getByLabel('Measured with').selectOption('Alcoholometer');
  await page.getByLabel('Strength on the scale').fill('88,5');
  await page.getByText(/Strength at 20 °C: 88\.5.% vol, between/).waitFor();
  await measure('Cut 1', 'Alcoholometer', ['88,5', '20']);
  await measure('Residue', 'Balance', ['218']);
  await page.getByText(/Without a measured residue there is no closure/).waitFor();
  await measure('Residue', 'Hydrometer', ['0,998', '20']);
  await page.getByText(/water is 998, not 0.998/).waitFor();
  await measure('Residue', 'Hydrometer', ['995,4', '20']);
  const balance = page.getByRole('table', { name: 'Balance (±: k = 2)' });
  await balance.getByRole('row', { name: /^Closure \(.*±.*\).%/ }).waitFor();
  await page.getByText('Sugar in the ferment').first().click();
  await page.getByRole('textbox', { name: 'Sugar' }).fill('60');
  await page.getByRole('button', { name: 'Keep sugar' }).click();
  await page.getByText(/From sugar to product: at most/).waitFor();
  await expectSoundScreen(page, 'books');

  await page.getByRole('button', { name: /^Withdraw Residue: hydrometer/ }).click();
  await page.getByText(/Without a measured residue there is no closure/).waitFor();
  await measure('Residue', 'Hydrometer', ['995,4', '20']);
  await balance.getByRole('row', { name: /^Closure \(/ }).waitFor();
  await page.getByRole('button', { name: 'Back to the library' }).click();
});

test('two runs come down as one pack, with the measurements in it', async () => {
  const { page } = window;
  await page.getByText('Compare runs, or export them together').click();
  for (const name of [recorded, imported]) {
    await page.getByRole('checkbox', { name: new RegExp(name) }).check();
  }
  await takeScreenshots(page, 'library-two-runs');
  const coming = page.waitForEvent('download', { timeout: 180_000 });
  await page.getByRole('button', { name: 'One pack of these 2' }).click();
  await page.getByRole('progressbar', { name: 'How far the pack is' }).waitFor();
  await takeScreenshots(page, 'pack-in-the-making');
  const download = await coming;
  expect(download.suggestedFilename()).toMatch(/-and-1-more\.zip$/);
  const files = unzipSync(readFileSync(await download.path()));
  const text = (name: string) => Buffer.from(files[name] ?? []).toString('utf8');
  const names = Object.keys(files);
  expect(names.at(-1)).toBe('datapackage.json');
  expect(names.filter((name) => name.startsWith('data/raw/'))).toHaveLength(2);
  expect(text('data/comparison.csv').trimEnd().split('\r\n')).toHaveLength(3);
  expect(text('data/results.csv')).toMatch(/ethanol: closure,\d/);
  const raw = names.find((name) => /^data\/raw\/.*prufstand-3\.csv$/.test(name)) ?? '';
  expect(text(raw)).toMatch(/run-ended\r\n.*liquid-volume liquid=cut-1 volumeMl=28/);
  await page.getByText(/The pack is ready: .*-and-1-more\.zip/).waitFor();
}, 240_000);

test('the page complained about nothing', () => {
  expect(window.complaints).toEqual([]);
});
