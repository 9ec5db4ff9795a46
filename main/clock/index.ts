/** The one clock of the services. */

export { type Clock, systemClock } from './clock.ts';
export { type Scheduler, systemScheduler } from './scheduler.ts';
