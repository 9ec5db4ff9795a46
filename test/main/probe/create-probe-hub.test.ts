import { afterEach, describe, expect, test } from 'vitest';
import { openPseudoTerminal, type PseudoTerminal, systemClock } from '#main';
import { latin1Bytes } from '#shared-core';
import { type HeardHub, heardHub, serialSource } from './support/heard-hub.ts';
import { layCable, type SocatCable } from './support/socat-cable.ts';
import { pause, until } from './support/until.ts';

const opened: { close(): void | Promise<void> }[] = [];

afterEach(async () => {
  for (const each of opened.splice(0).reverse()) await each.close();
});

function terminal(): PseudoTerminal & { say(text: string): void } {
  const made = openPseudoTerminal();
  if (!made.ok) throw new Error(made.error);
  opened.push(made.value);
  return { ...made.value, say: (text) => made.value.write(latin1Bytes(text)) };
}

function hub(): HeardHub {
  const heard = heardHub();
  opened.push(heard.hub);
  return heard;
}

async function cable(): Promise<SocatCable> {
  const laid = await layCable();
  opened.push({ close: () => laid.remove() });
  return laid;
}

async function listening(rest: Parameters<typeof serialSource>[1] = {}) {
  const probe = terminal();
  const heard = hub();
  const connected = await heard.hub.connect(serialSource(probe.path, rest));
  expect(connected).toMatchObject({ ok: true });
  probe.say('\n');
  return { probe, ...heard };
}

describe('a probe on a real pseudo-terminal', () => {
  test('speaks plain text and is heard, line by line', async () => {
    const { probe, texts, hub } = await listening();
    probe.say('78.42\r\nT=78.50\n');
    probe.say('head,78.56,pot,91.3\r');
    await until('four readings', () => texts().length === 4);
    expect(texts()).toEqual([
      'head 78.42 good',
      'head 78.5 good',
      'head 78.56 good',
      'pot 91.3 good',
    ]);
    const { state, channels, lastLine, problem, rejectedLines } = hub.status();
    expect({ state, channels, lastLine, problem, rejectedLines }).toEqual({
      state: 'hearing',
      channels: ['head', 'pot'],
      lastLine: 'head,78.56,pot,91.3',
      problem: null,
      rejectedLines: 0,
    });
  });

  test('sends half lines, and each becomes one reading once its end arrives', async () => {
    const { probe, texts } = await listening();
    for (const piece of ['7', '8.', '42\r', '\n78', '.50\n']) {
      probe.say(piece);
      await pause(0.03);
    }
    await until('two readings', () => texts().length === 2);
    expect(texts()).toEqual(['head 78.42 good', 'head 78.5 good']);
  });

  test('sends garbage, and no good reading comes of it', async () => {
    const { probe, texts, hub } = await listening();
    const noise = Uint8Array.from({ length: 5000 }, (_, index) => (index * 7919 + 13) % 256);
    probe.write(noise.subarray(0, 2500));
    await pause(0.1);
    probe.say('\n78.42\n');
    await until('the reading after the noise', () => texts().includes('head 78.42 good'));
    expect(texts().filter((text) => text.endsWith('good'))).toEqual(['head 78.42 good']);
    expect(hub.status().state).toBe('hearing');
  });

  test('sends a megabyte without a line end, and the next line is heard', async () => {
    const { probe, texts, hub } = await listening();
    const block = new Uint8Array(4096).fill(0x37);
    while (hub.status().droppedBytes < 1_000_000) {
      probe.write(block);
      await pause(0);
    }
    await pause(0.1);
    probe.say('\n78.42\n');
    await until('the next line', () => texts().length === 1);
    expect(texts()).toEqual(['head 78.42 good']);
  });

  test('sends impossible values, and none is recorded as good', async () => {
    const { probe, texts, hub } = await listening();
    probe.say('85.00\n-127.00\nnan\n778.4\n78.42\n');
    await until('the good reading', () => texts().includes('head 78.42 good'));
    expect({ texts: texts(), rejected: hub.status().rejectedLines }).toEqual({
      texts: ['head 85 suspect', 'head -127 bad', 'head 778.4 bad', 'head 78.42 good'],
      rejected: 0,
    });
  });

  test('speaks at another speed: said plainly, and nothing is taken for a reading', async () => {
    const { probe, texts, hub } = await listening();
    const garbled = Uint8Array.from({ length: 40 }, (_, index) => 0x80 + ((index * 37) % 0x70));
    const timer = setInterval(() => probe.write(garbled), 50);
    opened.push({ close: () => clearInterval(timer) });
    await until('the verdict', () => hub.status().state === 'unreadable');
    expect({ advice: hub.status().advice, readings: texts() }).toEqual({
      advice: 'Bytes arrive but they are not text: the speed (baud rate) is probably wrong.',
      readings: [],
    });
  });

  test('several lines in one chunk are stamped apart, in order, none before the last', async () => {
    const { probe, readings } = await listening();
    for (let line = 0; line < 5; line += 1) {
      probe.say(`78.${line}\n`);
      await pause(0.1);
    }
    probe.say('79.0\n79.1\n79.2\n');
    await until('eight readings', () => readings.length === 8);
    const gaps = readings.slice(1).map(({ atS }, index) => atS - (readings[index]?.atS ?? 0));
    expect(gaps.every((gap) => gap > 0)).toBe(true);
  });

  test('status is told at most ten times a second, however fast the probe speaks', async () => {
    const { probe, readings, statuses } = await listening();
    const timer = setInterval(() => probe.say('78.42\n78.43\n78.44\n'), 5);
    opened.push({ close: () => clearInterval(timer) });
    const before = statuses.length;
    const fromS = systemClock.monotonicS();
    await pause(1);
    await until('a hundred readings', () => readings.length > 100);
    const tookS = systemClock.monotonicS() - fromS;
    expect(statuses.length - before).toBeLessThanOrEqual(Math.ceil(10 * tookS) + 1);
  });
});

