import { usePrepare } from '../window/use-stores.ts';
import type { PrepareDraft } from './prepare-draft.ts';
import type { FieldProblem } from './pressure-from-draft.ts';
import { settingsFromDraft } from './settings-from-draft.ts';

const none: readonly FieldProblem[] = [];

/** The draft, how to change it, and what is wrong with each field. */
export function useDraftFields() {
  const draft = usePrepare((state) => state.draft);
  const change = usePrepare((state) => state.change);
  const settings = settingsFromDraft(draft);
  const problems = settings.ok ? none : settings.error;
  const numberField = (field: TextField) => ({
    text: draft[field],
    onText: (text: string) => change({ [field]: text }),
    problem: problems.find((problem) => problem.field === field)?.message,
  });
  return { draft, change, settings, numberField };
}

type TextField = {
  [F in keyof PrepareDraft]: string extends PrepareDraft[F] ? F : never;
}[keyof PrepareDraft];
