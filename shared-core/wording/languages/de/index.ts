/** Everything in German, room by room. */
export { german } from './german.ts';
