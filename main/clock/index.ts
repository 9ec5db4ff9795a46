export { type Clock, systemClock } from './clock.ts';
