import { EventEmitter } from 'node:events';
import { expect, test } from 'vitest';
import { utilitySideProcess } from '../../../app/electron/utility-side-process.ts';

test('the serial process is heard, told, seen to end, and killed only when asked for', () => {
  const child = new EventEmitter();
  const calls: unknown[] = [];
  const worker = utilitySideProcess(
    Object.assign(child, {
      pid: 7,
      postMessage: (message: unknown) => calls.push(['post', message]),
      kill: () => {
        calls.push('kill');
        return true;
      },
    }),
  );
  worker.on((message) => calls.push(['heard', message]));
  worker.onExit(() => calls.push('ended'));
  worker.post({ type: 'ping' });
  child.emit('message', { type: 'pong' });
  child.emit('exit');
  child.emit('exit');
  worker.kill();
  expect({ id: worker.processId, calls }).toEqual({
    id: 7,
    calls: [['post', { type: 'ping' }], ['heard', { type: 'pong' }], 'ended', 'kill'],
  });
});
