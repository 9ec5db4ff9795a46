import { describe, expect, test } from 'vitest';
import { type FileLayer, nodeFileLayer, pageInputs, type Session, type SideProcess } from '#main';
import { createMonitor, defaultRunSettings, type RequestAnswer, type RunInput } from '#shared-core';
import { createManualTime } from '../support/manual-time.ts';
import { ask, head, setUpSession, temperatureC } from '../support/session-bench.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';
import { recordedHeader, writeCutOffRun } from '../support/write-cut-off-run.ts';

type Bench = Awaited<ReturnType<typeof setUpSession>>;

/** A disk that reads as the test has it, and whose log of a run may be unreadable alone. */
function moodyDisk() {
  let mood: 'well' | 'asleep' | 'damaged' = 'well';
  const unlessOff = <T>(at: string, read: () => Promise<T>): Promise<T> => {
    if (mood === 'asleep') return new Promise<T>(() => {});
    const failed = { ok: false, error: { kind: 'failed', path: at, message: 'EIO' } };
    return mood === 'damaged' ? Promise.resolve(failed as T) : read();
  };
  const faults: Partial<FileLayer> = {
    list: (at) => unlessOff(at, () => nodeFileLayer.list(at)),
    read: (at, offset, length) => unlessOff(at, () => nodeFileLayer.read(at, offset, length)),
    sizeBytes: (at) => unlessOff(at, () => nodeFileLayer.sizeBytes(at)),
  };
  return {
    faults,
    is(next: typeof mood) {
      mood = next;
    },
  };
}

/** A process that was killed, or that waits for a disk that gives nothing. */
const deadDesk = (): SideProcess => ({
  processId: null,
  post: () => {},
  on: () => {},
  onExit: () => {},
  kill: () => {},
});

async function hear({ time, probeHub }: Bench, fromS: number, toS: number): Promise<void> {
  for (let second = fromS; second < toS; second += 1) {
    await time.pass(1);
    probeHub.send('readings', [head(time.clock.monotonicS(), temperatureC(second))]);
  }
}

/** What a window has that joins now: every page, and what was concluded. */
async function joined(session: Session, runId: string) {
  const inputs: RunInput[] = [];
  let page: RequestAnswer<'runs/read'> | null = null;
  for (let fromIndex: number | null = 0; fromIndex !== null; fromIndex = page.nextIndex) {
    page = await ask(session, 'runs/read', { runId, fromIndex });
    inputs.push(...page.inputs);
  }
  const { changes, modelVersions } = await ask(session, 'runs/changes', { runId });
  return { inputs, settings: page?.settings, endS: page?.endS, changes, modelVersions };
}

describe('a window that joins a run under way is told all of it', () => {
  test.each(['asleep', 'damaged'] as const)('while the disk is %s', async (mood) => {
    const disk = moodyDisk();
    const bench = await setUpSession({ faults: disk.faults });
    const { session } = bench;
    const { runId } = await ask(session, 'run/start', { settings: defaultRunSettings });
    await ask(session, 'run/mark', { mark: { type: 'heat-on' } });
    await hear(bench, 0, 400);
    const before = await joined(session, runId);
    disk.is(mood);
    await hear(bench, 400, 410);
    await ask(session, 'run/mark', { mark: { type: 'note', text: 'all is well here' } });
    const now = await joined(session, runId);
    expect(now.inputs).toHaveLength(before.inputs.length + 11);
    expect(now.inputs.slice(0, before.inputs.length)).toEqual(before.inputs);
    expect(now.changes.length).toBeGreaterThan(0);
    disk.is('well');
  });

  test('with every strength that the monitor has told, and each snapshot says how many there are', async () => {
    const bench = await setUpSession();
    const { session } = bench;
    let told = 0;
    session.on('snapshot', ({ estimatesTold }) => {
      told = estimatesTold;
    });
    const { runId } = await ask(session, 'run/start', { settings: defaultRunSettings });
    await ask(session, 'run/mark', { mark: { type: 'heat-on' } });
    await hear(bench, 0, 900);
    const { inputs } = await joined(session, runId);
    const { estimates } = await ask(session, 'runs/changes', { runId });
    const monitor = createMonitor(defaultRunSettings);
    for (const input of inputs) monitor.push(input);
    expect(monitor.estimates().length).toBeGreaterThan(3);
    expect(estimates).toEqual(monitor.estimates());
    expect(told).toBe(monitor.estimates().length);
  });

  test('while the process that reads whole runs is dead', async () => {
    const bench = await setUpSession({ startDesk: deadDesk });
    const { runId } = await ask(bench.session, 'run/start', { settings: defaultRunSettings });
    await hear(bench, 0, 30);
    expect((await joined(bench.session, runId)).inputs).toHaveLength(30);
  });
});

describe('what is told of a run under way is what its record tells', () => {
  test('page by page, where it fills several', async () => {
    const bench = await setUpSession();
    const { session } = bench;
    const { runId } = await ask(session, 'run/start', { settings: defaultRunSettings });
    await ask(session, 'run/mark', { mark: { type: 'heat-on' } });
    await hear(bench, 0, pageInputs + 500);
    const lost = {
      atS: bench.time.clock.monotonicS(),
      state: 'lost',
      reason: 'unplugged',
    } as const;
    bench.probeHub.send('link', lost);
    const underWay = await joined(session, runId);
    await ask(session, 'run/stop', {});
    const { endS: _, ...told } = underWay;
    expect(await joined(session, runId)).toMatchObject(told);
    expect(underWay.inputs).toHaveLength(pageInputs + 502);
    expect(underWay.changes.map(({ kind }) => kind)).toContain('alarm-changed');
  });

  test('and of one that was gone on with also what came before the program', async () => {
    const runsFolder = await temporaryFolder();
    const { clock } = createManualTime();
    const inputs = Array.from({ length: 400 }, (_, index): RunInput => {
      const timeS = index + 1;
      const value = temperatureC(index);
      return { kind: 'reading', timeS, channel: 'head', value, unit: '°C', quality: 'good' };
    });
    const cutOff = { inputs, header: { ...recordedHeader, modelVersion: 'before' } };
    const run = { ...cutOff, brokeOffS: 400.5, agoS: 30, clock };
    const { runId } = await writeCutOffRun(runsFolder, run);
    const bench = await setUpSession({ runsFolder, modelVersion: 'now' });
    const { session } = bench;
    await ask(session, 'run/continue', { runId });
    await hear(bench, 431, 700);
    const underWay = await joined(session, runId);
    await ask(session, 'run/stop', {});
    const { endS: _, ...told } = underWay;
    expect(await joined(session, runId)).toMatchObject(told);
    expect(underWay.inputs.slice(0, 400)).toEqual(inputs);
    expect(underWay.modelVersions).toEqual(['before', 'now']);
  });
});
