/** What windows ask and services answer: requests, events, schemas of the wire. */

export type { ClassView } from './class-view.ts';
export { type EventBody, type EventName, events } from './events.ts';
export { largestImportBytes, mostInPack, pieceBytes } from './exchange-requests.ts';
export { mostFermentsTold } from './kept-ferments.ts';
export {
  keptRigSchema,
  mostRigs,
  pressureFromSchema,
  pressureUnitSchema,
  probeCorrectionSchema,
  probeKindSchema,
  type SetUp,
  setUpSchema,
} from './kept-rigs.ts';
export type { KeptWarm, WarmthReport } from './kept-warmth.ts';
export { type LessonScript, lessonScriptSchema } from './lesson-script.ts';
export {
  type PortInfo,
  type ProbeFinding,
  type ProbeSource,
  type ProbeStatus,
  probeSourceSchema,
} from './probe-schemas.ts';
export { promptAsideForS } from './prompt-aside.ts';
export { type RecordedChange, recordedChangeSchema } from './recorded-change.ts';
export { type RequestAnswer, type RequestBody, type RequestName, requests } from './requests.ts';
export {
  type RecordingStatus,
  type RunPage,
  type RunSummary,
  runSummarySchema,
  type Unreadable,
} from './run-schemas.ts';
export type { Service } from './service.ts';
export { problemToSend, type ServiceProblem, serviceProblemSchema } from './service-problem.ts';
export {
  type WireHello,
  type WireMessage,
  type WireRequest,
  wireHelloSchema,
  wireMessageSchema,
  wireRefusedCode,
  wireRequestSchema,
} from './wire.ts';
