import { z } from 'zod';
import type { RunByVolume, Verdicts } from '#shared-core';
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

const intervalSchema = z.strictObject({ low: z.number(), value: z.number(), high: z.number() });
const expectedSchema = z
  .array(z.strictObject({ volumeMl: z.number(), headC: z.number(), strengthAbv: z.number() }))
  .nullable();

/** A run against the volume of distillate. */
export const printedByVolumeSchema = z.strictObject({
  basis: z.enum(['table', 'receiver-volume', 'receiver-mass', 'booked', 'drip-rate']),
  points: z.array(
    z.strictObject({
      volumeMl: z.number(),
      headC: z.number(),
      headVapourAbv: intervalSchema.nullable(),
      collectedAbv: intervalSchema.nullable(),
    }),
  ),
  cuts: z.array(
    z.strictObject({
      cut: z.enum(['first', 'as-wanted', 'weaker']),
      fromMl: z.number(),
      toMl: z.number(),
      meanAbv: intervalSchema,
    }),
  ),
  /** What the charge as stated would give without and with the column; null where it was not stated. */
  rayleigh: expectedSchema,
  rectified: expectedSchema,
  aboveRayleighK: z.strictObject({ mean: z.number(), greatest: z.number() }).nullable(),
});

/** What `npm run analyse` prints of one run; `byVolume` where its volumes are known. */
export const printedVerdictsSchema = verdictsSchema.extend({
  alarms: z.array(printedAlarmSchema),
  byVolume: printedByVolumeSchema.optional(),
});

export type PrintedVerdicts = z.infer<typeof printedVerdictsSchema>;

export function printedByVolume(
  { basis, course, verdict, rayleigh, rectified, aboveRayleighK }: RunByVolume,
  isChargeStated: boolean,
): z.infer<typeof printedByVolumeSchema> {
  return {
    basis,
    points: course.map(({ volumeMl, headC, vapourAbv, collectedAbv }) => ({
      volumeMl,
      headC,
      headVapourAbv: vapourAbv,
      collectedAbv,
    })),
    cuts: [...verdict.cuts],
    rayleigh: isChargeStated && rayleigh !== null ? [...rayleigh] : null,
    rectified: isChargeStated && rectified !== null ? [...rectified] : null,
    aboveRayleighK: isChargeStated ? aboveRayleighK : null,
  };
}

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
