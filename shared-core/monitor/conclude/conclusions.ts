import type { AlarmBank } from '../../alarms/index.ts';
import type { RunSettings } from '../../run/index.ts';
import type { Condition, Stage } from '../../snapshot/index.ts';
import type { MarksLedger } from '../marks-ledger.ts';
import type { MonitorFacts } from '../monitor-facts.ts';
import type { ChannelSenses } from '../sense/channel-senses.ts';
import { createDropoutWatch } from '../sense/dropout-watch.ts';
import type { HeadTracker } from '../sense/head-tracker.ts';
import { isBlind } from '../sense/probe-fault.ts';
import { judgeBulb } from '../situation/bulb-doubt.ts';
import type { HeadNow } from '../situation/head-course.ts';
import type { LimitScale } from '../situation/limit-scale.ts';
import { statedScaleSdK } from '../situation/scale-belief.ts';
import { firstFractionProgress } from './first-fraction-progress.ts';
import { createForecaster } from './forecaster.ts';
import { createReceiverFollower } from './receiver-follower.ts';
import { createStageCaller } from './stage-caller.ts';

/** Stage, fraction, forecast and all else that is concluded from the head, the channels and the marks. */
export interface Conclusions {
  second(timeS: number, now: HeadNow, channels: ChannelSenses): MonitorFacts;
  /** The facts as a mark has changed them. */
  withMarks(facts: MonitorFacts, timeS: number): MonitorFacts;
  seePerson(timeS: number): void;
  /** True where nobody has just touched the heat and no tail makes the head restless. */
  isQuiet(timeS: number): boolean;
  noteCalls(bank: AlarmBank): void;
  /** True where the heat-off call has been made and the vapour has gone: who brings the heat back wants the tail. */
  isCalledAndAway(): boolean;
}

export interface ConclusionParts {
  readonly settings: RunSettings;
  readonly marks: MarksLedger;
  readonly tracker: HeadTracker;
  readonly limitScale: LimitScale;
  readonly forecasts: boolean;
}

/** Who brought the heat back in the tail is reminded of it after so long [s]. */
const reminderS = 240;
/** A head that was never stronger than the limit gives nothing to react to: weak vapour is told of sooner [s]. */
const unarmedPatienceS = 30;
/** After a hand was at the heat nothing is learned of the probe's noise for so long [s]. */
const quietAfterHeatS = 60;
/** A pot boils on for a minute; what bathes the bulb for longer and does not let it cool is heated [s], [K/s]. */
const beliesAfterS = 90;
const coolingKPerS = -0.02;
/** Flow expected before anything was booked: teaching rigs give 0.5–2 mL/min; common practice, no source. */
const usualFlowMlPerS = 1 / 60;

