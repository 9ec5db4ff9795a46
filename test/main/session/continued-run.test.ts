import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { appendFile, readdir } from 'node:fs/promises';
import path from 'node:path';
import process from 'node:process';
import { createInterface } from 'node:readline';
import { beforeAll, expect, onTestFinished, test } from 'vitest';
import {
  checkRuns,
  createRunLibrary,
  nodeFileLayer,
  openPseudoTerminal,
  type RunCheck,
  systemClock,
} from '#main';
import {
  createMonitor,
  createRandom,
  defaultRunSettings,
  latin1Bytes,
  modelVersion,
  type RequestAnswer,
  type RequestBody,
  type RequestName,
  type RunInput,
  type RunSettings,
  serialSourceSchema,
} from '#shared-core';
import { projectRoot } from '../../../scripts/testing/step.ts';
import { pause } from '../probe/support/until.ts';
import { buildProgram } from '../support/build-program.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';
import { writeCutOffRun } from '../support/write-cut-off-run.ts';

const settings: RunSettings = {
  ...defaultRunSettings,
  pressure: {
    pressureKPa: 101.3,
    standardUncertaintyKPa: 0.1,
    source: 'barometer',
    altitudeM: null,
  },
  probe: { ...defaultRunSettings.probe, lagT90S: 3 },
  firstFraction: { kind: 'minutes', minutes: 0.5 },
};
const linesPerS = 5;
/** The heat-off call comes some ten seconds later. */
const brokeOffS = 94;
const random = createRandom('a still in a hurry');

/** A head that warms, holds and leaves within two minutes. */
function headC(timeS: number): number {
  const courseC =
    timeS < 5
      ? 22
      : timeS < 20
        ? 22 + ((timeS - 5) * 56.3) / 15
        : Math.min(95, 78.3 + Math.max(0, timeS - 60) * 0.3);
  return Math.round((courseC + 0.15 * (random.uniform() - 0.5)) * 16) / 16;
}

function inputsUpTo(endS: number): readonly RunInput[] {
  const heatOn = { kind: 'mark', timeS: 1, markId: 1, mark: { type: 'heat-on' } } as const;
  const readings = Array.from({ length: endS * linesPerS }, (_, index): RunInput => {
    const timeS = (index + 1) / linesPerS;
    return {
      kind: 'reading',
      timeS,
      channel: 'head',
      value: headC(timeS),
      unit: '°C',
      quality: 'good',
    };
  });
  return [...readings.slice(0, 5), heatOn, ...readings.slice(5)];
}

/** The same still on a real pseudo-terminal, from where it was on. */
function startStill(fromS: number) {
  const terminal = openPseudoTerminal();
  if (!terminal.ok) throw new Error(`No pseudo-terminal here: ${terminal.error}`);
  const { path: port, write, close } = terminal.value;
  const startedS = systemClock.monotonicS() - fromS;
  const timer = setInterval(() => {
    write(latin1Bytes(`${headC(systemClock.monotonicS() - startedS).toFixed(4)}\n`));
  }, 1000 / linesPerS);
  onTestFinished(() => {
    clearInterval(timer);
    close();
  });
  return port;
}

/** Where the programs find the packages they need. */
const programs = path.join(projectRoot, '.build', 'test-programs');
let program = '';
let probeProgram = '';
beforeAll(async () => {
  const services = path.join(import.meta.dirname, 'support', 'asked-services.ts');
  const worker = path.join(projectRoot, 'main', 'probe', 'worker', 'entry.ts');
  program = await buildProgram(services, programs);
  probeProgram = await buildProgram(worker, programs);
});

