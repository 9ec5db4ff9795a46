import { type Alarm, type AlarmView, alarmCatalogue } from '#shared-core';

/** Prompts that ask for the heat to be taken off: doing so is one press away wherever they are read. */
export function asksForHeatOff(alarm: Alarm): boolean {
  return alarmCatalogue[alarm].asksForHeatOff;
}

/** What taking the heat off answers, wherever it is marked. */
export function answeredByHeatOff(alarms: readonly AlarmView[]): readonly Alarm[] {
  return alarms
    .filter(({ alarm, state }) => {
      return state === 'unacknowledged' && alarmCatalogue[alarm].isAnsweredByHeatOff;
    })
    .map(({ alarm }) => alarm);
}
