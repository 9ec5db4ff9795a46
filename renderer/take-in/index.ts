export { ChooseFile } from './choose-file.tsx';
export type { FileBeginning } from './file-beginning.ts';
export { lookInto, TakeIn } from './take-in.tsx';
