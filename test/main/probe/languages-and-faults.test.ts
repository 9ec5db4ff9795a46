import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { heardHub } from './support/heard-hub.ts';
import { type DeviceLanguage, deviceLanguages, plugInDevice } from './support/speaking-device.ts';
import { pause, until } from './support/until.ts';

type Device = ReturnType<typeof plugInDevice>;
type Heard = ReturnType<typeof heardHub>;

/** One column: what goes wrong, and what must be seen afterwards. */
interface Fault {
  readonly name: string;
  readonly play: (device: Device, heard: Heard) => Promise<unknown>;
  readonly expected: unknown;
}

const heads = ({ readings }: Heard) => readings.filter(({ channel }) => channel === 'head');
const goodHeads = (heard: Heard) =>
  heads(heard).flatMap(({ value, quality }) => (quality === 'good' ? [value] : []));
const onlyGood = (heard: Heard) => [...new Set(goodHeads(heard))];
const changes = ({ links }: Heard) => links.map(({ state, reason }) => `${state} ${reason}`);
const heardAgain = (heard: Heard, what: string) => {
  const before = goodHeads(heard).length;
  return until(`good readings ${what}`, () => goodHeads(heard).length > before + 2, 30);
};

const faults: readonly Fault[] = [
  {
    name: 'nothing wrong: heard',
    async play(_device, heard) {
      await heardAgain(heard, 'at all');
      return { values: onlyGood(heard), state: heard.hub.status().state };
    },
    expected: { values: [78.4], state: 'hearing' },
  },
  {
    name: 'every message in two pieces: heard whole',
    async play(device, heard) {
      device.state.mood = 'speaking in pieces';
      await heardAgain(heard, 'from pieces');
      return onlyGood(heard);
    },
    expected: [78.4],
  },
  {
    name: 'a burst of noise: heard again, nothing made up',
    async play(device, heard) {
      await heardAgain(heard, 'before');
      device.state.mood = 'noise';
      await pause(0.7);
      device.state.mood = 'speaking';
      await heardAgain(heard, 'after');
      return onlyGood(heard);
    },
    expected: [78.4],
  },
  {
    name: 'nothing but noise, as at a wrong speed: unreadable, no reading, advice given',
    async play(device, heard) {
      device.state.mood = 'noise';
      await until('the verdict', () => heard.hub.status().state === 'unreadable', 30);
      const { advice } = heard.hub.status();
      return { good: onlyGood(heard).filter((value) => value !== 78.4), advised: advice !== null };
    },
    expected: { good: [], advised: true },
  },
  {
    name: 'a megabyte without an end: bounded, heard again',
    async play(device, heard) {
      device.state.mood = 'flood';
      await until('the flood', () => heard.hub.status().droppedBytes > 1_000_000, 60);
      device.state.mood = 'mute';
      await pause(0.3);
      device.state.mood = 'speaking';
      await heardAgain(heard, 'after the flood');
      return onlyGood(heard);
    },
    expected: [78.4],
  },
  {
    name: 'sensor gone (−127, no value): never a good reading',
    async play(device, heard) {
      await heardAgain(heard, 'before');
      device.state.headC = -127;
      await pause(0.7);
      device.state.headC = null;
      await pause(0.7);
      const duringFault = goodHeads(heard).length;
      await pause(0.5);
      const qualities = new Set(heads(heard).map(({ value, quality }) => `${value} ${quality}`));
      qualities.delete('78.4 good');
      return {
        bad: [...qualities].every((text) => text.endsWith('bad')),
        more: goodHeads(heard).length - duringFault,
        values: onlyGood(heard),
      };
    },
    expected: { bad: true, more: 0, values: [78.4] },
  },
  {
    name: 'silence: told once as lost, and once as back',
    async play(device, heard) {
      await heardAgain(heard, 'before');
      device.state.mood = 'mute';
      await until('the loss', () => heard.links.length === 1, 30);
      const { state } = heard.hub.status();
      device.state.mood = 'speaking';
      await until('the return', () => heard.links.length === 2, 30);
      return { state, changes: changes(heard) };
    },
    expected: { state: 'silent', changes: ['lost silent', 'back silent'] },
  },
  {
    name: 'plug pulled and put back: lost and back, without a new connection',
    async play(device, heard) {
      await heardAgain(heard, 'before');
      device.unplug();
      await until('the loss', () => heard.links.length === 1, 30);
      const { state } = heard.hub.status();
      device.plugIn();
      await until('the return', () => heard.links.length === 2, 30);
      return { state, changes: changes(heard), values: onlyGood(heard) };
    },
    expected: { state: 'lost', changes: ['lost unplugged', 'back unplugged'], values: [78.4] },
  },
];

/** Each cell waits for seconds of real time, so all of them are played at once, a pseudo-terminal each. */
const outcomes = new Map<string, Promise<unknown>>();
const cleanUp: (() => Promise<void>)[] = [];
const cell = (language: DeviceLanguage, fault: Fault) => `${language.name} × ${fault.name}`;

async function play(language: DeviceLanguage, fault: Fault): Promise<unknown> {
  const device = plugInDevice(language);
  const heard = heardHub();
  cleanUp.push(async () => {
    await heard.hub.close();
    device.remove();
  });
  const connected = await heard.hub.connect(device.source);
  if (!connected.ok) return connected;
  return fault.play(device, heard);
}

beforeAll(() => {
  for (const language of deviceLanguages) {
    for (const fault of faults) {
      const outcome = play(language, fault);
      outcome.catch(() => {});
      outcomes.set(cell(language, fault), outcome);
    }
  }
});

afterAll(async () => {
  await Promise.all(cleanUp.map((each) => each()));
});

describe.each(deviceLanguages)('a probe that speaks $name', (language) => {
  test.each(faults)(
    '$name',
    async (fault) => {
      expect(await outcomes.get(cell(language, fault))).toEqual(fault.expected);
    },
    60_000,
  );
});
