import { appendFileSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import type { Page } from 'playwright-core';
import { expect, onTestFinished, test } from 'vitest';
import { latin1Bytes } from '#shared-core';
import { fermentFileText, quietMinute, warmthFileText } from '../../scripts/soak/ferment-files.ts';
import { startApp } from '../../scripts/testing/start-app.ts';
import { plugInDevice } from '../main/probe/support/speaking-device.ts';
import { expectEverySizeRight } from './support/every-size.ts';
import { openWindow } from './support/open-window.ts';

const minuteMs = 60_000;
const hourMs = 60 * minuteMs;
const daysAgo = 6;
const fermentId = 'pear-juice';
const band = { lowC: 25, aimC: 30, highC: 34 };

/** A week’s warmth as the program keeps it: a warmer that swings a little, one cold night, and cold again for the last hour. */
function temperatureC(hoursSince: number): number {
  const swing = 30 + 0.8 * Math.sin(hoursSince * 2.1);
  if (hoursSince > 40 && hoursSince < 47) return 30 - 1.4 * Math.min(4, hoursSince - 40);
  return hoursSince > 24 * daysAgo - 1 ? 23.5 : swing;
}

function writeWeek(runsFolder: string, nowMs: number, devicePath: string): void {
  mkdirSync(runsFolder, { recursive: true });
  const beganMs = Math.floor(nowMs / minuteMs) * minuteMs - daysAgo * 24 * hourMs;
  const beganAtIso = new Date(beganMs).toISOString();
  const stated = {
    name: 'Pear juice',
    beganAtIso,
    volumeMl: 1000,
    sugarG: { low: 100, high: 122 },
    wentIn: '1 L of pear juice',
  };
  appendFileSync(
    path.join(runsFolder, `ferment-${fermentId}.jsonl`),
    fermentFileText({ fermentId, stated, entries: [] }, beganAtIso),
  );
  const source = device.source.path === devicePath ? device.source : null;
  const minutes: ReturnType<typeof quietMinute>[] = [];
  for (let atMs = beganMs; atMs < nowMs - 2 * minuteMs; atMs += minuteMs) {
    const hours = (atMs - beganMs) / hourMs;
    // For an hour of the third day nobody had plugged the probe in again.
    if (hours > 60 && hours < 61) continue;
    minutes.push(quietMinute(atMs, Math.round(1000 * temperatureC(hours)) / 1000));
  }
  appendFileSync(
    path.join(runsFolder, `warmth-${fermentId}.jsonl`),
    warmthFileText({ band, source, sinceIso: beganAtIso }, minutes),
  );
}

const device = plugInDevice({
  name: 'ferment and room',
  source: { language: 'json-lines' },
  encode: (headC) => latin1Bytes(`{"ferment":${headC},"room":19.5}\n`),
});

test('after a restart the watch over a ferment goes on by itself, its probe is heard again, and what is wrong stands in every place', async () => {
  const folder = mkdtempSync(path.join(tmpdir(), 'journey-'));
  const runsFolder = path.join(folder, 'runs');
  device.state.headC = 23.375;
  writeWeek(runsFolder, Date.now(), device.source.path);
  const app = await startApp(runsFolder);
  const { page, complaints, close } = await openWindow(app.url);
  onTestFinished(async () => {
    await close();
    await app.stop();
    device.remove();
    rmSync(folder, { recursive: true, force: true });
  });
  const note = page.getByRole('alert').filter({ hasText: 'Ferment too cold: Pear juice' });
  await note.waitFor();
  await note.getByText('See whether the warmer is on').waitFor();
  await page.getByText('Heard clearly').waitFor();
  await lookAt(page, 'note');
  await note.getByRole('button', { name: 'Seen' }).click();
  await note.waitFor({ state: 'detached' });

  await page.getByRole('button', { name: 'Ferment log' }).click();
  const log = page.getByRole('dialog', { name: 'Ferment log' });
  await log.getByText('By the channel “ferment”, set-point').waitFor();
  // Nothing was entered by hand: the probe alone tells of the week.
  await log
    .getByText(/below the band, coldest at/)
    .first()
    .waitFor();
  await lookAt(page, 'log');

  const coming = page.waitForEvent('download');
  await log.getByRole('button', { name: 'Save it as a table (CSV)' }).click();
  const table = readFileSync(await (await coming).path(), 'utf8').split('\r\n');
  expect(table[0]).toBe('time_h,gravity,mass_g,temperature_C,bubbles_per_min,degassed');
  // Every ten minutes of six days, but for the hour in which nobody listened.
  expect(table.length).toBeGreaterThan(850);

  // A minute heard now is on the disk when the next begins.
  await expect
    .poll(
      () =>
        readFileSync(path.join(runsFolder, warmthFile(runsFolder)), 'utf8')
          .split('\n')
          .at(-2),
      { timeout: 180_000, interval: 1000 },
    )
    .toMatch(/"meanC":23\.375/);

  await log.getByRole('button', { name: 'Change band or channel' }).click();
  await log.getByLabel('Set-point of the warmer').fill('20');
  await log.getByRole('button', { name: 'Keep watch' }).click();
  await log.getByText('The set-point lies between the two ends, please.').waitFor();
  await log.getByLabel('Call me below').fill('18');
  await log.getByRole('button', { name: 'Keep watch' }).click();
  await log.getByText(/called below 18\.0/).waitFor();
  await log.getByRole('button', { name: 'End the watch' }).click();
  await log.getByLabel('Which one hangs in the ferment?').waitFor();
  expect(complaints).toEqual([]);
});

function warmthFile(runsFolder: string): string {
  return readdirSync(runsFolder).find((name) => name.startsWith('warmth-')) ?? '';
}

async function lookAt(page: Page, name: string): Promise<void> {
  await expectEverySizeRight(page, async (width) => {
    const folder = process.env.FERMENT_PICTURES;
    if (folder !== undefined) await page.screenshot({ path: `${folder}/${name}-${width}.png` });
  });
}
