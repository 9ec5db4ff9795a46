import { z } from 'zod';
import { stageSpanSchema } from '../stages/index.ts';
import { estimateSchema } from '../uncertainty/index.ts';
import { alarmRecordSchema } from './alarm.ts';
import { runEventSchema } from './run-event.ts';

/** Why a stretch of readings could not be used, in words, with where it lies. */
export const runProblemSchema = z.strictObject({
  problem: z.string(),
  fromS: z.number(),
  toS: z.number().nullable(),
});

/**
 * Everything the monitor concluded about a run. A pure function of settings and inputs, so live,
 * replay and `npm run analyse` give the same bytes.
 */
export const verdictsSchema = z.strictObject({
  stages: z.array(stageSpanSchema),
  alarms: z.array(alarmRecordSchema),
  forecasts: z.array(
    z.strictObject({ madeS: z.number(), mainFractionEndS: estimateSchema.nullable() }),
  ),
  estimates: z.array(
    z.strictObject({ timeS: z.number(), headVapourAbv: estimateSchema.nullable() }),
  ),
  events: z.array(runEventSchema),
  verdict: z.strictObject({ mainFraction: z.boolean(), because: z.string() }),
  problems: z.array(runProblemSchema),
});

export type RunProblem = z.infer<typeof runProblemSchema>;
export type Verdicts = z.infer<typeof verdictsSchema>;

/** Verdicts on what nothing followed through time: the main fraction alone, and what is doubtful of it. */
export function verdictAlone(
  verdict: Verdicts['verdict'],
  problems: readonly RunProblem[] = [],
): Verdicts {
  return {
    stages: [],
    alarms: [],
    forecasts: [],
    estimates: [],
    events: [],
    verdict,
    problems: [...problems],
  };
}
