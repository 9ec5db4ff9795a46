import { z } from 'zod';
import { serialSourceSchema } from '../frame/index.ts';
import {
  chargeSettingSchema,
  defaultRunSettings,
  firstFractionSettingSchema,
  rigSettingSchema,
  runSettingsSchema,
  settingRanges,
  stopSettingSchema,
} from '../run/index.ts';
import { lessonScriptSchema } from './lesson-script.ts';
import { severalSourceSchema } from './probe-schemas.ts';

const { low: lowestM, high: highestM } = settingRanges.altitudeM;

/** Where the air pressure comes from; the pressure itself is of one day, a reading in steam of one probe too: kept with no rig. */
export const pressureFromSchema = z.enum([
  'barometer',
  'sea-level',
  'steam',
  'altitude',
  'unknown',
]);
export const pressureUnitSchema = z.enum(['kPa', 'hPa']);
export const probeKindSchema = z.enum(['digital', 'platinum-a', 'platinum-b', 'thermocouple']);

/** What ice and steam said of the probe, as a run's settings hold it. */
export const probeCorrectionSchema = z.strictObject({
  offsetK: z.number().min(-10).max(10),
  gain: z.number().min(0.9).max(1.1),
  standardUncertaintyK: z.number().min(0.005).max(5),
});

const usual = defaultRunSettings;

/**
 * Everything that is the same in the next lesson: still, column, probe, limit and usual charge. What is true of one day only (the
 * checks, the barometer) has no place in it. Only name and charge must be there: whatever is added needs a default, so that
 * rigs kept by older versions still open.
 */
export const setUpSchema = z.object({
  name: runSettingsSchema.shape.name,
  /** Nobody wrote it: it is the usual one, in the language of that day. */
  isNameAssumed: z.boolean().default(false),
  charge: z.object({
    volumeMl: chargeSettingSchema.shape.volumeMl,
    strengthAbv: chargeSettingSchema.shape.strengthAbv,
    assumed: chargeSettingSchema.shape.assumed,
  }),
  /** How the probe was listened to; null where none was connected. */
  source: z
    .discriminatedUnion('kind', [serialSourceSchema, severalSourceSchema])
    .nullable()
    .default(null),
  probeKind: probeKindSchema.default('digital'),
  /** Nobody chose it; in set-ups of older versions nobody knows. */
  isProbeKindAssumed: z.boolean().default(false),
  correction: probeCorrectionSchema.nullable().default(null),
  /** The device that it was made with; null where nobody knows, as in set-ups of older versions. */
  correctionOf: z.string().max(400).nullable().default(null),
  rig: rigSettingSchema.default(usual.rig),
  pressureFrom: pressureFromSchema.default('altitude'),
  pressureUnit: pressureUnitSchema.default('hPa'),
  altitudeM: z.number().min(lowestM).max(highestM).nullable().default(null),
  leastStrengthAbv: runSettingsSchema.shape.leastStrengthAbv.default(usual.leastStrengthAbv),
  stop: stopSettingSchema.default(usual.stop),
  firstFraction: firstFractionSettingSchema.default(usual.firstFraction),
  reactionTimeS: runSettingsSchema.shape.reactionTimeS.default(usual.reactionTimeS),
  /** What the teacher wrote for the class; null where the given text was never touched. */
  lessonScript: lessonScriptSchema.nullable().default(null),
  dripRateMlPerMin: z.number().min(0.05).max(100).default(1),
});

export const rigNameSchema = z.string().trim().min(1).max(60);

/** A set-up as kept under the name a person gave it. */
export const keptRigSchema = z.strictObject({
  name: rigNameSchema,
  keptAtIso: z.iso.datetime(),
  setUp: setUpSchema,
});

/** What the program knows of this bench from earlier lessons. */
export const knownRigsSchema = z.strictObject({
  /** That of the last run. */
  last: z.strictObject({ keptAtIso: z.iso.datetime(), setUp: setUpSchema }).nullable(),
  /** In the order of their names. */
  rigs: z.array(keptRigSchema),
  hasRehearsed: z.boolean(),
});

export type SetUp = z.output<typeof setUpSchema>;

/** Requests about set-ups; each is answered by what is known afterwards. */
export const rigRequests = {
  'rigs/list': { commands: false, body: z.strictObject({}), answer: knownRigsSchema },
  /** Under its name, or as that of the last run (null). A rig of that name is replaced. */
  'rigs/keep': {
    commands: true,
    body: z.strictObject({ name: rigNameSchema.nullable(), setUp: setUpSchema }),
    answer: knownRigsSchema,
  },
  'rigs/forget': {
    commands: true,
    body: z.strictObject({ name: rigNameSchema }),
    answer: knownRigsSchema,
  },
} as const;
