import { z } from 'zod';

/** Alarms: each demands an act. Identifiers are part of the contract for scripts. */
export const alarms = [
  'plateau-departure',
  'over-limit',
  'near-dryness',
  'condenser-warm',
  'surging',
  'probe-fault',
  'attention',
] as const;

export const alarmSchema = z.enum(alarms);
export type Alarm = z.infer<typeof alarmSchema>;

export const alarmPrioritySchema = z.enum(['high', 'medium']);

/** States of IEC 62682 (ISA-18.2): normal, unacknowledged, acknowledged, returned unacknowledged, shelved. */
export const alarmStateSchema = z.enum([
  'normal',
  'unacknowledged',
  'acknowledged',
  'returned-unacknowledged',
  'shelved',
]);

/** An alarm as the window shows it. The act comes first. */
export const alarmViewSchema = z.strictObject({
  alarm: alarmSchema,
  state: alarmStateSchema,
  priority: alarmPrioritySchema,
  raisedS: z.number(),
  act: z.string(),
  because: z.string(),
  consequence: z.string(),
  wouldChangeIf: z.string(),
  shelvedUntilS: z.number().nullable(),
});

/** An alarm as it stands in the record: raised once, cleared when its condition ended. */
export const alarmRecordSchema = z.strictObject({
  alarm: alarmSchema,
  priority: alarmPrioritySchema,
  raisedS: z.number(),
  clearedS: z.number().nullable(),
  acknowledgedS: z.number().nullable(),
  because: z.string(),
});

export type AlarmPriority = z.infer<typeof alarmPrioritySchema>;
export type AlarmState = z.infer<typeof alarmStateSchema>;
export type AlarmView = z.infer<typeof alarmViewSchema>;
export type AlarmRecord = z.infer<typeof alarmRecordSchema>;
