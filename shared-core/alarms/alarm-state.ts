/** States of IEC 62682 (ISA-18.2): normal, unacknowledged, acknowledged, returned unacknowledged, shelved. */
export const alarmStates = [
  'normal',
  'unacknowledged',
  'acknowledged',
  'returned-unacknowledged',
  'shelved',
] as const;

export type AlarmState = (typeof alarmStates)[number];

export const alarmPriorities = ['high', 'medium'] as const;

export type AlarmPriority = (typeof alarmPriorities)[number];
