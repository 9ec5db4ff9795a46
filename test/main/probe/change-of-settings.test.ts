import { afterEach, expect, test } from 'vitest';
import { openSerialLine } from '../../../main/probe/port/open-serial-line.ts';
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

/** Opens when it is called. */
function gate() {
  let open = () => {};
  const passed = new Promise<void>((resolve) => {
    open = resolve;
  });
  return { passed, open: () => open() };
}

function hub(options: Parameters<typeof heardHub>[0]) {
  const heard = heardHub(options);
  opened.push(() => heard.hub.close());
  return heard;
}

test('settings changed while the ports are still looked through hold, and the probe is heard by them', async () => {
  const [head, pot] = [device('plain number'), device('Modbus RTU')];
  const looking = gate();
  const { hub: listener, readings } = hub({
    listPorts: () => looking.passed.then(() => []),
  });
  const source = (language: 'auto' | 'modbus-rtu') => ({
    kind: 'several' as const,
    probes: [head.source, { ...pot.source, language, channels: { head: 'pot' } }],
    timeScale: 1,
  });
  const before = listener.connect(source('auto'));
  await until('the first to look for its ports', () => listener.status().state !== 'none');
  const after = listener.connect(source('modbus-rtu'));
  setTimeout(looking.open, 300);
  expect([await before, await after]).toMatchObject([
    { ok: false, error: { kind: 'superseded' } },
    { ok: true, value: { source: { probes: [{}, { language: 'modbus-rtu' }] } } },
  ]);
  await until('both', () => new Set(readings.map(({ channel }) => channel)).size === 2);
});

test('of wishes one upon the other the last holds, and no port stays taken by an earlier one', async () => {
  const pot = device('Modbus RTU');
  const { hub: listener, readings } = hub({ listPorts: async () => [] });
  const wishes = ['auto', 'plain-text', 'auto', 'modbus-rtu'] as const;
  const connected = await Promise.all(
    wishes.map((language) => listener.connect({ ...pot.source, language })),
  );
  expect(connected.map(({ ok }) => ok)).toEqual([false, false, false, true]);
  await until('readings', () => readings.length > 2);
  await listener.disconnect();
  expect(listener.status().state).toBe('none');
  const { hub: next } = hub({ listPorts: async () => [] });
  expect(await next.connect(pot.source)).toMatchObject({ ok: true });
});

test('a port that is just being opened is let go before it is opened with other settings', async () => {
  const pot = device('Modbus RTU');
  const opening = gate();
  let openings = 0;
  const { hub: listener, readings } = hub({
    listPorts: async () => [],
    openLine: async (address, listeners) => {
      openings += 1;
      const line = await openSerialLine(address, listeners);
      if (openings === 1) await opening.passed;
      return line;
    },
  });
  const before = listener.connect({ ...pot.source, language: 'auto' });
  await until('the first opening', () => openings === 1);
  const after = listener.connect(pot.source);
  setTimeout(opening.open, 300);
  expect([await before, await after]).toMatchObject([{ ok: false }, { ok: true }]);
  await until('readings', () => readings.length > 2);
});
