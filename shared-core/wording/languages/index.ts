/** The sentences of the window in other languages, by the English ones. */
export { catalogues } from './catalogues.ts';
