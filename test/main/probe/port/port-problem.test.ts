import { describe, expect, test } from 'vitest';
import { portAdvice, portProblem } from '#main';

const path = '/dev/ttyUSB0';

/** Messages as the serial library (bindings 10 … 13) passes them on, on each system. */
const literal: readonly (readonly [string, string, string])[] = [
  ['linux', 'Error: Permission denied, cannot open /dev/ttyUSB0', 'port-permission-denied'],
  ['linux', 'Error Permission denied Cannot open /dev/ttyUSB0', 'port-permission-denied'],
  ['linux', 'Error Operation not permitted Cannot open /dev/ttyUSB0', 'port-permission-denied'],
  ['linux', 'Error: No such file or directory, cannot open /dev/ttyUSB0', 'port-not-found'],
  ['linux', 'Error No such file or directory Cannot open /dev/ttyUSB0', 'port-not-found'],
  ['linux', 'Error No such device or address Cannot open /dev/ttyUSB0', 'port-not-found'],
  ['linux', 'Error Resource temporarily unavailable Cannot lock port', 'port-busy'],
  ['linux', 'Error Device or resource busy Cannot open /dev/ttyUSB0', 'port-busy'],
  ['darwin', 'Error: Resource busy, cannot open /dev/tty.usbserial-1', 'port-busy'],
  ['darwin', 'Error Device not configured Cannot open /dev/cu.usbserial-1', 'port-not-found'],
  ['win32', 'Opening COM3: Access denied', 'port-busy'],
  ['win32', 'Opening COM3: File not found', 'port-not-found'],
  ['win32', 'Opening COM3: Unknown error code 31', 'port-failed'],
  ['linux', 'Error Inappropriate ioctl for device Cannot open /dev/null', 'port-failed'],
];

describe('portProblem', () => {
  test.each(literal)('on %s, %j is %s', (platform, message, kind) => {
    expect(portProblem(path, message, platform).kind).toBe(kind);
  });

  test('keeps the message of a failure it does not know', () => {
    expect(portProblem('COM3', 'Opening COM3: Unknown error code 31', 'win32')).toEqual({
      kind: 'port-failed',
      path: 'COM3',
      message: 'Opening COM3: Unknown error code 31',
    });
  });
});

describe('portAdvice', () => {
  test('gives Linux users the exact command and says that a new log-in is needed', () => {
    const advice = portAdvice({ kind: 'port-permission-denied', path, platform: 'linux' });
    expect(advice).toContain('sudo usermod -aG dialout "$USER"');
    expect(advice).toContain('log out and in again');
  });

  test('points macOS users from the tty name to the cu name', () => {
    const advice = portAdvice({ kind: 'port-not-found', path: '/dev/tty.usbserial-1' });
    expect(advice).toContain('/dev/cu.usbserial-1');
  });

  test('has nothing to say of problems that are not about a port', () => {
    expect(portAdvice({ kind: 'no-probe' })).toBeNull();
  });
});
