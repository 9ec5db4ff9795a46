import { expect, test } from 'vitest';
import { type FileLayer, nodeFileLayer } from '#main';
import { defaultRunSettings } from '#shared-core';
import { eventually } from '../../support/eventually.ts';
import { diskAtRest } from '../support/manual-time.ts';
import { ask, head, setUpSession, teacher } from '../support/session-bench.ts';

/** A disk that holds what it is asked of some files, from when it is told to until it is woken. */
function holding(isOf: (at: string) => boolean) {
  let isHeld = false;
  const asleep: (() => void)[] = [];
  const held =
    <A extends [string, ...unknown[]], R>(act: (...asked: A) => Promise<R>) =>
    async (...asked: A): Promise<R> => {
      if (isHeld && isOf(asked[0])) await new Promise<void>((wake) => asleep.push(wake));
      return act(...asked);
    };
  return {
    hold() {
      isHeld = true;
    },
    wake() {
      isHeld = false;
      for (const wake of asleep.splice(0)) wake();
    },
    held,
  };
}

const { list, sizeBytes, stateOf, read, freeBytes, createAppend } = nodeFileLayer;

/** What is answered before the clock of the run has gone on by more than a second, however long the real disk takes. */
async function answeredWithin1s(
  answer: Promise<unknown>,
  pass: (seconds: number) => Promise<void>,
): Promise<unknown> {
  let answered: unknown = 'not yet';
  void answer.then((value) => {
    answered = value;
  });
  for (let turn = 0; turn < 10; turn += 1) {
    await pass(0.1);
    await diskAtRest();
  }
  await eventually(() => expect(answered).not.toBe('not yet'));
  return answered;
}

test('a run is stopped while the disk holds all that is looked at, and is in the library once it does not', async () => {
  const disk = holding(() => true);
  const faults: Partial<FileLayer> = {
    list: disk.held(list),
    sizeBytes: disk.held(sizeBytes),
    stateOf: disk.held(stateOf),
    read: disk.held(read),
    freeBytes: disk.held(freeBytes),
  };
  const { session, time, probeHub } = await setUpSession({ faults });
  const { runId } = await ask(session, 'run/start', { settings: defaultRunSettings });
  await time.pass(1);
  probeHub.send('readings', [head(time.clock.monotonicS(), 22)]);
  disk.hold();
  const stopped = session.handle('run/stop', {}, teacher);
  expect(await answeredWithin1s(stopped, time.pass)).toEqual({ ok: true, value: { runId } });
  disk.wake();
  expect((await ask(session, 'runs/list', {})).runs).toMatchObject([{ runId, ended: 'clean' }]);
});

test('a rehearsal begins though the disk holds the note that there was one', async () => {
  const disk = holding((at) => at.includes('rigs'));
  const faults: Partial<FileLayer> = { createAppend: disk.held(createAppend) };
  const { session, time } = await setUpSession({ faults, withoutProbe: true });
  const source = { kind: 'demo', rig: 'glassBeads', timeScale: 60, seed: 1 } as const;
  await ask(session, 'probe/connect', { source });
  disk.hold();
  const started = session.handle('run/start', { settings: defaultRunSettings }, teacher);
  expect(await answeredWithin1s(started, time.pass)).toMatchObject({ ok: true });
  disk.wake();
  await ask(session, 'run/stop', {});
  expect(await ask(session, 'rigs/list', {})).toMatchObject({ hasRehearsed: true });
});
