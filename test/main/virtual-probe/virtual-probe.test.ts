import { describe, expect, test } from 'vitest';
import { type Clock, createVirtualProbe, createVirtualStill } from '#main';
import { createLineReader } from '#shared-core';

function spoken(seed: number, seconds: number, timeScale = 60): readonly string[] {
  let nowS = 0;
  const clock: Clock = { monotonicS: () => nowS, wallMs: () => 0 };
  let text = '';
  const still = createVirtualStill({ rig: 'glassBeads', seed, heated: true });
  const send = (bytes: Uint8Array) => {
    text += String.fromCharCode(...bytes);
  };
  const probe = createVirtualProbe({ still, clock, timeScale, send });
  for (; nowS < seconds / timeScale; nowS += 0.025) probe.tick();
  return text.split('\r\n').filter((line) => line !== '');
}

describe('createVirtualProbe', () => {
  const lines = spoken(1, 3000);

  test('speaks one line for each second of the still, but for its dropouts', () => {
    expect(lines.length).toBeGreaterThan(2900);
    expect(lines.length).toBeLessThanOrEqual(3000);
  });

  test('begins with the power-on value and then moves in steps of 1/16 °C', () => {
    expect(lines[0]).toBe('head,85.0000,pot,85.0000');
    const values = lines.flatMap((line) => line.split(',').map(Number).filter(Number.isFinite));
    expect(values.every((value) => Number.isInteger(value * 16))).toBe(true);
  });

  test('is understood by the line reader, every line of it', () => {
    const reader = createLineReader({
      language: 'auto',
      unit: '°C',
      decimalComma: false,
      pattern: null,
    });
    expect(lines.filter((line) => reader.read(line).rejections.length > 0)).toEqual([]);
  });

  test('says the same for the same seed and something else for another', () => {
    expect(spoken(1, 600)).toEqual(lines.slice(0, spoken(1, 600).length));
    expect(spoken(2, 600)).not.toEqual(spoken(1, 600));
  });

  test('brings vapour to the head: the head rises past 75 °C within the first 40 minutes', () => {
    const reached = lines.findIndex((line, index) => index > 10 && Number(line.split(',')[1]) > 75);
    expect(reached).toBeGreaterThan(300);
    expect(reached).toBeLessThan(2400);
  });
});

test('a pot that nobody takes the heat from boils dry, and a probe in it says nothing past the end of its scale', () => {
  const still = createVirtualStill({ rig: 'glassBeads', seed: 3, heated: true });
  const readings = Array.from({ length: 5 * 360 }, (_, index) => still.readAt(10 * index));
  const isTold = ({ potC }: (typeof readings)[number]) => potC !== null;
  // Dropouts are short; ten minutes of silence are the dry pot.
  const lastTold = readings.findLastIndex(isTold);
  expect(lastTold).toBeGreaterThan(360);
  expect(lastTold).toBeLessThan(4 * 360);
  expect(readings.slice(-60).some(isTold)).toBe(false);
});

test('heat that a person has eased stays eased, however few drops come', () => {
  const still = createVirtualStill({ rig: 'glassBeads', seed: 3, heated: true });
  still.readAt(1000);
  still.heat('heat-eased');
  const readings = Array.from({ length: 5 * 360 }, (_, index) => still.readAt(1000 + 10 * index));
  expect(Math.max(...readings.map(({ potC }) => potC ?? 0))).toBeLessThan(101);
});

/** What drips in each second of two hours [mL/min], from a still whose heat is taken away and put back at these moments. */
function drops(rig: 'simpleHead' | 'vigreux' | 'glassBeads' | 'wirePacking', offS: number) {
  const still = createVirtualStill({ rig, seed: 1, heated: true });
  let beforeMl = 0;
  return Array.from({ length: offS + 1500 }, (_, timeS) => {
    if (timeS === offS) still.heat('heat-off');
    if (timeS === offS + 300) still.heat('heat-on');
    still.readAt(timeS);
    const rateMlPerMin = 60 * (still.distilledMl() - beforeMl);
    beforeMl = still.distilledMl();
    return rateMlPerMin;
  });
}

test.each(['simpleHead', 'vigreux', 'glassBeads', 'wirePacking'] as const)(
  'the heat is eased once drops follow each other, after the heat-up as after it was put back: %s',
  (rig) => {
    const offS = 2000;
    const rates = drops(rig, offS);
    for (const fromS of [0, offS + 300]) {
      const since = rates.slice(fromS);
      const firstS = since.findIndex((rate) => rate > 0.25);
      expect(firstS).toBeGreaterThan(0);
      expect(Math.max(...since.slice(firstS, firstS + 60))).toBeGreaterThan(1.9);
      expect(Math.max(...since.slice(firstS + 240, firstS + 600))).toBeLessThan(1.3);
    }
  },
);
