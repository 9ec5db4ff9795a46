import { describe, expect, test } from 'vitest';
import type { Reading } from '../../../../shared-core/index.ts';
import { createChannelSeconds } from '../../../../shared-core/monitor/sense/channel-seconds.ts';
import { createHeadSeconds } from '../../../../shared-core/monitor/sense/head-seconds.ts';
import { createProbeHealth } from '../../../../shared-core/monitor/sense/probe-health.ts';

function reading(timeS: number, value: number, other: Partial<Reading> = {}): Reading {
  return { kind: 'reading', timeS, channel: 'head', value, unit: '°C', quality: 'good', ...other };
}

const probe = { standardUncertaintyK: 0.25, lagT90S: 15, offsetK: 0.5, gain: 1.01, silenceS: 5 };

describe('readings of the head, second by second', () => {
  test('are calibrated, and come to the second they belong to even when a later one came first', () => {
    const seconds = createHeadSeconds(probe, createProbeHealth(5));
    seconds.see(reading(1.2, 50), 1);
    seconds.see(reading(0.9, 40), 1);
    expect(seconds.latest()).toEqual({ timeS: 0.9, temperatureC: 40.9 });
    expect(seconds.take()).toEqual({ timeS: 0.9, value: 40.9, count: 1, spread: 0 });
    expect(seconds.take()).toEqual({ timeS: 1.2, value: 51, count: 1, spread: 0 });
    expect(seconds.take()).toBeNull();
  });

  test('that no head can have are neither shown nor counted', () => {
    const seconds = createHeadSeconds(probe, createProbeHealth(5));
    seconds.see(reading(0.5, 500), 1);
    expect([seconds.latest(), seconds.take()]).toEqual([null, null]);
  });
});

describe('readings of other channels, second by second', () => {
  test('are one value a channel, with the unit last heard', () => {
    const seconds = createChannelSeconds();
    seconds.see(reading(0.2, 90, { channel: 'pot' }));
    seconds.see(reading(0.6, 92, { channel: 'pot' }));
    seconds.see(reading(0.6, 12, { channel: 'receiver', unit: 'g' }));
    expect([...seconds.take(1)]).toEqual([
      { channel: 'pot', unit: '°C', value: 91, atS: 1 },
      { channel: 'receiver', unit: 'g', value: 12, atS: 1 },
    ]);
    expect([...seconds.take(2)]).toEqual([]);
  });

  test('that are bad, suspect or no number are left out', () => {
    const seconds = createChannelSeconds();
    seconds.see(reading(0.2, 90, { channel: 'pot', quality: 'bad' }));
    seconds.see(reading(0.2, 90, { channel: 'pot', quality: 'suspect' }));
    seconds.see(reading(0.2, Number.NaN, { channel: 'pot' }));
    expect([...seconds.take(1)]).toEqual([]);
  });
});
