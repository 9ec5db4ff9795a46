import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, onTestFailed, test } from 'vitest';
import { type RunSettings, stageLabels, type Verdicts } from '#shared-core';
import { runCommand } from '../../scripts/testing/run-command.ts';
import { projectRoot } from '../../scripts/testing/step.ts';
import { verdictsSchema } from '../../shared-core/snapshot/verdicts.ts';
import { unfoldMore } from './support/check-screen.ts';
import { type JourneyBench, openBench } from './support/journey-bench.ts';
import { takeScreenshot, takeScreenshots } from './support/open-window.ts';
import { runIsSaved, startRehearsal } from './support/prepare-run.ts';
import { type RecordedRun, readRecordedRun, replayRun } from './support/recorded-run.ts';

let bench: JourneyBench;

beforeAll(async () => {
  bench = await openBench();
});
afterAll(() => bench?.tidy());

test('a whole distillation: rehearse, heat-off prompt, acknowledge, stop, replay, export, analyse', async () => {
  const { page, runsFolder } = bench;
  onTestFailed(() => bench.explain());
  await startFastRehearsal(page);
  await answerUntilHeatOff(page);
  await bookReceiverAndNote(page);
  await stopRecording(page);

  const run = readRecordedRun(runsFolder);
  expect(run).toMatchObject({ damaged: 0, header: { timeScale: 120, rehearsal: true } });
  const { stages } = expectSameBytesAtAnySpeed(run);
  expect(stages.map(({ stage }) => stage)).toEqual(
    expect.arrayContaining(['warm-up', 'first-fraction', 'main-fraction', 'cool-down']),
  );

  await page.getByRole('button', { name: 'Look back' }).click();
  await page.getByRole('list', { name: 'Runs, newest first' }).waitFor();
  await takeScreenshots(page, 'library');
  const exported = await exportCsv(page);
  await expectReplayShows(page, stages);
  expect(await analysedStages(exported, run.header.settings)).toEqual(stages);
  expect(bench.complaints).toEqual([]);
});

async function startFastRehearsal(page: Page): Promise<void> {
  await page.getByText('120 times faster').click();
  await takeScreenshots(page, 'prepare');
  await startRehearsal(page);
  await page.getByText(/Saved to/).waitFor();
}

/** Does what the prompts ask, as a person at the bench would, up to the one that ends the run. */
async function answerUntilHeatOff(page: Page): Promise<void> {
  const prompts = page.getByRole('region', { name: 'Prompts' });
  const heatOff = prompts.getByRole('alert').filter({ hasText: 'change the receiver' });
  const attention = prompts.getByRole('button', { name: 'I am at the still' });
  const stage = page.locator('.findings').getByText(stageLabels['main-fraction']);
  await attention.or(stage).first().waitFor({ timeout: 60_000 });
  await takeScreenshot(page, 'watch-main-fraction', 'projector');
  const giveUpMs = Date.now() + 150_000;
  while (!(await heatOff.isVisible())) {
    if (Date.now() > giveUpMs) throw new Error('No heat-off prompt came.');
    if (await attention.isVisible()) await page.keyboard.press('a');
    await page.waitForTimeout(250);
  }
  await takeScreenshot(page, 'watch-heat-off', 'projector');
  await heatOff.getByRole('button', { name: 'Acknowledge' }).click();
  await heatOff.waitFor({ state: 'detached' });
  await page.keyboard.press('o');
  await page.locator('button[aria-pressed=true]').filter({ hasText: 'off' }).waitFor();
}

async function bookReceiverAndNote(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Receiver changed' }).click();
  await page.getByLabel(/Volume in the receiver/).fill('31');
  await page.getByRole('button', { name: 'Mark the change' }).click();
  await page.keyboard.press('n');
  await page.getByLabel('What did you see or do?').fill('The class guessed 40 mL.');
  await page.getByRole('button', { name: 'Keep note' }).click();
  await page.getByRole('button', { name: /Undo “/ }).waitFor();
}

async function stopRecording(page: Page): Promise<void> {
  const coolDown = page.locator('.findings').getByText(stageLabels['cool-down'], { exact: true });
  await coolDown.waitFor({ timeout: 60_000 });
  await takeScreenshot(page, 'watch-cool-down', 'projector');
  await page.getByRole('button', { name: /^Stop/ }).click();
  await page.getByRole('button', { name: 'Stop recording', exact: true }).click();
  await runIsSaved(page);
  await takeScreenshots(page, 'watch-ended');
}

function expectSameBytesAtAnySpeed(run: RecordedRun): Verdicts {
  const recorded = JSON.stringify(run.changes);
  const raised = run.changes.flatMap((change) =>
    change.kind === 'alarm-changed' ? [change.record.alarm] : [],
  );
  expect(raised).toContain('plateau-departure');
  const replayed = [1 / 60, 4, 3600].map((stepS) => replayRun(run, stepS));
  for (const { changes } of replayed) expect(JSON.stringify(changes)).toBe(recorded);
  const verdicts = new Set(replayed.map((replay) => JSON.stringify(replay.verdicts)));
  expect(verdicts.size).toBe(1);
  return verdictsSchema.parse(JSON.parse([...verdicts][0] ?? ''));
}

async function exportCsv(page: Page): Promise<string> {
  const arriving = page.waitForEvent('download');
  await unfoldMore(page, /^More for /);
  await page.getByRole('button', { name: /^Export CSV of / }).click();
  const download = await arriving;
  const file = path.join(bench.folder, download.suggestedFilename());
  await download.saveAs(file);
  expect(readFileSync(file, 'utf8').length).toBeGreaterThan(10_000);
  return file;
}

/** The window replays through the same monitor: its list of moments must be that of the record. */
async function expectReplayShows(page: Page, stages: Verdicts['stages']): Promise<void> {
  await page.getByRole('button', { name: /^Replay / }).click();
  await page.getByRole('region', { name: 'Replay' }).waitFor({ timeout: 60_000 });
  const moments = page.getByRole('region', { name: 'Jump to' }).getByRole('listitem');
  const shown = (await moments.allInnerTexts()).map((text) => text.split(/\s*\n\s*/));
  for (const { stage, fromS } of stages) {
    expect(shown).toContainEqual(expect.arrayContaining([clock(fromS), stageLabels[stage]]));
  }
  await moments.filter({ hasText: 'change the receiver' }).getByRole('button').click();
  const prompts = page.getByRole('region', { name: 'Prompts' });
  const prompt = prompts.getByText('change the receiver');
  for (let step = 0; step < 10 && !(await prompt.isVisible()); step += 1) {
    await page.getByRole('button', { name: 'step ▸' }).click();
  }
  await prompt.waitFor();
  await page.getByText(/prompts? as recorded/).waitFor();
  await takeScreenshots(page, 'replay-heat-off');
}

async function analysedStages(file: string, settings: RunSettings): Promise<unknown> {
  const settingsFile = path.join(bench.folder, 'settings.json');
  writeFileSync(settingsFile, JSON.stringify(settings));
  const { output } = await runCommand(
    'npm',
    ['run', '--silent', 'analyse', '--', file, '--settings', settingsFile],
    { cwd: projectRoot },
  );
  return verdictsSchema.parse(JSON.parse(output)).stages;
}

/** `0:15:04`, as the window writes times. */
function clock(timeS: number): string {
  const two = (value: number) => String(Math.floor(value)).padStart(2, '0');
  return `${Math.floor(timeS / 3600)}:${two((timeS / 60) % 60)}:${two(timeS % 60)}`;
}
