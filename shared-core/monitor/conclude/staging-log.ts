import type { ChannelProblem } from '../../snapshot/index.ts';
import { worded } from '../../wording/index.ts';
import { type ConclusionLog, createConclusionLog } from '../conclusion-log.ts';
import type { MonitorFacts } from '../monitor-facts.ts';
import type { ChannelTurn } from '../sense/channel-senses.ts';
import type { PressureDifference } from '../sense/pressure-watch.ts';
import { isBlind, probeFaultWords } from '../sense/probe-fault.ts';
import { eventBecause } from '../words/event-words.ts';
import { headStrength } from '../words/head-strength.ts';
import { stageBecause } from '../words/stage-words.ts';
import { createChannelNotes } from './channel-notes.ts';

/** Puts into the run's log what has changed from one second to the next. */
export interface StagingLog {
  readonly log: ConclusionLog;
  second(
    before: MonitorFacts,
    now: MonitorFacts,
    turns: readonly ChannelTurn[],
    pressure: PressureDifference | null,
    otherProbeSinceS: number | null,
  ): void;
  /** What is wrong with channels beside the head now. */
  channelProblems(): readonly ChannelProblem[];
}

/** Every so often the head's vapour strength goes into the record [s]. */
export const estimateEveryS = 60;

export function createStagingLog(): StagingLog {
  const log = createConclusionLog(worded('The run begins with the warm-up.'));
  const channels = createChannelNotes(log);

  let faultProblem: number | null = null;
  const noteFault = (before: MonitorFacts, { fault, timeS }: MonitorFacts): void => {
    if (fault === before.fault) return;
    if (faultProblem !== null) log.closeProblem(faultProblem, timeS);
    const words = fault === null ? '' : atStart(probeFaultWords[fault]);
    faultProblem =
      fault === null
        ? null
        : log.openProblem(
            isBlind(fault)
              ? worded('{fault}; staging waited.', { fault: words })
              : worded('{fault}.', { fault: words }),
            timeS,
          );
  };

  const tell = (event: Parameters<ConclusionLog['event']>[0], now: MonitorFacts): void =>
    log.event(event, now.timeS, eventBecause(event, now));

  const noteEvents = ({ situation: before }: MonitorFacts, now: MonitorFacts): void => {
    const { situation, stage } = now;
    if (before.arrivedS === null && situation.arrivedS !== null) tell('vapour-arrived', now);
    if (before.recededSinceS === null && situation.recededSinceS !== null)
      tell('vapour-receded', now);
    if (before.recededSinceS !== null && situation.recededSinceS === null)
      tell('vapour-returned', now);
    const listening = stage === 'first-fraction' || stage === 'main-fraction';
    const departs = before.departedS === null && situation.departedS !== null;
    if (departs && listening) tell('plateau-ending', now);
  };

  const noteStage = (before: MonitorFacts, now: MonitorFacts): void => {
    if (now.stage === before.stage) return;
    log.enterStage(now.stage, now.stageSinceS, stageBecause(now));
    if (before.stage === 'first-fraction' && now.stage !== 'cool-down') {
      tell('first-fraction-ended', now);
    }
  };

  const noteForecast = (before: MonitorFacts, { forecast }: MonitorFacts): void => {
    if (forecast === null || forecast === before.forecast) return;
    if (forecast.mainFractionEndS !== null) log.forecast(forecast.madeS, forecast.mainFractionEndS);
  };

  const noteEstimate = (now: MonitorFacts): void => {
    const { timeS, situation, stage } = now;
    if (timeS % estimateEveryS !== 0 || situation.bathedS === null || stage === 'cool-down') return;
    const found = headStrength(now);
    log.estimate(timeS, found.kind === 'known' ? found.strength : null);
  };

  return {
    log,
    channelProblems: channels.open,
    second: (before, now, turns, difference, otherProbeSinceS) => {
      for (const turn of turns) channels.noteTurn(turn, now.timeS);
      channels.notePressure(difference, now.timeS);
      channels.noteOtherProbe(otherProbeSinceS);
      noteFault(before, now);
      noteEvents(before, now);
      noteStage(before, now);
      noteForecast(before, now);
      noteEstimate(now);
    },
  };
}

function atStart(words: string): string {
  return words.slice(0, 1).toUpperCase() + words.slice(1);
}
