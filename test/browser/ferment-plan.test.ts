import process from 'node:process';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { axeViolations, smallTargets } from './support/check-screen.ts';
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
    if (folder) await page.screenshot({ path: `${folder}/plan-${width}.png` });
  }
  await page.keyboard.press('Escape');
  await dialog.waitFor({ state: 'detached' });
});
