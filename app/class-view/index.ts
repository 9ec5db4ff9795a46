/** Screens of the pupils' own in the local network: they see the run under way and can do nothing. */
export { createClassViewDoor } from './class-view-door.ts';
