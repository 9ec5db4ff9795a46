import { z } from 'zod';
import { fermentOriginSchema } from './ferment-origin.ts';
import { type NumberRange, settingRanges } from './setting-ranges.ts';

const within = ({ low, high }: NumberRange) => z.number().min(low).max(high);

/** What the head probe showed in the steam of boiling water. */
const steamReadingSchema = z.strictObject({
  /** As it stood there, before any correction. */
  shownC: z.number().min(60).max(130),
  /** Of the settled reading alone: what of it is scatter, drift and the probe's smallest step. */
  standardUncertaintyK: z.number().min(0.001).max(1),
  /** How much more or less than in steam the probe may be off at the plateau, some twenty kelvins below; by its kind. */
  gapStandardUncertaintyK: z.number().min(0.001).max(2),
});

/** How the air pressure at the still is known, and how well. */
export const pressureSettingSchema = z.strictObject({
  pressureKPa: within(settingRanges.pressureKPa),
  /** Of the air pressure as such. From steam it shares the probe's error: see `scaleDoubts` for both together. */
  standardUncertaintyKPa: z.number().min(0.001).max(10),
  /**
   * `assumed`: nobody said how high the still stands; then the head itself tells more of it than any assumption. `steam`: where
   * water boils by the head probe itself.
   */
  source: z.enum(['barometer', 'altitude', 'channel', 'steam', 'assumed']),
  altitudeM: within(settingRanges.altitudeM).nullable(),
  /** Where the source is steam. */
  steam: steamReadingSchema.optional(),
});

/** What went into the pot. */
export const chargeSettingSchema = z.strictObject({
  volumeMl: within(settingRanges.chargeVolumeMl),
  strengthAbv: within(settingRanges.chargeStrengthAbv),
  standardUncertaintyAbv: within(settingRanges.chargeDoubtAbv),
  /** As somebody stated it; left out for that of a measuring cylinder. */
  standardUncertaintyMl: within(settingRanges.chargeDoubtMl).optional(),
  /** What of it nobody stated, so that it is only assumed; absent where all was stated, and in older records. */
  assumed: z
    .array(z.enum(['volume', 'strength']))
    .min(1)
    .max(2)
    .optional(),
});

/** The glassware, as far as it is known; `null` means "not known", and the estimates widen. */
export const rigSettingSchema = z.strictObject({
  description: z.string().max(200),
  plates: within(settingRanges.plates).nullable(),
  heatW: within(settingRanges.heatW).nullable(),
  columnLossW: z.number().min(0).max(1000).nullable(),
});

/** The head probe: its standard uncertainty after calibration, its lag and its correction. */
export const probeSettingSchema = z.strictObject({
  standardUncertaintyK: z.number().min(0.005).max(5),
  lagT90S: z.number().min(0).max(300),
  /** true temperature = offsetK + gain × reading */
  offsetK: z.number().min(-10).max(10),
  gain: z.number().min(0.9).max(1.1),
  /** Silence after which the probe counts as lost; a slow logger gets three of its intervals anyway. */
  silenceS: z.number().min(5).max(600).default(5),
  /** What of it nobody stated: with its kind its uncertainty and its lag are only assumed; absent where it was, and in older records. */
  assumed: z
    .array(z.enum(['probe-kind']))
    .length(1)
    .optional(),
});

/** When the person wants to stop: at a least strength, or when purity costs too much recovery. */
export const stopSettingSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('strength') }),
  z.strictObject({
    kind: z.literal('purity-against-recovery'),
    leastMeanStrengthAbv: within(settingRanges.leastStrengthAbv),
  }),
]);

/** The convention that ends the first fraction, counted from the first drop at a steady head. */
export const firstFractionSettingSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('volume'), volumeMl: within(settingRanges.firstFractionMl) }),
  z.strictObject({
    kind: z.literal('drops'),
    count: within(settingRanges.firstFractionDrops).int(),
  }),
  z.strictObject({
    kind: z.literal('minutes'),
    minutes: within(settingRanges.firstFractionMinutes),
  }),
]);

/** A rig or safety check, the role (never the name) of who confirmed it, and when; older records lack the time. */
export const safetyConfirmSchema = z.strictObject({
  check: z.string().min(1).max(60),
  role: z.enum(['teacher', 'technician', 'assistant']),
  confirmedAtIso: z.iso.datetime().optional(),
});

/** Whether a call was heard at the still, or the class screen read from the back row: what was said, the role (never the name) and when. */
export const trialSchema = z.strictObject({
  trial: z.enum(['sound', 'screen']),
  worked: z.boolean(),
  role: safetyConfirmSchema.shape.role,
  triedAtIso: z.iso.datetime(),
});

/** Everything the person set before the run; recorded in the run's header. */
export const runSettingsSchema = z.strictObject({
  name: z.string().min(1).max(120),
  charge: chargeSettingSchema,
  rig: rigSettingSchema,
  pressure: pressureSettingSchema,
  probe: probeSettingSchema,
  leastStrengthAbv: within(settingRanges.leastStrengthAbv),
  stop: stopSettingSchema,
  firstFraction: firstFractionSettingSchema,
  reactionTimeS: within(settingRanges.reactionTimeS),
  attentionCheckS: z.number().min(120).max(7200).nullable(),
  safetyConfirms: z.array(safetyConfirmSchema).max(40),
  /** What was tried before heat; absent where nothing was, and in older records. */
  trials: z.array(trialSchema).max(10).optional(),
  /** The ferment that the charge came from; absent where it was not kept in this program. */
  ferment: fermentOriginSchema.optional(),
});

export type ChargeSetting = z.infer<typeof chargeSettingSchema>;
export type RigSetting = z.infer<typeof rigSettingSchema>;
export type SteamReading = z.infer<typeof steamReadingSchema>;
export type Trial = z.infer<typeof trialSchema>;
export type RunSettings = z.infer<typeof runSettingsSchema>;
