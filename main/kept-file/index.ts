/** Small files that are kept from one lesson to the next: their versions, and what is done with those that are not understood. */
export { createKeptFile, type KeptFile, type KeptFormat, readKeptFile } from './kept-file.ts';
