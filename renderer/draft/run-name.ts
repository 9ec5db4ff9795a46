import { say } from '#shared-core';
import type { PrepareDraft } from '../stores/index.ts';

/** What a run is called: as it was written, or where nobody wrote anything as the language of the window has it until the run starts. */
export function runNameOf({ name }: Pick<PrepareDraft, 'name'>): string {
  return name.trim() || say('Distillation');
}
