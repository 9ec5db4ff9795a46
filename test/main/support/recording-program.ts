/**
 * Records counted readings into a new run until it has written so many or is killed, and prints what
 * the recorder says, one JSON object a line.
 *
 * Usage: node recording-program.mjs RUNS_FOLDER READINGS [UNSAVED]
 *
 * With UNSAVED it waits for the disk while so many readings are not saved: a slow disk is then no more than slow.
 */
import process from 'node:process';
import { defaultRunSettings, packReading } from '#shared-core';
// Straight from their folders: the probe's native library has no place in this bundle.
import { systemClock, systemScheduler } from '../../../main/clock/index.ts';
import { nodeFileLayer } from '../../../main/file-layer/index.ts';
import { startRecorder } from '../../../main/recorder/index.ts';
import { createRunLibrary } from '../../../main/run-library/index.ts';

const [runsFolder = '', readings = '0', unsaved = 'Infinity'] = process.argv.slice(2);
const say = (line: unknown) => process.stdout.write(`${JSON.stringify(line)}\n`);

const library = createRunLibrary({
  files: nodeFileLayer,
  clock: systemClock,
  runsFolder,
  mayWrite: () => true,
});
const made = await library.makeRunFolder(systemClock.wallMs());
if (!made.ok) {
  say({ refused: made.error });
  process.exit(0);
}
const { runId, folder } = made.value;
let savedToS = 0;
const started = await startRecorder({
  files: nodeFileLayer,
  clock: systemClock,
  scheduler: systemScheduler,
  folder,
  header: {
    format: 'still-head-run-log',
    version: 1,
    runId,
    startedAtIso: new Date(systemClock.wallMs()).toISOString(),
    settings: defaultRunSettings,
    appVersion: '0.1.0',
    modelVersion: '1',
    timeScale: 1,
    rehearsal: false,
    source: null,
    origin: 'recorded',
  },
  onStatus: (status) => {
    ({ savedToS } = status);
    say(status);
  },
});
if (!started.ok) {
  say({ refused: started.error });
  process.exit(0);
}
const recorder = started.value;
say({ runId });
let written = 0;
const stop = systemScheduler.every(0.002, () => {
  if (written - savedToS > Number(unsaved)) return;
  for (let burst = 0; burst < 4 && written < Number(readings); burst += 1) {
    written += 1;
    const reading = { kind: 'reading', timeS: written, channel: 'head', value: written } as const;
    const row = packReading({ ...reading, unit: '°C', quality: 'good' });
    recorder.append({ kind: 'readings', readings: [row] }, written, 'soon');
  }
  if (written % 100 === 0)
    recorder.append({ kind: 'clock', timeS: written, sleptS: 0, wallStepS: 0 }, written, 'now');
  if (written < Number(readings)) return;
  stop();
  void recorder.close().then((closed) => say({ closed: closed.ok }));
});
