import type { Service } from '#shared-core';
import type { ConnectedService } from './connected-service.ts';

/** The service a preload script put on the window: always open while the window lives. */
export function createBridgeService(bridge: Service): ConnectedService {
  return {
    request: (name, body) => bridge.request(name, body),
    on: (name, listener) => bridge.on(name, listener),
    connection: () => 'open',
    onConnection: () => () => {},
  };
}

export function bridgeOf(host: object): Service | null {
  const bridge: unknown = 'stillHead' in host ? host.stillHead : null;
  if (typeof bridge !== 'object' || bridge === null) return null;
  return 'request' in bridge && 'on' in bridge ? (bridge as Service) : null;
}
