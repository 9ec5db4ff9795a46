import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type RunningApp, startApp } from '../../scripts/testing/start-app.ts';
import { brokenWords } from './support/broken-words.ts';
import { englishLeft, inGerman, unfoldAll } from './support/english-left.ts';
import { type OpenWindow, openWindow, windowSizes } from './support/open-window.ts';
import { writeSimulatedRun } from './support/write-simulated-run.ts';

let folder = '';
let app: RunningApp;
let window: OpenWindow;
/** What is left in English, by the room it stands in. */
const left: Record<string, readonly string[]> = {};
const names = ['Birnensaft eins', 'Birnensaft zwei'];
const first = names[0] ?? '';

beforeAll(async () => {
  folder = mkdtempSync(path.join(tmpdir(), 'journey-'));
  const runsFolder = path.join(folder, 'runs');
  for (const [index, pressureKPa] of [99.4, 92].entries()) {
    await writeSimulatedRun(runsFolder, { name: names[index] ?? '', pressureKPa, seed: index + 1 });
  }
  const times = Array.from({ length: 60 }, (_, index) => `${60 * index};${20 + index},5;${index}`);
  writeFileSync(
    path.join(folder, 'Gruppe 4.csv'),
    ['Zeit (s);Kopf (°C);Mass', ...times, 'mittags;ab;0', 'morgens;21;0'].join('\n'),
  );
  // A table whose beginning can be read, and whose end turns out to be more than may be taken in.
  writeFileSync(path.join(folder, 'kopflos.csv'), 'Zeit;Mass\n0;1\n1;2\n');
  writeFileSync(
    path.join(folder, 'bild.csv'),
    Uint8Array.from({ length: 5000 }, (_, i) => i % 256),
  );
  app = await startApp(runsFolder);
  window = await openWindow(app.url);
  await window.page.evaluate(() =>
    localStorage.setItem(
      'preferences',
      JSON.stringify({ welcomed: true, language: 'de', decimal: ',' }),
    ),
  );
  await window.page.reload();
  await window.page.getByRole('link', { name: inGerman('Look back') }).click();
  await window.page.getByRole('heading', { name: first }).waitFor();
});
afterAll(async () => {
  await window?.close();
  await app?.stop();
  rmSync(folder, { recursive: true, force: true });
});

async function look(page: Page, room: string, typed: readonly string[] = []): Promise<void> {
  await unfoldAll(page);
  const found = await englishLeft(page, [path.join(folder, 'runs'), ...typed]);
  if (found.length > 0) left[room] = found;
}

/** On a phone nothing is to be scrolled to sideways, and no word is broken. */
async function lookOnPhone(page: Page, room: string): Promise<void> {
  await page.setViewportSize(windowSizes.phone);
  const pastPx = await page
    .locator('#place')
    .evaluate((place) => place.scrollWidth - place.clientWidth);
  expect({ room, pastPx, broken: await brokenWords(page) }).toEqual({
    room,
    pastPx: 0,
    broken: [],
  });
  await page.setViewportSize(windowSizes.projector);
}

const button = (within: Page | Locator, sentence: string, values = {}) =>
  within.getByRole('button', { name: inGerman(sentence, values), exact: true });
const backToLibrary = (page: Page) => button(page, 'Back to the library').first().click();

async function openFromMore(page: Page, sentence: string): Promise<void> {
  const more = button(page, 'More for {name}', { name: first });
  await more.waitFor();
  if ((await more.getAttribute('aria-expanded')) === 'false') await more.click();
  await button(page, sentence, { name: first }).click();
}

test('what is looked back at is in German: library, replay, guess, comparison, what-if, books, volumes, proof, corrections', async () => {
  const { page } = window;
  await button(page, 'More for {name}', { name: first }).click();
  await look(page, 'library');
  await lookAtReplay(page);
  await lookAtGuess(page);
  await lookAtComparison(page);
  await lookAtWhatIf(page);
  await lookAtBooks(page);
  await lookAtVolumesAndProof(page);
  await lookAtDialogs(page);
  expect(left).toEqual({});
});

