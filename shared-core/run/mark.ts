import { z } from 'zod';
import { liquidMarkSchemas } from './liquid-mark.ts';
import { proofMarkSchema } from './proof-mark.ts';

const volumeMl = z.number().min(0).max(100_000);
const alarmName = z.string().min(1).max(40);

/** What a person did or saw, as a union on `type`. */
export const markBodySchema = z.discriminatedUnion('type', [
  z.strictObject({ type: z.literal('heat-on') }),
  z.strictObject({ type: z.literal('heat-eased') }),
  z.strictObject({ type: z.literal('heat-off') }),
  z.strictObject({ type: z.literal('receiver-changed'), volumeMl: volumeMl.nullable() }),
  z.strictObject({ type: z.literal('volume-read'), volumeMl }),
  z.strictObject({ type: z.literal('mass-read'), massG: z.number().min(0).max(100_000) }),
  z.strictObject({
    type: z.literal('drops-counted'),
    count: z.number().int().min(1).max(10_000),
    overS: z.number().positive().max(3600),
  }),
  z.strictObject({
    type: z.literal('strength-read'),
    alcoholByVolume: z.number().min(0).max(100),
    sampleTemperatureC: z.number().min(-20).max(60).nullable(),
  }),
  z.strictObject({ type: z.literal('pressure-read'), pressureKPa: z.number().min(50).max(115) }),
  z.strictObject({ type: z.literal('alarm-acknowledged'), alarm: alarmName }),
  z.strictObject({
    type: z.literal('alarm-shelved'),
    alarm: alarmName,
    forS: z.number().positive().max(1800),
  }),
  z.strictObject({ type: z.literal('attention-answered') }),
  ...liquidMarkSchemas,
  proofMarkSchema,
  z.strictObject({ type: z.literal('note'), text: z.string().min(1).max(2000) }),
  /** Undo: the record keeps both marks; everything after treats the withdrawn one as not made. */
  z.strictObject({ type: z.literal('mark-withdrawn'), withdrawnMarkId: z.number().int().min(1) }),
]);

/** A mark in a run: `markId` counts up from 1 within the run. */
export const markSchema = z.strictObject({
  kind: z.literal('mark'),
  timeS: z.number().nonnegative(),
  markId: z.number().int().min(1),
  mark: markBodySchema,
});

export type MarkBody = z.infer<typeof markBodySchema>;
export type MarkType = MarkBody['type'];
export type Mark = z.infer<typeof markSchema>;

const bookMarkTypes: ReadonlySet<string> = new Set(
  [...liquidMarkSchemas, proofMarkSchema].map(({ shape }) => shape.type.value),
);

/**
 * Whether a mark only serves the books: what was measured of a liquid, the sugar, or a sample burned as proof. Such marks
 * may be made after the run, too, because the monitor concludes nothing from them.
 *
 * Source: the rule of this project's run log.
 * @example
 * isBookMark({ type: 'liquid-mass', liquid: 'residue', massG: 310 }) // => true
 * isBookMark({ type: 'volume-read', volumeMl: 20 }) // => false
 */
export function isBookMark(mark: MarkBody): boolean {
  return bookMarkTypes.has(mark.type);
}
