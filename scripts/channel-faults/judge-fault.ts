import { createRandom } from '#shared-core';
import { type ChannelRun, inputsWith } from './channel-run.ts';
import { drawFault, type Fault } from './draw-fault.ts';
import {
  delayAfterS,
  firstCallsS,
  type Heard,
  hearHeatOffCalls,
  toleratedS,
} from './heat-off-calls.ts';
import { strike } from './strike.ts';

/** What a fault did to the calls of its run. */
export interface FaultEffect {
  readonly run: string;
  readonly fault: Fault;
  readonly calls: number;
  readonly lost: number;
  /** Of the calls that still came, the latest by how much [s]. */
  readonly worstDelayS: number;
  /** The first call comes before so much of the main fraction has, by the fault alone. */
  readonly falselyCalled: boolean;
  /** How much earlier the first call came [s]; negative when later, null without a call in either. */
  readonly earlierS: number | null;
}

/** As the ensembles count: before so much of the main fraction has come over, a call is false. */
const falseBeforeShare = 0.85;

/** The run with every channel true, then with faults in it, one at a time. */
export function* judgeFaults(
  run: ChannelRun,
  faults: number,
  seed: string,
): Generator<FaultEffect> {
  const random = createRandom(`faults ${seed} ${run.name}`);
  const alone = hearHeatOffCalls(run.settings, inputsWith(run), run.heatOffS);
  const wantedS = firstCallsS(alone);
  const lastS = Math.max(0, ...wantedS);
  const isEnough = (heard: Heard, timeS: number): boolean =>
    timeS > lastS + toleratedS && wantedS.every((atS) => delayAfterS(heard, atS) !== null);
  for (let index = 0; index < faults; index += 1) {
    const fault = drawFault(run, firstS(alone), random);
    const struck = strike(run.channels[fault.channel], fault, random.fork(`${index}`));
    const heard = hearHeatOffCalls(
      run.settings,
      inputsWith(run, { [fault.channel]: struck }),
      run.heatOffS,
      wantedS.length === 0 ? undefined : isEnough,
    );
    const delays = wantedS.map((atS) => delayAfterS(heard, atS));
    const [trueS, struckS] = [firstS(alone), firstS(heard)];
    yield {
      run: run.name,
      fault,
      calls: wantedS.length,
      lost: delays.filter((delayS) => delayS === null).length,
      worstDelayS: Math.max(0, ...delays.map((delayS) => delayS ?? 0)),
      falselyCalled: isFalse(run, struckS) && !isFalse(run, trueS),
      earlierS: trueS === null || struckS === null ? null : trueS - struckS,
    };
  }
}

function firstS({ calls }: Heard): number | null {
  return calls.length === 0 ? null : Math.min(...calls.map(({ raisedS }) => raisedS));
}

function isFalse(run: ChannelRun, calledS: number | null): boolean {
  if (calledS === null) return false;
  const share = run.mainShare(calledS);
  return share !== null && share < falseBeforeShare;
}
