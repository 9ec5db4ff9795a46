/**
 * Measures the window as people get it: the real app, a probe on a real pseudo-terminal at 10 Hz, a real Chromium. Prints the
 * time from the byte at the port to the frame that shows it, the long tasks of the page, and on demand what the
 * page keeps in memory over hours of a run.
 *
 * Usage: npm run measure -- --help
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import {
  type MeasureOptions,
  measureUsage,
  parseMeasureOptions,
} from './measuring/measure-options.ts';
import { createNumberedProbe } from './measuring/numbered-probe.ts';
import { openMeasuredWindow } from './measuring/open-measured-window.ts';
import { timeReadings } from './measuring/time-readings.ts';
import { timingWords } from './measuring/timing-words.ts';
import { fastestTimeScale, weighMemory } from './measuring/weigh-memory.ts';
import { startApp } from './testing/start-app.ts';

/** Faster than any probe, slow enough for every link of the chain. */
const loadPerS = 4000;

const options = parseMeasureOptions(process.argv.slice(2).filter((word) => word !== '--help'));
if (process.argv.includes('--help')) {
  console.log(measureUsage);
} else if (!options.ok) {
  console.error(`${options.error}\n\n${measureUsage}`);
  process.exitCode = 2;
} else {
  await measure(options.value);
}

async function measure(options: MeasureOptions): Promise<void> {
  const { view, width, height, slower, readings, minutes, hours } = options;
  const folder = mkdtempSync(path.join(tmpdir(), 'measure-'));
  const app = await startApp(path.join(folder, 'runs'));
  const window = await openMeasuredWindow(app.url, options);
  const probe = createNumberedProbe();
  try {
    if (minutes > 0) {
      console.log(
        `${view} at ${width} × ${height}${slower > 1 ? `, page slowed ${slower} times` : ''}, ` +
          `${readings.toLocaleString('en')} readings loaded before`,
      );
      await window.startRun(probe.path, 1);
      await probe.pour(readings, loadPerS);
      for (const line of timingWords(await timeReadings(window, probe, options))) console.log(line);
      console.log(onRecord(await window.stopRun(), probe.written()));
    }
    if (hours > 0) {
      console.log(`memory over ${hours} h of a run, 10 readings a second of it, ${view}`);
      const before = probe.written();
      await window.startRun(probe.path, fastestTimeScale);
      await weighMemory(window, probe, hours);
      console.log(onRecord(await window.stopRun(), probe.written() - before));
    }
  } finally {
    await window.close();
    probe.close();
    await app.stop();
    rmSync(folder, { recursive: true, force: true });
  }
  process.exit();
}

/** A reading that the port had no room for would make the load lighter than it is said to be. */
function onRecord(recorded: number, written: number): string {
  return `${recorded.toLocaleString('en')} of ${written.toLocaleString('en')} readings written are on record`;
}
