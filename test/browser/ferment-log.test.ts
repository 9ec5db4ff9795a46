import { appendFileSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { strFromU8, unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, onTestFailed, test } from 'vitest';
import { usualWarmthBand } from '#shared-core';
import { quietMinute, warmthFileText } from '../../scripts/soak/ferment-files.ts';
import {
  type DeviceLanguage,
  deviceLanguages,
  plugInDevice,
} from '../main/probe/support/speaking-device.ts';
import { expectEverySizeRight } from './support/every-size.ts';
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

test('a ferment is planned, its week written down and heard, judged, handed out, charged into the still, distilled and booked: its yield is in window, report and pack', async () => {
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
  await log.getByRole('button', { name: 'Correct what was stated' }).click();
  await log.getByLabel('What went in').fill('1 L of pear juice');
  await log.getByLabel('Reason').fill('forgotten');
  await log.getByRole('button', { name: 'Correct', exact: true }).click();
  await log.getByText(/Corrected .*: forgotten. Until then: Begun/).waitFor();
  for (const [at, read] of week.entries()) await enterGravity(page, at + 1, read);
  hearWeek(runsFolder);
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

  const handedOut = await saved(page, () =>
    log.getByRole('button', { name: 'Export pack' }).click(),
  );
  expect(handedOut('data/runs.csv')).toMatch(/Pear juice,.*,finished,/);
  expect(handedOut('data/days.csv').split('\r\n').length).toBeGreaterThan(6);
  expect(handedOut.names).toEqual(
    expect.arrayContaining([
      'report.pdf',
      'workbook.xlsx',
      expect.stringMatching(/^worksheets\/.*pear-juice-school\.pdf$/),
      expect.stringMatching(/^marking\/.*pear-juice-key\.pdf$/),
      expect.stringMatching(/^figures\/.*-3-sugar\.svg$/),
    ]),
  );

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

  await page.getByRole('button', { name: 'Books' }).click();
  const journey = page.getByRole('table', { name: /^From sugar to distillate/ });
  await journey.getByRole('row', { name: /^Ethanol collected/ }).waitFor();
  await page.getByLabel('Liquid', { exact: true }).selectOption('Cut 1');
  await page.getByLabel('Measured with').selectOption('Alcoholometer');
  const fields = page.locator('.measure-fields').first().getByRole('textbox');
  for (const [index, value] of ['62', '20'].entries()) await fields.nth(index).fill(value);
  await page.getByRole('button', { name: 'Keep measurement' }).click();
  await page.getByText(/From sugar to product: at most/).waitFor();
  const collected = journey.getByRole('row', { name: /^Ethanol collected/ });
  expect(await collected.textContent()).toMatch(/39\.\d+\s±\s.*%/);
  expect(await journey.textContent()).toContain('nine times in ten');
  await page.getByRole('img', { name: /Sugar .*Ethanol collected / }).waitFor();
  await lookAt(page, 'books');
  await page.getByRole('button', { name: 'Back to the run' }).click();
  await page.getByRole('link', { name: 'Look back' }).click();
  const runs = page.getByRole('list', { name: 'Runs, newest first' });
  await runs.getByRole('button', { name: 'More for Pear juice' }).click();
  const run = await saved(page, () =>
    runs.getByRole('button', { name: 'Export pack of Pear juice' }).click(),
  );
  expect(run('data/results.csv')).toMatch(/ethanol in the ferment by its log,\d/);
  expect(run('data/results.csv')).toMatch(/overall yield from sugar,\d/);
  expect(run.names.some((name) => name.endsWith('-7-sugar-to-distillate.svg'))).toBe(true);
  const report = strFromU8(
    unzipSync(run.bytes('report.docx'))['word/document.xml'] ?? new Uint8Array(),
  );
  expect(report).toContain('From sugar to distillate');
  expect(report).toContain('nine times in ten');
  expect(bench.complaints).toEqual([]);
});

/** A download of the window, unpacked. */
async function saved(page: Page, act: () => Promise<void>) {
  const coming = page.waitForEvent('download', { timeout: 180_000 });
  await act();
  const files = unzipSync(readFileSync(await (await coming).path()));
  const bytes = (name: string) => files[name] ?? new Uint8Array();
  return Object.assign((name: string) => strFromU8(bytes(name)), {
    bytes,
    names: Object.keys(files),
  });
}

/** What a probe heard of the week, as the program keeps it. */
function hearWeek(runsFolder: string): void {
  const fermentId =
    readdirSync(runsFolder)
      .map((name) => /^ferment-(.*)\.jsonl$/.exec(name)?.[1])
      .find((id) => id !== undefined) ?? '';
  const nowMs = Math.floor(Date.now() / 60_000) * 60_000;
  const minutes = Array.from({ length: 168 * 60 }, (_, ago) =>
    quietMinute(nowMs - (168 * 60 - ago) * 60_000, 29 + Math.sin(ago / 200)),
  );
  const sinceIso = minutes[0]?.atIso ?? '';
  appendFileSync(
    path.join(runsFolder, `warmth-${fermentId}.jsonl`),
    warmthFileText(
      { band: usualWarmthBand, source: null, sinceIso },
      minutes,
      new Date(nowMs).toISOString(),
    ),
  );
}

/** One moment for the whole week: however long the journey takes, the hours between its readings are the same. */
const writtenMs = Date.now();

async function momentBefore(page: Page, hours: number): Promise<string> {
  return page.evaluate(
    (atMs) => {
      const date = new Date(atMs);
      return new Date(date.getTime() - date.getTimezoneOffset() * 60_000)
        .toISOString()
        .slice(0, 16);
    },
    writtenMs - hours * 3_600_000,
  );
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
  await expectEverySizeRight(page, async (width) => {
    const folder = process.env.FERMENT_PICTURES;
    if (folder === undefined) return;
    for (const [part, share] of [
      ['top', 0],
      ['middle', 0.5],
      ['end', 1],
    ] as const) {
      await page.evaluate((to) => document.querySelector('.dialog')?.scrollTo(0, to * 4000), share);
      await page.screenshot({ path: `${folder}/${name}-${width}-${part}.png` });
    }
  });
}
