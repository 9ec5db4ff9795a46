import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { appendFile, readdir } from 'node:fs/promises';
import path from 'node:path';
import process from 'node:process';
import { createInterface } from 'node:readline';
import { beforeAll, expect, onTestFinished, test } from 'vitest';
import { checkRuns, nodeFileLayer, openPseudoTerminal, type RunCheck, systemClock } from '#main';
import {
  createMonitor,
  createRandom,
  defaultRunSettings,
  latin1Bytes,
  type RequestAnswer,
  type RequestBody,
  type RequestName,
  type RunInput,
  type RunSettings,
  serialSourceSchema,
} from '#shared-core';
import { libraryToRead } from '../../../scripts/measuring/recorded-run.ts';
import { projectRoot } from '../../../scripts/testing/step.ts';
import { pause } from '../probe/support/until.ts';
import { buildProgram } from '../support/build-program.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';
import { recordedHeader, writeCutOffRun } from '../support/write-cut-off-run.ts';

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
  // So finely that no two lines are taken for each other.
  return Math.round((courseC + 0.15 * (random.uniform() - 0.5)) * 1e6) / 1e6;
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

/**
 * The same still on a real pseudo-terminal, from where it was on, read by an instrument that is asked: what it answers first is the
 * first line after its port was opened. Keeps what it said since each opening, and when.
 */
function startStill(fromS: number) {
  const terminal = openPseudoTerminal();
  if (!terminal.ok) throw new Error(`No pseudo-terminal here: ${terminal.error}`);
  const { path: port, write, onBytes, close } = terminal.value;
  const startedS = systemClock.monotonicS() - fromS;
  const said: { readonly value: number; readonly atS: number }[][] = [];
  let asked = '';
  onBytes((bytes) => {
    const questions = (asked + Buffer.from(bytes).toString('latin1')).split('\n');
    asked = questions.pop() ?? '';
    for (const question of questions) {
      if (question === '*IDN?') said.push([]);
      const atS = systemClock.monotonicS();
      const value = headC(atS - startedS);
      if (question === 'READ?') said.at(-1)?.push({ value, atS });
      write(latin1Bytes(question === 'READ?' ? `${value}\n` : 'Teaching lab,Bench thermometer\n'));
    }
  });
  onTestFinished(close);
  const source = { kind: 'serial', path: port, language: 'scpi', question: 'READ?' };
  return { said, source: serialSourceSchema.parse({ ...source, askEveryS: 1 / linesPerS }) };
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
  const ended = once(child, 'exit').then(([code, signal]) => {
    throw new Error(`The services ended: ${code ?? signal}`);
  });
  ended.catch(() => {});
  async function ask<N extends RequestName>(name: N, body: RequestBody<N>) {
    child.stdin.write(`${JSON.stringify({ name, body })}\n`);
    const [line] = await Promise.race([once(answers, 'line'), ended]);
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
    },
    async end() {
      child.stdin.end();
      await once(child, 'exit');
    },
  };
}

