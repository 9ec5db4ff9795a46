import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, onTestFailed, test } from 'vitest';
import {
  type DeviceLanguage,
  deviceLanguages,
  plugInDevice,
} from '../main/probe/support/speaking-device.ts';
import { englishLeft, inGerman, unfoldAll } from './support/english-left.ts';
import { type JourneyBench, openBench } from './support/journey-bench.ts';

let bench: JourneyBench;
const head = plugInDevice(
  deviceLanguages.find(({ name }) => name === 'plain number') as DeviceLanguage,
);
/** What is left in English, by the room it stands in. */
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

async function look(page: Page, room: string): Promise<void> {
  await unfoldAll(page);
  const found = await englishLeft(page, [
    bench.runsFolder,
    bench.folder,
    head.source.path,
    'lorem ipsum',
  ]);
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
  onTestFailed(() => bench.explain());
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
  await leaveDialog(page);
}

/** Every field filled with what it can't be. */
async function lookAtMistakes(page: Page): Promise<void> {
  for (const wrong of ['1.700', '-5', 'abc', '99999999', '']) {
    await unfoldAll(page);
    for (const choice of ['Barometer in this room', 'Weather report', 'Only the altitude']) {
      await page.getByText(inGerman(choice), { exact: true }).first().click();
      for (const entry of await page.locator('main input.entry, main input[type=text]').all()) {
        if (!(await entry.isVisible())) continue;
        await entry.fill(wrong);
      }
      await look(page, `mistakes: ${wrong}, ${choice}`);
    }
  }
}

async function lookAtProbe(page: Page): Promise<void> {
  await field(page, 'Or type where the probe is').fill('/dev/no-such-probe');
  await button(page, 'Connect').click();
  await page.locator('.field-problem').first().waitFor();
  await look(page, 'no such port');
  await field(page, 'Or type where the probe is').fill(head.source.path);
  await button(page, 'Connect').click();
  await page.getByText(inGerman('Heard clearly')).waitFor();
  await field(page, 'Altitude of this room').fill('540');
  await look(page, 'heard');
  for (const box of await page.getByRole('checkbox').all()) await box.check();
  await look(page, 'ready to start');
}

async function lookAtPaper(page: Page): Promise<void> {
  for (const sentence of [
    'Risk checklist on paper …',
    'Lesson script …',
    'Plan the ferment',
    'Ferment log',
  ]) {
    await lookAtDialog(page, sentence, button(page, sentence));
    await leaveDialog(page);
  }
}
