import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { createRememberingProbeHub, type FileLayer, nodeFileLayer } from '#main';
import type { PortInfo, ProbeSource } from '#shared-core';
import { createFakeProbeHub } from '../../support/fake-probe-hub.ts';
import { serialSource } from '../support/heard-hub.ts';
import { pause, until } from '../support/until.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'memory-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const file = () => path.join(folder, 'known-probes.json');
const port = (at: string, serialNumber: string): PortInfo => ({
  path: at,
  manufacturer: null,
  vendorId: '1a86',
  productId: '7523',
  serialNumber,
  likelyProbe: true,
});

/** A hub with these ports, and a probe heard on the first of them. */
function hubWith(ports: readonly PortInfo[], mayWrite = true, files: FileLayer = nodeFileLayer) {
  const inner = { ...createFakeProbeHub(), listPorts: () => Promise.resolve(ports) };
  const hub = createRememberingProbeHub(inner, {
    files,
    memoryFile: file(),
    mayWrite: () => mayWrite,
  });
  return {
    hub,
    inner,
    async hear(source: ProbeSource, state: 'hearing' | 'unreadable') {
      const connected = await inner.connect(source);
      if (connected.ok) inner.send('status', { ...connected.value, state });
    },
  };
}

const source = serialSource('/dev/ttyUSB0', { baudRate: 9600, language: 'json-lines' });

