import { z } from 'zod';
import { worded } from '../wording/index.ts';

export const stages = ['warm-up', 'first-fraction', 'main-fraction', 'tail', 'cool-down'] as const;

export const stageSchema = z.enum(stages);
export type Stage = z.infer<typeof stageSchema>;

/** The words people read for each stage. */
export const stageLabels: Readonly<Record<Stage, string>> = {
  'warm-up': worded('Warm-up'),
  'first-fraction': worded('Low-boiling first fraction'),
  'main-fraction': worded('Main ethanol fraction'),
  tail: worded('Water-rich tail'),
  'cool-down': worded('Cool-down'),
};

/** What explains a head that does something other than its stage would. */
export const conditions = ['vapour-receded', 'surging', 'total-reflux', 'probe-suspect'] as const;

export const conditionSchema = z.enum(conditions);
export type Condition = z.infer<typeof conditionSchema>;

/** The present call, how sure it is, why, and what would change it. */
export const stageCallSchema = z.strictObject({
  stage: stageSchema,
  sinceS: z.number(),
  probability: z.number().min(0).max(1),
  condition: conditionSchema.nullable(),
  because: z.string(),
  wouldChangeIf: z.string(),
});

/** A stage as it stands in the record: `toS` is null while it lasts. */
export const stageSpanSchema = z.strictObject({
  stage: stageSchema,
  fromS: z.number(),
  toS: z.number().nullable(),
  because: z.string(),
});
export type StageSpan = z.infer<typeof stageSpanSchema>;
