import type { NetworkInterfaceInfo } from 'node:os';
import { expect, test } from 'vitest';
import { localAddress } from '../../../app/class-view/local-address.ts';

function at(address: string, internal = false): NetworkInterfaceInfo[] {
  const [netmask, mac, cidr] = ['255.255.255.0', '00:00:00:00:00:00', null];
  return [{ address, netmask, mac, cidr, internal, family: 'IPv4' }];
}

test('the address in the local network is found, before that of a container and never an internal one', () => {
  const found = localAddress({
    lo: at('127.0.0.1', true),
    docker0: at('172.17.0.1'),
    wlan0: at('192.168.1.23'),
  });
  expect(found).toBe('192.168.1.23');
});

test('an address that the whole internet can reach is none, nor is no network', () => {
  expect([localAddress({ eth0: at('8.8.8.8') }), localAddress({ eth0: at('172.32.0.1') })]).toEqual(
    [null, null],
  );
  expect(localAddress({})).toBe(null);
});
