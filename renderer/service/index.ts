/** The way to the service: bridge or socket. */
export { chooseService } from './choose-service.ts';
export type { ConnectedService, Connection } from './connected-service.ts';
export { createSocketService, type Socket } from './socket-service.ts';
