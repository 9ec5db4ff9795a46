import { expect, onTestFinished, test } from 'vitest';
import { createVirtualProbe, systemClock } from '#main';
import { startVirtualProbe } from '../../../main/virtual-probe/start-virtual-probe.ts';
import {
  createVirtualStill,
  isVirtualRigName,
  type VirtualReadings,
  type VirtualStill,
} from '../../../main/virtual-probe/virtual-still.ts';
import { until } from '../probe/support/until.ts';

/** A probe at a still that shows what the test says, and whatever time the test says. */
function speaking(timeScale: number, shown: (timeS: number) => VirtualReadings) {
  let nowS = 100;
  const sent: string[] = [];
  const still: VirtualStill = { heat: () => {}, readAt: shown, distilledMl: () => 0 };
  const probe = createVirtualProbe({
    still,
    clock: { monotonicS: () => nowS, wallMs: () => 0 },
    timeScale,
    send: (bytes) => sent.push(Buffer.from(bytes).toString('latin1')),
  });
  return {
    probe,
    sent,
    pass(seconds: number) {
      nowS += seconds;
      probe.tick();
    },
  };
}

test('each second of the still is one line, both probes in it, as often as it is ticked', () => {
  const { pass, sent, probe } = speaking(2, (timeS) => ({ headC: 20 + timeS / 16, potC: 90 }));
  pass(0);
  pass(0.25);
  pass(0.25);
  pass(1.25);
  expect(sent).toEqual([
    'head,20.0000,pot,90.0000\r\n',
    'head,20.0625,pot,90.0000\r\n',
    'head,20.1250,pot,90.0000\r\nhead,20.1875,pot,90.0000\r\n',
  ]);
  expect(probe.stillS()).toBe(3.5);
});

test('a probe that says nothing leaves its name out, and a line of neither is none', () => {
  const shown = [
    { headC: null, potC: 90 },
    { headC: 20, potC: null },
    { headC: null, potC: null },
  ];
  const { pass, sent } = speaking(1, (timeS) => shown[timeS] ?? { headC: null, potC: null });
  for (let second = 0; second < 5; second += 1) pass(second === 0 ? 0 : 1);
  expect(sent).toEqual(['pot,90.0000\r\n', 'head,20.0000\r\n']);
});

test('after a long stall ten minutes of lines are sent, not hours', () => {
  const { pass, sent } = speaking(60, () => ({ headC: 20, potC: null }));
  pass(0);
  pass(3600);
  expect(sent.at(-1)?.split('\r\n')).toHaveLength(601);
  pass(1);
  expect(sent.at(-1)?.split('\r\n')).toHaveLength(61);
});

test('a still runs by itself until it is stopped, and warms up once its heat is turned on', async () => {
  const sent: string[] = [];
  const running = startVirtualProbe({
    rig: 'vigreux',
    seed: 1,
    timeScale: 240,
    heated: false,
    clock: systemClock,
    send: (bytes) => sent.push(Buffer.from(bytes).toString('latin1')),
  });
  onTestFinished(() => running.stop());
  /** What the pot shows, without the first value, which every sensor of this kind has after power-on. */
  const pot = () =>
    Array.from(sent.join('').matchAll(/pot,([\d.]+)/g), ([, value]) => Number(value)).slice(1);
  await until('some lines', () => pot().length > 20);
  // The room and all in it is at 20 °C.
  expect(Math.max(...pot())).toBeLessThan(21);
  running.heat('heat-on');
  await until('a pot that warms up', () => pot().some((value) => value > 25));
  running.stop();
  const { length } = sent;
  await new Promise((resolve) => setTimeout(resolve, 120));
  expect(sent).toHaveLength(length);
});

test('rigs are known by the names that people type', () => {
  const names = ['simple-head', 'vigreux', 'glass-bead-column', 'wire-packing'];
  const others = ['glassBeads', 'toString', ''];
  expect([names.every(isVirtualRigName), others.some(isVirtualRigName)]).toEqual([true, false]);
});

/** The pot after so many minutes, told every half minute, and what was done to the heat meanwhile [°C]. */
function potC(
  heated: boolean,
  acts: Readonly<Record<number, 'heat-on' | 'heat-off'>>,
  endMin = 25,
) {
  const still = createVirtualStill({ rig: 'glassBeads', seed: 3, heated });
  let lastC = Number.NaN;
  for (let halfMin = 1; halfMin <= 2 * endMin; halfMin += 1) {
    const act = acts[halfMin / 2];
    if (act !== undefined) still.heat(act);
    lastC = still.readAt(30 * halfMin).potC ?? lastC;
  }
  return lastC;
}

test('a still is cold until its heat is turned on, and cools once it is off', () => {
  const cold = potC(false, {});
  const hot = potC(true, {});
  expect(cold).toBeLessThan(30);
  expect(hot).toBeGreaterThan(60);
  expect(potC(false, { 1: 'heat-on' })).toBeGreaterThan(60);
  expect(potC(true, { 15: 'heat-off' })).toBeLessThan(potC(true, {}, 15));
});
