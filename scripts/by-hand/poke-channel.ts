import type { Random } from '../../shared-core/random/index.ts';
import type { ByHandRun } from './by-hand-run.ts';
import { type SideChannel, sideChannels } from './draw-by-hand.ts';
import type { ChannelReadings } from './report-by-hand.ts';

/** What goes wrong with a channel that is not the head, and when. */
export const pokeKinds = ['vanishes', 'freezes', 'jumps', 'lies'] as const;
export type PokeKind = (typeof pokeKinds)[number];

export interface Poke {
  readonly channel: SideChannel;
  readonly kind: PokeKind;
  readonly fromS: number;
  /** A jump is over then; anything else lasts. */
  readonly toS: number;
  /** How far a jump or a lie goes, in the channel's own unit. */
  readonly by: number;
}

/** How far a channel can be off, in its own unit. */
const farOff: Readonly<Record<SideChannel, number>> = {
  pot: 60,
  'condenser-outlet': 60,
  room: 60,
  receiver: 200,
  'air-pressure': 30,
};

export function drawPoke(run: ByHandRun, random: Random): Poke {
  const channel = sideChannels[random.integer(0, sideChannels.length - 1)] as SideChannel;
  const kind = pokeKinds[random.integer(0, pokeKinds.length - 1)] as PokeKind;
  const fromS = random.integer(0, run.course.heatOffS);
  const size = farOff[channel] * random.uniform() ** 2;
  return {
    channel,
    kind,
    fromS,
    toS: fromS + random.integer(1, 600),
    by: random.uniform() < 0.5 ? -size : size,
  };
}

/** The run with one channel poked. */
export function poked(run: ByHandRun, poke: Poke): ByHandRun {
  const side = {
    ...run.report.side,
    [poke.channel]: pokedReadings(run.report.side[poke.channel], poke),
  };
  return { ...run, report: { ...run.report, side } };
}

function pokedReadings(readings: ChannelReadings, poke: Poke): ChannelReadings {
  const { timeS, values } = readings;
  const from = timeS.findIndex((atS) => atS >= poke.fromS);
  if (from < 0) return readings;
  if (poke.kind === 'vanishes') {
    return { ...readings, timeS: timeS.slice(0, from), values: values.slice(0, from) };
  }
  const frozen = values[from] as number;
  return {
    ...readings,
    values: values.map((value, index) => {
      if (index < from) return value;
      if (poke.kind === 'freezes') return frozen;
      const isOver = poke.kind === 'jumps' && (timeS[index] as number) > poke.toS;
      return isOver ? value : value + poke.by;
    }),
  };
}