async function startServices(runsFolder: string) {
  const child = spawn(process.execPath, [program, runsFolder, probeProgram], {
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  onTestFinished(() => {
    child.kill('SIGKILL');
  });
  const answers = createInterface({ input: child.stdout });
  async function ask<N extends RequestName>(name: N, body: RequestBody<N>) {
    child.stdin.write(`${JSON.stringify({ name, body })}\n`);
    const [line] = await once(answers, 'line');
    const answer = JSON.parse(String(line));
    if (!answer.ok) throw new Error(`${name}: ${JSON.stringify(answer.error)}`);
    return answer.value as RequestAnswer<N>;
  }
  return {
    ask,
    async kill() {
      const gone = once(child, 'exit');
      child.kill('SIGKILL');
      await gone;
      return systemClock.monotonicS();
    },
    async end() {
      child.stdin.end();
      await once(child, 'exit');
    },
  };
}

async function inspect(runsFolder: string, runId: string) {
  const setup = { files: nodeFileLayer, clock: systemClock, runsFolder, mayWrite: () => false };
  const library = createRunLibrary(setup);
  const whole = await library.whole(runId);
  const changes = await library.changes(runId);
  await library.close();
  if (!whole.ok || !changes.ok) throw new Error('The run cannot be read.');
  const checks: RunCheck[] = [];
  for await (const check of checkRuns(nodeFileLayer, runsFolder)) checks.push(check);
  return { ...whole.value, changes: changes.value, checks };
}

function concludedAgain(inputs: readonly RunInput[], endS: number): readonly unknown[] {
  const monitor = createMonitor(settings);
  for (const input of inputs) monitor.push(input);
  monitor.advanceTo(endS);
  return monitor.takeChanges().map((change) => {
    if (change.kind !== 'alarm-changed') return change;
    const { snapshot: _, ...told } = change;
    return told;
  });
}

test('a program killed three times in one run goes on with it: one log, one heat-off, the same conclusions on replay', async () => {
  const runsFolder = await temporaryFolder();
  const port = startStill(brokeOffS + 1);
  const { runId, brokeOffAtS } = await writeCutOffRun(runsFolder, {
    header: {
      format: 'still-head-run-log',
      version: 1,
      settings,
      appVersion: '0.1.0',
      modelVersion,
      timeScale: 1,
      rehearsal: false,
      source: serialSourceSchema.parse({ kind: 'serial', path: port, language: 'plain-text' }),
      origin: 'recorded',
    },
    inputs: inputsUpTo(brokeOffS),
    brokeOffS,
    agoS: 1,
  });
  const closedS: number[] = [];
  /** How many inputs there are now, once the heat-off call stands and some more readings have come. */
  const inputsNow = async (services: Awaited<ReturnType<typeof startServices>>) =>
    (await services.ask('runs/read', { runId, fromIndex: 0 })).inputs.length;
  const someMore = async (services: Awaited<ReturnType<typeof startServices>>) => {
    const before = await inputsNow(services);
    while ((await inputsNow(services)) <= before + 5) await pause(0.1);
  };
  const heatOffs = async (services: Awaited<ReturnType<typeof startServices>>) =>
    (await services.ask('runs/changes', { runId })).changes.flatMap((change) =>
      change.kind === 'alarm-changed' && change.record.alarm === 'plateau-departure'
        ? [change.state]
        : [],
    );
  async function goOn(killedS: number) {
    const services = await startServices(runsFolder);
    const { run } = await services.ask('run/unfinished', {});
    expect(run).toMatchObject({ runId, name: settings.name });
    expect(await services.ask('run/continue', { runId })).toEqual({ runId });
    closedS.push(systemClock.monotonicS() - killedS);
    return services;
  }

  const first = await goOn(brokeOffAtS);
  while ((await heatOffs(first)).length === 0) await pause(0.1);
  await someMore(first);
  const firstKilledS = await first.kill();

  // A record that was being written.
  await appendFile(path.join(runsFolder, runId, 'run.jsonl'), '{"seq":99999,"prev":"12');
  const second = await goOn(firstKilledS);
  await someMore(second);
  const acknowledged = { type: 'alarm-acknowledged', alarm: 'plateau-departure' } as const;
  await second.ask('run/mark', { mark: { type: 'heat-off' } });
  await second.ask('run/mark', { mark: acknowledged });
  await someMore(second);
  const secondKilledS = await second.kill();

  const third = await goOn(secondKilledS);
  await someMore(third);
  const thirdKilledS = await third.kill();

  const fourth = await goOn(thirdKilledS);
  await someMore(fourth);
  await fourth.ask('run/stop', {});
  expect(await fourth.ask('run/unfinished', {})).toEqual({ run: null });
  await fourth.end();

  const found = await inspect(runsFolder, runId);
  const raised = found.changes.filter(
    (change) =>
      change.kind === 'alarm-changed' &&
      change.record.alarm === 'plateau-departure' &&
      change.state === 'unacknowledged',
  );
  expect(raised).toHaveLength(1);
  expect(found.changes).toEqual(concludedAgain(found.inputs, found.endS));
  expect(found.checks).toMatchObject([
    {
      runId,
      state: 'whole',
      missingRecords: 0,
      unknownRecords: 0,
      timeDoubts: [],
      closed: [{}, {}, {}, {}],
    },
  ]);
  const names = await readdir(path.join(runsFolder, runId));
  expect(names.filter((name) => name.endsWith('.jsonl')).sort()).toEqual([
    'labels.jsonl',
    'run.jsonl',
  ]);
  const marks = found.inputs.flatMap((input) => (input.kind === 'mark' ? [input.markId] : []));
  expect(marks).toEqual([1, 2, 3]);

  const timesS = found.inputs.flatMap((input) => (input.kind === 'reading' ? [input.timeS] : []));
  const links = found.inputs.filter((input) => input.kind === 'link');
  const gaps = closedS.map((_, index) => links.slice(2 * index, 2 * index + 2));
  expect(gaps).toMatchObject(
    closedS.map(() => [
      { state: 'lost', reason: 'program-closed' },
      { state: 'back', reason: 'program-closed' },
    ]),
  );
  const missingS = gaps.map(([lost, back]) => {
    const before = timesS.filter((timeS) => timeS <= (lost?.timeS ?? 0)).at(-1) ?? 0;
    return (timesS.find((timeS) => timeS >= (back?.timeS ?? 0)) ?? Number.NaN) - before;
  });
  for (const [index, missing] of missingS.entries()) {
    expect(missing).toBeLessThan((closedS[index] ?? 0) + 1);
  }
  expect(timesS).toEqual([...timesS].sort((a, b) => a - b));
}, 240_000);
