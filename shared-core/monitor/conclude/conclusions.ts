import type { RunSettings } from '../../run/index.ts';
import type { Condition, Stage } from '../../stages/index.ts';
import type { AlarmBank } from '../alarm-bank.ts';
import type { MarksLedger } from '../marks-ledger.ts';
import type { MonitorFacts } from '../monitor-facts.ts';
import { lastsAfterS } from '../patience.ts';
import type { ChannelSenses } from '../sense/channel-senses.ts';
import { createDropoutWatch } from '../sense/dropout-watch.ts';
import type { HeadTracker } from '../sense/head-tracker.ts';
import { isBlind } from '../sense/probe-fault.ts';
import { judgeBulb } from '../situation/bulb-doubt.ts';
import type { HeadNow } from '../situation/head-course.ts';
import type { LimitScale } from '../situation/limit-scale.ts';
import { createBelievedHeat } from './believed-heat.ts';
import { firstFractionProgress } from './first-fraction-progress.ts';
import { createForecaster } from './forecaster.ts';
import { createHeatOffCalls } from './heat-off-calls.ts';
import { createReceiverFollower } from './receiver-follower.ts';
import { createStageFollower } from './stage-follower.ts';
import { createStatedDoubts } from './stated-doubts.ts';

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

/** Flow expected before anything was booked: teaching rigs give 0.5–2 mL/min; common practice, no source. */
const usualFlowMlPerS = 1 / 60;

/** What conclusions are drawn by, each part with what it holds of the run so far. */
function createFollowers({ settings, marks, limitScale }: ConclusionParts) {
  return {
    stage: createStageFollower(),
    heat: createBelievedHeat(marks),
    calls: createHeatOffCalls(settings),
    forecaster: createForecaster(settings, marks),
    receiver: createReceiverFollower(marks),
    dropouts: createDropoutWatch(),
    statedDoubts: createStatedDoubts(limitScale),
  };
}
type Followers = ReturnType<typeof createFollowers>;

type Marked = Pick<MonitorFacts, 'heat' | 'heatChangedS' | 'attentionDueS'>;
/** What a second holds besides what the followers do. */
interface AroundFacts extends Pick<MonitorFacts, 'timeS' | 'faultSinceS' | 'firstFraction'> {
  readonly channels: ChannelSenses;
  readonly marked: Marked;
}

export function createConclusions(parts: ConclusionParts): Conclusions {
  const { settings, marks } = parts;
  const followers = createFollowers(parts);
  const { stage, heat, calls, receiver, dropouts } = followers;
  let faultSinceS = 0;
  let lastPersonS = 0;
  let last: HeadNow | null = null;

  const marked = (): Marked => ({
    heat: heat.heat(),
    heatChangedS: marks.heatChangedS(),
    attentionDueS:
      settings.attentionCheckS === null || stage.stage() === 'cool-down' || heat.heat() === 'off'
        ? null
        : lastPersonS + settings.attentionCheckS,
  });

  return {
    second: (timeS, now, channels) => {
      if (now.fault !== (last?.fault ?? null)) faultSinceS = timeS;
      last = now;
      dropouts.second(timeS, now.fault);
      heat.second(now);
      receiver.second(timeS, channels, now.situation);
      const firstFraction = firstFractionOf(parts, followers, now);
      const isHeatOff = heat.heat() === 'off';
      stage.second(timeS, now, { firstFractionOver: firstFraction.over, isHeatOff });
      lookAhead(parts, followers, timeS, now, channels.value('pot'));
      return factsOf(parts, followers, now, {
        timeS,
        faultSinceS,
        firstFraction,
        channels,
        marked: marked(),
      });
    },
    withMarks: (facts, timeS) => ({ ...facts, timeS, ...marked() }),
    seePerson: (timeS) => {
      lastPersonS = timeS;
    },
    isQuiet: (timeS) =>
      stage.stage() !== 'tail' &&
      stage.stage() !== 'cool-down' &&
      timeS - (marks.heatChangedS() ?? Number.NEGATIVE_INFINITY) > lastsAfterS,
    noteCalls: calls.note,
    isCalledAndAway: () =>
      calls.wasCalled() &&
      stage.stage() === 'tail' &&
      (heat.heat() === 'off' || (last?.situation.recededSinceS ?? null) !== null),
  };
}

