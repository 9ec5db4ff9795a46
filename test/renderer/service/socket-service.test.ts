import { describe, expect, test } from 'vitest';
import { wire } from '#shared-core';
import { createSocketService, type Socket } from '../../../renderer/service/index.ts';
import { waitBeforeRetryMs } from '../../../renderer/service/wait-before-retry.ts';

function standIn() {
  const sockets: StandInSocket[] = [];
  const waits: { waitMs: number; task: () => void }[] = [];
  let secret = 'abc';
  const service = createSocketService({
    token: () => secret,
    keepSecret: (kept) => {
      secret = kept;
    },
    random: () => 0.5,
    after: (waitMs, task) => waits.push({ waitMs, task }),
    openSocket: () => {
      const sent: string[] = [];
      const socket = {
        readyState: 1,
        sent,
        send: (text: string) => sent.push(text),
        close: () => {},
        onopen: null,
        onclose: null,
        onmessage: null,
      };
      sockets.push(socket);
      return socket;
    },
  });
  return { service, sockets, waits };
}

type StandInSocket = Socket & { readyState: number; sent: string[] };

function welcome(socket: StandInSocket | undefined, secret = 'later') {
  socket?.onopen?.();
  socket?.onmessage?.({ data: JSON.stringify({ type: 'welcome', secret, mayCommand: true }) });
}

describe('createSocketService', () => {
  test('says its token first, then what was asked while the socket opened', async () => {
    const { service, sockets } = standIn();
    const answer = service.request('ports/list', {});
    welcome(sockets[0]);
    sockets[0]?.onmessage?.({
      data: JSON.stringify({ type: 'answer', id: 0, result: { ok: true, value: { ports: [] } } }),
    });
    expect(await answer).toEqual({ ok: true, value: { ports: [] } });
    expect(sockets[0]?.sent.map((text) => JSON.parse(text))).toEqual([
      { token: 'abc' },
      { id: 0, name: 'ports/list', body: {} },
    ]);
  });

  test('answers `unanswered` to whatever was sent when the socket closed, and `disconnected` to marks made meanwhile', async () => {
    const { service, sockets } = standIn();
    welcome(sockets[0]);
    const open = service.request('run/status', {});
    sockets[0]?.onclose?.({ code: 1006 });
    const later = service.request('run/mark', { mark: { type: 'heat-off' } });
    expect([await open, await later]).toEqual([
      { ok: false, error: { kind: 'unanswered' } },
      { ok: false, error: { kind: 'disconnected' } },
    ]);
  });

  test('answers `disconnected` to what is asked of a socket that closes, and sends it nothing', async () => {
    const { service, sockets } = standIn();
    welcome(sockets[0]);
    const socket = sockets[0];
    if (socket !== undefined) socket.readyState = 2;
    const asked = service.request('run/mark', { mark: { type: 'heat-off' } });
    expect(await asked).toEqual({ ok: false, error: { kind: 'disconnected' } });
    expect(socket?.sent).toHaveLength(1);
  });

  test('answers `disconnected` to what was asked while the socket opened, and never sent', async () => {
    const { service, sockets } = standIn();
    const waiting = service.request('run/mark', { mark: { type: 'heat-off' } });
    sockets[0]?.onopen?.();
    sockets[0]?.onclose?.({ code: 1006 });
    expect(await waiting).toEqual({ ok: false, error: { kind: 'disconnected' } });
  });

  test('waits longer after each failed attempt and starts afresh after success', () => {
    const { sockets, waits } = standIn();
    sockets[0]?.onclose?.({ code: 1006 });
    waits[0]?.task();
    sockets[1]?.onclose?.({ code: 1006 });
    waits[1]?.task();
    welcome(sockets[2]);
    sockets[2]?.onclose?.({ code: 1006 });
    expect(waits.map(({ waitMs }) => waitMs)).toEqual([250, 500, 250]);
    expect(waitBeforeRetryMs(50, 0.5)).toBe(5000);
  });

  test('comes back with the secret of its welcome, and stops asking when it is refused', () => {
    const { service, sockets, waits } = standIn();
    welcome(sockets[0], 'kept-secret');
    sockets[0]?.onclose?.({ code: 1006 });
    waits[0]?.task();
    sockets[1]?.onopen?.();
    sockets[1]?.onclose?.({ code: wire.refusedCode });
    expect([sockets[1]?.sent, waits.length, service.connection()]).toEqual([
      [JSON.stringify({ token: 'kept-secret' })],
      1,
      'refused',
    ]);
  });

  test('drops what it cannot understand and hands on only events that fit the contract', () => {
    const { service, sockets } = standIn();
    const heard: unknown[] = [];
    service.on('ports', (body) => heard.push(body));
    const say = (data: unknown) => sockets[0]?.onmessage?.({ data });
    say('{');
    say(JSON.stringify({ type: 'event', name: 'ports', body: { ports: 'none' } }));
    say(JSON.stringify({ type: 'event', name: 'constructor', body: {} }));
    say(JSON.stringify({ type: 'event', name: 'ports', body: { ports: [] } }));
    expect(heard).toEqual([{ ports: [] }]);
  });

  test('an answer that does not fit the contract is an error, not a value', async () => {
    const { service, sockets } = standIn();
    welcome(sockets[0]);
    const answer = service.request('ports/list', {});
    sockets[0]?.onmessage?.({
      data: JSON.stringify({ type: 'answer', id: 0, result: { ok: true, value: { ports: 3 } } }),
    });
    expect(await answer).toEqual({
      ok: false,
      error: { kind: 'internal', message: 'answer to ports/list not understood' },
    });
  });
});
