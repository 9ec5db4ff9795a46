import { afterAll, beforeAll, expect, onTestFailed, test } from 'vitest';
import { type JourneyBench, openBench } from './support/journey-bench.ts';
import { takeScreenshot } from './support/open-window.ts';
import { connectByPath, startHeatedRun, stopRun } from './support/prepare-run.ts';
import { readRecordedRun } from './support/recorded-run.ts';
import { createSerialPair, type SerialPair } from './support/serial-pair.ts';

let bench: JourneyBench;
let cable: SerialPair;

beforeAll(async () => {
  bench = await openBench();
  cable = await createSerialPair(bench.folder);
});
afterAll(async () => {
  await cable?.unplug();
  await bench?.tidy();
});

/** Sends lines as a slow probe does, two a second. */
async function speak(lines: readonly string[]): Promise<void> {
  for (const line of lines) {
    cable.send(line);
    await new Promise((resolve) => setTimeout(resolve, 500));
  }
}

/** What a line at the wrong speed sounds like: every byte is possible, line ends are rare. */
const noise = Uint8Array.from({ length: 4000 }, (_, index) => (index * 7919 + 131) % 256);

test('nothing that comes down the line crashes the app or is taken for a good reading', async () => {
  const { page, runsFolder } = bench;
  onTestFailed(() => bench.explain());

  await connectByPath(page, '/dev/no-such-probe');
  await page.getByText('/dev/no-such-probe is not there.').first().waitFor();

  await connectByPath(page, cable.path);
  for (let part = 0; part < 20; part += 1) await speakBytes(noise.subarray(part * 200));
  await page
    .getByText(/not understood/)
    .first()
    .waitFor();
  await takeScreenshot(page, 'prepare-noise', 'projector');

  await speak(['\n', ...Array.from({ length: 10 }, () => 'head,21.50\n')]);
  await page.getByText('Heard clearly').waitFor();
  // The probe goes on speaking while the looks are confirmed, however long that takes: one that is silent starts no run.
  const talking = setInterval(() => cable.send('head,21.50\n'), 500);
  await startHeatedRun(page).finally(() => clearInterval(talking));
  await speak([
    'head,85.0\r\n',
    'head,-127.00\r\n',
    'head,NaN\r\n',
    'head,1e9\r\n',
    'head,\r\n',
    'head,21.',
    '56\r\nhead,',
    '21.62\r\n',
    'lorem ipsum\r\n',
  ]);
  // Kept and shown, hollow and by name, but never taken for the head.
  await page.locator('.doubtful-name').waitFor();
  await takeScreenshot(page, 'watch-not-believed', 'projector');
  for (let part = 0; part < 1024; part += 1) cable.send('x'.repeat(1024));
  await speak(['\n', ...Array.from({ length: 6 }, () => 'T=21.75\n')]);
  await page
    .locator('.head-value')
    .filter({ hasText: '21.7' })
    .or(page.locator('.head-value').filter({ hasText: '21.8' }))
    .first()
    .waitFor();
  await takeScreenshot(page, 'watch-after-bad-input', 'projector');
  await page.keyboard.press('o');
  await stopRun(page);

  const run = readRecordedRun(runsFolder);
  const good = run.inputs.flatMap((input) =>
    input.kind === 'reading' && input.channel === 'head' && input.quality === 'good'
      ? [input.value]
      : [],
  );
  expect({ values: [...new Set(good)].sort(), damaged: run.damaged }).toEqual({
    values: expect.arrayContaining([21.56, 21.62, 21.75]),
    damaged: 0,
  });
  expect(good.filter((value) => value < 21 || value > 22)).toEqual([]);
  expect(bench.complaints).toEqual([]);
});

async function speakBytes(bytes: Uint8Array): Promise<void> {
  cable.send(bytes.subarray(0, 200));
  await new Promise((resolve) => setTimeout(resolve, 100));
}
