import { type DistillateCourse, distillateCourse } from '../distillate/index.ts';
import { estimateEveryS } from '../monitor/index.ts';
import { heatOffForGoodS, type RunInput, standingMarks } from '../run/index.ts';
import type { Verdicts } from '../snapshot/index.ts';
import type { CutRecord } from './cuts-of-run.ts';

/** What came over through a run, by what the monitor made of the head and by all that was measured of the receivers, then and later. */
export function distillateOfRun({
  inputs,
  endS,
  verdicts: { estimates, events },
  cuts,
  dripRateMlPerMin,
}: {
  readonly inputs: readonly RunInput[];
  readonly endS: number;
  readonly verdicts: Pick<Verdicts, 'estimates' | 'events'>;
  readonly cuts: readonly CutRecord[];
  readonly dripRateMlPerMin: number | null;
}): DistillateCourse | null {
  const [first, last] = [estimates[0], estimates.at(-1)];
  if (first === undefined || last === undefined) return null;
  const arrived = events.find(({ event }) => event === 'vapour-arrived');
  const offS = heatOffForGoodS(standingMarks(inputs)) ?? endS;
  return distillateCourse({
    inputs,
    arrivedS: arrived?.timeS ?? first.timeS,
    // Once the still cools no estimate is made any more.
    untilS: Math.min(offS, endS, last.timeS + estimateEveryS),
    receivers: cuts,
    dripRateMlPerMin,
    strengths: estimates.flatMap(({ timeS, headVapourAbv }) =>
      headVapourAbv === null ? [] : [{ timeS, abv: headVapourAbv }],
    ),
    gone: withoutVapour(events),
  });
}

function withoutVapour(
  events: Verdicts['events'],
): readonly { readonly fromS: number; readonly toS: number }[] {
  return events.flatMap(({ event, timeS }, index) => {
    if (event !== 'vapour-receded') return [];
    const back = events.slice(index).find((later) => later.event === 'vapour-returned');
    return [{ fromS: timeS, toS: back?.timeS ?? Number.POSITIVE_INFINITY }];
  });
}
