import { z } from 'zod';
import { parseJson, requests, setUpSchema } from '#shared-core';
import { firstDraft, type PrepareDraft } from './prepare-draft.ts';

const text = z.string().max(400);
const run = requests['run/start'].body.shape.settings.shape;
const rig = setUpSchema.shape;

/** Everything typed and chosen; not the checks, which were made at one moment and hold for one run. */
const keptSchema = z.strictObject({
  name: text,
  chargeVolumeMl: text,
  chargeStrengthAbv: text,
  chargeDoubtMl: text.default(''),
  chargeDoubtAbv: text.default(''),
  ferment: run.ferment.unwrap().nullable().default(null),
  rigDescription: text,
  plates: text,
  heatW: text,
  pressureFrom: rig.pressureFrom.unwrap(),
  pressureUnit: rig.pressureUnit.unwrap(),
  stationPressure: text,
  seaLevelPressure: text,
  altitudeM: text,
  probeKind: rig.probeKind.unwrap(),
  correction: rig.correction.unwrap(),
  leastStrengthAbv: text,
  stopKind: z.enum(['strength', 'purity-against-recovery']),
  leastMeanStrengthAbv: text,
  dripRateMlPerMin: text,
  firstFractionKind: z.enum(['minutes', 'volume', 'drops']),
  firstFractionAmount: text,
  reactionTimeS: text,
  role: z.enum(['teacher', 'technician', 'assistant']),
  bell: text,
  lessonScript: rig.lessonScript.unwrap(),
  trials: z.array(run.trials.unwrap().element).readonly(),
}) satisfies z.ZodType<Omit<PrepareDraft, 'confirms'>>;

export function keptDraft({ confirms: _, ...kept }: PrepareDraft): string {
  return JSON.stringify(kept satisfies z.infer<typeof keptSchema>);
}

/** The draft as kept before a reload; null where there is none that can be used. */
export function restoredDraft(stored: string | null): PrepareDraft | null {
  const parsed = keptSchema.safeParse(parseJson(stored ?? 'null'));
  return parsed.success ? { ...parsed.data, confirms: firstDraft.confirms } : null;
}
