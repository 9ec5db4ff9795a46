import type { Alarm } from '#shared-core';

/** Short names of the prompts, for lists. */
export const alarmNames: Readonly<Record<Alarm, string>> = {
  'plateau-departure': 'Heat off, change the receiver',
  'over-limit': 'Heat off now: limit passed',
  'near-dryness': 'Pot near dryness',
  'condenser-warm': 'Condenser warm',
  surging: 'Surging',
  'probe-fault': 'Probe in doubt',
  attention: 'Nobody answered',
};
