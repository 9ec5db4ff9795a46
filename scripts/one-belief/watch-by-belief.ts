import type {
  AlarmRecord,
  Condition,
  RunEvent,
  RunEventName,
  RunInput,
  RunSettings,
  StageSpan,
  Verdicts,
} from '#shared-core';
import { isBlind } from '../../shared-core/monitor/call/fault-kinds.ts';
import { firstFractionProgress } from '../../shared-core/monitor/first-fraction-progress.ts';
import { createMarksLedger } from '../../shared-core/monitor/marks-ledger.ts';
import { createSecondBin } from '../../shared-core/monitor/second-bin.ts';
import type { Watched } from '../by-hand/watch-run.ts';
import { beliefStrength } from './belief-strength.ts';
import { createHeadCourse, type HeadNow } from './head-course.ts';
import { createHeadTracker } from './head-tracker.ts';
import { createLimitScale } from './limit-scale.ts';
import { createStageCaller } from './stage-caller.ts';

const estimateEveryS = 60;
/** A call must last for so long before it is one, as in the alarm of the monitor [s]. */
const onDelayS = 4;
const usualFlowMlPerS = 1 / 60;
/** Vapour that bathes the bulb for so long belies a heat-off mark [s]. */
const beliesAfterS = 90;
const leastFractionS = 30;

/** Watches a run by the belief alone: stages, heat-off call, strength and what the head does, without alarms and words. */
export function watchByBelief(
  settings: RunSettings,
  inputs: readonly RunInput[],
  endS: number,
): Watched {
  const marks = createMarksLedger();
  const tracker = createHeadTracker(settings);
  const limitScale = createLimitScale(settings);
  const course = createHeadCourse(settings, tracker, limitScale);
  const caller = createStageCaller();
  const bin = createSecondBin();
  const told = createTold();
  let next = 0;
  let vapourSinceOffS = 0;
  let dueForS = 0;

  const see = (input: RunInput): void => {
    if (input.kind === 'mark') {
      marks.add(input);
      const readKPa = marks.airPressureKPa();
      if (readKPa !== null) limitScale.setPressure(readKPa);
    } else if (input.kind === 'link') tracker.health.seeLink(input);
    else if (input.channel === 'air-pressure') limitScale.setPressure(input.value);
    else if (input.channel === 'head') {
      const temperatureC = settings.probe.offsetK + settings.probe.gain * input.value;
      if (tracker.health.seeReading(input, temperatureC)) bin.add(input.timeS, temperatureC);
    }
  };

  const isHeatOff = ({ situation }: HeadNow): boolean => {
    const isWet = situation.bathedS !== null && situation.recededSinceS === null;
    vapourSinceOffS = marks.heat() === 'off' && isWet ? vapourSinceOffS + 1 : 0;
    return marks.heat() === 'off' && vapourSinceOffS <= beliesAfterS;
  };

  const conclude = (timeS: number, now: HeadNow): void => {
    const { head, situation, outlook } = now;
    const heldS = situation.heldS === null ? 0 : Math.max(1, situation.heldWetS);
    const progress = firstFractionProgress(
      settings.firstFraction,
      { drops: marks.dropsCounted(), collectedMl: marks.collectedMl() },
      heldS,
      usualFlowMlPerS,
    );
    const off = isHeatOff(now);
    if (head !== null && !isBlind(now.fault)) {
      const firstFractionOver = progress.over;
      caller.second({ head, situation, outlook, firstFractionOver, isHeatOff: off });
    }
    const isCalled = outlook.heatOffDue && !off && situation.recededSinceS === null;
    dueForS = isCalled ? dueForS + 1 : 0;
    told.second(timeS, now, caller.stage(), dueForS > onDelayS);
    if (timeS % estimateEveryS !== 0 || situation.bathedS === null) return;
    const isTold = !isBlind(now.fault) && !off && caller.stage() !== 'cool-down';
    const headVapourAbv = isTold ? beliefStrength(now, limitScale.scale(), settings) : null;
    told.estimates.push({ timeS, headVapourAbv });
  };

  for (let timeS = 1; timeS <= endS; timeS += 1) {
    for (let input = inputs[next]; input !== undefined && input.timeS < timeS; ) {
      see(input);
      next += 1;
      input = inputs[next];
    }
    const isQuiet = caller.stage() !== 'tail';
    conclude(timeS, course.second(timeS, bin.take(), { potC: null, isQuiet }));
  }
  return { verdicts: told.verdicts(endS), conditions: told.conditions };
}

/** Keeps what was concluded, in the form in which the monitor's verdicts are judged. */
function createTold() {
  const stages: StageSpan[] = [{ stage: 'warm-up', fromS: 0, toS: null, because: '' }];
  const alarms: AlarmRecord[] = [];
  const events: RunEvent[] = [];
  const estimates: Verdicts['estimates'][number][] = [];
  const conditions: (Condition | null)[] = [null];
  let before: HeadNow | null = null;

  const tell = (event: RunEventName, timeS: number): void => {
    events.push({ event, timeS, because: '' });
  };

  return {
    estimates,
    conditions,
    second: (timeS: number, now: HeadNow, stage: StageSpan['stage'], isDue: boolean): void => {
      const [was, is] = [before?.situation, now.situation];
      if (is.arrivedS !== null && was?.arrivedS === null) tell('vapour-arrived', timeS);
      if (is.recededSinceS !== null && was?.recededSinceS === null) tell('vapour-receded', timeS);
      if (is.departedS !== null && was?.departedS === null) tell('plateau-ending', timeS);
      before = now;
      const isAway = is.recededSinceS !== null && stage !== 'cool-down' && stage !== 'warm-up';
      conditions.push(now.surging ? 'surging' : isAway ? 'vapour-receded' : null);
      const last = stages[stages.length - 1];
      if (last !== undefined && last.stage !== stage) {
        const fromS =
          stage === 'cool-down' ? Math.max(last.fromS, is.recededSinceS ?? timeS) : timeS;
        stages[stages.length - 1] = { ...last, toS: fromS };
        stages.push({ stage, fromS, toS: null, because: '' });
      }
      if (!isDue || alarms.length > 0) return;
      const called = { raisedS: timeS, clearedS: null, acknowledgedS: null, because: '' };
      alarms.push({ alarm: 'plateau-departure', priority: 'high', ...called });
    },
    verdicts: (endS: number): Verdicts => {
      const main = stages.find(({ stage }) => stage === 'main-fraction');
      const lastedS = main === undefined ? 0 : (main.toS ?? endS) - main.fromS;
      const verdict = { mainFraction: lastedS >= leastFractionS, because: '' };
      return { stages, alarms, events, estimates, forecasts: [], verdict, problems: [] };
    },
  };
}
