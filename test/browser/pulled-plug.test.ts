import { afterAll, beforeAll, expect, onTestFailed, test } from 'vitest';
import { startVirtualProbe, systemClock } from '#main';
import { type JourneyBench, openBench } from './support/journey-bench.ts';
import { takeScreenshot } from './support/open-window.ts';
import { connectByPath, startHeatedRun, stopRun } from './support/prepare-run.ts';
import { readRecordedRun } from './support/recorded-run.ts';
import { createSerialPair, type SerialPair } from './support/serial-pair.ts';

let bench: JourneyBench;
let cable: SerialPair;
let stopProbe = () => {};

beforeAll(async () => {
  bench = await openBench();
  cable = await createSerialPair(bench.folder);
  const probe = startVirtualProbe({
    rig: 'glass-bead-column',
    seed: 2,
    timeScale: 1,
    heated: true,
    clock: systemClock,
    send: (bytes) => cable.send(bytes),
  });
  stopProbe = probe.stop;
});
afterAll(async () => {
  stopProbe();
  await cable?.unplug();
  await bench?.tidy();
});

test('the plug is pulled in mid-run and comes back: the run goes on and the gap is in the record', async () => {
  const { page, runsFolder } = bench;
  onTestFailed(() => bench.explain());
  await connectByPath(page, cable.path);
  await page.getByText('Heard clearly').waitFor();
  await takeScreenshot(page, 'prepare-probe-heard', 'projector');
  await startHeatedRun(page);
  await page
    .getByText(/Warming up/)
    .first()
    .waitFor();
  await page.waitForTimeout(5000);

  await cable.unplug();
  const prompts = page.getByRole('region', { name: 'Prompts' });
  const lost = prompts.getByRole('alert').filter({ hasText: 'Read the glass thermometer' });
  await lost.waitFor();
  await takeScreenshot(page, 'watch-plug-pulled', 'projector');
  await lost.getByRole('button', { name: 'Acknowledge' }).click();
  await lost.waitFor({ state: 'detached' });

  await cable.plugIn();
  await prompts.getByText('Read the glass thermometer').waitFor({ state: 'detached' });
  await page
    .getByText(/Warming up/)
    .first()
    .waitFor();
  await page.waitForTimeout(3000);
  await takeScreenshot(page, 'watch-plug-back', 'projector');
  await page.keyboard.press('o');
  await stopRun(page);

  const run = readRecordedRun(runsFolder);
  const links = run.inputs.filter((input) => input.kind === 'link');
  expect(links).toMatchObject([
    { state: 'lost', reason: 'unplugged' },
    { state: 'back', reason: 'unplugged' },
  ]);
  const [lostAt, backAt] = links.map(({ timeS }) => timeS);
  const headTimesS = run.inputs.flatMap((input) =>
    input.kind === 'reading' && input.channel === 'head' ? [input.timeS] : [],
  );
  expect({
    before: headTimesS.some((timeS) => timeS < (lostAt ?? 0)),
    inTheGap: headTimesS.filter((timeS) => timeS > (lostAt ?? 0) && timeS < (backAt ?? 0)),
    after: headTimesS.some((timeS) => timeS >= (backAt ?? 0)),
    damaged: run.damaged,
    complaints: bench.complaints,
  }).toEqual({ before: true, inTheGap: [], after: true, damaged: 0, complaints: [] });
});