test('a table is taken in, and refused, in German, whatever its columns are called', async () => {
  const { page } = window;
  const choose = (name: string) =>
    page
      .getByLabel(inGerman('Take in a CSV of time and head temperature'))
      .setInputFiles(path.join(folder, name));
  for (const name of ['bild.csv', 'kopflos.csv']) {
    await choose(name);
    await page.locator('.import-body').waitFor();
    await page.waitForTimeout(1000);
    await look(page, `take in ${name}`, ['Mass', name]);
    const back = button(page, 'Back to the library');
    await ((await back.isVisible()) ? back : button(page, 'Cancel')).click();
  }
  await choose('Gruppe 4.csv');
  await page.locator('.import-body').waitFor();
  await page.waitForTimeout(1000);
  await look(page, 'take in', ['"Mass"', '„Mass“', '“Mass”', 'Mass']);
  for (const entry of await page.locator('main input.entry').all()) {
    if ((await entry.getAttribute('type')) !== 'datetime-local' && (await entry.isVisible()))
      await entry.fill('-7');
  }
  await look(page, 'take in, mistakes', ['Mass']);
  for (const [sentence, value] of [
    ['Volume in the pot', '250'],
    ['Strength of the charge', '11'],
    ['Air pressure at the still', '99,4'],
  ] as const) {
    await page.getByLabel(inGerman(sentence), { exact: true }).fill(value);
  }
  for (const entry of await page.locator('main input.entry').all()) {
    if ((await entry.inputValue()) === '-7') await entry.fill('');
  }
  await button(page, 'Take it in').click();
  await page.locator('.import-rejected li').first().waitFor();
  await look(page, 'taken in', ['Mass']);
  expect(left).toEqual({});
  expect(window.complaints).toEqual([]);
});

async function lookAtReplay(page: Page): Promise<void> {
  await button(page, 'Replay {name}', { name: first }).click();
  const slider = page.getByRole('slider', { name: inGerman('Time in the run') });
  await slider.waitFor();
  for (const timeS of ['10', '900', '1900', '2900', '3400', '5000']) {
    await slider.fill(timeS);
    await page.waitForTimeout(500);
    await look(page, `replay at ${timeS} s`);
  }
  await slider.fill('1900');
  // Its triangle is a part of its name.
  await page.getByRole('button', { name: inGerman('Understand this moment') }).click();
  await page.waitForTimeout(1500);
  await look(page, 'understand');
  await button(page, 'Annotate …').click();
  await page.getByRole('dialog').waitFor();
  await look(page, 'annotate');
  await page.keyboard.press('Escape');
  await backToLibrary(page);
}

async function lookAtGuess(page: Page): Promise<void> {
  await button(page, 'Guess first: {name}', { name: first }).click();
  await page.getByRole('slider', { name: inGerman('Time in the run') }).fill('2900');
  await page.getByRole('radio', { name: inGerman('Heat off') }).check();
  await button(page, 'Set at {shownTo}', { shownTo: '0:48:20' }).click();
  await look(page, 'guess');
  await button(page, 'Reveal the record').click();
  await page.waitForTimeout(1000);
  await look(page, 'guess revealed');
  await backToLibrary(page);
}

async function lookAtComparison(page: Page): Promise<void> {
  await page.getByText(inGerman('Compare runs, or export them together')).click();
  for (const name of names) await page.getByRole('checkbox', { name: new RegExp(name) }).check();
  await look(page, 'two chosen');
  await button(page, 'Compare these {count}', { count: '2' }).click();
  await page.getByRole('table', { name: inGerman('Runs side by side') }).waitFor();
  await page.waitForTimeout(1000);
  await look(page, 'compare');
  await backToLibrary(page);
}

async function lookAtWhatIf(page: Page): Promise<void> {
  await openFromMore(page, 'What if … for {name}');
  const strength = page.getByRole('textbox', { name: inGerman('Least strength') });
  for (const entry of await page.getByRole('textbox').all()) await entry.fill('-3');
  await button(page, 'Go through the run again').click();
  await look(page, 'what if, mistakes');
  await page.getByRole('textbox').nth(0).fill('99');
  await page.getByRole('textbox').nth(2).fill('');
  await strength.fill('88');
  await button(page, 'Go through the run again').click();
  await page.getByRole('heading', { name: inGerman('What if: this did not happen') }).waitFor();
  await look(page, 'what if');
  await backToLibrary(page);
}

