import { worded } from '../../wording/index.ts';
import type { AlarmId } from './alarm-list.ts';

/** Names that records of earlier versions hold, and that `npm run analyse` prints still, with what became of each. */
export const retiredAlarms = {
  'probe-fault': {
    title: worded('Probe in doubt'),
    became: ['probe-lost', 'probe-implausible', 'bulb-doubted'],
  },
} as const satisfies Readonly<
  Record<string, { readonly title: string; readonly became: readonly AlarmId[] }>
>;

export type RetiredAlarm = keyof typeof retiredAlarms;
export const retiredAlarmNames = Object.keys(retiredAlarms) as RetiredAlarm[];