function firstFractionOf(
  { settings, marks }: ConclusionParts,
  { receiver, forecaster }: Followers,
  { situation }: HeadNow,
): MonitorFacts['firstFraction'] {
  return firstFractionProgress(
    settings.firstFraction,
    { drops: marks.dropsCounted(), collectedMl: receiver.collectedMl() },
    situation.heldS === null ? 0 : Math.max(situation.heldWetS, 1),
    forecaster.flowMlPerS() ?? usualFlowMlPerS,
  );
}

function lookAhead(
  { limitScale, forecasts }: ConclusionParts,
  { stage, forecaster, receiver, statedDoubts }: Followers,
  timeS: number,
  now: HeadNow,
  potC: number | null,
): void {
  if (now.head === null || !forecasts) return;
  forecaster.second({
    timeS,
    stage: stage.stage(),
    head: now.head,
    situation: now.situation,
    scale: limitScale.scale(),
    statedSdK: statedDoubts().statedSdK,
    pressureSdK: statedDoubts().pressureSdK,
    potC,
    receiverMl: receiver.weighedMl(),
    nothingCollected: receiver.isNothingCollected(now.situation),
    nothingCollectedByMarks: receiver.isNothingBooked(now.situation),
    suspended: isBlind(now.fault),
  });
  const stopAbv = forecaster.stopStrengthAbv();
  if (stopAbv !== null && stage.stage() !== 'tail' && !now.outlook.heatOffDue) {
    limitScale.setLimit(stopAbv);
  }
}

/** All that is held true. Each by its name: spread together every second, they cost a tenth of all that is done without a forecast. */
function factsOf(
  parts: ConclusionParts,
  followers: Followers,
  now: HeadNow,
  { timeS, faultSinceS, firstFraction, channels, marked }: AroundFacts,
): MonitorFacts {
  const { stage, calls, forecaster, receiver, dropouts, statedDoubts } = followers;
  const scale = parts.limitScale.scale();
  const doubt = judgeBulb(now.situation, scale, statedDoubts().statedSdK);
  const isNothingCollected = receiver.isNothingCollected(now.situation);
  return {
    timeS,
    settings: parts.limitScale.settings(),
    stage: stage.stage(),
    stageSinceS: stage.sinceS(),
    probability: stage.probability(),
    condition: conditionOf(stage.stage(), now, doubt !== null, isNothingCollected),
    head: now.head,
    noise: parts.tracker.noise(),
    scale,
    limitAbv: parts.limitScale.limitAbv(),
    bias: now.belief,
    situation: now.situation,
    outlook: now.outlook,
    overLimitPatienceS: calls.patienceS(stage.stage(), now),
    firstFraction,
    fault: now.fault,
    faultSinceS,
    dropouts: dropouts.dropouts(),
    doubt,
    lastTrustedC: now.lastTrustedC,
    potC: channels.value('pot'),
    condenserC: channels.value('condenser-outlet'),
    heat: marked.heat,
    heatChangedS: marked.heatChangedS,
    attentionDueS: marked.attentionDueS,
    forecast: forecaster.view(),
  };
}

function conditionOf(
  stage: Stage,
  { fault, surging, situation }: HeadNow,
  isDoubted: boolean,
  isNothingCollected: boolean,
): Condition | null {
  // What another channel says against the head is told as a prompt alone.
  if (isBlind(fault)) return 'probe-suspect';
  if (stage !== 'cool-down' && isDoubted) return 'probe-suspect';
  if (stage === 'warm-up' || stage === 'cool-down') return null;
  // A surging head draws back and returns again and again: that is said, not each time it draws back.
  if (surging) return 'surging';
  if (situation.recededSinceS !== null) return 'vapour-receded';
  return isNothingCollected ? 'total-reflux' : null;
}
