import type { Alarm, AlarmView } from '#shared-core';

/** Prompts that ask for the heat to be taken off: doing so is one press away wherever they are read. */
export const asksForHeatOff: ReadonlySet<Alarm> = new Set<Alarm>([
  'plateau-departure',
  'over-limit',
  'near-dryness',
  'condenser-warm',
]);

/**
 * What taking the heat off answers, wherever it is marked. Cooling water is not restored by it: that prompt
 * is answered by who has read it.
 */
export function answeredByHeatOff(alarms: readonly AlarmView[]): readonly Alarm[] {
  return alarms
    .filter(({ alarm, state }) => state === 'unacknowledged' && asksForHeatOff.has(alarm))
    .map(({ alarm }) => alarm)
    .filter((alarm) => alarm !== 'condenser-warm');
}
