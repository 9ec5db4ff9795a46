import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, onTestFailed, test } from 'vitest';
import { latin1Bytes } from '#shared-core';
import {
  type DeviceLanguage,
  deviceLanguages,
  plugInDevice,
} from '../main/probe/support/speaking-device.ts';
import { type JourneyBench, openBench } from './support/journey-bench.ts';
import { takeScreenshot, takeScreenshots, windowSizes } from './support/open-window.ts';
import { connectByPath, startHeatedRun, stopRun } from './support/prepare-run.ts';
import { readRecordedRun } from './support/recorded-run.ts';

/** A bench balance as they come: the mass with its unit, nothing more. */
const balanceLanguage: DeviceLanguage = {
  name: 'balance',
  source: {},
  encode: () => latin1Bytes('   85.20 g\r\n'),
};
const languageNamed = (wanted: string) =>
  deviceLanguages.find(({ name }) => name === wanted) as DeviceLanguage;

let bench: JourneyBench;
const head = plugInDevice(languageNamed('plain number'));
const balance = plugInDevice(balanceLanguage);
const pot = plugInDevice(languageNamed('Modbus RTU'));
pot.state.headC = 92.3;

beforeAll(async () => {
  bench = await openBench();
});
afterAll(async () => {
  for (const device of [head, balance, pot]) device.remove();
  await bench?.tidy();
});

test('a head probe, a balance and a Modbus probe in the pot are read side by side and recorded', async () => {
  const { page, runsFolder } = bench;
  onTestFailed(() => bench.explain());
  await connectByPath(page, head.source.path);
  await page.getByText('Heard clearly').waitFor();

  await listenToo(page, balance.source.path, 'the receiver, by a balance');
  await heardReading(page, 'receiver', '85.20 g').waitFor();

  await listenToo(page, pot.source.path, 'the pot');
  const form = page.locator('details').filter({ hasText: `How ${pot.source.path} speaks` });
  await form.locator('summary').click();
  await form.getByLabel('Language').selectOption({ label: 'Modbus RTU' });
  await form.getByLabel('Its address on the bus').fill('0');
  await form
    .getByRole('group', { name: 'Register 1' })
    .getByLabel('It measures')
    .selectOption('pot');
  await form.getByRole('button', { name: 'Use these settings' }).click();
  await form.getByText('A whole number from 1 to 247.').waitFor();
  await takeScreenshots(page, 'prepare-several-probes');
  await form.getByLabel('Its address on the bus').fill('1');
  await form.getByRole('button', { name: 'Use these settings' }).click();
  await heardReading(page, 'pot', '92.30 °C').waitFor();
  await page.getByText('Heard clearly').waitFor();
  await heardReading(page, 'head', '78.40 °C').waitFor();

  await startHeatedRun(page);
  await page.waitForTimeout(4000);
  balance.state.mood = 'mute';
  const silent = page.getByRole('status').filter({ hasText: /receiver/ });
  await silent.waitFor();
  await page.setViewportSize(windowSizes.phone);
  await takeScreenshot(page, 'watch-silent-channel', 'phone');
  // Nobody scrolls while the still runs: it stands in the first screenful.
  const { y = Number.NaN, height = 0 } = (await silent.boundingBox()) ?? {};
  expect(y + height).toBeLessThanOrEqual(windowSizes.phone.height);
  await page.setViewportSize(windowSizes.projector);
  await stopRun(page);
  const run = readRecordedRun(runsFolder);
  const recorded = new Set(
    run.inputs.flatMap((input) =>
      input.kind === 'reading' ? [`${input.channel} ${input.value.toFixed(1)} ${input.unit}`] : [],
    ),
  );
  expect({ damaged: run.damaged, recorded }).toEqual({
    damaged: 0,
    recorded: new Set(['head 78.4 °C', 'receiver 85.2 g', 'pot 92.3 °C']),
  });
  expect(bench.complaints).toEqual([]);
});

async function listenToo(page: Page, path: string, role: string): Promise<void> {
  const another = page.locator('details').filter({ hasText: 'Another probe beside it' });
  if (!(await another.getByLabel('Where it is').isVisible())) {
    await another.locator('summary').click();
  }
  await another.getByLabel('It measures').selectOption({ label: role });
  await another.getByLabel('Where it is').fill(path);
  await another.getByRole('button', { name: 'Listen to it too' }).click();
}

function heardReading(page: Page, channel: string, value: string) {
  return page
    .locator('.heard-readings li')
    .filter({ hasText: channel })
    .filter({ hasText: value.replace(' ', ' ') })
    .or(page.locator('.heard-readings li').filter({ hasText: `${channel} ${value}` }))
    .first();
}
