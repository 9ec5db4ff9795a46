import type { NetworkInterfaceInfo } from 'node:os';

type Interfaces = Readonly<Record<string, readonly NetworkInterfaceInfo[] | undefined>>;

/** Networks of one's own (RFC 1918). An address that the whole internet can reach is never listened on. */
const ownNetworks = [/^192\.168\./, /^10\./, /^172\.(?:1[6-9]|2\d|3[01])\./];

/** Made by virtual machines and containers: no phone is there. */
const madeUp = /^(?:docker|br-|veth|virbr|vmnet|vboxnet|vEthernet)/;

/** This computer's address in the local network; null without one. */
export function localAddress(interfaces: Interfaces): string | null {
  const found = Object.entries(interfaces).flatMap(([name, entries = []]) =>
    entries
      .filter(({ family, internal }) => family === 'IPv4' && !internal)
      .filter(({ address }) => ownNetworks.some((network) => network.test(address)))
      .map(({ address }) => ({ address, isMadeUp: madeUp.test(name) })),
  );
  return found.find(({ isMadeUp }) => !isMadeUp)?.address ?? found[0]?.address ?? null;
}
