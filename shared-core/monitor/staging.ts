import type { AlarmBank } from '../alarms/index.ts';
import type { Mark, RunSettings } from '../run/index.ts';
import type { Condition, Stage } from '../snapshot/index.ts';
import { followAlarmConditions } from './alarm-conditions.ts';
import { type BiasBelief, biasFromPlateau, priorBias } from './bias-belief.ts';
import { createBulbWatch } from './bulb-watch.ts';
import { isBlind } from './call/fault-kinds.ts';
import { type ChannelTurn, type ChannelValue, createChannelSenses } from './channel-senses.ts';
import { createDoubtfulRiseWatch } from './doubtful-rise-watch.ts';
import { createDropoutWatch } from './dropout-watch.ts';
import { firstFractionProgress } from './first-fraction-progress.ts';
import { createForecaster } from './forecaster.ts';
import type { HeadState } from './head-filter.ts';
import type { HeadTracker } from './head-tracker.ts';
import { judgeLimit, type LimitOutlook } from './limit-outlook.ts';
import { type MarksLedger, strongDistillateGPerMl } from './marks-ledger.ts';
import type { MonitorFacts } from './monitor-facts.ts';
import { createPlateauWatch } from './plateau-watch.ts';
import type { ProbeFault } from './probe-fault.ts';
import { probeFaultWords } from './probe-fault.ts';
import { createReceiverWatch } from './receiver-watch.ts';
import { createRunLog, type RunLog } from './run-log.ts';
import type { BinnedSecond } from './second-bin.ts';
import { createStageFilter } from './stage-filter.ts';
import { createSurgeWatch } from './surge-watch.ts';
import { createUnheldWatch } from './unheld-watch.ts';
import { createVapourScale } from './vapour-scale.ts';
import { eventBecause } from './words/event-words.ts';
import { headStrength } from './words/head-strength.ts';
import { span } from './words/numbers.ts';
import { stageBecause } from './words/stage-words.ts';

/** Works out one second after another and keeps the log of what was concluded. */
export interface Staging {
  readonly log: RunLog;
  second(timeS: number, head: BinnedSecond | null): void;
  seeChannel(reading: ChannelValue): void;
  seeMark(mark: Mark): void;
  facts(): MonitorFacts;
}

/** Every so often the head's vapour strength goes into the record [s]. */
const estimateEveryS = 60;
/** So long must the head have been held below the limit before its departure is called [s]. */
const armedAfterS = 60;
/** A head that was never held below the limit gives nothing to react to: weak vapour is told of sooner [s]. */
const unarmedPatienceS = 30;
/** Who brought the heat back in the tail is reminded of it after so long [s]. */
const reminderS = 90;
/** A plateau must have been undisturbed for so long to judge a step of the probe by [s]. */
const calmForStepS = 30;
const pressureStepKPa = 0.02;
/** Two probes side by side differ by no more than this [K]; common practice, no source. */
const coolerPotK = 2;
/** Flow expected before anything was booked: teaching rigs give 0.5–2 mL/min; common practice, no source. */
const usualFlowMlPerS = 1 / 60;

