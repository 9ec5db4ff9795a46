import type { Session } from '#main';

/** The services as a shell sees them: requests by name, events by name. */
export type ServiceHandler = Pick<Session, 'handle' | 'on'>;