describe('createRememberingProbeHub', () => {
  test('offers a device that was heard the way it was heard, on whatever port it is now', async () => {
    const first = hubWith([port('/dev/ttyUSB0', 'one')]);
    await first.hear(source, 'hearing');
    await until('the memory', () => content().includes('json-lines'));
    const later = hubWith([port('/dev/ttyUSB3', 'one'), port('/dev/ttyUSB4', 'two')]);
    const ports = await later.hub.listPorts();
    expect(ports.map(({ remembered }) => remembered ?? null)).toEqual([
      { ...source, path: '/dev/ttyUSB3' },
      null,
    ]);
  });

  test('knows the devices of a folder that was away when it was first looked at, and forgets none of them', async () => {
    const first = hubWith([port('/dev/ttyUSB0', 'one')]);
    await first.hear(source, 'hearing');
    await until('the memory', () => content().includes('one'));
    let isAway = true;
    const ifThere: FileLayer = {
      ...nodeFileLayer,
      async sizeBytes(at) {
        if (!isAway) return nodeFileLayer.sizeBytes(at);
        return { ok: false, error: { kind: 'missing', path: at, message: 'away' } };
      },
    };
    const later = hubWith([port('/dev/ttyUSB0', 'two')], true, ifThere);
    await later.hub.listPorts();
    isAway = false;
    await later.hear(source, 'hearing');
    await until('the other device', () => content().includes('two'));
    expect(content()).toContain('"one"');
  });

  test('puts a damaged memory aside before it keeps one of its own', async () => {
    const before = '{"version":1,';
    writeFileSync(file(), before);
    const { hub, hear } = hubWith([port('/dev/ttyUSB0', 'one')]);
    await hub.listPorts();
    await hear(source, 'hearing');
    await until('the memory', () => content().includes('json-lines'));
    expect(readFileSync(`${file()}.not-understood`, 'utf8')).toBe(before);
  });

  test('reads a memory of the first version, and keeps a copy of it before it writes its own', async () => {
    const [{ vendorId, productId, serialNumber }] = [port('', 'old')];
    const probe = { vendorId, productId, serialNumber, source };
    const before = JSON.stringify({ version: 1, probes: [probe] });
    writeFileSync(file(), before);
    const { hub, hear } = hubWith([port('/dev/ttyUSB0', 'one'), port('/dev/ttyUSB7', 'old')]);
    expect((await hub.listPorts())[1]?.remembered).toEqual({ ...source, path: '/dev/ttyUSB7' });
    await hear(source, 'hearing');
    await until('the memory', () => content().includes('still-head-probes'));
    expect(JSON.parse(content())).toEqual({
      format: 'still-head-probes',
      version: 2,
      probes: [{ ...probe, serialNumber: 'one' }, probe],
    });
    expect(readFileSync(`${file()}.older-version`, 'utf8')).toBe(before);
  });

  test('leaves the memory of a newer version, and that of a folder in use by another program, alone', async () => {
    const newer = '{"format":"still-head-probes","version":9,"shelves":[]}';
    for (const [before, mayWrite] of [
      [newer, true],
      ['{"version":1,"probes":[]}', false],
    ] as const) {
      writeFileSync(file(), before);
      const { hub, hear } = hubWith([port('/dev/ttyUSB0', 'one')], mayWrite);
      await hear(source, 'hearing');
      const isRemembered = async () => (await hub.listPorts())[0]?.remembered !== undefined;
      while (!(await isRemembered())) await pause(0.01);
      await pause(0.1);
      expect([content(), readdirSync(folder)]).toEqual([before, ['known-probes.json']]);
    }
  });

  test('remembers each of several probes, and nothing of a simulated still', async () => {
    const probes = [source, serialSource('/dev/ttyUSB1', { language: 'scpi' })];
    const { hub, hear } = hubWith([port('/dev/ttyUSB0', 'one'), port('/dev/ttyUSB1', 'two')]);
    const demo: ProbeSource = { kind: 'demo', rig: 'vigreux', timeScale: 60, seed: 1 };
    await hear(demo, 'hearing');
    await hear({ kind: 'several', probes, timeScale: 1 }, 'hearing');
    await until('the memory', () => content().includes('scpi'));
    expect((await hub.listPorts()).map(({ remembered }) => remembered ?? null)).toEqual(probes);
  });

  test('what was heard once is written once, however often it is told', async () => {
    let writes = 0;
    const files: FileLayer = {
      ...nodeFileLayer,
      rename(from, to) {
        writes += 1;
        return nodeFileLayer.rename(from, to);
      },
    };
    const { hear } = hubWith([port('/dev/ttyUSB0', 'one')], true, files);
    for (let times = 0; times < 3; times += 1) await hear(source, 'hearing');
    await until('the memory', () => content().includes('json-lines'));
    await hear({ ...source, baudRate: 4800 }, 'hearing');
    await until('the other way', () => content().includes('4800'));
    expect(writes).toBe(2);
  });

  test('a device without an identity of its own is not known again', async () => {
    const nameless = { ...port('/dev/ttyS0', ''), vendorId: null };
    const { hub, hear } = hubWith([nameless]);
    await hear(serialSource('/dev/ttyS0'), 'hearing');
    await pause(0.1);
    expect([await hub.listPorts(), content()]).toEqual([[nameless], '']);
  });

  test('ports that are told are told with what is remembered of them, everything else as it is', async () => {
    const ports = [port('/dev/ttyUSB0', 'one')];
    const first = hubWith(ports);
    await first.hear(source, 'hearing');
    await until('the memory', () => content().includes('json-lines'));
    const { hub, inner } = hubWith(ports);
    const told: (readonly PortInfo[])[] = [];
    const states: string[] = [];
    const stop = hub.on('ports', (heard) => told.push(heard));
    hub.on('status', ({ state }) => states.push(state));
    inner.send('ports', ports);
    await until('the ports', () => told.length === 1);
    inner.send('status', { ...inner.status(), state: 'silent' });
    expect([told[0]?.[0]?.remembered, states]).toEqual([source, ['silent']]);
    stop();
    inner.send('ports', []);
    await pause(0.05);
    expect(told).toHaveLength(1);
  });

  test('does not remember a way in which the probe was not understood', async () => {
    const { hub, hear } = hubWith([port('/dev/ttyUSB0', 'one')]);
    await hear(source, 'unreadable');
    expect((await hub.listPorts())[0]?.remembered).toBeUndefined();
  });

  test.each(['', '{', '{"version":2}', '[]'])(
    'starts from nothing when the file holds %j',
    async (text) => {
      writeFileSync(file(), text);
      const { hub } = hubWith([port('/dev/ttyUSB0', 'one')]);
      expect(await hub.listPorts()).toEqual([port('/dev/ttyUSB0', 'one')]);
    },
  );
});

function content(): string {
  try {
    return readFileSync(file(), 'utf8');
  } catch {
    return '';
  }
}
