import { createRandom } from '#shared-core';
import { type ByHandRun, endS, inputsOf } from './by-hand-run.ts';
import { type SideChannel, sideChannels } from './draw-by-hand.ts';
import { drawPoke, type Poke, poked, pokeKinds } from './poke-channel.ts';
import { firstAlarm } from './score-by-hand.ts';
import { watchRun } from './watch-run.ts';

/** The heat-off calls of a run, as they are and with a channel poked. */
export interface PokedCalls {
  readonly name: string;
  readonly poke: Poke;
  readonly alone: readonly (number | null)[];
  readonly poked: readonly (number | null)[];
}

const heatOffCalls = ['plateau-departure', 'over-limit'] as const;
const delayedByS = 5;

/** Pokes a channel of every run so often, at random seconds; the head's readings stay as they are. */
export function* pokeRuns(
  runs: Iterable<ByHandRun>,
  pokesARun: number,
  seed: string,
): Generator<PokedCalls> {
  for (const run of runs) {
    const random = createRandom(`pokes ${seed} ${run.name}`);
    const alone = new Map<SideChannel, readonly (number | null)[]>();
    for (let index = 0; index < pokesARun; index += 1) {
      const poke = drawPoke(run, random);
      const channels = sideChannels.filter(
        (channel) => channel === poke.channel || run.channels.includes(channel),
      );
      const withoutPoke = alone.get(poke.channel) ?? calls(run, channels);
      alone.set(poke.channel, withoutPoke);
      const withPoke = calls(poked(run, poke), channels);
      yield { name: run.name, poke, alone: withoutPoke, poked: withPoke };
    }
  }
}

function calls(run: ByHandRun, channels: readonly SideChannel[]): readonly (number | null)[] {
  const { verdicts } = watchRun(run.settings, inputsOf(run, channels), endS(run));
  return heatOffCalls.map((alarm) => {
    const calledS = firstAlarm(verdicts, [alarm]);
    return calledS !== null && calledS < run.course.heatOffS ? calledS : null;
  });
}

/** Whether the poke took a call away, or made it come more than five seconds later. */
export function harmed({ alone, poked }: PokedCalls): 'removed' | 'delayed' | null {
  let harm: 'removed' | 'delayed' | null = null;
  for (const [index, calledS] of alone.entries()) {
    if (calledS === null) continue;
    const pokedS = poked[index] ?? null;
    if (pokedS === null) return 'removed';
    if (pokedS > calledS + delayedByS) harm = 'delayed';
  }
  return harm;
}

/** How many pokes took a call away or delayed it, by channel and kind. */
export function pokeTable(all: readonly PokedCalls[]): readonly string[] {
  const line = (name: string, some: readonly PokedCalls[]): string => {
    const count = (harm: 'removed' | 'delayed'): number =>
      some.filter((item) => harmed(item) === harm).length;
    return `${name.padEnd(28)} ${some.length} pokes: a call removed by ${count('removed')}, delayed by ${count('delayed')}`;
  };
  return [
    line('all', all),
    ...sideChannels.flatMap((channel) =>
      pokeKinds.map((kind) =>
        line(
          `${channel} ${kind}`,
          all.filter(({ poke }) => poke.channel === channel && poke.kind === kind),
        ),
      ),
    ),
  ];
}
