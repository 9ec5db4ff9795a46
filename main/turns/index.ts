/** Acts that must not run into each other wait their turn. */
export { takeTurns } from './take-turns.ts';
