import { expect, test } from 'vitest';
import type { LineOutcome } from '#shared-core';
import { createReadingStamper } from '../../../../main/probe/link/stamp-readings.ts';

const outcome = (...values: readonly (readonly [string, number])[]): LineOutcome => ({
  text: '',
  values: values.map(([channel, value]) => ({
    channel,
    value,
    unit: '°C',
    quality: 'good',
    doubt: null,
  })),
  rejections: [],
});

test('lines that came in one piece are stamped apart, the values of one line alike, and the newest of each channel is kept', () => {
  const stamper = createReadingStamper();
  stamper.stamp([outcome(['head', 20])], 100);
  const readings = stamper.stamp([outcome(['head', 21], ['pot', 91]), outcome(['head', 22])], 102);
  const reading = { unit: '°C', quality: 'good' } as const;
  expect(readings).toEqual([
    { atS: 101, channel: 'head', value: 21, ...reading },
    { atS: 101, channel: 'pot', value: 91, ...reading },
    { atS: 102, channel: 'head', value: 22, ...reading },
  ]);
  expect([stamper.channels(), stamper.latest()]).toEqual([
    ['head', 'pot'],
    [
      { kind: 'reading', timeS: 102, channel: 'head', value: 22, ...reading },
      { kind: 'reading', timeS: 101, channel: 'pot', value: 91, ...reading },
    ],
  ]);
});

test('a probe that keeps inventing names keeps its first thirty-two, and these go on', () => {
  const stamper = createReadingStamper();
  const names = Array.from({ length: 40 }, (_, index) => `channel-${index}`);
  const first = stamper.stamp([outcome(...names.map((name) => [name, 1] as const))], 1);
  const again = stamper.stamp([outcome(...names.map((name) => [name, 2] as const))], 2);
  const kept = names.slice(0, 32);
  expect(first.map(({ channel }) => channel)).toEqual(kept);
  expect(again.map(({ channel }) => channel)).toEqual(kept);
  expect(stamper.channels()).toEqual(kept);
});

test('what was heard last is the same arrays until something else is stamped, and then other ones', () => {
  const stamper = createReadingStamper();
  const shown = () => [stamper.channels(), stamper.latest()] as const;
  stamper.stamp([outcome(['head', 20])], 100);
  const [channels, latest] = shown();
  stamper.stamp([outcome()], 101);
  expect(shown()[0]).toBe(channels);
  expect(shown()[1]).toBe(latest);
  stamper.stamp([outcome(['head', 21])], 102);
  expect(latest).toMatchObject([{ timeS: 100, value: 20 }]);
  expect(shown()).toMatchObject([['head'], [{ timeS: 102, value: 21 }]]);
});
