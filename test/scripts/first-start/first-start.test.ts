import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { startCountingProbe } from '../../../scripts/attack/counting-probe.ts';
import { layOutProgram } from '../../../scripts/first-start/lay-out-program.ts';
import { startToReading } from '../../../scripts/first-start/start-to-reading.ts';
import { projectRoot } from '../../../scripts/testing/step.ts';
import { temporaryFolder } from '../../main/support/temporary-folder.ts';

/** What was promised, in time of the processor; `npx tsx scripts/first-start.ts` prints what is measured. */
const mostWorkMs = 1000;

test('the built browser shell is up after a second of work and hears a probe, with at most eight packages of its own, and without the tools it was built with', async () => {
  const { dependencies } = JSON.parse(readFileSync(path.join(projectRoot, 'package.json'), 'utf8'));
  expect(Object.keys(dependencies).length).toBeLessThanOrEqual(8);
  const folder = await temporaryFolder();
  const probe = startCountingProbe(10);
  onTestFinished(() => probe.close());
  const { program, packages, packagesBytes, workshopBytes } = await layOutProgram(folder);
  expect(packages).toEqual(expect.arrayContaining(['node_modules/serialport']));
  expect(packages).not.toEqual(expect.arrayContaining(['node_modules/vite']));
  expect(packagesBytes).toBeLessThan(workshopBytes / 4);
  // It fails where the program ends, turns its window away, or cannot open the port.
  const { upWorkMs } = await startToReading(program, path.join(folder, 'runs'), probe.path);
  expect(upWorkMs).toBeLessThan(mostWorkMs);
}, 240_000);
