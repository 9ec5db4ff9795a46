import { createHash } from 'node:crypto';
import {
  createProbeHub,
  createSession,
  emptyReport,
  type FileLayer,
  type ProbeReading,
  readRunLog,
} from '#main';
import {
  createMonitor,
  createRandom,
  defaultRunSettings,
  inputsOfRecord,
  type Monitor,
  type RequestAnswer,
  type RunInput,
  type RunSettings,
  type Snapshot,
  serialSourceSchema,
} from '#shared-core';
import { analyseRun } from '../../shared-core/monitor/analyse-run.ts';
import { createManualTime } from '../main/support/manual-time.ts';
import { createPowerLossDisk } from '../main/support/power-loss-disk.ts';
import { drawStill } from './draw-still.ts';
import { drawFaults, type Fault } from './fault.ts';
import { lyingSync, plantInHub, plantInSnapshot, turnByte } from './plant.ts';
import type { Invariant, PlantedFault } from './planted-fault.ts';
import { createSimulatedLine, firstPort, otherPort } from './simulated-line.ts';
import { createSimulatedWindow } from './simulated-window.ts';

export interface Violation {
  readonly invariant: Invariant;
  readonly atS: number;
  readonly found: string;
}

export interface WorldOutcome {
  readonly faults: readonly Fault[];
  readonly simulatedS: number;
  /** Of everything that any window was told, and when. */
  readonly traceHash: string;
  readonly heatOffS: number | null;
  readonly violation: Violation | null;
}

export interface WorldSetup {
  readonly seed: number;
  readonly lengthS?: number;
  /** Instead of those that the seed draws. */
  readonly faults?: readonly Fault[];
  /** Instead of the one that the seed draws. */
  readonly end?: 'power-cut' | 'clean';
  readonly planted?: PlantedFault;
}

const runsFolder = '/runs';
const stepS = 0.5;
/** What a window may lag behind: the promise of the screen, and a step of the world. */
const windowLagS = 2 + stepS;
/** Whole-second ticks and the step of the world. */
const ageLagS = 2 + stepS;
/** A probe's status holds its last line and what was found in it, never the lines before. */
const mostStatusBytes = 20_000;
const app = { version: '0.1.0', modelVersion: '1', shell: 'loopback' } as const;
const teacher = { mayCommand: true };
const viewer = { mayCommand: false };
const takeFolder = async () => ({ isHeld: () => true, release: async () => undefined });
const heatOffAlarms: readonly string[] = ['plateau-departure', 'over-limit'];

