/**
 * How long the built browser shell takes from a cold process to the first reading of a probe on a real pseudo-terminal, and how much it
 * brings onto the disk: with the packages that `npm ci --omit=dev` installs, and nothing else.
 *
 * Usage: npx tsx scripts/first-start.ts [STARTS]
 */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { startCountingProbe } from './attack/counting-probe.ts';
import { layOutProgram } from './first-start/lay-out-program.ts';
import { startToReading } from './first-start/start-to-reading.ts';
import { watchMachineLoad } from './measuring/machine-load.ts';
import { quantile } from './measuring/quantile.ts';

const [starts = 5] = process.argv.slice(2).map(Number);
const inMb = (bytes: number) => `${(bytes / 1e6).toFixed(1)} MB`;

const folder = await mkdtemp(path.join(tmpdir(), 'first-start-'));
const probe = startCountingProbe(10);
try {
  const laidOut = await layOutProgram(folder);
  const { program, packages, packagesBytes, builtBytes, workshopBytes } = laidOut;
  console.log(
    `${packages.length} packages of ${inMb(packagesBytes)} and ${inMb(builtBytes)} built; the workshop's packages are ${inMb(workshopBytes)} (unpacked)`,
  );
  const load = watchMachineLoad();
  const found = [];
  for (let start = 0; start < starts; start += 1) {
    found.push(await startToReading(program, path.join(folder, `runs-${start}`), probe.path));
  }
  const told = (values: readonly number[]) =>
    `${quantile(values, 0).toFixed(0)} ms (shortest), ${quantile(values, 0.5).toFixed(0)} ms (median) of ${values.length}`;
  console.log(`from start to address: ${told(found.map(({ upMs }) => upMs))}`);
  console.log(`from start to first reading: ${told(found.map(({ readingMs }) => readingMs))}`);
  console.log(`work until the address: ${told(found.map(({ upWorkMs }) => upWorkMs))}`);
  console.log(
    `work until the first reading: ${told(found.map(({ readingWorkMs }) => readingWorkMs))}`,
  );
  console.log(load.report());
} finally {
  probe.close();
  await rm(folder, { recursive: true, force: true });
}