export function createConclusions(parts: ConclusionParts): Conclusions {
  const { settings, marks, tracker, limitScale } = parts;
  const caller = createStageCaller();
  const forecaster = createForecaster(settings, marks);
  const receiver = createReceiverFollower(marks);
  const dropouts = createDropoutWatch();
  let stage: Stage = 'warm-up';
  let stageSinceS = 0;
  let faultSinceS = 0;
  let lastPersonS = 0;
  /** Seconds of vapour that does not die away since the heat was last marked off. */
  let vapourSinceOffS = 0;
  let offSinceS: number | null = null;
  let wasCalled = false;
  let wasOverLimit = false;
  let last: HeadNow | null = null;

  const firstFraction = ({ situation }: HeadNow): MonitorFacts['firstFraction'] =>
    firstFractionProgress(
      settings.firstFraction,
      { drops: marks.dropsCounted(), collectedMl: receiver.collectedMl() },
      situation.heldS === null ? 0 : Math.max(situation.heldWetS, 1),
      forecaster.flowMlPerS() ?? usualFlowMlPerS,
    );

  const followOff = ({ situation, head }: HeadNow): void => {
    const isWet = situation.recededSinceS === null && situation.bathedS !== null;
    const rests = head !== null && head.bulbRateKPerS > coolingKPerS;
    if (marks.heat() !== 'off' || marks.heatChangedS() !== offSinceS) vapourSinceOffS = 0;
    else if (isWet && rests) vapourSinceOffS += 1;
    offSinceS = marks.heatChangedS();
  };

  const callStage = (timeS: number, now: HeadNow): void => {
    const { head, fault, situation, outlook } = now;
    if (head === null || isBlind(fault)) return;
    const firstFractionOver = firstFraction(now).over;
    caller.second({
      head,
      situation,
      outlook,
      firstFractionOver,
      isHeatOff: heat() === 'off',
    });
    if (caller.stage() === stage) return;
    stage = caller.stage();
    stageSinceS = stage === 'cool-down' ? (situation.recededSinceS ?? timeS) : timeS;
  };

  const lookAhead = (timeS: number, now: HeadNow, potC: number | null): void => {
    if (now.head === null || !parts.forecasts) return;
    forecaster.second({
      timeS,
      stage,
      head: now.head,
      situation: now.situation,
      scale: limitScale.scale(),
      statedSdK: statedScaleSdK(limitScale.settings(), limitScale.scale()),
      potC,
      receiverMl: receiver.weighedMl(),
      nothingCollected: receiver.isNothingCollected(now.situation),
      suspended: isBlind(now.fault),
    });
    const stopAbv = forecaster.stopStrengthAbv();
    if (stopAbv !== null && stage !== 'tail' && !now.outlook.heatOffDue)
      limitScale.setLimit(stopAbv);
  };

  const patienceS = (now: HeadNow): number => {
    if (stage === 'tail' && wasOverLimit) return reminderS;
    return now.outlook.strongForS > 0 ? settings.reactionTimeS : unarmedPatienceS;
  };

  /** Vapour that goes on bathing the bulb belies a mark: the heat is on again, and nobody has said so. */
  const heat = (): MonitorFacts['heat'] =>
    marks.heat() === 'off' && vapourSinceOffS > beliesAfterS ? 'unknown' : marks.heat();

  const marked = (): Pick<MonitorFacts, 'heat' | 'heatChangedS' | 'attentionDueS'> => ({
    heat: heat(),
    heatChangedS: marks.heatChangedS(),
    attentionDueS:
      settings.attentionCheckS === null || stage === 'cool-down' || heat() === 'off'
        ? null
        : lastPersonS + settings.attentionCheckS,
  });

  const collect = (timeS: number, now: HeadNow, channels: ChannelSenses): MonitorFacts => {
    const scale = limitScale.scale();
    const known = limitScale.settings();
    const doubt = judgeBulb(now.situation, scale, statedScaleSdK(known, scale));
    return {
      settings: known,
      timeS,
      stage,
      stageSinceS,
      probability: caller.probability(),
      condition: conditionOf(
        stage,
        now,
        doubt !== null,
        receiver.isNothingCollected(now.situation),
      ),
      head: now.head,
      noise: tracker.noise(),
      scale,
      limitAbv: limitScale.limitAbv(),
      bias: now.belief,
      situation: now.situation,
      outlook: now.outlook,
      overLimitPatienceS: patienceS(now),
      firstFraction: firstFraction(now),
      fault: now.fault,
      faultSinceS,
      dropouts: dropouts.dropouts(),
      doubt,
      lastTrustedC: now.lastTrustedC,
      potC: channels.value('pot'),
      condenserC: channels.value('condenser-outlet'),
      ...marked(),
      forecast: forecaster.view(),
    };
  };

  return {
    second: (timeS, now, channels) => {
      if (now.fault !== (last?.fault ?? null)) faultSinceS = timeS;
      last = now;
      dropouts.second(timeS, now.fault);
      followOff(now);
      receiver.second(timeS, channels, now.situation);
      callStage(timeS, now);
      lookAhead(timeS, now, channels.value('pot'));
      return collect(timeS, now, channels);
    },
    withMarks: (facts, timeS) => ({ ...facts, timeS, ...marked() }),
    seePerson: (timeS) => {
      lastPersonS = timeS;
    },
    isQuiet: (timeS) =>
      stage !== 'tail' &&
      stage !== 'cool-down' &&
      timeS - (marks.heatChangedS() ?? Number.NEGATIVE_INFINITY) > quietAfterHeatS,
    noteCalls: (bank) => {
      wasCalled ||= bank.isActive('plateau-departure');
      wasOverLimit ||= bank.isActive('over-limit');
    },
    isCalledAndAway: () =>
      wasCalled &&
      stage === 'tail' &&
      (heat() === 'off' || (last?.situation.recededSinceS ?? null) !== null),
  };
}

function conditionOf(
  stage: Stage,
  { fault, surging, situation }: HeadNow,
  isDoubted: boolean,
  isNothingCollected: boolean,
): Condition | null {
  if (fault !== null) return 'probe-suspect';
  if (stage !== 'cool-down' && isDoubted) return 'probe-suspect';
  if (stage === 'warm-up' || stage === 'cool-down') return null;
  // A surging head draws back and returns again and again: that is said, not each time it draws back.
  if (surging) return 'surging';
  if (situation.recededSinceS !== null) return 'vapour-receded';
  return isNothingCollected ? 'total-reflux' : null;
}