/** Runs one world to its end or to the first violation. The same setup gives the same trace. */
export async function runWorld(setup: WorldSetup): Promise<WorldOutcome> {
  const { planted, lengthS = 600 } = setup;
  const random = createRandom(setup.seed);
  const faults = setup.faults ?? drawFaults(random.fork('faults'), lengthS);
  const drawnEnd = random.fork('end').uniform() < 0.5 ? 'power-cut' : 'clean';
  const endsByPowerCut = (setup.end ?? drawnEnd) === 'power-cut';
  const time = createManualTime();
  const { clock } = time;
  const startS = clock.monotonicS();
  const worldS = () => Math.round((clock.monotonicS() - startS) * 1000) / 1000;
  const isOn = (kind: Fault['kind']) =>
    faults.some((fault) => fault.kind === kind && fault.fromS <= worldS() && worldS() < fault.toS);

  const hash = createHash('sha256');
  const trace = (text: string) => void hash.update(`${text}\n`);
  let violation: Violation | null = null;
  function violated(invariant: Invariant, found: string): void {
    violation ??= { invariant, atS: worldS(), found };
  }

  const luck = random.fork('disk');
  const disk = createPowerLossDisk(
    {
      failSync: () => isOn('syncs-fail') && luck.uniform() < 0.5,
      takeBytes: (length) => {
        if (isOn('disk-is-full')) return null;
        return isOn('disk-writes-half') ? Math.floor(length * luck.uniform()) : length;
      },
      syncTakesS: () => (isOn('disk-is-slow') ? luck.uniform() * 3 : 0),
    },
    time.scheduler,
  );
  const files: FileLayer = planted === 'sync-lies' ? lyingSync(disk.files) : disk.files;

  const still = drawStill(random.fork('still'), lengthS);
  const line = createSimulatedLine(time, random.fork('line'), still);
  const realHub = createProbeHub({
    clock,
    scheduler: time.scheduler,
    openLine: line.openLine,
    listPorts: line.listPorts,
  });
  const hub = plantInHub(realHub, planted);
  const heard: ProbeReading[] = [];
  let lastHeardS = Number.NEGATIVE_INFINITY;
  realHub.on('readings', (readings) => {
    heard.push(...readings);
    if (readings.length > 0) lastHeardS = worldS();
  });

  const monitors: Monitor[] = [];
  let concluded: Snapshot | null = null;
  let sleptS = 0;
  const session = await createSession({
    probeHub: hub,
    clock,
    scheduler: time.scheduler,
    uptimeS: () => clock.monotonicS() + sleptS,
    fileLayer: files,
    takeFolder,
    runsFolder,
    app,
    createMonitor(settings: RunSettings) {
      const monitor = createMonitor(
        planted === 'verdict-differs'
          ? { ...settings, leastStrengthAbv: settings.leastStrengthAbv + 9 }
          : settings,
      );
      monitors.push(monitor);
      return {
        ...monitor,
        push: (input) => plantInSnapshot(noted(monitor.push(input)), planted),
        advanceTo: (timeS) => plantInSnapshot(noted(monitor.advanceTo(timeS)), planted),
      };
    },
  });
  function noted(snapshot: Snapshot): Snapshot {
    concluded = snapshot;
    return snapshot;
  }
  const asked = <T>(promise: Promise<T>) => settle(promise, time.pass);

  const windows = [0, 1, 2].map(() => createSimulatedWindow(session, worldS, trace));
  for (const window of windows) window.open();
  const source = serialSourceSchema.parse({
    kind: 'serial',
    path: firstPort,
    language: 'plain-text',
  });
  await asked(session.handle('probe/connect', { source }, teacher));
  await time.pass(3);
  const heardBefore = heard.length;
  const started = await asked(
    session.handle('run/start', { settings: defaultRunSettings }, teacher),
  );
  const runId = started.ok ? (started.value as RequestAnswer<'run/start'>).runId : '';
  if (runId === '') throw new Error(`Seed ${setup.seed}: the run does not begin.`);

  let dueSinceS: number | null = null;
  let heatOffS: number | null = null;
  const begun = new Set<Fault>();

  async function begin(fault: Fault): Promise<void> {
    const seconds = fault.toS - fault.fromS;
    if (fault.kind === 'wall-clock-is-set') time.stepWall(seconds % 2 === 0 ? 3600 : -3600);
    if (fault.kind === 'computer-sleeps') {
      await asked(session.suspend());
      sleptS += seconds;
      time.stepWall(seconds);
      await asked(session.resume());
    }
    if (fault.kind === 'viewer-gives-orders') {
      const who = planted === 'viewer-obeyed' ? teacher : viewer;
      const mark = { type: 'note', text: 'from the back row' };
      const answer = await asked(session.handle('run/mark', { mark }, who));
      if (answer.ok) violated('viewer-commands-nothing', 'A viewer marked the run.');
    }
    if (fault.kind === 'person-marks') {
      const mark = { type: 'note', text: `at ${fault.fromS}` };
      await asked(session.handle('run/mark', { mark }, teacher));
    }
  }

  function moveMoods(): void {
    const moved = isOn('probe-at-another-port');
    Object.assign(line.mood, {
      noise: isOn('noise-on-the-line'),
      plugged: !isOn('line-hangs-up') && !(planted === 'never-back' && worldS() > 30),
      path: moved ? otherPort : firstPort,
      opensAfterS: isOn('line-is-slow-to-open') ? 4 : 0,
      flood: isOn('line-floods'),
      mute: isOn('probe-is-mute'),
    });
    const first = windows[0];
    if (first === undefined) return;
    if (isOn('window-reloads')) first.close();
    else if (first.connectedSinceS === null) first.open();
  }

  function checkStep(): void {
    const nowS = worldS();
    const due = concluded?.alarms.find(({ alarm }) => heatOffAlarms.includes(alarm)) ?? null;
    dueSinceS = due === null ? null : (dueSinceS ?? nowS);
    if (due !== null) heatOffS ??= nowS;
    for (const window of windows) {
      const { connectedSinceS, snapshot } = window;
      if (connectedSinceS === null) continue;
      const connectedLong = nowS - connectedSinceS > windowLagS;
      if (dueSinceS !== null && nowS - dueSinceS > windowLagS && connectedLong) {
        const stands = snapshot?.alarms.some(({ alarm }) => heatOffAlarms.includes(alarm));
        if (!stands) violated('heat-off-stands-in-every-window', `Due since ${dueSinceS} s.`);
      }
      const trueAgeS = nowS - lastHeardS;
      if (snapshot?.head && snapshot.head.ageS < trueAgeS - ageLagS) {
        violated('no-old-number-as-new', `Shown ${snapshot.head.ageS} s old, is ${trueAgeS} s.`);
      }
    }
    const statusBytes = JSON.stringify(hub.status()).length;
    if (statusBytes > mostStatusBytes)
      violated('memory-is-bounded', `The status has ${statusBytes} bytes.`);
  }

  for (let step = 0; step * stepS < lengthS && violation === null; step += 1) {
    for (const fault of faults) {
      if (begun.has(fault) || fault.fromS > worldS()) continue;
      begun.add(fault);
      await begin(fault);
    }
    moveMoods();
    await time.pass(stepS);
    checkStep();
  }
  if (violation === null) await checkEnd();
  return {
    faults,
    simulatedS: worldS(),
    traceHash: hash.digest('hex'),
    heatOffS,
    violation,
  };

  async function checkEnd(): Promise<void> {
    const { state } = realHub.status();
    if (state !== 'hearing' || worldS() - lastHeardS > 3) {
      violated(
        'program-comes-back',
        `The probe is ${state}, heard ${worldS() - lastHeardS} s ago.`,
      );
    }
    const { state: recorder } = session.recordingStatus();
    if (recorder !== 'recording') violated('program-comes-back', `The recorder: ${recorder}.`);
    if (endsByPowerCut) await checkPowerCut();
    else await checkCleanEnd();
  }

  async function checkPowerCut(): Promise<void> {
    const { savedToS = 0 } = session.recordingStatus();
    const told = windows[1]?.inputs ?? [];
    const found = disk.losePower(random.fork('power'));
    const kept = new Set((await recordedIn(found, runId)).inputs.map((it) => JSON.stringify(it)));
    const lost = told.find((it) => it.timeS < (savedToS ?? 0) && !kept.has(JSON.stringify(it)));
    if (lost !== undefined) {
      violated('saved-survives-a-power-cut', `${JSON.stringify(lost)}, saved to ${savedToS} s.`);
    }
    await checkNextStart(found);
  }

  /** The program is started again over what the power cut left. */
  async function checkNextStart(found: FileLayer): Promise<void> {
    const again = createManualTime();
    again.stepWall(worldS() + 7200);
    const hub = createProbeHub({
      clock: again.clock,
      scheduler: again.scheduler,
      openLine: createSimulatedLine(again, random.fork('again'), still).openLine,
      listPorts: async () => [],
    });
    const next = await createSession({
      probeHub: hub,
      clock: again.clock,
      scheduler: again.scheduler,
      uptimeS: again.clock.monotonicS,
      fileLayer: found,
      takeFolder,
      runsFolder,
      app,
      createMonitor,
    });
    const ask = (name: string, body: unknown) =>
      settle(next.handle(name, body, teacher), again.pass);
    const read = await ask('runs/read', { runId, fromIndex: 0 });
    if (!read.ok) violated('program-comes-back', `The cut-off run: ${JSON.stringify(read.error)}.`);
    await ask('probe/connect', { source });
    const begins = await ask('run/start', { settings: defaultRunSettings });
    if (!begins.ok) violated('program-comes-back', `No new run: ${JSON.stringify(begins.error)}.`);
    await settle(next.close(), again.pass);
  }

  async function checkCleanEnd(): Promise<void> {
    const heardUpTo = heard.length;
    const stopped = await asked(session.handle('run/stop', {}, teacher));
    if (!stopped.ok) violated('program-comes-back', `No end: ${JSON.stringify(stopped.error)}.`);
    if (planted === 'byte-turned') await turnByte(files, `${runsFolder}/${runId}`);
    const { inputs, damaged, missing } = await recordedIn(files, runId);
    if (damaged + missing > 0) {
      violated('log-is-whole', `${damaged} damaged, ${missing} missing records.`);
    }
    const expected = heard.slice(heardBefore, heardUpTo).map(({ value }) => value);
    const recorded = inputs.flatMap((it) => (it.kind === 'reading' ? [it.value] : []));
    if (JSON.stringify(recorded) !== JSON.stringify(expected)) {
      violated('every-reading-once', `${expected.length} heard, ${recorded.length} on record.`);
    }
    const read = await asked(session.handle('runs/read', { runId, fromIndex: 0 }, teacher));
    if (read.ok) {
      const page = read.value as RequestAnswer<'runs/read'>;
      const replayed = JSON.stringify(analyseRun(page.settings, inputs, page.endS));
      if (replayed !== JSON.stringify(monitors[0]?.verdicts())) {
        violated('live-and-replay-agree', 'The verdicts differ.');
      }
    } else violated('program-comes-back', `The run: ${JSON.stringify(read.error)}.`);
    await asked(session.close());
  }
}

/** Simulated time goes on until the answer is there. */
async function settle<T>(
  promise: Promise<T>,
  pass: (seconds: number) => Promise<void>,
): Promise<T> {
  let done = false;
  const watched = promise.finally(() => {
    done = true;
  });
  // Not by a guess of its own: what never answers within ten simulated minutes is stuck.
  for (let turn = 0; turn < 6000; turn += 1) {
    await pass(0);
    if (done) return watched;
    await pass(0.1);
  }
  throw new Error('A request is never answered.');
}

async function recordedIn(files: FileLayer, runId: string) {
  const report = emptyReport();
  const inputs: RunInput[] = [];
  for await (const records of readRunLog(files, `${runsFolder}/${runId}`, report)) {
    for (const record of records) inputs.push(...inputsOfRecord(record));
  }
  return { inputs, damaged: report.damage.length, missing: report.missingRecords };
}
