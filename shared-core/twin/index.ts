export { createTwin, type Twin, type TwinOutlook } from './create-twin.ts';
export type { Observation } from './observations.ts';