export function createStaging(
  settings: RunSettings,
  marks: MarksLedger,
  bank: AlarmBank,
  tracker: HeadTracker,
  forecasts: boolean,
): Staging {
  const log = createRunLog('The run begins with the warm-up.');
  const watch = createPlateauWatch();
  const stageFilter = createStageFilter();
  const surgeWatch = createSurgeWatch();
  const bulbWatch = createBulbWatch();
  const doubtfulRiseWatch = createDoubtfulRiseWatch();
  const dropoutWatch = createDropoutWatch();
  const receiver = createReceiverWatch();
  const forecaster = createForecaster(settings, marks);
  let limitAbv = settings.leastStrengthAbv;
  let scale = createVapourScale(settings.pressure.pressureKPa, limitAbv);
  let bias: BiasBelief = priorBias(settings, scale);
  let head: HeadState | null = null;
  let fault: ProbeFault | null = null;
  let faultSinceS = 0;
  let faultProblem: number | null = null;
  const silentChannels = new Map<string, number>();
  let stage: Stage = 'warm-up';
  let stageSinceS = 0;
  let lastTrustedC: number | null = null;
  const channels = createChannelSenses();
  let belowLimitForS = 0;
  let overLimitForS = 0;
  let wasOverLimit = false;
  let wasArmed = false;
  const unheldWatch = createUnheldWatch();
  let lastPersonS = 0;
  let surging = false;
  let plateau = watch.view();
  let outlook: LimitOutlook = noOutlook(scale.limitC);
  let facts = collect(0);

  function collect(timeS: number): MonitorFacts {
    return {
      settings,
      timeS,
      stage,
      stageSinceS,
      probability: stageFilter.probability(stage),
      condition: conditionNow(),
      head,
      noise: tracker.noise(),
      scale,
      limitAbv,
      pressureSdKPa: settings.pressure.standardUncertaintyKPa,
      bias,
      plateau,
      outlook,
      heatOffArmed: belowLimitForS >= armedAfterS,
      overLimitForS,
      overLimitPatienceS: overLimitPatienceS(),
      limitPassedUnheldForS: unheldWatch.limitPassedForS(),
      firstFraction: firstFractionProgress(
        settings.firstFraction,
        { drops: marks.dropsCounted(), collectedMl: marks.collectedMl() ?? receiver.collectedMl() },
        plateau.heldS === null ? 0 : Math.max(plateau.heldWetS, 1),
        forecaster.flowMlPerS() ?? usualFlowMlPerS,
      ),
      fault,
      faultSinceS,
      dropouts: dropoutWatch.dropouts(),
      doubt: bulbWatch.doubt(),
      doubtfulRise: doubtfulRiseWatch.rise(),
      lastTrustedC,
      potC: channels.value('pot'),
      condenserC: channels.value('condenser-outlet'),
      heat: marks.heat(),
      heatChangedS: marks.heatChangedS(),
      attentionDueS: attentionDueS(),
      forecast: forecaster.view(),
    };
  }

  function conditionNow(): Condition | null {
    if (fault !== null) return 'probe-suspect';
    const isDoubted = bulbWatch.doubt() !== null || doubtfulRiseWatch.rise()?.endedS === null;
    if (stage !== 'cool-down' && isDoubted) return 'probe-suspect';
    if (stage === 'warm-up' || stage === 'cool-down') return null;
    // A surging head draws back and returns again and again: that is said, not each time it draws back.
    if (surging) return 'surging';
    if (plateau.recededSinceS !== null) return 'vapour-receded';
    return isNothingCollected() ? 'total-reflux' : null;
  }

  /** Who has been told and brings the heat back wants the tail: a reminder is enough. */
  function overLimitPatienceS(): number {
    if (stage === 'tail' && wasOverLimit) return reminderS;
    return belowLimitForS >= armedAfterS ? settings.reactionTimeS : unarmedPatienceS;
  }

  /** A balance knows better than the last reading of a person, who may not have looked since. */
  function isNothingCollected(): boolean {
    if (plateau.heldS === null || marks.heat() === 'off') return false;
    return receiver.collectedMl() === null ? marks.isReceiverStill() : receiver.isStill();
  }

  function attentionDueS(): number | null {
    if (settings.attentionCheckS === null || stage === 'cool-down') return null;
    return marks.heat() === 'off' ? null : lastPersonS + settings.attentionCheckS;
  }

  const setPressure = (pressureKPa: number): void => {
    if (pressureKPa < 60 || pressureKPa > 110) return;
    if (Math.abs(pressureKPa - scale.pressureKPa) < pressureStepKPa) return;
    scale = createVapourScale(pressureKPa, limitAbv);
  };

  /** Where purity is weighed against recovery, the limit follows the forecast, in half per cents. */
  const setLimit = (stopAbv: number | null): void => {
    if (stopAbv === null || stage === 'tail' || outlook.heatOffDue) return;
    const bounded = Math.round(2 * Math.max(10, Math.min(95, stopAbv))) / 2;
    if (bounded === limitAbv) return;
    limitAbv = bounded;
    scale = createVapourScale(scale.pressureKPa, limitAbv);
  };

  const readHead = (timeS: number, binned: BinnedSecond | null): number | null => {
    const step = tracker.second(timeS, binned, {
      // Vapour that has just come (back) heats a bulb as fast as it likes: only a calm plateau shows a probe that slips.
      plateauC:
        plateau.recededSinceS === null && plateau.calmS >= calmForStepS ? plateau.levelC : null,
      waterC: scale.waterC,
      potC: channels.value('pot'),
      holding: plateau.heldS !== null && plateau.calmS > 15 && fault === null,
    });
    head = step.head;
    if (step.fault !== fault) {
      if (faultProblem !== null) log.closeProblem(faultProblem, timeS);
      faultProblem = null;
      if (step.fault !== null) {
        const words = probeFaultWords[step.fault];
        const waits = isBlind(step.fault) ? '; staging waited' : '';
        faultProblem = log.openProblem(
          `${words[0]?.toUpperCase()}${words.slice(1)}${waits}.`,
          timeS,
        );
        faultSinceS = timeS;
      }
      fault = step.fault;
    }
    dropoutWatch.second(timeS, fault);
    lastTrustedC = step.observedC ?? lastTrustedC;
    return step.observedC;
  };

  /** A channel that goes silent is told of, and what hangs on it is left out. */
  const noteChannel = ({ channel, isSilent, lastS }: ChannelTurn, timeS: number): void => {
    const open = silentChannels.get(channel);
    if (isSilent) {
      const words = `The channel ${channel} has sent nothing since ${span(lastS)}; what hangs on it is left out. Check its probe and cable.`;
      silentChannels.set(channel, log.openProblem(words, lastS));
    } else if (open !== undefined) log.closeProblem(open, timeS);
  };

  const followPlateau = (timeS: number, observedC: number | null): void => {
    if (head === null) return;
    const before = plateau;
    watch.second({
      timeS,
      observedC,
      head,
      noise: tracker.noise(),
      azeotropeC: scale.azeotropeC + bias.meanK,
      limitC: scale.limitC + bias.meanK,
      suspended: isBlind(fault),
    });
    plateau = watch.view();
    if (plateau.lowestLevelC !== null && timeS % 10 === 0) {
      bias =
        forecaster.bias() ??
        biasFromPlateau(priorBias(settings, scale), plateau.lowestLevelC, 0.05, scale);
    }
    outlook = judgeLimit(head, plateau, scale.limitC, bias, settings.reactionTimeS);
    const tell = (event: Parameters<RunLog['event']>[0]): void =>
      log.event(event, timeS, eventBecause(event, collect(timeS)));
    if (before.arrivedS === null && plateau.arrivedS !== null) tell('vapour-arrived');
    if (before.recededSinceS === null && plateau.recededSinceS !== null) tell('vapour-receded');
    if (before.recededSinceS !== null && plateau.recededSinceS === null) tell('vapour-returned');
    const listening = stage === 'first-fraction' || stage === 'main-fraction';
    if (before.departedS === null && plateau.departedS !== null && listening)
      tell('plateau-ending');
  };

  const followStage = (timeS: number): void => {
    if (head === null || isBlind(fault)) return;
    bulbWatch.second({
      head,
      plateau,
      azeotropeC: scale.azeotropeC,
      priorBias: priorBias(settings, scale),
      isHeatOff: marks.heat() === 'off',
    });
    doubtfulRiseWatch.second({
      timeS,
      head,
      doubt: bulbWatch.doubt(),
      azeotropeC: scale.azeotropeC,
      limitC: scale.limitC,
      isHeatOff: marks.heat() === 'off',
    });
    const steady = plateau.heldS !== null && plateau.recededSinceS === null;
    if (steady && outlook.passed < 0.2) belowLimitForS += 1;
    wasArmed ||= belowLimitForS >= armedAfterS;
    // Heat brought back in the tail has no plateau to leave, unless the head comes below the limit again.
    const isAway = plateau.recededSinceS !== null || marks.heat() === 'off';
    if (stage === 'tail' && isAway) belowLimitForS = 0;
    const isWeak = steady && plateau.calmS > 30 && outlook.passed > 0.95;
    overLimitForS = isWeak && marks.heat() !== 'off' ? overLimitForS + 1 : 0;
    unheldWatch.second({
      head,
      plateau,
      outlook,
      azeotropeC: scale.azeotropeC + bias.meanK,
      isArmed: wasArmed,
    });
    const now = collect(timeS);
    stageFilter.second({
      aboveAzeotropeK: head.vapourC - scale.azeotropeC - bias.meanK,
      aboveLimitK: head.vapourC - outlook.limitOnProbeC,
      sdK: head.vapourSdK,
      bathed: plateau.bathedS !== null,
      firstFractionOver: now.firstFraction.over,
      sinking: head.rateKPerS < -2 * head.rateSdKPerS && head.rateKPerS < -0.002,
      receded: plateau.recededSinceS !== null,
      absentS: marks.heat() === 'off' || bulbWatch.isCooling() ? plateau.absentS : 0,
      heat: marks.heat(),
    });
    const called = stageFilter.called();
    if (called === stage) return;
    const past = stage;
    stage = called;
    stageSinceS = stage === 'cool-down' ? (plateau.recededSinceS ?? timeS) : timeS;
    const entered = collect(timeS);
    log.enterStage(stage, stageSinceS, stageBecause(entered));
    if (past === 'first-fraction') {
      log.event('first-fraction-ended', timeS, eventBecause('first-fraction-ended', entered));
    }
  };

  /** A pot cannot be cooler than the vapour it gives: one that reads so has no say in the forecast. */
  const believedPotC = ({ vapourC }: HeadState): number | null => {
    const potC = channels.value('pot');
    return potC === null || potC < vapourC - coolerPotK ? null : potC;
  };

  const lookAhead = (timeS: number): void => {
    if (head === null || !forecasts) return;
    const before = forecaster.view();
    forecaster.second({
      timeS,
      stage,
      head,
      plateau,
      scale,
      priorBias: priorBias(settings, scale),
      potC: believedPotC(head),
      receiverMl: receiver.collectedMl(),
      nothingCollected: isNothingCollected(),
      suspended: isBlind(fault),
    });
    setLimit(forecaster.stopStrengthAbv());
    const view = forecaster.view();
    if (view === null || view === before || view.mainFractionEndS === null) return;
    log.forecast(timeS, view.mainFractionEndS);
  };

  const noteEstimate = (timeS: number): void => {
    if (timeS % estimateEveryS !== 0 || plateau.bathedS === null || stage === 'cool-down') return;
    const found = headStrength(collect(timeS));
    log.estimate(timeS, found.kind === 'known' ? found.strength : null);
  };

  return {
    log,
    second: (timeS, binned) => {
      for (const turn of channels.second(timeS)) noteChannel(turn, timeS);
      const observedC = readHead(timeS, binned);
      if (!isBlind(fault)) followPlateau(timeS, observedC);
      if (observedC !== null) {
        const { whiteSdK, slowSdK } = tracker.noise();
        surging = surgeWatch.see(timeS, observedC, Math.hypot(whiteSdK, slowSdK));
      }
      followStage(timeS);
      lookAhead(timeS);
      noteEstimate(timeS);
      facts = collect(timeS);
      followAlarmConditions(bank, facts, surging);
      wasOverLimit ||= bank.isActive('over-limit');
    },
    seeChannel: (reading) => {
      channels.see(reading);
      const { channel, value, unit, atS: timeS } = reading;
      if (channel === 'receiver') {
        const mlPerUnit = unit === 'g' ? 1 / strongDistillateGPerMl : 1;
        receiver.see(timeS, value, mlPerUnit, plateau.arrivedS !== null);
      }
      if (channel === 'air-pressure' && timeS % 10 === 0) setPressure(value);
    },
    seeMark: ({ timeS }) => {
      lastPersonS = timeS;
      const read = marks.airPressureKPa();
      if (read !== null) setPressure(read);
      facts = collect(Math.max(timeS, facts.timeS));
      bank.condition('attention', facts.timeS, false, () => ({ because: '', wouldChangeIf: '' }));
    },
    facts: () => facts,
  };
}

function noOutlook(limitC: number): LimitOutlook {
  return {
    limitOnProbeC: limitC,
    passed: 0,
    passedWithinReaction: 0,
    etaS: null,
    departed: false,
    heatOffDue: false,
  };
}
