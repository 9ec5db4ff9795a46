/** A run under way. */

export { createSession, type Session, type SessionSetup } from './create-session.ts';
export { forkDesk } from './desk/fork-desk.ts';
export { createEventHub } from './event-hub.ts';
export { lowSpaceBytes } from './recording.ts';
export { reportWithoutServices } from './report-without-services.ts';
export type { Asker, ClassViewDoor, SecondScreenDoor } from './request-handlers.ts';
