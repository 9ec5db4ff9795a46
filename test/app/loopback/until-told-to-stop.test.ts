import { EventEmitter } from 'node:events';
import { expect, test } from 'vitest';
import { untilToldToStop } from '../../../app/loopback/until-told-to-stop.ts';

test.each(['SIGINT', 'SIGTERM', 'SIGHUP'])(
  '%s ends the program once, and a second one does no harm',
  async (signal) => {
    const signals = Object.assign(new EventEmitter(), { ppid: 7 });
    const told = untilToldToStop(signals);
    signals.emit(signal);
    signals.emit(signal);
    await expect(told).resolves.toBeUndefined();
  },
);

test('a program whose starter is gone ends by itself', async () => {
  const signals = Object.assign(new EventEmitter(), { ppid: 7 });
  const told = untilToldToStop(signals);
  signals.ppid = 1;
  await expect(told).resolves.toBeUndefined();
});
