import { z } from 'zod';
import type { Verdicts } from '#shared-core';
import { retiredAlarms } from '../../shared-core/monitor/index.ts';
import {
  alarmRecordSchema,
  alarmSchema,
  verdictsSchema,
} from '../../shared-core/snapshot/index.ts';

const [...probeAlarms] = retiredAlarms['probe-fault'].became;
const probeAlarmSchema = z.enum(probeAlarms);

/** An alarm as it is printed: all about the probe under the name that scripts know, told apart by its cause. */
export const printedAlarmSchema = z.union([
  alarmRecordSchema.extend({ alarm: alarmSchema.exclude(probeAlarms) }),
  alarmRecordSchema.extend({ alarm: z.literal('probe-fault'), cause: probeAlarmSchema }),
]);

/** What `npm run analyse` prints of one run. */
export const printedVerdictsSchema = verdictsSchema.extend({ alarms: z.array(printedAlarmSchema) });

export type PrintedVerdicts = z.infer<typeof printedVerdictsSchema>;

export function printedVerdicts(verdicts: Verdicts): PrintedVerdicts {
  return {
    ...verdicts,
    alarms: verdicts.alarms.map(({ alarm, ...record }) => {
      const cause = probeAlarmSchema.safeParse(alarm);
      return printedAlarmSchema.parse(
        cause.success
          ? { alarm: 'probe-fault', cause: cause.data, ...record }
          : { alarm, ...record },
      );
    }),
  };
}
