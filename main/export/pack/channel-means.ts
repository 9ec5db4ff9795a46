import type { Reading, RunInput, RunStudy } from '#shared-core';
import type { TableCell, TableField } from './table.ts';

/** A channel beside the head, in one unit. */
export interface MeanChannel {
  readonly channel: string;
  readonly unit: Reading['unit'];
}

const unitNames: Readonly<Record<Reading['unit'], readonly [name: string, ucum: string | null]>> = {
  '°C': ['degC', 'Cel'],
  g: ['g', 'g'],
  mL: ['mL', 'mL'],
  kPa: ['kPa', 'kPa'],
  '1': ['1', null],
};

const keyOf = ({ channel, unit }: MeanChannel) => `${channel} ${unit}`;

/** What was measured in any of the runs but the head, in the order of its first reading. */
export function otherChannels(
  studies: readonly Pick<RunStudy, 'inputs'>[],
): readonly MeanChannel[] {
  const found = new Map<string, MeanChannel>();
  for (const { inputs } of studies) {
    for (const input of inputs) {
      if (input.kind !== 'reading' || input.channel === 'head') continue;
      const { channel, unit } = input;
      const key = keyOf(input);
      if (!found.has(key)) found.set(key, { channel, unit });
    }
  }
  return [...found.values()];
}

/** `pot_degC`, `condenser_outlet_degC` … */
export function meanField({ channel, unit }: MeanChannel): TableField {
  const [name, ucum] = unitNames[unit];
  return {
    name: `${channel.replaceAll('-', '_')}_${name}`,
    type: 'number',
    unit: ucum,
    description: `Mean of the good readings of ${channel} in the interval, as recorded`,
    decimals: 3,
  };
}

/** The mean of each channel in the interval about a time; empty where it was not read. */
export function channelMeans(
  inputs: readonly RunInput[],
  channels: readonly MeanChannel[],
  stepS: number,
): (timeS: number) => readonly TableCell[] {
  if (channels.length === 0) return () => [];
  const column = new Map(channels.map((channel, index) => [keyOf(channel), index]));
  const sums = new Map<number, { sum: number; count: number }[]>();
  for (const input of inputs) {
    if (input.kind !== 'reading' || input.quality !== 'good') continue;
    const at = column.get(keyOf(input));
    if (at === undefined) continue;
    const bin = Math.floor(input.timeS / stepS);
    const of = sums.get(bin) ?? channels.map(() => ({ sum: 0, count: 0 }));
    sums.set(bin, of);
    const mean = of[at];
    if (mean === undefined) continue;
    mean.sum += input.value;
    mean.count += 1;
  }
  return (timeS) => {
    const of = sums.get(Math.floor(timeS / stepS));
    return channels.map((_, index) => {
      const { sum = 0, count = 0 } = of?.[index] ?? {};
      return count === 0 ? null : sum / count;
    });
  };
}
