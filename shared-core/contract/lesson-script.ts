import { z } from 'zod';
import { stages } from '../stages/index.ts';

const words = z.string().max(1000);

/** What a teacher means to do with the class in one stage; any of it may be empty. */
export const stageScriptSchema = z.strictObject({ show: words, ask: words, predict: words });

/** One lesson with one rig, stage by stage. */
export const lessonScriptSchema = z.record(z.enum(stages), stageScriptSchema);

export type LessonScript = z.output<typeof lessonScriptSchema>;
