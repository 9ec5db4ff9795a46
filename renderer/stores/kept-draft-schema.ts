import { z } from 'zod';
import { requests, setUpSchema } from '#shared-core';

const text = z.string().max(400);
const run = requests['run/start'].body.shape.settings.shape;
const rig = setUpSchema.shape;
const settledReading = z
  .strictObject({
    readingC: z.number().min(-50).max(200),
    standardUncertaintyK: z.number().min(0).max(5),
    driftKPerMin: z.number().min(-100).max(100),
  })
  .readonly();

/**
 * Everything typed and chosen in Prepare; not the checks, which were made at one moment and hold for one run. Numbers stay text until
 * the run starts, so that nothing typed is ever lost.
 */
export const keptDraftSchema = z
  .strictObject({
    /** Empty where nobody has written one: so it is in the language of the day. */
    name: text,
    chargeVolumeMl: text,
    chargeStrengthAbv: text,
    /** What nobody has stated for the next run: its starting value stands there. */
    assumed: z
      .array(z.enum(['volume', 'strength', 'probe-kind']))
      .readonly()
      .default(['volume', 'strength', 'probe-kind']),
    /** Standard uncertainties of the charge; empty for the usual ones. */
    chargeDoubtMl: text.default(''),
    chargeDoubtAbv: text.default(''),
    /** The ferment that the pot was charged with from its log; null for another charge. */
    ferment: run.ferment.unwrap().nullable().default(null),
    rigDescription: text,
    plates: text,
    heatW: text,
    pressureFrom: rig.pressureFrom.unwrap(),
    pressureUnit: rig.pressureUnit.unwrap(),
    stationPressure: text,
    seaLevelPressure: text,
    /** What the probe shows in the steam of boiling water. */
    steamReading: text.default(''),
    /** Where it was taken from the probe: how well it stood, and which probe it was; null where it was typed. */
    steamTaken: z
      .strictObject({
        standardUncertaintyK: z.number().min(0.001).max(1),
        device: z.string().max(400).nullable(),
      })
      .nullable()
      .default(null),
    altitudeM: text,
    probeKind: rig.probeKind.unwrap(),
    /** From ice and steam; null for a probe as bought. */
    correction: rig.correction.unwrap(),
    /** The device that it was made with; null where nobody knows. */
    correctionOf: rig.correctionOf.unwrap().default(null),
    /** What was taken in ice and steam so far, and with which device; they take minutes, and whoever leaves Prepare comes back to them. */
    calibrationPoints: z
      .strictObject({
        ice: settledReading.nullable(),
        steam: settledReading.nullable(),
        device: z.string().max(400).nullable(),
      })
      .readonly()
      .default({ ice: null, steam: null, device: null }),
    leastStrengthAbv: text,
    stopKind: z.enum(['strength', 'purity-against-recovery']),
    leastMeanStrengthAbv: text,
    dripRateMlPerMin: text,
    firstFractionKind: z.enum(['minutes', 'volume', 'drops']),
    firstFractionAmount: text,
    reactionTimeS: text,
    role: z.enum(['teacher', 'technician', 'assistant']),
    /** When this lesson ends, `11:45`; empty where nobody said. */
    bell: text,
    /** For the class, stage by stage; null while nobody has written over the given text. */
    lessonScript: rig.lessonScript.unwrap(),
    /** What was tried in this room, and what was said of it. */
    trials: z.array(run.trials.unwrap().element).readonly(),
  })
  .readonly();
