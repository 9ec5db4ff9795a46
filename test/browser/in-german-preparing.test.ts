import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, onTestFailed, test } from 'vitest';
import {
  type DeviceLanguage,
  deviceLanguages,
  plugInDevice,
} from '../main/probe/support/speaking-device.ts';
import { brokenWords } from './support/broken-words.ts';
import { englishLeft, inGerman, unfoldAll } from './support/english-left.ts';
import { type JourneyBench, openBench } from './support/journey-bench.ts';
import { windowSizes } from './support/open-window.ts';

let bench: JourneyBench;
const head = plugInDevice(
  deviceLanguages.find(({ name }) => name === 'plain number') as DeviceLanguage,
);
/** What is left in English, by the room it stands in. */
const noSuchPort = '/dev/no-such-probe';
const left: Record<string, readonly string[]> = {};

beforeAll(async () => {
  bench = await openBench();
  await bench.page.evaluate(() =>
    localStorage.setItem(
      'preferences',
      JSON.stringify({ welcomed: false, language: 'de', decimal: ',' }),
    ),
  );
  await bench.page.reload();
});
afterAll(async () => {
  head.remove();
  await bench?.tidy();
});

async function look(page: Page, room: string, typed: readonly string[] = []): Promise<void> {
  await unfoldAll(page);
  const given = [bench.runsFolder, bench.folder, head.source.path, noSuchPort, ...typed];
  // One of the two decimal signs to choose from.
  const found = (await englishLeft(page, given)).filter((text) => text !== '78.4 (78.4)');
  if (found.length > 0) left[room] = found;
}

const button = (within: Page | Locator, sentence: string, values = {}) =>
  within.getByRole('button', { name: inGerman(sentence, values), exact: true });
const field = (within: Page | Locator, sentence: string) =>
  within.getByLabel(inGerman(sentence), { exact: true });

async function lookAtDialog(page: Page, room: string, opener: Locator): Promise<Locator> {
  await opener.click();
  const dialog = page.getByRole('dialog');
  await dialog.waitFor();
  await look(page, room);
  return dialog;
}

async function leaveDialog(page: Page): Promise<void> {
  await page.keyboard.press('Escape');
  await page.getByRole('dialog').waitFor({ state: 'detached' });
}

test('before any run: welcome, the four steps, their mistakes, and every dialog beside them are in German', async () => {
  const { page } = bench;
  onTestFailed(() => console.error(bench.app.output(), left));
  await page.getByRole('dialog').waitFor();
  await look(page, 'first cautions');
  await button(page.getByRole('dialog'), 'Go on').click();
  await button(page, 'Start the rehearsal').waitFor();
  await look(page, 'prepare, as it opens');
  for (const sentence of ['Cautions', 'Display and sound', 'Second screen']) {
    await lookAtDialog(page, sentence, button(page, sentence));
    if (sentence === 'Second screen') {
      await button(page, 'Let the class watch').click();
      await page.waitForTimeout(1500);
      await look(page, 'class view');
    }
    await leaveDialog(page);
  }
  await lookAtHelp(page);
  await lookAtMistakes(page);
  await lookAtProbe(page);
  await lookAtPaper(page);
  await lookAtFerment(page);
  expect(left).toEqual({});
  expect(bench.complaints).toEqual([]);
});

async function lookAtHelp(page: Page): Promise<void> {
  const help = await lookAtDialog(page, 'help', button(page, 'Help'));
  const pages = help.getByRole('navigation').getByRole('button');
  for (let each = 0; each < (await pages.count()); each += 1) {
    const name = (await pages.nth(each).textContent()) ?? '';
    await pages.nth(each).click();
    await page.waitForTimeout(300);
    await look(page, `help: ${name}`);
  }
  await help.getByRole('searchbox').fill('xyzzy');
  await look(page, 'help: nothing found');
  await help.getByRole('searchbox').fill('');
  await leaveDialog(page);
}

/** Every field filled with what it can’t be. */
async function lookAtMistakes(page: Page): Promise<void> {
  const choices = [
    'Barometer in this room',
    'Weather report',
    'Steam of boiling water, with this probe',
    'Only the altitude',
  ];
  for (const choice of choices) {
    await page.getByText(inGerman(choice), { exact: true }).first().click();
    for (const wrong of ['1.700', '-5', '']) {
      await unfoldAll(page);
      for (const entry of await page.locator('main input.entry').all()) {
        if (await entry.isVisible()) await entry.fill(wrong);
      }
      await look(page, `mistakes with ${choice}: ${wrong}`, wrong === '' ? [] : [wrong]);
    }
  }
  await page.getByText(inGerman('I don’t know'), { exact: true }).click();
  await look(page, 'pressure not known');
  await page.getByText(inGerman('Only the altitude'), { exact: true }).first().click();
  for (const [sentence, value] of [
    ['Name of the run', 'Birnensaft'],
    ['Volume in the pot', '350'],
    ['Strength', '9'],
    ['Altitude of this room', '540'],
    ['Least strength of the vapour', '80'],
    ['Drip rate you aim for', '1,5'],
    ['Counted once the head holds', '5'],
    ['Time you need to act', '45'],
  ] as const) {
    await field(page, sentence).fill(value);
  }
}

