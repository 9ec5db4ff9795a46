import { expect, test } from 'vitest';
import type { RunInput } from '#shared-core';
import {
  channelMeans,
  meanField,
  otherChannels,
} from '../../../../main/export/pack/channel-means.ts';
import { goodReading } from '../../../support/good-reading.ts';

const read = (timeS: number, channel: string, value: number, rest: object = {}) =>
  goodReading(timeS, value, { channel, ...rest });
const inputs: readonly RunInput[] = [
  read(0, 'head', 20),
  read(1, 'pot', 90),
  read(9, 'pot', 92),
  read(5, 'pot', 300, { quality: 'bad' }),
  { kind: 'mark', timeS: 6, markId: 1, mark: { type: 'heat-off' } },
  read(10, 'pot', 95),
  read(21, 'condenser-outlet', 12),
  read(22, 'receiver', 40, { unit: 'g' }),
];

test('what was read beside the head stands in the order of its first reading, once in each unit', () => {
  const found = otherChannels([{ inputs }, { inputs: [read(0, 'pot', 1), read(0, 'air', 1)] }]);
  expect(found).toEqual([
    { channel: 'pot', unit: '°C' },
    { channel: 'condenser-outlet', unit: '°C' },
    { channel: 'receiver', unit: 'g' },
    { channel: 'air', unit: '°C' },
  ]);
  expect(found.map((channel) => meanField(channel)).map(({ name, unit }) => [name, unit])).toEqual([
    ['pot_degC', 'Cel'],
    ['condenser_outlet_degC', 'Cel'],
    ['receiver_g', 'g'],
    ['air_degC', 'Cel'],
  ]);
});

test('the mean of an interval is that of its good readings, and empty where there was none', () => {
  const channels = [
    { channel: 'pot', unit: '°C' },
    { channel: 'receiver', unit: 'g' },
  ] as const;
  const at = channelMeans(inputs, channels, 10);
  expect([at(0), at(9.9), at(10), at(20), at(500)]).toEqual([
    [91, null],
    [91, null],
    [95, null],
    [null, 40],
    [null, null],
  ]);
  expect(channelMeans(inputs, [], 10)(0)).toEqual([]);
});
