import { type ChildProcess, spawn } from 'node:child_process';
import { chmod, mkdir, mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
  createRunLibrary,
  type FileLayer,
  nodeFileLayer,
  type RecorderStatus,
  startRecorder,
  systemClock,
  systemScheduler,
} from '#main';
import { createRandom, type RequestAnswer } from '#shared-core';
import { buildProgram } from '../support/build-program.ts';
import { logHeader } from '../support/log-header.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

/** The full figure is measured with KILL_LOOPS=200. */
const killLoops = Number(process.env.KILL_LOOPS ?? 4);

let programFolder = '';
let program = '';
beforeAll(async () => {
  programFolder = await mkdtemp(path.join(tmpdir(), 'still-head-program-'));
  const source = path.join(import.meta.dirname, '..', 'support', 'recording-program.ts');
  program = await buildProgram(source, programFolder);
  await chmod(programFolder, 0o755);
});
afterAll(() => rm(programFolder, { recursive: true, force: true }));

function libraryOf(runsFolder: string) {
  const setup = { files: nodeFileLayer, clock: systemClock, runsFolder, mayWrite: () => true };
  return createRunLibrary(setup);
}

type Line = Partial<RecorderStatus> & {
  readonly runId?: string;
  readonly refused?: { readonly kind: string };
  readonly closed?: boolean;
};

/** Calls `onLine` for what the program says and answers everything once it has ended. */
function listen(child: ChildProcess, onLine: (line: Line) => void): Promise<readonly Line[]> {
  const lines: Line[] = [];
  let text = '';
  child.stdout?.on('data', (data) => {
    const parts = (text + String(data)).split('\n');
    text = parts.pop() ?? '';
    for (const part of parts) {
      const line = JSON.parse(part) as Line;
      lines.push(line);
      onLine(line);
    }
  });
  return new Promise((resolve) => child.once('close', () => resolve(lines)));
}

const valuesIn = ({ inputs }: RequestAnswer<'runs/read'>) =>
  inputs.flatMap((input) => (input.kind === 'reading' ? [input.value] : []));
const countedTo = (count: number) => Array.from({ length: count }, (_, index) => index + 1);

async function readAll(runsFolder: string, runId: string): Promise<RequestAnswer<'runs/read'>> {
  const library = libraryOf(runsFolder);
  const page = await library.page(runId, 0);
  if (!page.ok) throw new Error(JSON.stringify(page.error));
  return page.value;
}

describe('on a real disk', () => {
  test(`a recorder killed at any moment leaves a run that opens with all it had saved (${killLoops} kills)`, {
    timeout: 600_000,
  }, async () => {
    const random = createRandom('kill');
    const runsFolder = await temporaryFolder();
    for (let loop = 0; loop < killLoops; loop += 1) {
      const child = spawn(process.execPath, [program, runsFolder, '1000000']);
      let runId = '';
      let savedToS = 0;
      await listen(child, (line) => {
        runId = line.runId ?? runId;
        savedToS = line.savedToS ?? savedToS;
        if (line.runId !== undefined) {
          systemScheduler.after(random.uniform() * 0.4, () => child.kill('SIGKILL'));
        }
      });
      const page = await readAll(runsFolder, runId);
      const values = valuesIn(page);
      expect(values).toEqual(countedTo(values.length));
      expect(values.length).toBeGreaterThanOrEqual(savedToS);
      expect(page.summary).toMatchObject({ ended: 'cut-off', damagedRecords: 0 });
    }
    const listed = await libraryOf(runsFolder).list();
    expect(listed.ok && listed.value.length).toBe(killLoops);
  });

  test.skipIf(process.platform === 'win32')(
    'a limit on file size moves the recording into further files and loses nothing',
    async () => {
      const runsFolder = await temporaryFolder();
      const command = `ulimit -f 64; exec "${process.execPath}" "${program}" "${runsFolder}" 2000 100`;
      const lines = await listen(spawn('bash', ['-c', command]), () => undefined);
      const [runId = ''] = lines.flatMap((line) => line.runId ?? []);
      expect(
        lines.some(({ state, problem }) => state === 'failed' && problem?.kind === 'full'),
      ).toBe(true);
      expect(lines.at(-1)).toEqual({ closed: true });
      expect(valuesIn(await readAll(runsFolder, runId))).toEqual(countedTo(2000));
      expect((await readdir(path.join(runsFolder, runId))).length).toBeGreaterThan(3);
    },
  );

  test.skipIf(process.platform === 'win32')(
    'a folder that may not be written is refused in words of the contract',
    async () => {
      const runsFolder = path.join(await temporaryFolder(), 'runs');
      await chmod(path.dirname(runsFolder), 0o755);
      await mkdir(runsFolder, { mode: 0o555 });
      // The superuser may write anywhere, so the program runs as somebody else.
      const somebody = process.getuid?.() === 0 ? { uid: 65_534, gid: 65_534 } : {};
      const child = spawn(process.execPath, [program, runsFolder, '10'], somebody);
      const lines = await listen(child, () => undefined);
      expect(lines.map(({ refused }) => refused?.kind)).toEqual(['read-only']);
    },
  );

  test.skipIf(process.platform !== 'linux')(
    'a full disk stops nothing that was saved, says so, and takes the rest when there is room again',
    async () => {
      const folder = await temporaryFolder();
      let isFull = false;
      const full = await nodeFileLayer.openAppend('/dev/full');
      if (!full.ok) throw new Error(full.error.message);
      const files: FileLayer = {
        ...nodeFileLayer,
        async createAppend(target) {
          const file = await nodeFileLayer.createAppend(target);
          if (!file.ok) return file;
          const now = () => (isFull ? full.value : file.value);
          const write = (bytes: Uint8Array) => now().write(bytes);
          return { ok: true, value: { ...file.value, write, sync: () => now().sync() } };
        },
      };
      const seen: RecorderStatus[] = [];
      const started = await startRecorder({
        files,
        clock: systemClock,
        scheduler: {
          every: systemScheduler.every,
          after: (_, act) => systemScheduler.after(0.02, act),
        },
        folder,
        header: logHeader(path.basename(folder)),
        onStatus: (status) => seen.push(status),
      });
      if (!started.ok) throw new Error(started.error.message);
      const append = (timeS: number) =>
        started.value.append(
          { kind: 'readings', readings: [[timeS, 'head', timeS]] },
          timeS,
          'now',
        );
      for (const timeS of countedTo(50)) append(timeS);
      await expect.poll(() => started.value.status().savedToS).toBe(50);
      isFull = true;
      for (const timeS of countedTo(100).slice(50)) append(timeS);
      await expect
        .poll(() => started.value.status())
        .toMatchObject({
          state: 'failed',
          savedToS: 50,
          problem: { kind: 'full' },
        });
      expect(valuesIn(await readAll(path.dirname(folder), path.basename(folder)))).toEqual(
        countedTo(50),
      );
      isFull = false;
      await expect
        .poll(() => started.value.status())
        .toEqual({
          state: 'recording',
          savedToS: 100,
          problem: null,
          lostReadings: 0,
        });
      expect(await started.value.close()).toEqual({ ok: true, value: undefined });
      await full.value.close();
      expect(valuesIn(await readAll(path.dirname(folder), path.basename(folder)))).toEqual(
        countedTo(100),
      );
    },
  );
});