async function lookAtProbe(page: Page): Promise<void> {
  await field(page, 'Or type where the probe is').fill(noSuchPort);
  await button(page, 'Connect').click();
  await page.locator('.field-problem').first().waitFor();
  await look(page, 'no such port');
  await field(page, 'Or type where the probe is').fill(head.source.path);
  await button(page, 'Connect').click();
  await page.getByText(inGerman('Heard clearly')).waitFor();
  await field(page, 'Altitude of this room').fill('540');
  await look(page, 'heard');
  await page.setViewportSize(windowSizes.phone);
  expect(await brokenWords(page)).toEqual([]);
  await page.setViewportSize(windowSizes.projector);
  for (const box of await page.getByRole('checkbox').all()) await box.check();
  await look(page, 'ready to start');
}

async function lookAtPaper(page: Page): Promise<void> {
  for (const sentence of ['Risk checklist on paper …', 'Lesson script …']) {
    await lookAtDialog(page, sentence, button(page, sentence));
    await leaveDialog(page);
  }
}

/** A ferment from its plan to its verdict, with what can’t be entered, and its warmth. */
async function lookAtFerment(page: Page): Promise<void> {
  const plan = await lookAtDialog(page, 'plan', button(page, 'Plan the ferment'));
  for (const source of ['juice', 'sucrose', 'apple']) {
    await plan.getByRole('combobox').selectOption(source);
    await look(page, `plan of ${source}`);
  }
  for (const wrong of ['abc', '']) {
    for (const entry of await plan.getByRole('textbox').all()) await entry.fill(wrong);
    await look(page, `plan, mistakes: ${wrong}`);
  }
  await leaveDialog(page);
  const log = await lookAtDialog(page, 'ferment log', button(page, 'Ferment log'));
  for (const entry of await log.getByRole('textbox').all()) await entry.fill('');
  await button(log, 'Begin the log').click();
  await look(page, 'begin a log, mistakes');
  await field(log, 'Name of the ferment').fill('Birnensaft');
  await field(log, 'Volume of the ferment').fill('1000');
  await field(log, 'The yeast went in').fill(await momentBefore(page, 170));
  await button(log, 'Begin the log').click();
  await log.getByText(inGerman('Nothing was entered yet'), { exact: false }).waitFor();
  await look(page, 'log begun');
  await lookAtCorrection(page, log);
  // By its name: the form of its warmth comes when that is read, and may come before or after.
  const texts = log
    .getByRole('form', { name: inGerman('Enter what you read') })
    .getByRole('textbox');
  for (const entry of await texts.all()) await entry.fill('99');
  await button(log, 'Keep this entry').click();
  await look(page, 'entry, mistakes');
  for (const entry of await texts.all()) await entry.fill('');
  for (const [hoursAgo, gravity] of [
    [168, '1,060'],
    [120, '1,022'],
    [72, '0,997'],
    [24, '0,996'],
    [1, '0,996'],
  ] as const) {
    await field(log, 'When').fill(await momentBefore(page, hoursAgo));
    await field(log, 'Gravity, as the hydrometer shows it').fill(gravity);
    await field(log, 'Temperature in its jar').fill('22');
    await field(log, 'Temperature of the ferment').fill('24');
    await button(log, 'Keep this entry').click();
    await expect
      .poll(() => field(log, 'Gravity, as the hydrometer shows it').inputValue())
      .toBe('');
    await page.waitForTimeout(1500);
    await look(page, `ferment, ${hoursAgo} h ago`);
  }
  await leaveDialog(page);
}

/** What was stated is put right, after a mistake. */
async function lookAtCorrection(page: Page, log: Locator): Promise<void> {
  await button(log, 'Correct what was stated').click();
  await field(log, 'Volume of the ferment').fill('-1');
  await button(log, 'Correct').click();
  await look(page, 'correct the ferment, mistakes');
  await field(log, 'Volume of the ferment').fill('1100');
  await field(log, 'Reason').fill('falsch abgelesen');
  await button(log, 'Correct').click();
  await log.getByText('falsch abgelesen').waitFor();
  await look(page, 'ferment corrected');
}

async function momentBefore(page: Page, hours: number): Promise<string> {
  return page.evaluate((ago) => {
    const date = new Date(Date.now() - ago * 3_600_000);
    return new Date(date.getTime() - date.getTimezoneOffset() * 60_000).toISOString().slice(0, 16);
  }, hours);
}
