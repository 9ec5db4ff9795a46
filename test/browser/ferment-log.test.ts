import process from 'node:process';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, onTestFailed, test } from 'vitest';
import {
  type DeviceLanguage,
  deviceLanguages,
  plugInDevice,
} from '../main/probe/support/speaking-device.ts';
import { axeViolations, smallTargets } from './support/check-screen.ts';
import { type JourneyBench, openBench } from './support/journey-bench.ts';
import { connectByPath, startHeatedRun, stopRun } from './support/prepare-run.ts';
import { readRecordedRun } from './support/recorded-run.ts';

let bench: JourneyBench;
const plain = deviceLanguages.find(({ name }) => name === 'plain number') as DeviceLanguage;
const head = plugInDevice(plain);

beforeAll(async () => {
  bench = await openBench();
});
afterAll(async () => {
  head.remove();
  await bench?.tidy();
});

/** A pear-juice week: hours ago, and what the hydrometer showed at 22 °C. */
const week: readonly (readonly [number, string])[] = [
  [168, '1.060'],
  [144, '1.045'],
  [120, '1.022'],
  [96, '1.003'],
  [72, '0.997'],
  [48, '0.996'],
  [24, '0.996'],
  [1, '0.996'],
];

test('a ferment is planned, its week written down, judged, charged into the still and found again in the run’s header', async () => {
  const { page, runsFolder } = bench;
  onTestFailed(() => bench.explain());
  await page.getByRole('button', { name: 'Plan the ferment' }).click();
  const plan = page.getByRole('dialog', { name: 'Plan the ferment' });
  await plan.getByRole('textbox', { name: 'Gravity of the juice' }).fill('1.060');
  await plan.getByRole('button', { name: 'Begin its log' }).click();
  const log = page.getByRole('dialog', { name: 'Ferment log' });
  await log.getByLabel('Name of the ferment').fill('Pear juice');
  await log.getByLabel('The yeast went in').fill(await momentBefore(page, 170));
  await log.getByRole('button', { name: 'Begin the log' }).click();
  await log.getByText('Nothing was entered yet').waitFor();
  for (const [at, read] of week.entries()) await enterGravity(page, at + 1, read);
  // Misread, and withdrawn: it stays in the file and is counted no more.
  await enterGravity(page, 9, [2, '1.030']);
  await log.getByText('9 entries').click();
  await log
    .getByRole('button', { name: /^Withdraw/ })
    .nth(1)
    .click();
  await log.getByText('8 entries, 1 withdrawn').waitFor();
  await log.getByLabel('When').fill(await momentBefore(page, -30));
  await log.getByLabel('Note').fill('from tomorrow');
  await log.getByRole('button', { name: 'Keep this entry' }).click();
  await log.getByText('ahead of the computer').waitFor();
  await log.getByLabel('When').fill(await momentBefore(page, 0));
  await log.getByLabel('Note').fill('clear, over its sediment');
  for (const treatment of ['Degassed', 'Settled', 'Strained']) {
    await log.getByRole('checkbox', { name: new RegExp(treatment) }).check();
  }
  await log.getByRole('button', { name: 'Keep this entry' }).click();
  await log.getByText('By its log, yes').waitFor();
  const said = log.getByRole('status', { name: 'What the log says' });
  expect(await said.textContent()).toContain('Finished. It has been steady');
  expect(await log.getByRole('img').getAttribute('aria-label')).toContain('Gravity: 8 readings');
  await lookAt(page, 'log');

  await log.getByRole('button', { name: 'Charge the still with it' }).click();
  await page.getByText('From the ferment “Pear juice”').waitFor();
  expect(await page.getByLabel('Volume in the pot').inputValue()).toBe('1000');
  await connectByPath(page, head.source.path);
  await page.getByText('Heard clearly').waitFor();
  await startHeatedRun(page);
  await page.getByRole('button', { name: 'Receiver changed' }).click();
  await page.getByLabel(/Volume in the receiver/).fill('80');
  await page.getByRole('button', { name: 'Mark the change' }).click();
  await stopRun(page);
  const { settings } = readRecordedRun(runsFolder).header;
  expect(settings).toMatchObject({
    charge: { volumeMl: 1000 },
    ferment: { name: 'Pear juice', state: 'finished', entries: 9 },
  });
  expect(settings.charge.strengthAbv).toBeGreaterThan(7.5);
  expect(settings.charge.strengthAbv).toBeLessThan(9.5);
  expect(settings.charge.standardUncertaintyAbv).toBeLessThan(0.5);
  expect(bench.complaints).toEqual([]);
});

async function momentBefore(page: Page, hours: number): Promise<string> {
  return page.evaluate((ago) => {
    const date = new Date(Date.now() - ago * 3_600_000);
    return new Date(date.getTime() - date.getTimezoneOffset() * 60_000).toISOString().slice(0, 16);
  }, hours);
}

async function enterGravity(
  page: Page,
  count: number,
  [hoursAgo, gravity]: readonly [number, string],
): Promise<void> {
  const log = page.getByRole('dialog', { name: 'Ferment log' });
  await log.getByLabel('When').fill(await momentBefore(page, hoursAgo));
  await log.getByLabel('Gravity, as the hydrometer shows it').fill(gravity);
  await log.getByLabel('Temperature in its jar').fill('22');
  await log.getByLabel('Temperature of the ferment').fill('24');
  await log.getByRole('button', { name: 'Keep this entry' }).click();
  await log.getByText(count === 1 ? '1 entry' : `${count} entries`).waitFor();
}

async function lookAt(page: Page, name: string): Promise<void> {
  for (const [width, height] of [
    [1280, 720],
    [1920, 1080],
    [390, 844],
  ] as const) {
    await page.setViewportSize({ width, height });
    expect([await axeViolations(page), await smallTargets(page)]).toEqual([[], []]);
    const hidden = await page.evaluate(
      'document.documentElement.scrollWidth - document.documentElement.clientWidth',
    );
    expect(hidden).toBeLessThanOrEqual(0);
    const folder = process.env.FERMENT_PICTURES;
    if (folder === undefined) continue;
    for (const [part, share] of [
      ['top', 0],
      ['middle', 0.5],
      ['end', 1],
    ] as const) {
      await page.evaluate((to) => document.querySelector('.dialog')?.scrollTo(0, to * 4000), share);
      await page.screenshot({ path: `${folder}/${name}-${width}-${part}.png` });
    }
  }
  await page.setViewportSize({ width: 1280, height: 720 });
}
