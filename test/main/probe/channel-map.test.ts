import { expect, test } from 'vitest';
import type { ProbeReading } from '#main';
import { createChannelMap } from '../../../main/probe/channel-map.ts';
import type { ProbeLinkView } from '../../../main/probe/link/probe-link.ts';
import { noProbeStatus } from '../../../main/probe/probe-status.ts';

const reading = (channel: string): ProbeReading => ({
  atS: 1,
  channel,
  value: 20,
  unit: '°C',
  quality: 'good',
});

test('whoever brings a channel first keeps its name, and the same channel of another gets that one’s number', () => {
  const map = createChannelMap();
  const names = (probe: number, ...channels: readonly string[]) =>
    map.rename(probe, channels.map(reading)).map(({ channel }) => channel);
  expect(map.headCarrier()).toBe(0);
  expect(names(1, 'head', 'pot')).toEqual(['head', 'pot']);
  expect(names(0, 'head', 'receiver')).toEqual(['head-1', 'receiver']);
  expect(names(1, 'head')).toEqual(['head']);
  const long = 'a-channel-with-a-name-of-32-char';
  expect(names(0, long)).toEqual([long]);
  expect(names(2, long)).toEqual(['a-channel-with-a-name-of-32-c-3']);
  expect(map.headCarrier()).toBe(1);
  expect(map.origins()).toEqual([
    { channel: 'head', probe: 1, own: 'head' },
    { channel: 'pot', probe: 1, own: 'pot' },
    { channel: 'head-1', probe: 0, own: 'head' },
    { channel: 'receiver', probe: 0, own: 'receiver' },
    { channel: long, probe: 0, own: long },
    { channel: 'a-channel-with-a-name-of-32-c-3', probe: 2, own: long },
  ]);
});

test('a view shows the same names as the readings', () => {
  const map = createChannelMap();
  map.rename(0, [reading('head')]);
  const view: ProbeLinkView = {
    ...noProbeStatus,
    state: 'hearing',
    channels: ['head'],
    latest: [
      { kind: 'reading', timeS: 1, channel: 'head', value: 20, unit: '°C', quality: 'good' },
    ],
  };
  const shown = map.renameView(1, view);
  expect([shown.channels, shown.latest.map(({ channel }) => channel)]).toEqual([
    ['head-2'],
    ['head-2'],
  ]);
});
