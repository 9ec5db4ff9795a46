import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { beforeAll, expect, onTestFinished, test } from 'vitest';
import { latin1Bytes } from '#shared-core';
import { warmthOfText } from '../../../main/ferments/warmth-lines.ts';
import { projectRoot } from '../../../scripts/testing/step.ts';
import { plugInDevice } from '../probe/support/speaking-device.ts';
import { buildProgram } from '../support/build-program.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

/** A week in a minute. The device speaks every hundred seconds of it, so every reading is a minute of its own. */
const speed = 10_000;
const speaksEveryMs = 10;
/** What was heard so shortly before a loss of power may not have come to the disk. */
const mostLostMs = 1000;
const hourS = 3600 / speed;
let program = '';
beforeAll(async () => {
  const source = path.join(import.meta.dirname, 'support', 'warm-services.ts');
  program = await buildProgram(source, path.join(projectRoot, '.build', 'test-programs'));
});

interface Told {
  readonly temperatureC: number | null;
  readonly heardAtIso: string | null;
  readonly standing: readonly { readonly alarm: string }[];
  /** When it was told, by a clock that does not run fast. */
  readonly atMs: number;
}

/** A run of the services, and all that they told. */
function startServices(runsFolder: string, port: string, beganMs: number) {
  const child: ChildProcess = spawn(
    process.execPath,
    [program, runsFolder, port, String(speed), String(beganMs)],
    { stdio: ['pipe', 'pipe', 'inherit'] },
  );
  const told: Told[] = [];
  let rest = '';
  child.stdout?.setEncoding('utf8').on('data', (part: string) => {
    const lines = (rest + part).split('\n');
    rest = lines.pop() ?? '';
    for (const line of lines) {
      const said = JSON.parse(line);
      if (said !== null && 'standing' in said) told.push({ ...said, atMs: performance.now() });
    }
  });
  const closed = once(child, 'close');
  const end = async (how: 'kill' | 'stop'): Promise<readonly Told[]> => {
    const atMs = performance.now();
    if (how === 'kill') child.kill('SIGKILL');
    else child.stdin?.write('stop\n');
    await closed;
    return how === 'stop' ? told : told.filter((one) => one.atMs < atMs - mostLostMs);
  };
  return { told, end, isHeard: () => told.some(({ heardAtIso }) => heardAtIso !== null) };
}

test('days at ten thousand times: two losses of power, a cold night, a pulled plug and a restart lose no minute that was heard a second before, and each is called', async () => {
  const runsFolder = await temporaryFolder();
  const device = plugInDevice(
    {
      name: 'ferment',
      source: { language: 'json-lines' },
      encode: (headC) => latin1Bytes(`{"ferment":${headC}}\n`),
    },
    speaksEveryMs,
  );
  device.state.headC = 30.25;
  const beganMs = Date.now();
  const all: Told[] = [];
  let running = startServices(runsFolder, device.source.path, beganMs);
  onTestFinished(async () => {
    await running.end('kill');
    device.remove();
  });
  const pass = (hours: number) =>
    new Promise((resolve) => setTimeout(resolve, 1000 * hours * hourS));
  const restart = async (how: 'kill' | 'stop') => {
    all.push(...(await running.end(how)));
    running = startServices(runsFolder, device.source.path, beganMs);
    await expect.poll(running.isHeard, { timeout: 60_000 }).toBe(true);
  };
  const alarms = () => running.told.at(-1)?.standing.map(({ alarm }) => alarm) ?? [];

  await expect.poll(running.isHeard, { timeout: 60_000 }).toBe(true);
  await pass(20);
  await restart('kill');
  device.state.headC = 20.25;
  await expect.poll(alarms, { timeout: 60_000 }).toContain('cold');
  await pass(8);
  device.state.headC = 30.25;
  await expect.poll(alarms, { timeout: 60_000 }).not.toContain('cold');
  device.unplug();
  await expect.poll(alarms, { timeout: 60_000 }).toContain('unheard');
  device.plugIn();
  await expect.poll(alarms, { timeout: 60_000 }).not.toContain('unheard');
  await restart('kill');
  await pass(20);
  await restart('stop');
  await pass(20);
  all.push(...(await running.end('stop')));

  const file = readdirSync(runsFolder).find((name) => name.startsWith('warmth-')) ?? '';
  const { minutes, isKeptNow } = warmthOfText(readFileSync(path.join(runsFolder, file), 'utf8'));
  expect(isKeptNow).toBe(true);
  const onDisk = new Set(minutes.map(({ atIso }) => Date.parse(atIso) + 60_000));
  const heard = all.flatMap(({ heardAtIso }) => (heardAtIso === null ? [] : [heardAtIso]));
  const missing = heard.filter((iso) => !onDisk.has(Date.parse(iso)));
  expect(missing).toEqual([]);
  expect(new Set(heard).size).toBeGreaterThan(500);
});
