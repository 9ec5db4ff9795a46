import { describe, expect, test } from 'vitest';
import type { Clock } from '#main';
import { fail, latin1Bytes, type PortInfo, type SerialSource, succeed } from '#shared-core';
import { createProbeLink } from '../../../../main/probe/link/probe-link.ts';
import type { ByteLineListeners } from '../../../../main/probe/port/byte-line.ts';
import { serialSource } from '../support/heard-hub.ts';

const usb = (path: string, serialNumber: string): PortInfo => ({
  path,
  manufacturer: 'A maker',
  vendorId: '1a86',
  productId: '7523',
  serialNumber,
  likelyProbe: true,
});

/** A port, a clock and a port list that do as they are told. */
function bench(rest: Parameters<typeof serialSource>[1] = {}) {
  const state = {
    nowS: 100,
    ports: [usb('/dev/ttyUSB0', 'one')] as readonly PortInfo[],
    listeners: null as ByteLineListeners | null,
    opens: [] as string[],
    closes: 0,
    closing: () => Promise.resolve(),
    refuse: false,
    exists: true,
    ticket: null as string | null,
    listing: Promise.resolve(),
    opening: Promise.resolve(),
  };
  const clock: Clock = { monotonicS: () => state.nowS, wallMs: () => 0 };
  const told: string[] = [];
  const source: SerialSource = serialSource('/dev/ttyUSB0', rest);
  const link = createProbeLink(
    source,
    {
      clock,
      listPorts: () => state.listing.then(() => state.ports),
      pathExists: () => state.exists,
      ticketOf: () => state.ticket,
      openLine: ({ path }, listeners) => {
        if (state.refuse) return Promise.resolve(fail({ kind: 'port-not-found', path }));
        state.opens.push(path);
        state.listeners = listeners;
        const close = () => {
          state.closes += 1;
          return state.closing();
        };
        const done = () => Promise.resolve(succeed(null));
        return state.opening.then(() => succeed({ write: done, changeSpeed: done, close }));
      },
    },
    {
      readings: (readings) =>
        told.push(...readings.map(({ channel, value }) => `${channel} ${value}`)),
      link: ({ state: to, reason }) => told.push(`${to} ${reason}`),
    },
  );
  return {
    state,
    told,
    link,
    say: (text: string) => state.listeners?.bytes(latin1Bytes(text)),
    /** Lets time pass in ticks of a tenth of a second, with the promises in between. */
    async pass(seconds: number, eachSecond: () => void = () => {}) {
      for (let tick = 0; tick < 10 * seconds; tick += 1) {
        state.nowS += 0.1;
        if (tick % 10 === 0) eachSecond();
        link.tick();
        for (let turn = 0; turn < 5; turn += 1) await Promise.resolve();
      }
    },
  };
}

