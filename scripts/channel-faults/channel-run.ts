import type { RunInput, RunSettings } from '#shared-core';

/** The channels a fault may strike: all that a probe can send beside the head. */
export const struckChannels = [
  'pot',
  'condenser-outlet',
  'room',
  'receiver',
  'air-pressure',
] as const;
export type StruckChannel = (typeof struckChannels)[number];

/** What one channel says in a run: a value at each time. */
export interface ChannelCourse {
  readonly unit: '°C' | 'g' | 'kPa';
  readonly timeS: readonly number[];
  readonly values: readonly number[];
}

/** A run of any simulator, as far as faults of channels need it. */
export interface ChannelRun {
  readonly name: string;
  readonly settings: RunSettings;
  /** The head's readings, the marks and the changes of the line, in time order. */
  readonly ofHead: readonly RunInput[];
  readonly channels: Readonly<Record<StruckChannel, ChannelCourse>>;
  /** Heat taken off for good [s]. */
  readonly heatOffS: number;
  /** The true main fraction; null where there is none. */
  readonly main: { readonly fromS: number; readonly toS: number } | null;
  /** Share of the main fraction that has come over by a time, 0 … 1; null without a main fraction. */
  readonly mainShare: (timeS: number) => number | null;
}

/** What the monitor is given: the head, and every channel as it is or as it is struck. */
export function inputsWith(
  { ofHead, channels }: ChannelRun,
  struck: Partial<Record<StruckChannel, ChannelCourse>> = {},
): readonly RunInput[] {
  const beside = struckChannels.flatMap((channel) => {
    const { unit, timeS, values } = struck[channel] ?? channels[channel];
    return timeS.map(
      (atS, index): RunInput => ({
        kind: 'reading',
        timeS: atS,
        channel,
        value: values[index] as number,
        unit,
        quality: 'good',
      }),
    );
  });
  return ofHead.concat(beside).sort((a, b) => a.timeS - b.timeS);
}
