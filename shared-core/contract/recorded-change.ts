import { z } from 'zod';
import { alarmStateSchema, recordedAlarmRecordSchema, runEventSchema } from '../snapshot/index.ts';
import { stageSpanSchema } from '../stages/index.ts';

/**
 * What the monitor concluded while the run was recorded, without the snapshots behind the alarms.
 * A replay that concludes anything else has found a changed model or a damaged record.
 */
export const recordedChangeSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('stage-entered'), timeS: z.number(), span: stageSpanSchema }),
  z.strictObject({
    kind: z.literal('alarm-changed'),
    timeS: z.number(),
    record: recordedAlarmRecordSchema,
    state: alarmStateSchema,
  }),
  z.strictObject({ kind: z.literal('event'), timeS: z.number(), event: runEventSchema }),
]);

export type RecordedChange = z.infer<typeof recordedChangeSchema>;
