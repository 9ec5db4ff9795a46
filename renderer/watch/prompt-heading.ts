import { type AlarmView, alarmTitles, say, told } from '#shared-core';

/** What stands at the head of a prompt: what to do, and once nothing is left to do what it was that is over. */
export function promptHeading({ alarm, act }: AlarmView): string {
  return act === null ? say('Over: {title}', { title: told(alarmTitles[alarm]) }) : told(act);
}