async function inspect(runsFolder: string, runId: string) {
  const library = libraryToRead(runsFolder);
  const whole = await library.whole(runId);
  const changes = await library.changes(runId);
  if (!whole.ok || !changes.ok) throw new Error('The run cannot be read.');
  const checks: RunCheck[] = [];
  for await (const check of checkRuns(nodeFileLayer, runsFolder)) checks.push(check);
  return { ...whole.value, changes: changes.value.changes, checks };
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

test('a program killed three times in one run goes on with it: one record, one heat-off, every line since the port was open, the same conclusions on replay', async () => {
  const runsFolder = await temporaryFolder();
  const { said, source } = startStill(brokeOffS + 1);
  const { runId, brokeOffAtS } = await writeCutOffRun(runsFolder, {
    header: { ...recordedHeader, settings, source },
    inputs: inputsUpTo(brokeOffS),
    brokeOffS,
    agoS: 1,
  });
  /** When each program was first seen to have recorded a reading, and how much the one before it had told to be saved. */
  const wentOnAtS: number[] = [];
  const savedBefore: number[] = [inputsUpTo(brokeOffS).length];
  type Services = Awaited<ReturnType<typeof startServices>>;
  const inputsNow = async (services: Services) =>
    (await services.ask('runs/read', { runId, fromIndex: 0 })).inputs;
  /** Once the heat-off call stands and some more readings have come. */
  const someMore = async (services: Services) => {
    const before = (await inputsNow(services)).length;
    while ((await inputsNow(services)).length <= before + 5) await pause(0.1);
  };
  const kill = async (services: Services) => {
    // What is only seen may still be on its way to the disk.
    const { savedToS } = await services.ask('run/status', {});
    const saved = (await inputsNow(services)).filter(({ timeS }) => timeS < (savedToS ?? 0));
    savedBefore.push(saved.length);
    await services.kill();
  };
  const heatOffs = async (services: Services) =>
    (await services.ask('runs/changes', { runId })).changes.flatMap((change) =>
      change.kind === 'alarm-changed' && change.record.alarm === 'plateau-departure'
        ? [change.state]
        : [],
    );
  async function goOn() {
    const services = await startServices(runsFolder);
    const { run } = await services.ask('run/unfinished', {});
    expect(run).toMatchObject({ runId, name: settings.name });
    expect(await services.ask('run/continue', { runId })).toEqual({ runId });
    while ((await inputsNow(services)).at(-1)?.kind !== 'reading') await pause(0.05);
    wentOnAtS.push(systemClock.monotonicS());
    return services;
  }

  const first = await goOn();
  while ((await heatOffs(first)).length === 0) await pause(0.1);
  await someMore(first);
  await kill(first);

  // A record that was being written.
  await appendFile(path.join(runsFolder, runId, 'run.jsonl'), '{"seq":99999,"prev":"12');
  const second = await goOn();
  await someMore(second);
  const acknowledged = { type: 'alarm-acknowledged', alarm: 'plateau-departure' } as const;
  await second.ask('run/mark', { mark: { type: 'heat-off' } });
  await second.ask('run/mark', { mark: acknowledged });
  await someMore(second);
  await kill(second);

  const third = await goOn();
  await someMore(third);
  await kill(third);

  const fourth = await goOn();
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
    'run-2.jsonl',
    'run-3.jsonl',
    'run-4.jsonl',
    'run-5.jsonl',
    'run.jsonl',
  ]);
  const marks = found.inputs.flatMap((input) => (input.kind === 'mark' ? [input.markId] : []));
  expect(marks).toEqual([1, 2, 3]);

  const timesS = found.inputs.flatMap((input) => (input.kind === 'reading' ? [input.timeS] : []));
  expect(timesS).toEqual([...timesS].sort((a, b) => a - b));
  const links = found.inputs.flatMap((input, index) =>
    input.kind === 'link' ? [{ ...input, index }] : [],
  );
  expect(links.map(({ state, reason }) => `${state} ${reason}`)).toEqual(
    wentOnAtS.flatMap(() => ['lost program-closed', 'back program-closed']),
  );
  const breaks = wentOnAtS.map((_, index) => links[2 * index]?.index ?? 0);
  // What was told to be saved before a program was killed is there.
  expect(breaks.map((at, index) => at >= (savedBefore[index] ?? 0))).toEqual(
    breaks.map(() => true),
  );
  const parts = [0, ...breaks].map((from, index) =>
    found.inputs
      .slice(from, breaks[index])
      .flatMap((input) => (input.kind === 'reading' ? [input] : [])),
  );
  const [, ...since] = parts;
  const values = since.map((readings) => readings.map(({ value }) => value));
  expect(values).toEqual(
    said.map((lines, index) => lines.slice(0, values[index]?.length).map(({ value }) => value)),
  );
  // The time without readings is no longer than from the last line to when the next was seen; the record is kept to milliseconds.
  const lastSaidS = values.map((of, index) => said[index]?.[of.length - 1]?.atS ?? Number.NaN);
  for (const [index, wentOnS] of wentOnAtS.entries()) {
    const saidS = index === 0 ? brokeOffAtS : (lastSaidS[index - 1] ?? Number.NaN);
    const missingS = (since[index]?.[0]?.timeS ?? 0) - (parts[index]?.at(-1)?.timeS ?? 0);
    expect(missingS).toBeGreaterThan(0);
    expect(missingS).toBeLessThan(wentOnS - saidS + 0.002);
  }
}, 240_000);