async function lookAtBooks(page: Page): Promise<void> {
  await openFromMore(page, 'Books of {name}');
  const liquid = page.getByLabel(inGerman('Liquid'), { exact: true });
  const instrument = page.getByLabel(inGerman('Measured with'), { exact: true });
  await liquid.waitFor();
  await page.getByRole('table').first().waitFor();
  await lookOnPhone(page, 'books');
  const instruments = await instrument.locator('option').allTextContents();
  for (const label of instruments) {
    await instrument.selectOption({ label });
    await unfoldAll(page);
    for (const wrong of ['abc', '-5', '']) {
      for (const entry of await page.locator('.measure-fields').first().getByRole('textbox').all())
        await entry.fill(wrong);
      await button(page, 'Keep measurement').click();
      await look(page, `books with ${label}: ${wrong}`);
    }
  }
  const measure = async (of: string, by: string, values: readonly string[]) => {
    await liquid.selectOption({ label: of });
    await instrument.selectOption({ label: by });
    const fields = page.locator('.measure-fields').first().getByRole('textbox');
    for (const [index, value] of values.entries()) await fields.nth(index).fill(value);
    await button(page, 'Keep measurement').click();
    await page.waitForTimeout(700);
    await look(page, `books: ${of} by ${by}`);
  };
  const cut = inGerman('Cut {number}', { number: '1' });
  await measure(cut, inGerman('Measuring cylinder'), ['28', '20']);
  await measure(cut, inGerman('Alcoholometer'), ['88,5', '20']);
  await measure(inGerman('Residue'), inGerman('Balance'), ['300']);
  await measure(inGerman('Residue'), inGerman('Alcoholometer'), ['2', '20']);
  await page.getByRole('textbox', { name: inGerman('Sugar'), exact: true }).fill('-1');
  await button(page, 'Keep sugar').click();
  await look(page, 'books, sugar mistaken');
  await page.getByRole('textbox', { name: inGerman('Sugar'), exact: true }).fill('60');
  await button(page, 'Keep sugar').click();
  await page.waitForTimeout(700);
  await look(page, 'books, balanced');
  await backToLibrary(page);
}

async function lookAtVolumesAndProof(page: Page): Promise<void> {
  await openFromMore(page, 'Against volume: {name}');
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.waitForTimeout(1500);
  await look(page, 'by volume');
  await backToLibrary(page);
  await openFromMore(page, 'Prove by burning … for {name}');
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.waitForTimeout(500);
  await look(page, 'proof');
  await backToLibrary(page);
}

async function lookAtDialogs(page: Page): Promise<void> {
  await openFromMore(page, 'Name and notes … of {name}');
  await page.getByRole('dialog').waitFor();
  await look(page, 'rename');
  await page.keyboard.press('Escape');
  await openFromMore(page, 'Correct charge and pressure … of {name}');
  const dialog = page.getByRole('dialog');
  await dialog.waitFor();
  const entries = await dialog.getByRole('textbox').all();
  await expect.poll(() => entries[0]?.inputValue()).not.toBe('');
  const before = await Promise.all(entries.map((entry) => entry.inputValue()));
  for (const entry of entries) await entry.fill('-2');
  await look(page, 'correct, mistakes');
  for (const [index, entry] of entries.entries()) await entry.fill(before[index] ?? '');
  await dialog.getByLabel(inGerman('Volume in the pot'), { exact: true }).fill('301');
  await dialog.getByLabel(inGerman('Reason'), { exact: true }).fill('falsch abgelesen');
  await button(dialog, 'Correct').click();
  await dialog.waitFor({ state: 'detached' });
  await look(page, 'library, corrected');
  await openFromMore(page, 'Correct charge and pressure … of {name}');
  await dialog.getByText(/301/).first().waitFor();
  await look(page, 'correct again');
  expect(await dialog.textContent()).toContain('Nach dem Versuch berichtigt: Füllung 250');
  await page.keyboard.press('Escape');
}
