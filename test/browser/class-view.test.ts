import { randomBytes } from 'node:crypto';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { forkDesk, forkProbeWorker } from '#main';
import { createClassViewDoor } from '../../app/class-view/index.ts';
import { composeServices } from '../../app/compose-services.ts';
import { createWindowFiles } from '../../app/files/index.ts';
import { startLoopback } from '../../app/loopback/start-loopback.ts';
import { buildIfStale } from '../../scripts/building/build-if-stale.ts';
import { windowFolder, windowTarget } from '../../scripts/building/build-targets.ts';
import { projectRoot } from '../../scripts/testing/step.ts';
import { axeViolations } from './support/check-screen.ts';
import { type OpenWindow, openWindow, takeScreenshot } from './support/open-window.ts';

/** This computer too, but by a name that is not its own: what a phone sees of it. */
const host = '127.0.0.2';
const toClose: (() => Promise<unknown>)[] = [];
let teacher: OpenWindow;

beforeAll(async () => {
  await buildIfStale(windowTarget, { root: projectRoot, report: (line) => console.log(line) });
  const folder = await mkdtemp(path.join(tmpdir(), 'class-view-'));
  toClose.push(() => rm(folder, { recursive: true, force: true }));
  const services = await composeServices({
    shell: 'loopback',
    version: '0.1.0',
    runsFolder: path.join(folder, 'runs'),
    startWorker: () => forkProbeWorker(),
    startDesk: () => forkDesk(),
  });
  toClose.push(() => services.close());
  const windowFiles = createWindowFiles(windowFolder);
  const classView = createClassViewDoor({ services, windowFiles, findHost: () => host });
  toClose.push(() => classView.shut());
  const loopback = await startLoopback({
    services,
    classView,
    windowFiles,
    port: 0,
    randomToken: () => randomBytes(24).toString('base64url'),
  });
  if (!loopback.ok) throw new Error(loopback.error.kind);
  toClose.push(() => loopback.value.close());
  teacher = await openWindow(loopback.value.issueUrl());
  toClose.push(() => teacher.close());
});
afterAll(async () => {
  for (const close of toClose.toReversed()) await close();
});

/** A rehearsal is soon past its warm-up where a page is slow to come. */
const stageShown = /Warm-up|First fraction|Main fraction|Tail/;

test('a phone that comes by the lesson’s address watches the run, can do nothing, and is told when it is over', async () => {
  const { page } = teacher;
  await page.getByRole('button', { name: 'Start the rehearsal' }).click();
  await page.getByText(stageShown).first().waitFor();
  await page.getByRole('button', { name: 'Second screen' }).click();
  await page.getByRole('button', { name: 'Let the class watch' }).click();
  await page.getByText('Nobody is watching yet.').waitFor();
  expect(await axeViolations(page)).toEqual([]);
  await takeScreenshot(page, 'class-view-teacher', 'projector');

  const address = await page.locator('.class-view-address').textContent();
  const phone = await openWindow(address ?? '', { size: 'phone' });
  toClose.push(() => phone.close());
  await phone.page.getByText(stageShown).first().waitFor();
  await page.getByText('1 screen is watching.').waitFor();
  expect(phone.page.url()).not.toContain(address?.split('/').at(-1));
  expect(await phone.page.getByRole('navigation').getByRole('link').allTextContents()).toEqual([
    'Watch',
  ]);
  const commands = phone.page.getByRole('button', {
    name: /Heat|Note|Receiver|Stop|Undo|Second screen|Acknowledge/,
  });
  expect(await commands.count()).toBe(0);
  expect(await axeViolations(phone.page)).toEqual([]);
  await takeScreenshot(phone.page, 'class-view-phone', 'phone');

  await page.getByRole('button', { name: 'End watching' }).click();
  await phone.page
    .getByRole('heading', { name: 'There is nothing to watch at this address now' })
    .waitFor();
  expect(await axeViolations(phone.page)).toEqual([]);
  expect(phone.complaints).toEqual([]);
  expect(teacher.complaints).toEqual([]);
});
