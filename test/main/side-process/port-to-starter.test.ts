import { EventEmitter } from 'node:events';
import { expect, test } from 'vitest';
import { portToStarter } from '../../../main/side-process/port-to-starter.ts';

/** A process that another one started, and what it sent over Node's own channel. */
function started() {
  const events = new EventEmitter();
  const sent: unknown[] = [];
  const on = (name: 'message', listener: (message: unknown) => void) => events.on(name, listener);
  return { events, sent, process: { on, send: (message: unknown) => sent.push(message) } };
}

test('a process that Node started speaks over Node’s own channel', () => {
  const { events, sent, process } = started();
  const port = portToStarter(process);
  const heard: unknown[] = [];
  port.on((message) => heard.push(message));
  port.post({ type: 'pong' });
  events.emit('message', { type: 'ping' });
  expect([sent, heard]).toEqual([[{ type: 'pong' }], [{ type: 'ping' }]]);
});

test('what is said to one that has gone is no failure of this process', () => {
  const failed: unknown[] = [];
  const { process } = started();
  const send = (_: unknown, done?: (error: Error | null) => void) => {
    const gone = new Error('write EPIPE');
    if (done === undefined) failed.push(gone);
    else done(gone);
  };
  portToStarter({ ...process, send }).post({ type: 'pong' });
  expect(failed).toEqual([]);
});

test('one that Electron started speaks over the port that it was given, and hears what is in its messages', () => {
  const { events, sent, process } = started();
  const given = new EventEmitter();
  const posted: unknown[] = [];
  const port = portToStarter({
    ...process,
    parentPort: {
      postMessage: (message) => posted.push(message),
      on: (name, listener) => given.on(name, listener),
    },
  });
  const heard: unknown[] = [];
  port.on((message) => heard.push(message));
  port.post({ type: 'pong' });
  given.emit('message', { data: { type: 'ping' } });
  events.emit('message', 'of nobody');
  expect([posted, sent, heard]).toEqual([[{ type: 'pong' }], [], [{ type: 'ping' }]]);
});

test('one that nobody started harms nothing by speaking', () => {
  const { process } = started();
  const alone = portToStarter({ on: process.on, parentPort: null });
  expect(() => alone.post({ type: 'pong' })).not.toThrow();
});
