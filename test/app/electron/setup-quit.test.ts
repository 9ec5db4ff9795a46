import { EventEmitter } from 'node:events';
import { expect, test } from 'vitest';
import { setupQuit } from '../../../app/electron/setup-quit.ts';

function setUp({ isRecording = true, answer = true, closes = true } = {}) {
  const calls: string[] = [];
  const window = new EventEmitter();
  const events = new EventEmitter();
  const app = Object.assign(events, {
    quit: () => {
      calls.push('quit');
      wish(events, 'before-quit');
    },
    exit: () => calls.push('exit'),
  });
  setupQuit({
    app: app as never,
    window: window as never,
    isAnythingAtStake: () => isRecording,
    askToEnd: async () => {
      calls.push('ask');
      return answer;
    },
    close: () => {
      calls.push('close');
      return closes ? Promise.resolve() : new Promise(() => {});
    },
    patience: { mostMs: 20, mostSavingMs: 200 },
  });
  const settle = () => new Promise((resolve) => setTimeout(resolve, 0));
  return { calls, window, app, settle };
}

/** Answers whether it was prevented. */
function wish(emitter: EventEmitter, name: string): boolean {
  let prevented = false;
  emitter.emit(name, {
    preventDefault: () => {
      prevented = true;
    },
  });
  return prevented;
}

test('closing the window or quitting in mid-run asks, once, and a no changes nothing', async () => {
  const { calls, window, app, settle } = setUp({ answer: false });
  expect([wish(window, 'close'), wish(app, 'before-quit')]).toEqual([true, true]);
  await settle();
  expect(calls).toEqual(['ask']);
  wish(app, 'before-quit');
  await settle();
  expect(calls).toEqual(['ask', 'ask']);
});

test('a yes ends the run in order and then the program', async () => {
  const { calls, window, settle } = setUp();
  wish(window, 'close');
  await settle();
  expect(calls).toEqual(['ask', 'quit', 'close', 'exit']);
});

test('without a run nobody is asked', async () => {
  const { calls, window, app, settle } = setUp({ isRecording: false });
  expect(wish(window, 'close')).toBe(false);
  wish(app, 'before-quit');
  await settle();
  expect(calls).toEqual(['close', 'exit']);
});

test('a run that its disk has not taken yet is waited for longer than anything else', async () => {
  const { calls, window, settle } = setUp({ closes: false });
  wish(window, 'close');
  await settle();
  await new Promise((resolve) => setTimeout(resolve, 60));
  expect(calls).toEqual(['ask', 'quit', 'close']);
  await expect.poll(() => calls).toEqual(['ask', 'quit', 'close', 'exit']);
});

test('what does not close in time is left behind, and a second wish to quit ends at once', async () => {
  const slow = setUp({ isRecording: false, closes: false });
  wish(slow.app, 'before-quit');
  await expect.poll(() => slow.calls).toEqual(['close', 'exit']);
  const hasty = setUp({ isRecording: false, closes: false });
  wish(hasty.app, 'before-quit');
  wish(hasty.app, 'before-quit');
  expect(hasty.calls).toEqual(['close', 'exit']);
});
