import { usePreferences, usePrepare } from '../parts/index.ts';
import { assumedAfter } from './assumed-parts.ts';
import { fieldNames, type TextField } from './field-names.ts';
import type { FieldProblem } from './pressure-from-draft.ts';
import { settingsFromDraft } from './settings-from-draft.ts';

const none: readonly FieldProblem[] = [];

/** The draft, how to change it, and what is wrong with each field. */
export function useDraftFields() {
  const draft = usePrepare((state) => state.draft);
  const change = usePrepare((state) => state.change);
  const decimal = usePreferences((preferences) => preferences.decimal);
  const settings = settingsFromDraft(draft, decimal);
  const problems = settings.ok ? none : settings.error;
  const problemAt = (field: TextField) =>
    problems.find((problem) => problem.field === field)?.message;
  const numberField = (field: TextField) => ({
    field,
    name: fieldNames[field],
    text: draft[field],
    onText: (text: string) => change({ [field]: text, assumed: assumedAfter(field, draft) }),
    problem: problemAt(field),
  });
  const hasProblemIn = (...fields: readonly TextField[]) =>
    fields.some((field) => problemAt(field) !== undefined);
  return { draft, change, settings, numberField, hasProblemIn };
}
