/** The disk, as a parameter, and what can go wrong with it. */

export type { AppendFile, FileLayer, FolderEntry } from './file-layer.ts';
export { type FileProblem, fileProblem, serviceProblemOf } from './file-problem.ts';
export { foundOrNone } from './found-or-none.ts';
export { nodeFileLayer } from './node-file-layer.ts';
export { readBytes, readText } from './read-text.ts';
export { readTextFile } from './read-text-file.ts';
export { replaceFile } from './replace-file.ts';
