import { bridgeOf, createBridgeService } from './bridge-service.ts';
import type { ConnectedService } from './connected-service.ts';
import { learnOnArrival } from './learn-on-arrival.ts';
import { createSocketService, type Socket } from './socket-service.ts';
import { takeWindowToken } from './window-token.ts';

/** The way to the service; whoever is told something by it can say that in the language of the window. */
export function chooseService(host: Window): ConnectedService {
  return learnOnArrival(serviceOf(host));
}

/** The bridge of the desktop shell where there is one, else the loopback socket of this page. */
function serviceOf(host: Window): ConnectedService {
  const bridge = bridgeOf(host);
  if (bridge) return createBridgeService(bridge);
  const token = takeWindowToken(host);
  const address = `ws://${host.location.host}/service`;
  return createSocketService({
    openSocket: () => new WebSocket(address) as unknown as Socket,
    token: token.current,
    keepSecret: token.keep,
    after: (waitMs, task) => void host.setTimeout(task, waitMs),
    random: Math.random,
  });
}
