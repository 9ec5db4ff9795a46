/** The still as it probably is, and when the main fraction will end. */
export { createTwin, type Twin, type TwinOutlook } from './create-twin.ts';
export type { Observation } from './observations.ts';
