import { useDraftFields } from '../draft/index.ts';
import { useBench } from '../parts/index.ts';
import { stillToDo, type ToDo } from './still-to-do.ts';

/** All that keeps the run from starting, told from one place in every step. */
export function useToDo(): readonly ToDo[] {
  const probe = useBench((bench) => bench.probe);
  const { draft, settings } = useDraftFields();
  return stillToDo(settings.ok ? [] : settings.error, probe, draft);
}
