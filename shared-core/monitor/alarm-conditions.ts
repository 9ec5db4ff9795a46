import type { AlarmBank } from '../alarms/index.ts';
import type { Alarm } from '../snapshot/index.ts';
import type { MonitorFacts } from './monitor-facts.ts';
import { alarmReason, deadbandK } from './words/alarm-reasons.ts';

/** Time an unanswered attention check may stand before it becomes an alarm [s]. */
const attentionGraceS = 60;
/** A head that never held gives no level to have left; the limit itself must have been passed for so long [s]. */
const unheldPatienceS = 30;
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
  const isSuspect = facts.fault !== null || facts.doubt !== null;
  follow('probe-fault', isSuspect && facts.stage !== 'cool-down');
  follow('attention', attentionMissed(facts));
  follow('condenser-warm', condenserWarm(bank, facts));
  follow('near-dryness', nearDryness(facts));
  if (facts.fault !== null && facts.heat !== 'off') return;
  follow('surging', surging && facts.plateau.heldS !== null && mayBoil(facts));
  follow('plateau-departure', plateauDeparture(bank, facts));
  follow('over-limit', overLimit(bank, facts));
}

function mayBoil({ heat, stage }: MonitorFacts): boolean {
  return heat !== 'off' && stage !== 'cool-down';
}

function heating(facts: MonitorFacts): boolean {
  return mayBoil(facts) && facts.plateau.recededSinceS === null;
}

function plateauDeparture(bank: AlarmBank, facts: MonitorFacts): boolean {
  if (!heating(facts)) return false;
  const { outlook, head, plateau } = facts;
  if (!bank.isActive('plateau-departure')) {
    const leftUnheld = facts.limitPassedUnheldForS > unheldPatienceS;
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
  return facts.overLimitForS > facts.overLimitPatienceS;
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
