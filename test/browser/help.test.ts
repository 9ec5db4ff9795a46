import { afterAll, beforeAll, expect, test } from 'vitest';
import { axeViolations, smallTargets, tabTo } from './support/check-screen.ts';
import { type JourneyBench, openBench } from './support/journey-bench.ts';

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
