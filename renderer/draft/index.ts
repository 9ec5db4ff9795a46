/** What was entered in Prepare, made into settings and told apart from mistakes. */
export {
  assumedAfter,
  assumedBesideCharge,
  assumedChargeDoubt,
  assumedOfCharge,
} from './assumed-parts.ts';
export { chargeDoubtHints } from './charge-doubt-hints.ts';
export { fieldNames, type TextField } from './field-names.ts';
export { type FieldProblem, pressureFromDraft } from './pressure-from-draft.ts';
export { plateauC, probeKinds } from './probe-kinds.ts';
export { runNameOf } from './run-name.ts';
export { settingsFromDraft, strengthDoubtAbv } from './settings-from-draft.ts';
export { useDraftFields } from './use-draft-fields.ts';
