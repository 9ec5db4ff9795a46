import process from 'node:process';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { expectEverySizeRight } from './support/every-size.ts';
import { type JourneyBench, openBench } from './support/journey-bench.ts';

let bench: JourneyBench;

beforeAll(async () => {
  bench = await openBench();
});
afterAll(() => bench?.tidy());

test('a ferment is planned from Prepare: what it gives, what to weigh, what to beware of, in every size of window', async () => {
  const { page } = bench;
  await page.getByRole('button', { name: 'Plan the ferment' }).click();
  const dialog = page.getByRole('dialog', { name: 'Plan the ferment' });
  await dialog.getByRole('combobox').selectOption('apple');
  await dialog.getByRole('textbox', { name: 'Mass of it' }).fill('1000');
  const plan = dialog.getByRole('status');
  expect(await plan.textContent()).toContain('measure its gravity');
  await dialog.getByRole('combobox').selectOption('sucrose');
  await dialog.getByRole('textbox', { name: 'Mass of it' }).fill('170');
  expect(await plan.textContent()).toContain('In practice');
  expect(await dialog.textContent()).toContain('Never seal a vessel that ferments.');
  await expectEverySizeRight(page, async (width) => {
    const folder = process.env.FERMENT_PICTURES;
    if (folder) await page.screenshot({ path: `${folder}/plan-${width}.png` });
  });
  await page.keyboard.press('Escape');
  await dialog.waitFor({ state: 'detached' });
});
