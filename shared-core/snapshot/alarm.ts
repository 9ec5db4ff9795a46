import { z } from 'zod';
import { alarmPriorities, alarmStates } from '../alarms/index.ts';
import { alarmList, retiredAlarmNames } from '../monitor/call/index.ts';

/** Alarms, most urgent first: each demands an act. Identifiers are part of the contract for scripts. */
export const alarms = alarmList.map(({ id }) => id);

export const alarmSchema = z.enum(alarms);
export type Alarm = z.infer<typeof alarmSchema>;

/** Also what records of earlier versions name: they are read, and told, as what they were. */
export const recordedAlarmSchema = z.enum([...alarms, ...retiredAlarmNames]);

export const alarmPrioritySchema = z.enum(alarmPriorities);

export const alarmStateSchema = z.enum(alarmStates);

/** An alarm as the window shows it. The act comes first; null once what it was called for is over, and nothing but an answer is asked for. */
export const alarmViewSchema = z.strictObject({
  alarm: alarmSchema,
  state: alarmStateSchema,
  priority: alarmPrioritySchema,
  raisedS: z.number(),
  act: z.string().nullable(),
  because: z.string(),
  consequence: z.string(),
  wouldChangeIf: z.string(),
  shelvedUntilS: z.number().nullable(),
});

/** An alarm as it stands in the verdicts: raised once, cleared when its condition ended. */
export const alarmRecordSchema = z.strictObject({
  alarm: alarmSchema,
  priority: alarmPrioritySchema,
  raisedS: z.number(),
  clearedS: z.number().nullable(),
  acknowledgedS: z.number().nullable(),
  because: z.string(),
});

/** The same as a run log holds it. */
export const recordedAlarmRecordSchema = alarmRecordSchema.extend({ alarm: recordedAlarmSchema });

export type AlarmState = z.infer<typeof alarmStateSchema>;
export type AlarmView = z.infer<typeof alarmViewSchema>;
export type AlarmRecord = z.infer<typeof alarmRecordSchema>;
