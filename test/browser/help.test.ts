import { readFileSync } from 'node:fs';
import { homedir, hostname, userInfo } from 'node:os';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { problemReportSchema } from '../../shared-core/contract/problem-report.ts';
import { axeViolations, smallTargets, tabTo } from './support/check-screen.ts';
import { type JourneyBench, openBench } from './support/journey-bench.ts';
import { takeScreenshots } from './support/open-window.ts';

let bench: JourneyBench;

beforeAll(async () => {
  bench = await openBench();
});
afterAll(() => bench?.tidy());

test('the help opens by its key at the topic of the place, is read and left by keys, and needs no network', async () => {
  const { page } = bench;
  const dialog = page.getByRole('dialog', { name: 'Help' });
  const pageTitle = dialog.getByRole('heading', { level: 3 });
  await page.getByRole('button', { name: 'Start the rehearsal' }).waitFor();

  // While somebody types, a question mark is one.
  await page.getByRole('textbox', { name: 'Volume in the pot' }).press('?');
  expect(await dialog.count()).toBe(0);
  await page.evaluate('document.activeElement.blur()');

  await page.keyboard.press('?');
  await dialog.waitFor();
  expect(await pageTitle.textContent()).toBe('A first run in five steps');
  for (const colorScheme of ['dark', 'light'] as const) {
    await page.emulateMedia({ colorScheme });
    expect([await axeViolations(page), await smallTargets(page)]).toEqual([[], []]);
  }

  await dialog.getByRole('searchbox').fill('uucp');
  await dialog.getByText('One page.').waitFor();
  expect(await pageTitle.textContent()).toBe('When the port does not open');
  await dialog.getByRole('searchbox').fill('');
  await tabTo(page, /^Licences$/);
  await page.keyboard.press('Enter');
  await dialog.getByText('SIL OPEN FONT LICENSE Version 1.1').first().waitFor();
  expect(await axeViolations(page)).toEqual([]);
  await page.keyboard.press('Escape');
  await dialog.waitFor({ state: 'detached' });

  await page.getByRole('link', { name: 'Look back' }).click();
  await page.getByRole('button', { name: 'Help' }).click();
  expect(await pageTitle.textContent()).toBe('Where runs are kept');
  await dialog.getByText(bench.runsFolder).waitFor();
  await page.keyboard.press('Escape');
  await dialog.waitFor({ state: 'detached' });
  expect(await page.evaluate('document.activeElement.textContent')).toBe('Help');
  expect(bench.complaints).toEqual([]);
});

test('a problem report is seen whole before it is saved, is saved as it was seen, and leads to nobody', async () => {
  const { page, runsFolder } = bench;
  await page.getByRole('button', { name: 'Help' }).click();
  const dialog = page.getByRole('dialog', { name: 'Help' });
  await dialog.getByRole('button', { name: 'A problem report' }).click();
  const shown = dialog.locator('pre');
  await shown.getByText('still-head-problem-report').waitFor();
  expect([await axeViolations(page), await smallTargets(page)]).toEqual([[], []]);
  await takeScreenshots(page, 'help-problem-report');
  await dialog.getByLabel('With the names of runs').check();
  await shown.getByText('"runNames"').waitFor();
  await dialog.getByLabel('With the names of runs').uncheck();
  await shown.getByText('"runNames"').waitFor({ state: 'detached' });
  await shown.getByText('still-head-problem-report').waitFor();

  const coming = page.waitForEvent('download');
  await dialog.getByRole('button', { name: 'Save this report' }).click();
  const saved = readFileSync(await (await coming).path(), 'utf8');
  expect(saved).toBe(await shown.textContent());
  expect(problemReportSchema.parse(JSON.parse(saved))).toMatchObject({
    program: { shell: 'loopback' },
    folder: { mayWrite: true, runs: 0 },
    probe: { state: 'none' },
    window: { widthPx: 1280, preferences: { sound: true } },
  });
  const { hash } = new URL(bench.app.url);
  const token = hash.replace('#token=', '');
  const secret = String(await page.evaluate('JSON.stringify(sessionStorage)'));
  const secrets = [runsFolder, token, hostname(), homedir(), userInfo().username];
  expect(token.length).toBeGreaterThan(20);
  expect(secrets.filter((one) => new RegExp(`\\b${one}\\b`, 'i').test(saved))).toEqual([]);
  const kept = [...secret.matchAll(/[\w-]{20,}/g)].map(([one]) => one);
  expect(kept.filter((one) => saved.includes(one))).toEqual([]);
  expect(bench.complaints).toEqual([]);
});
