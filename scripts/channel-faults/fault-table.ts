import { struckChannels } from './channel-run.ts';
import { faultKinds } from './draw-fault.ts';
import { toleratedS } from './heat-off-calls.ts';
import type { FaultEffect } from './judge-fault.ts';

/** What faults did, by channel and kind. */
export function faultTable(all: readonly FaultEffect[]): readonly string[] {
  return [
    line('all', all),
    ...struckChannels.flatMap((channel) =>
      faultKinds.map((kind) =>
        line(
          `${channel} ${kind}`,
          all.filter(({ fault }) => fault.channel === channel && fault.kind === kind),
        ),
      ),
    ),
  ];
}

/** A call that is gone or that came too late: neither may be. */
export function harmed({ lost, worstDelayS }: FaultEffect): boolean {
  return lost > 0 || worstDelayS > toleratedS;
}

function line(name: string, effects: readonly FaultEffect[]): string {
  const sum = (of: (effect: FaultEffect) => number): number =>
    effects.reduce((total, effect) => total + of(effect), 0);
  const worstS = Math.max(0, ...effects.map(({ worstDelayS }) => worstDelayS));
  return [
    name.padEnd(28),
    `${effects.length} faults, ${sum(({ calls }) => calls)} calls`.padEnd(26),
    `lost ${sum(({ lost }) => lost)}`.padEnd(10),
    `later by more than ${toleratedS} s in ${sum(({ worstDelayS }) => Number(worstDelayS > toleratedS))}`.padEnd(
      34,
    ),
    `latest by ${worstS.toFixed(0)} s`.padEnd(20),
    `earlier by more than ${toleratedS} s in ${sum(({ earlierS }) => Number((earlierS ?? 0) > toleratedS))}`.padEnd(
      36,
    ),
    `falsely called ${sum(({ falselyCalled }) => Number(falselyCalled))}`,
  ].join('  ');
}
