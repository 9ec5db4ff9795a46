import { afterEach, describe, expect, test } from 'vitest';
import { heardHub } from './support/heard-hub.ts';
import { type DeviceLanguage, deviceLanguages, plugInDevice } from './support/speaking-device.ts';
import { until } from './support/until.ts';

const opened: (() => void | Promise<void>)[] = [];
afterEach(async () => {
  for (const close of opened.splice(0).reverse()) await close();
});

function device(name: string) {
  const language = deviceLanguages.find((each) => each.name === name) as DeviceLanguage;
  const plugged = plugInDevice(language);
  opened.push(() => plugged.remove());
  return plugged;
}

function hub() {
  const heard = heardHub();
  opened.push(() => heard.hub.close());
  return heard;
}

describe('several probes at once', () => {
  test('share one map of channels: a name that is taken gets a number, a renamed one its new name', async () => {
    const [plain, scpi, modbus] = [device('plain number'), device('SCPI'), device('Modbus RTU')];
    const { hub: listener, readings } = hub();
    const connected = await listener.connect({
      kind: 'several',
      probes: [plain.source, scpi.source, { ...modbus.source, channels: { head: 'room' } }],
      timeScale: 1,
    });
    expect(connected).toMatchObject({ ok: true });
    const channels = () => new Set(readings.map(({ channel }) => channel));
    await until('all three', () => channels().size === 3);
    const { state, origins } = listener.status();
    expect({ channels: channels(), state, origins: new Set(origins) }).toEqual({
      channels: new Set(['head', 'head-2', 'room']),
      state: 'hearing',
      origins: new Set([
        { channel: 'head', probe: 0, own: 'head' },
        { channel: 'head-2', probe: 1, own: 'head' },
        { channel: 'room', probe: 2, own: 'room' },
      ]),
    });
  });

  test('the loss of another probe is no loss of the head', async () => {
    const [plain, modbus] = [device('plain number'), device('Modbus RTU')];
    const { hub: listener, readings, links } = hub();
    const other = { ...modbus.source, channels: { head: 'pot' } };
    await listener.connect({ kind: 'several', probes: [plain.source, other], timeScale: 1 });
    const count = (of: string) => readings.filter(({ channel }) => channel === of).length;
    await until('both', () => count('head') > 0 && count('pot') > 0);
    modbus.unplug();
    await until('the loss to show', () => listener.status().state === 'lost');
    const before = count('head');
    await until('more of the head', () => count('head') > before + 3);
    expect({ links, advice: listener.status().advice }).toEqual({
      links: [],
      advice: expect.stringContaining(modbus.source.path),
    });
  });

  test('two probes on one port are refused before anything is opened', async () => {
    const { source } = device('plain number');
    const connected = await hub().hub.connect({
      kind: 'several',
      probes: [source, source],
      timeScale: 1,
    });
    expect(connected).toMatchObject({ ok: false, error: { kind: 'request-invalid' } });
  });
});

test('a probe on a real pseudo-terminal is found, and can be connected to as found', async () => {
  const { source } = device('JSON lines');
  const { hub: listener, readings } = hub();
  const found = await listener.find(source.path);
  expect(found).toMatchObject({
    ok: true,
    value: { source: { path: source.path, baudRate: 115_200, language: 'json-lines' } },
  });
  if (!found.ok || found.value.source === null) return;
  await listener.connect(found.value.source);
  await until('readings', () => readings.length > 2);
});
