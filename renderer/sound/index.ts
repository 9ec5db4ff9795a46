/** The chime, and when an alarm is due to sound. */
export { callDue, silent } from './call-for-alarms.ts';
export { type Chime, createChime } from './chime.ts';
