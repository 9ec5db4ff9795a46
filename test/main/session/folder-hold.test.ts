import { expect, test, vi } from 'vitest';
import { type FolderLock, nodeFileLayer } from '#main';
import { createFolderHold } from '../../../main/session/folder-hold.ts';
import { noFoldersKnown } from '../../../main/session/known-folders.ts';
import { eventually } from '../../support/eventually.ts';
import { createManualTime } from '../support/manual-time.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const lock = (onRelease = () => {}): FolderLock => ({
  isHeld: () => true,
  release: async () => onRelease(),
});

/** A hold on a folder that somebody else has, and what it does with each answer to its asking. */
async function asking(answers: readonly (FolderLock | null | Error)[]) {
  const { scheduler, ...time } = createManualTime();
  let asked = 0;
  const hold = await createFolderHold({
    files: nodeFileLayer,
    runsFolder: await temporaryFolder(),
    scheduler,
    known: noFoldersKnown,
    takeFolder: async () => {
      const answer = answers[asked] ?? null;
      asked += 1;
      if (answer instanceof Error) throw answer;
      return answer;
    },
  });
  /** Waits for the real disk each time. */
  const askAgain = async () => {
    const before = asked;
    await time.pass(5);
    await eventually(() => expect(asked).toBe(before + 1));
    await time.pass(0.1);
  };
  return { hold, askAgain, time, asked: () => asked };
}

test('a folder is asked for until it is had, also after a try that failed, and never again', async () => {
  const { hold, askAgain, time, asked } = await asking([null, null, new Error('a bug'), lock()]);
  const done: string[] = [];
  hold.keepAsking(
    async () => void done.push(`first, may write: ${hold.mayWrite()}`),
    async () => void done.push(`then, may write: ${hold.mayWrite()}`),
  );
  for (let tries = 0; tries < 3; tries += 1) await askAgain();
  await eventually(() =>
    expect(done).toEqual(['first, may write: false', 'then, may write: true']),
  );
  await time.pass(60);
  expect([asked(), hold.mayWrite()]).toEqual([4, true]);
});

test('a program that is closed while a folder is made ready gives it back, and begins nothing on it', async () => {
  const released = vi.fn();
  const { hold, askAgain } = await asking([null, lock(released)]);
  let goOn = () => {};
  const then = vi.fn(async () => {});
  const first = vi.fn(() => new Promise<void>((resolve) => (goOn = resolve)));
  hold.keepAsking(first, then);
  await askAgain();
  await eventually(() => expect(first).toHaveBeenCalledOnce());
  await hold.release();
  expect(released).not.toHaveBeenCalled();
  goOn();
  await eventually(() => expect(released).toHaveBeenCalledOnce());
  expect([then.mock.calls.length, hold.mayWrite()]).toEqual([0, false]);
});

test('a program that is closed while a folder is asked for does nothing on it', async () => {
  const released = vi.fn();
  let answer = (_: FolderLock | null) => {};
  const { scheduler, ...time } = createManualTime();
  let asked = 0;
  const hold = await createFolderHold({
    files: nodeFileLayer,
    runsFolder: await temporaryFolder(),
    scheduler,
    known: noFoldersKnown,
    takeFolder: () => {
      asked += 1;
      return asked === 1 ? Promise.resolve(null) : new Promise((resolve) => (answer = resolve));
    },
  });
  const [first, then] = [vi.fn(async () => {}), vi.fn(async () => {})];
  hold.keepAsking(first, then);
  await time.pass(5);
  await eventually(() => expect(asked).toBe(2));
  // Whoever asks for it waits still.
  await time.pass(20);
  expect(asked).toBe(2);
  await hold.release();
  answer(lock(released));
  await eventually(() => expect(released).toHaveBeenCalledOnce());
  expect([first.mock.calls, then.mock.calls]).toEqual([[], []]);
});
