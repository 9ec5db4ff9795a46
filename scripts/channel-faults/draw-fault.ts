import type { Random } from '../../shared-core/random/index.ts';
import { type ChannelRun, type StruckChannel, struckChannels } from './channel-run.ts';

/**
 * What goes wrong with a channel: it sends nothing, repeats its last value, is off by so much, wanders off, is far
 * noisier than it was, shows the end of its range, or what it shows when power comes on.
 */
export const faultKinds = [
  'vanishes',
  'freezes',
  'jumps',
  'drifts',
  'noisy',
  'at a limit',
  'power-on',
] as const;
export type FaultKind = (typeof faultKinds)[number];

export interface Fault {
  readonly channel: StruckChannel;
  readonly kind: FaultKind;
  readonly fromS: number;
  /** When it is over [s]; null for good. */
  readonly toS: number | null;
  /** By how much, in the channel's own unit; of a drift an hour, of noise its standard deviation. */
  readonly by: number;
  /** A mass is multiplied by it instead; 1 for all others. */
  readonly times: number;
}

/** What most may depend on is struck most often. */
const weights: Readonly<Record<StruckChannel, number>> = {
  pot: 0.28,
  'condenser-outlet': 0.14,
  room: 0.06,
  receiver: 0.24,
  'air-pressure': 0.28,
};

/** In each channel's own unit: the furthest jump, the steepest drift an hour, and twenty times its noise. */
const sizes = {
  pot: { jump: 60, drift: 30, noise: 1 },
  'condenser-outlet': { jump: 60, drift: 30, noise: 2 },
  room: { jump: 60, drift: 30, noise: 1 },
  receiver: { jump: 200, drift: 300, noise: 2 },
  'air-pressure': { jump: 30, drift: 15, noise: 0.4 },
} as const satisfies Readonly<Record<StruckChannel, unknown>>;

/** Ends of what a probe's line may say, and what is shown when power comes on. */
const extremes = {
  pot: { low: -55, high: 150, powerOn: 85 },
  'condenser-outlet': { low: -55, high: 150, powerOn: 85 },
  room: { low: -55, high: 150, powerOn: 85 },
  receiver: { low: -100, high: 50_000, powerOn: 0 },
  'air-pressure': { low: 60, high: 110, powerOn: 101.325 },
} as const satisfies Readonly<Record<StruckChannel, unknown>>;

/** @param calledS first heat-off call of the run with nothing wrong [s]; null without one */
export function drawFault(run: ChannelRun, calledS: number | null, random: Random): Fault {
  const channel = drawChannel(random);
  const kind = faultKinds[random.integer(0, faultKinds.length - 1)] as FaultKind;
  const fromS = drawSecond(run, calledS, random);
  const toS = random.uniform() < 0.5 ? null : fromS + random.integer(10, 600);
  const sign = random.uniform() < 0.5 ? -1 : 1;
  const size = sizes[channel];
  const scaled = kind === 'jumps' && channel === 'receiver' && random.uniform() < 0.5;
  const by = {
    jumps: scaled ? 0 : sign * size.jump * random.uniform() ** 2,
    drifts: sign * Math.max(size.drift / 30, size.drift * random.uniform()),
    noisy: size.noise,
    'at a limit': sign < 0 ? extremes[channel].low : extremes[channel].high,
    'power-on': extremes[channel].powerOn,
    vanishes: 0,
    freezes: 0,
  }[kind];
  return { channel, kind, fromS, toS, by, times: scaled ? 10 ** (sign * random.uniform()) : 1 };
}

function drawChannel(random: Random): StruckChannel {
  let left = random.uniform();
  for (const channel of struckChannels) {
    left -= weights[channel];
    if (left < 0) return channel;
  }
  return 'air-pressure';
}

const shortlyBeforeS = 300;

/** Mostly while the main fraction comes over, often just before the call, now and then anywhere. */
function drawSecond(
  { main, heatOffS }: ChannelRun,
  calledS: number | null,
  random: Random,
): number {
  const drawn = random.uniform();
  const endS = calledS ?? main?.toS ?? heatOffS;
  if (drawn < 0.3) return random.integer(Math.max(0, endS - shortlyBeforeS), endS);
  if (drawn < 0.8 && main !== null && main.fromS < endS) return random.integer(main.fromS, endS);
  return random.integer(0, heatOffS);
}