describe('createProbeLink', () => {
  test('a probe that falls silent is told as lost after five seconds, once, and as back when heard', async () => {
    const { link, say, pass, told } = bench();
    await link.open();
    await pass(3, () => say('20.5\n'));
    await pass(3.5);
    expect(told.filter((text) => text.includes('lost'))).toEqual([]);
    await pass(10);
    expect(link.view().state).toBe('silent');
    say('20.5\n');
    expect(told.slice(-3)).toEqual(['lost silent', 'back silent', 'head 20.5']);
  });

  test('its view is the same object until something else is heard or time tells something else', async () => {
    const { link, say, pass } = bench();
    await link.open();
    await pass(6, () => say('20.5\n'));
    const view = link.view();
    await pass(0.1);
    expect(link.view()).toBe(view);
    say('20.5\n');
    const heard = link.view();
    expect(heard).not.toBe(view);
    expect(heard.latest[0]?.timeS).toBeGreaterThan(view.latest[0]?.timeS ?? 0);
    await pass(4);
    expect(link.view()).toEqual({ ...heard, readingsPerS: expect.any(Number) });
    expect(link.view().readingsPerS).toBeLessThan(heard.readingsPerS);
  });

  test('a slow probe is given three of its intervals before it counts as silent', async () => {
    const { link, say, pass, told } = bench();
    await link.open();
    for (let line = 0; line < 5; line += 1) await pass(8, once(say, '20.5\n'));
    expect(link.view().state).toBe('hearing');
    expect(told.filter((text) => text.includes('lost'))).toEqual([]);
    await pass(40);
    expect(told.at(-1)).toBe('lost silent');
  });

  test('a device file that vanished without a word counts as unplugged', async () => {
    const { link, say, pass, state, told } = bench();
    await link.open();
    await pass(3, () => say('20.5\n'));
    state.exists = false;
    state.refuse = true;
    await pass(7);
    expect(told.filter((text) => text.includes('lost'))).toEqual(['lost unplugged']);
    expect({ state: link.view().state, problem: link.view().problem?.kind }).toEqual({
      state: 'lost',
      problem: 'port-not-found',
    });
  });

  test('a pseudo-terminal that ended is not opened again until its link was made anew', async () => {
    const { link, say, pass, state } = bench();
    state.ticket = 'first';
    await link.open();
    await pass(3, () => say('20.5\n'));
    state.listeners?.closed(null);
    await pass(5);
    expect({ opens: state.opens.length, state: link.view().state }).toEqual({
      opens: 1,
      state: 'lost',
    });
    state.ticket = 'second';
    await pass(1);
    expect(state.opens.length).toBe(2);
  });

  test('the same USB device under another name is opened there', async () => {
    const { link, say, pass, state, told } = bench();
    await link.open();
    await pass(3, () => say('20.5\n'));
    const { device } = link.view();
    state.ports = [usb('/dev/ttyUSB1', 'one')];
    state.listeners?.closed(null);
    await pass(1);
    await pass(1, () => say('\n20.6\n'));
    expect(state.opens).toEqual(['/dev/ttyUSB0', '/dev/ttyUSB1']);
    expect(told.slice(-3, -1)).toEqual(['lost unplugged', 'back unplugged']);
    expect(link.view()).toMatchObject({ path: '/dev/ttyUSB1', device });
  });

  test('another device in the same socket is told as another probe', async () => {
    const { link, say, pass, state, told } = bench();
    await link.open();
    await pass(3, () => say('20.5\n'));
    const { device } = link.view();
    state.ports = [usb('/dev/ttyUSB0', 'two')];
    state.listeners?.closed(null);
    await pass(1);
    await pass(1, () => say('\n20.6\n'));
    expect(told.slice(-3, -1)).toEqual(['lost unplugged', 'back probe-changed']);
    expect(link.view().device).not.toBe(device);
  });

  test('boot messages of a board that restarts are not counted against it', async () => {
    const { link, say, pass } = bench();
    await link.open();
    await pass(1);
    say('ets Jan  8 2013,rst cause:2\r\nready\r\n');
    await pass(1, () => say('20.5\n'));
    expect({ rejected: link.view().rejectedLines, state: link.view().state }).toEqual({
      rejected: 0,
      state: 'hearing',
    });
  });

  test('a half line before the plug was pulled is not joined to what comes after', async () => {
    const { link, say, pass, state, told } = bench();
    await link.open();
    await pass(1);
    say('20.5\n7');
    state.listeners?.closed(null);
    await pass(1);
    say('8.42\n');
    say('78.50\n');
    expect(told).toEqual(['head 20.5', 'lost unplugged', 'back unplugged', 'head 78.5']);
  });

  test('a probe that reports no value is unreadable, with the reason', async () => {
    const { link, say, pass, told } = bench();
    await link.open();
    await pass(3, () => say('20.5\n'));
    await pass(8, () => say('nan\n'));
    expect({ state: link.view().state, advice: link.view().advice }).toEqual({
      state: 'unreadable',
      advice: 'The probe says it has no value for head: is the sensor plugged in?',
    });
    expect(told.at(-1)).toBe('lost unreadable');
  });

  test('a port that stays silent is closed and opened again from time to time', async () => {
    const { link, pass, state } = bench();
    await link.open();
    await pass(50);
    expect(state.opens.length).toBeGreaterThanOrEqual(2);
    expect(state.opens.length).toBeLessThanOrEqual(3);
  });

  test('closing while an opening is under way leaves nothing open', async () => {
    const { link, state, pass } = bench();
    let opened = () => {};
    state.opening = new Promise((resolve) => {
      opened = resolve;
    });
    const opening = link.open();
    await pass(1);
    await link.close();
    opened();
    await opening;
    await pass(3);
    expect({ opens: state.opens.length, closes: state.closes }).toEqual({ opens: 1, closes: 1 });
  });

  test('closing while the ports are being listed opens nothing, then or later', async () => {
    const { link, say, pass, state } = bench();
    state.ticket = 'first';
    await link.open();
    await pass(3, () => say('20.5\n'));
    let listed = () => {};
    state.listing = new Promise((resolve) => {
      listed = resolve;
    });
    state.listeners?.closed(null);
    await pass(1);
    await link.close();
    listed();
    await pass(1);
    state.ticket = 'second';
    await pass(3);
    expect(state.opens.length).toBe(1);
  });

  test('when the ports cannot be listed it says why and tries again', async () => {
    const { link, say, pass, state, told } = bench();
    await link.open();
    await pass(3, () => say('20.5\n'));
    state.listing = Promise.reject(new Error('udev does not answer'));
    state.listeners?.closed(null);
    await pass(2);
    expect({ state: link.view().state, problem: link.view().problem }).toEqual({
      state: 'lost',
      problem: {
        kind: 'port-failed',
        path: '/dev/ttyUSB0',
        message: 'udev does not answer',
      },
    });
    state.listing = Promise.resolve();
    await pass(1);
    await pass(1, () => say('\n20.6\n'));
    expect(told.slice(-3)).toEqual(['lost unplugged', 'back unplugged', 'head 20.6']);
  });

  test('a port that does not close is given up and opened again', async () => {
    const { link, pass, state } = bench();
    state.closing = () => Promise.reject(new Error('EIO'));
    await link.open();
    await pass(30);
    expect(state.opens.length).toBe(2);
  });
});

function once(say: (text: string) => void, text: string): () => void {
  let said = false;
  return () => {
    if (!said) say(text);
    said = true;
  };
}
