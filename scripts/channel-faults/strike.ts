import type { Random } from '../../shared-core/random/index.ts';
import type { ChannelCourse } from './channel-run.ts';
import type { Fault } from './draw-fault.ts';

/** A channel's course with a fault in it. */
export function strike(course: ChannelCourse, fault: Fault, random: Random): ChannelCourse {
  const { timeS, values } = course;
  const isStruck = (atS: number): boolean =>
    atS >= fault.fromS && (fault.toS === null || atS < fault.toS);
  if (fault.kind === 'vanishes') {
    const kept = timeS.flatMap((atS, index) => (isStruck(atS) ? [] : [index]));
    return {
      ...course,
      timeS: kept.map((index) => timeS[index] as number),
      values: kept.map((index) => values[index] as number),
    };
  }
  const last = timeS.findLastIndex((atS) => atS < fault.fromS);
  const frozen = values[Math.max(0, last)] as number;
  return {
    ...course,
    values: values.map((value, index) => {
      const atS = timeS[index] as number;
      return isStruck(atS) ? struckValue(value, atS, frozen, fault, random) : value;
    }),
  };
}

function struckValue(
  value: number,
  atS: number,
  frozen: number,
  { kind, by, times, fromS }: Fault,
  random: Random,
): number {
  switch (kind) {
    case 'vanishes':
      return value;
    case 'freezes':
      return frozen;
    case 'jumps':
      return value * times + by;
    case 'drifts':
      return value + (by * (atS - fromS)) / 3600;
    case 'noisy':
      return value + by * random.normal();
    case 'at a limit':
    case 'power-on':
      return by;
  }
}