describe('a plug that is pulled', () => {
  test('is told as lost, and the same path is heard again without a new connection', async () => {
    const wire = await cable();
    const { hub: listener, texts, links } = hub();
    expect((await listener.connect(serialSource(wire.path))).ok).toBe(true);
    wire.write('\n78.42\n78.4');
    await until('the first reading', () => texts().length === 1);
    await wire.pull();
    await until('the loss', () => links.length === 1);
    expect(listener.status().state).toBe('lost');
    await wire.insert();
    const speaking = setInterval(() => wire.write('78.50\n'), 100);
    opened.push({ close: () => clearInterval(speaking) });
    await until('the return', () => links.length === 2);
    expect(links.map(({ state, reason }) => `${state} ${reason}`)).toEqual([
      'lost unplugged',
      'back unplugged',
    ]);
    expect(new Set(texts())).toEqual(new Set(['head 78.42 good', 'head 78.5 good']));
  });

  test('leaves the gap between lost and back in the time stamps', async () => {
    const wire = await cable();
    const { hub: listener, readings, links } = hub();
    await listener.connect(serialSource(wire.path));
    wire.write('\n78.42\n');
    await until('the first reading', () => readings.length === 1);
    await wire.pull();
    await until('the loss', () => links.length === 1);
    await wire.insert();
    const speaking = setInterval(() => wire.write('78.50\n'), 100);
    opened.push({ close: () => clearInterval(speaking) });
    await until('the return', () => links.length === 2);
    const [lost, back] = links;
    const after = readings.filter(({ value }) => value === 78.5);
    expect(readings[0]?.atS).toBeLessThanOrEqual(lost?.atS ?? 0);
    expect(after.every(({ atS }) => atS > (lost?.atS ?? 0))).toBe(true);
    expect(back?.atS).toBeGreaterThan(lost?.atS ?? 0);
  });
});

describe('sleep', () => {
  test('closes the port and says why; waking opens the same port again', async () => {
    const { probe, hub: listener, texts, links } = await listening();
    probe.say('78.42\n');
    await until('the first reading', () => texts().length === 1);
    await listener.suspend();
    await listener.resume();
    const speaking = setInterval(() => probe.say('78.50\n'), 100);
    opened.push({ close: () => clearInterval(speaking) });
    await until('the return', () => links.length === 2);
    expect(links.map(({ state, reason }) => `${state} ${reason}`)).toEqual([
      'lost computer-asleep',
      'back computer-asleep',
    ]);
  });
});

describe('a port that cannot be opened', () => {
  test('is a typed problem, and nothing is connected afterwards', async () => {
    const { hub: listener } = hub();
    const path = '/dev/does-not-exist';
    expect(await listener.connect(serialSource(path))).toEqual({
      ok: false,
      error: { kind: 'port-not-found', path },
    });
    expect(listener.status().state).toBe('none');
  });

  test('is busy when another program has it', async () => {
    const { probe } = await listening();
    const second = hub();
    expect(await second.hub.connect(serialSource(probe.path))).toEqual({
      ok: false,
      error: { kind: 'port-busy', path: probe.path },
    });
  });
});

describe('the demo rig', () => {
  test('speaks through a real pseudo-terminal and follows the heat marks', async () => {
    const { hub: listener, readings } = hub();
    const connected = await listener.connect({
      kind: 'demo',
      rig: 'glass-bead-column',
      timeScale: 240,
      seed: 1,
    });
    expect(connected.ok && connected.value.path).toMatch(/^\/dev\//);
    const pot = () => readings.findLast(({ channel }) => channel === 'pot')?.value ?? 0;
    await until('the cold pot', () => readings.length > 20);
    expect(pot()).toBeLessThan(25);
    listener.followMark({ markId: 1, mark: { type: 'heat-on' } });
    await until('the pot to warm', () => pot() > 30);
    listener.followMark({ markId: 2, mark: { type: 'heat-off' } });
    expect(listener.status().state).toBe('hearing');
  });

  test('is refused by name when there is no such rig', async () => {
    const { hub: listener } = hub();
    const connected = await listener.connect({
      kind: 'demo',
      rig: 'teapot',
      timeScale: 20,
      seed: 1,
    });
    expect(connected).toEqual({
      ok: false,
      error: { kind: 'request-invalid', message: 'There is no demo rig named teapot.' },
    });
  });
});
