/** A table of readings from elsewhere, taken in as a run. */
export { ChooseFile } from './choose-file.tsx';
export type { FileBeginning } from './file-beginning.ts';
export { correctionOf, nothingStated, statedDraftOf, statedFrom } from './stated-draft.ts';
export { StatedFields } from './stated-fields.tsx';
export { lookInto, TakeIn } from './take-in.tsx';
