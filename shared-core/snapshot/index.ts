/** What a window is shown of a run at a moment. */
export {
  type Alarm,
  type AlarmRecord,
  type AlarmState,
  type AlarmView,
  alarmRecordSchema,
  alarmSchema,
  alarmStateSchema,
  alarms,
  recordedAlarmRecordSchema,
} from './alarm.ts';
export { type RunEvent, type RunEventName, runEventSchema } from './run-event.ts';
export {
  type ChannelProblem,
  type PlateauBand,
  type Snapshot,
  snapshotSchema,
  type VapourView,
} from './snapshot.ts';
export { textsInSnapshot } from './texts-in-snapshot.ts';
export { type RunProblem, type Verdicts, verdictAlone, verdictsSchema } from './verdicts.ts';
