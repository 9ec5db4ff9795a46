import { heardPressure, pressureAfter } from '../monitor/index.ts';
import type { RunInput, RunSettings } from '../run/index.ts';
import { marksAmong } from './marks-among.ts';

/**
 * The air pressure at a time, and how well it is known: by the last barometer that a person read, or by what the run is reckoned by
 * without; times only go forward.
 */
export function pressureCourse(
  setting: RunSettings['pressure'],
  inputs: Iterable<RunInput>,
): (timeS: number) => RunSettings['pressure'] {
  const reads = marksAmong(inputs).filter(({ mark }) => mark.type === 'pressure-read');
  reads.sort((a, b) => a.timeS - b.timeS);
  let next = 0;
  let known = heardPressure(setting, inputs);
  return (timeS) => {
    for (let read = reads[next]; read !== undefined && read.timeS <= timeS; read = reads[next]) {
      known = pressureAfter(known, [read]);
      next += 1;
    }
    return known;
  };
}
