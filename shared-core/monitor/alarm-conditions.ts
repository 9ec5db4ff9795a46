import type { AlarmBank } from '../alarms/index.ts';
import type { Alarm } from '../snapshot/index.ts';
import type { MonitorFacts } from './monitor-facts.ts';
import { isDropout } from './probe-fault.ts';
import { alarmReason, deadbandK } from './words/alarm-reasons.ts';

/** Time an unanswered attention check may stand before it becomes an alarm [s]. */
const attentionGraceS = 60;
/** A head that never held gives no level to have left; the limit itself must have been passed for so long [s]. */
const unheldPatienceS = 30;
/**
 * Who was called takes the heat off within the reaction time; then the heater cools, the vapour goes and the bulb
 * follows: only a head that is still above the limit after that says that the heat is on (by simulation) [s].
 */
const fadesWithinS = 60;
/** Who has just answered for a dropout is not called for each short one that follows [s]. */
const answeredPatienceS = 20;
const condenserOnC = 40;
const condenserOffC = 35;
/** Least that must stay in the pot, for all one knows: a tenth of the charge; common practice, no source. */
const leastPotShare = 0.1;

/** Brings every alarm's condition up to date with the facts of this second. */
export function followAlarmConditions(
  bank: AlarmBank,
  facts: MonitorFacts,
  surging: boolean,
): void {
  const follow = (alarm: Alarm, active: boolean): void =>
    bank.condition(alarm, facts.timeS, active, () => alarmReason(alarm, facts));
  followProbe(bank, facts);
  follow('attention', attentionMissed(facts));
  follow('condenser-warm', condenserWarm(bank, facts));
  follow('near-dryness', nearDryness(facts));
  if (facts.fault !== null && facts.heat !== 'off') return;
  follow('surging', surging && facts.plateau.heldS !== null && mayBoil(facts));
  follow('plateau-departure', plateauDeparture(bank, facts));
  follow('over-limit', overLimit(bank, facts));
}

/**
 * Dropouts that follow each other closely are one alarm: it stands again while nobody has answered it, and then until
 * the probe has been quiet. The staging waits in each of them all the same.
 */
function followProbe(bank: AlarmBank, facts: MonitorFacts): void {
  const { fault, doubt, dropouts, timeS, stage } = facts;
  const { active, acknowledgedS } = bank.trackOf('probe-fault');
  const isRepeated = dropouts.count > 1;
  const isOutAgain = isRepeated && isDropout(fault);
  const isAnswered = acknowledgedS !== null;
  let isSuspect = fault !== null || doubt !== null;
  if (!isSuspect) isSuspect = isRepeated && active && !isAnswered;
  else if (isOutAgain && isAnswered && !active && doubt === null) {
    isSuspect = timeS - facts.faultSinceS >= answeredPatienceS;
  }
  const reason = () => alarmReason('probe-fault', facts);
  // Who has answered for a bulb that hangs badly does not know that the probe has gone.
  const isOtherCause = fault !== null && doubt !== null && facts.faultSinceS === timeS;
  if (isOtherCause && active) bank.otherCause('probe-fault', timeS, reason());
  if (isOutAgain && active && facts.faultSinceS === timeS) {
    bank.renewReason('probe-fault', timeS, reason());
  }
  bank.condition('probe-fault', timeS, isSuspect && stage !== 'cool-down', reason, isOutAgain);
}

function mayBoil({ heat, stage }: MonitorFacts): boolean {
  return heat !== 'off' && stage !== 'cool-down';
}

function heating(facts: MonitorFacts): boolean {
  return mayBoil(facts) && facts.plateau.recededSinceS === null;
}

function plateauDeparture(bank: AlarmBank, facts: MonitorFacts): boolean {
  // A doubted bulb that swings may seem to have lost its vapour: while it rises, it has not.
  if (facts.doubtfulRise?.endedS === null && mayBoil(facts)) return true;
  if (!heating(facts)) return false;
  const { outlook, head, plateau } = facts;
  if (!bank.isActive('plateau-departure')) {
    // Who brings heat back in the tail has been called; that the vapour is weak is told of by over-limit.
    const wasCalled = facts.stage === 'tail' && bank.trackOf('plateau-departure').raisedS !== null;
    const leftUnheld = facts.limitPassedUnheldForS > unheldPatienceS && !wasCalled;
    return leftUnheld || (facts.heatOffArmed && outlook.heatOffDue);
  }
  const backBelowC = Math.min(
    outlook.limitOnProbeC - deadbandK(facts),
    (plateau.levelC ?? outlook.limitOnProbeC) + deadbandK(facts),
  );
  return head === null || head.vapourC > backBelowC;
}

function overLimit(bank: AlarmBank, facts: MonitorFacts): boolean {
  if (!heating(facts)) return false;
  const { outlook, head } = facts;
  if (head === null) return false;
  if (bank.isActive('over-limit')) {
    return head.vapourC > outlook.limitOnProbeC - deadbandK(facts);
  }
  return facts.overLimitForS > facts.overLimitPatienceS && !wasJustCalled(bank, facts);
}

function wasJustCalled(bank: AlarmBank, { timeS, settings }: MonitorFacts): boolean {
  const { active, raisedS } = bank.trackOf('plateau-departure');
  return active && raisedS !== null && timeS - raisedS < settings.reactionTimeS + fadesWithinS;
}

function attentionMissed({ attentionDueS, timeS }: MonitorFacts): boolean {
  return attentionDueS !== null && timeS >= attentionDueS + attentionGraceS;
}

function condenserWarm(bank: AlarmBank, { condenserC }: MonitorFacts): boolean {
  if (condenserC === null) return false;
  return condenserC > (bank.isActive('condenser-warm') ? condenserOffC : condenserOnC);
}

function nearDryness(facts: MonitorFacts): boolean {
  const left = facts.forecast?.potVolumeMl ?? null;
  if (left === null || !heating(facts)) return false;
  return left.low < leastPotShare * facts.settings.charge.volumeMl;
}
