import { EventEmitter } from 'node:events';
import { expect, test } from 'vitest';
import { createEndQuestion } from '../../../app/loopback/end-question.ts';
import { untilToldToStop } from '../../../app/loopback/until-told-to-stop.ts';

const atOnce = { asksFirst: () => false, again: () => {} };

test.each(['SIGINT', 'SIGTERM', 'SIGHUP'])('%s ends the program', async (signal) => {
  const signals = Object.assign(new EventEmitter(), { ppid: 7 });
  const told = untilToldToStop(signals, atOnce);
  signals.emit(signal);
  await expect(told).resolves.toBeUndefined();
});

test('a program whose starter is gone ends by itself', async () => {
  const signals = Object.assign(new EventEmitter(), { ppid: 7 });
  const told = untilToldToStop(signals, atOnce);
  signals.ppid = 1;
  await expect(told).resolves.toBeUndefined();
});

test('in mid-run the first Ctrl+C asks, the second is the yes, the third ends at once', async () => {
  const signals = Object.assign(new EventEmitter(), { ppid: 7 });
  const said: string[] = [];
  let nowMs = 0;
  let isEnded = false;
  let again = 0;
  const told = untilToldToStop(signals, {
    asksFirst: createEndQuestion({
      whatIsLost: () => 'A run goes on.',
      isPersonThere: true,
      say: (line) => said.push(line),
      nowMs: () => nowMs,
    }),
    again: () => void ++again,
  }).then(() => {
    isEnded = true;
  });
  signals.emit('SIGINT');
  nowMs = 20_000;
  signals.emit('SIGINT');
  await Promise.resolve();
  expect({ isEnded, asked: said.length }).toEqual({ isEnded: false, asked: 2 });
  nowMs = 25_000;
  signals.emit('SIGINT');
  await told;
  signals.emit('SIGINT');
  expect({ isEnded, asked: said.length, again }).toEqual({ isEnded: true, asked: 2, again: 1 });
});

test('the system is not asked back, and neither is a script or a person without a run', async () => {
  const ask = (isRecording: boolean, isPersonThere: boolean) =>
    createEndQuestion({
      whatIsLost: () => (isRecording ? 'A run goes on.' : ''),
      isPersonThere,
      say: () => {},
      nowMs: () => 0,
    })();
  expect([ask(false, true), ask(true, false), ask(true, true)]).toEqual([false, false, true]);
  const signals = Object.assign(new EventEmitter(), { ppid: 7 });
  const told = untilToldToStop(signals, { asksFirst: () => true, again: () => {} });
  signals.emit('SIGTERM');
  await expect(told).resolves.toBeUndefined();
});
