import { z } from 'zod';

/** How the air pressure at the still is known, and how well. */
export const pressureSettingSchema = z.strictObject({
  pressureKPa: z.number().min(60).max(110),
  standardUncertaintyKPa: z.number().min(0.001).max(10),
  source: z.enum(['barometer', 'altitude', 'channel']),
  altitudeM: z.number().min(-430).max(4500).nullable(),
});

/** What went into the pot. */
export const chargeSettingSchema = z.strictObject({
  volumeMl: z.number().min(20).max(50_000),
  strengthAbv: z.number().min(0.5).max(60),
  standardUncertaintyAbv: z.number().min(0).max(10),
});

/** The glassware, as far as it is known; `null` means "not known", and the estimates widen. */
export const rigSettingSchema = z.strictObject({
  description: z.string().max(200),
  plates: z.number().min(1).max(40).nullable(),
  heatW: z.number().min(5).max(5000).nullable(),
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
});

/** When the person wants to stop: at a least strength, or when purity costs too much recovery. */
export const stopSettingSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('strength') }),
  z.strictObject({
    kind: z.literal('purity-against-recovery'),
    leastMeanStrengthAbv: z.number().min(10).max(96),
  }),
]);

/** The convention that ends the first fraction, counted from the first drop at a steady head. */
export const firstFractionSettingSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('volume'), volumeMl: z.number().min(0).max(5000) }),
  z.strictObject({ kind: z.literal('drops'), count: z.number().int().min(0).max(5000) }),
  z.strictObject({ kind: z.literal('minutes'), minutes: z.number().min(0).max(120) }),
]);

/** A rig or safety check, the role (never the name) of who confirmed it, and when; older records lack the time. */
export const safetyConfirmSchema = z.strictObject({
  check: z.string().min(1).max(60),
  role: z.enum(['teacher', 'technician', 'assistant']),
  confirmedAtIso: z.iso.datetime().optional(),
});

/** Everything the person set before the run; recorded in the run's header. */
export const runSettingsSchema = z.strictObject({
  name: z.string().min(1).max(120),
  charge: chargeSettingSchema,
  rig: rigSettingSchema,
  pressure: pressureSettingSchema,
  probe: probeSettingSchema,
  leastStrengthAbv: z.number().min(10).max(96),
  stop: stopSettingSchema,
  firstFraction: firstFractionSettingSchema,
  reactionTimeS: z.number().min(5).max(300),
  attentionCheckS: z.number().min(120).max(7200).nullable(),
  safetyConfirms: z.array(safetyConfirmSchema).max(40),
});

export type PressureSetting = z.infer<typeof pressureSettingSchema>;
export type ChargeSetting = z.infer<typeof chargeSettingSchema>;
export type RigSetting = z.infer<typeof rigSettingSchema>;
export type ProbeSetting = z.infer<typeof probeSettingSchema>;
export type StopSetting = z.infer<typeof stopSettingSchema>;
export type FirstFractionSetting = z.infer<typeof firstFractionSettingSchema>;
export type SafetyConfirm = z.infer<typeof safetyConfirmSchema>;
export type RunSettings = z.infer<typeof runSettingsSchema>;
