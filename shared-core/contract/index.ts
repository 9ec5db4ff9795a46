/** What windows ask and services answer: requests, events, schemas of the wire. */

export { contractLimits } from './contract-limits.ts';
export { type EventBody, type EventName, events } from './events.ts';
export { type SetUp, setUpSchema } from './kept-rigs.ts';
export type { KeptWarm, WarmthReport } from './kept-warmth.ts';
export type { LessonScript } from './lesson-script.ts';
export {
  type PortInfo,
  type ProbeSource,
  type ProbeStatus,
  probeSourceSchema,
} from './probe-schemas.ts';
export { type RecordedChange, recordedChangeSchema } from './recorded-change.ts';
export { type RequestAnswer, type RequestBody, type RequestName, requests } from './requests.ts';
export {
  type RunSummary,
  runSummarySchema,
} from './run-schemas.ts';
export type { Service } from './service.ts';
export { answeredSchema, problemToSend, type ServiceProblem } from './service-problem.ts';
export { wire } from './wire.ts';
