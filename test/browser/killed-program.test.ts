import { afterAll, beforeAll, expect, onTestFailed, test } from 'vitest';
import { startVirtualProbe, systemClock } from '#main';
import { type RunningApp, startApp } from '../../scripts/testing/start-app.ts';
import { expectSoundScreen } from './support/check-screen.ts';
import { type JourneyBench, openBench } from './support/journey-bench.ts';
import { type OpenWindow, openWindow, takeScreenshots } from './support/open-window.ts';
import { connectByPath, startHeatedRun, stopRun } from './support/prepare-run.ts';
import { readRecordedRun, replayRun, runIds } from './support/recorded-run.ts';
import { createSerialPair, type SerialPair } from './support/serial-pair.ts';

let bench: JourneyBench;
let cable: SerialPair;
let stopProbe = () => {};
let app: RunningApp | null = null;
let again: OpenWindow | null = null;

beforeAll(async () => {
  bench = await openBench();
  cable = await createSerialPair(bench.folder);
  const probe = startVirtualProbe({
    rig: 'glass-bead-column',
    seed: 3,
    timeScale: 1,
    heated: true,
    clock: systemClock,
    send: (bytes) => cable.send(bytes),
  });
  stopProbe = probe.stop;
});
afterAll(async () => {
  stopProbe();
  await again?.close();
  await app?.stop();
  await cable?.unplug();
  await bench?.tidy();
});

test('a program that was killed in mid-run offers to go on: one press, and plot and marks are there', async () => {
  const { runsFolder } = bench;
  onTestFailed(async () => {
    await bench.explain();
    console.error(
      app?.output(),
      again?.complaints,
      await again?.page.locator('body').textContent(),
    );
  });
  await connectByPath(bench.page, cable.path);
  await bench.page.getByText('Heard clearly').waitFor();
  await startHeatedRun(bench.page);
  await bench.page.waitForTimeout(8000);
  await bench.app.kill();

  app = await startApp(runsFolder);
  again = await openWindow(app.url);
  const { page } = again;
  const goOn = page.getByRole('button', { name: 'Go on with the run' });
  await goOn.waitFor();
  await expectSoundScreen(page, 'prepare-run-broke-off');
  await goOn.click();

  await page
    .getByText(/Warming up/)
    .first()
    .waitFor();
  await page.getByText(/The program was closed from/).waitFor();
  await page.locator('button[aria-pressed=true]').filter({ hasText: 'Heat on' }).waitFor();
  await page.waitForTimeout(5000);
  expect(await goOn.count()).toBe(0);
  await takeScreenshots(page, 'watch-goes-on');
  await page.keyboard.press('o');
  await stopRun(page);

  expect(runIds(runsFolder)).toHaveLength(1);
  const run = readRecordedRun(runsFolder);
  const links = run.inputs.filter((input) => input.kind === 'link');
  expect(links).toMatchObject([
    { state: 'lost', reason: 'program-closed' },
    { state: 'back', reason: 'program-closed' },
  ]);
  const [lostAt = 0, backAt = 0] = links.map(({ timeS }) => timeS);
  const headTimesS = run.inputs.flatMap((input) =>
    input.kind === 'reading' && input.channel === 'head' ? [input.timeS] : [],
  );
  expect({
    before: headTimesS.some((timeS) => timeS < lostAt),
    inTheGap: headTimesS.filter((timeS) => timeS > lostAt && timeS < backAt),
    after: headTimesS.some((timeS) => timeS >= backAt),
    marks: run.inputs.flatMap((input) => (input.kind === 'mark' ? [input.mark.type] : [])),
    damaged: run.damaged,
    complaints: again.complaints,
  }).toEqual({
    before: true,
    inTheGap: [],
    after: true,
    marks: ['heat-on', 'heat-off'],
    damaged: 0,
    complaints: [],
  });
  const concluded = JSON.stringify(replayRun(run, 0.25).changes);
  expect(JSON.stringify(run.changes)).toBe(concluded);
});
