import { describe, expect, test } from 'vitest';
import type { Clock } from '#main';
import { latin1Bytes, succeed } from '#shared-core';
import { findProbe } from '../../../../main/probe/find/find-probe.ts';
import type { LineAddress, OpenByteLine } from '../../../../main/probe/port/byte-line.ts';
import { type DeviceLanguage, deviceLanguages } from '../support/speaking-device.ts';

/** A device that makes sense at one speed and parity only, and noise at every other. */
interface Device {
  readonly baudRate: number;
  readonly parity?: LineAddress['parity'];
  /** What it says once a second, if it speaks by itself. */
  readonly says?: string;
  readonly answer?: DeviceLanguage['answer'];
}

const noise = Uint8Array.from({ length: 40 }, (_, index) => 0x80 + ((index * 37) % 0x70));

async function searched(device: Device | null) {
  let nowS = 0;
  let at: LineAddress = { path: '', baudRate: 0, parity: 'none' };
  let hear: (bytes: Uint8Array) => void = () => {};
  const opened: string[] = [];
  const sent: string[] = [];
  const clock: Clock = { monotonicS: () => nowS, wallMs: () => 0 };
  const isRight = () =>
    device !== null && at.baudRate === device.baudRate && at.parity === (device.parity ?? 'none');
  const openLine: OpenByteLine = (address, listeners) => {
    opened.push(address.path);
    at = address;
    hear = listeners.bytes;
    return Promise.resolve(
      succeed({
        write(bytes: Uint8Array) {
          sent.push(String.fromCharCode(...bytes));
          const answer = isRight() ? device?.answer?.(bytes, 21.5) : null;
          if (answer) hear(answer);
          return Promise.resolve(succeed(null));
        },
        changeSpeed(baudRate: number) {
          at = { ...at, baudRate };
          return Promise.resolve(succeed(null));
        },
        close: () => Promise.resolve(),
      }),
    );
  };
  const wait = (seconds: number) => {
    const before = Math.floor(nowS);
    nowS += seconds;
    if (device?.says !== undefined && Math.floor(nowS) > before) {
      hear(isRight() ? latin1Bytes(device.says) : noise);
    }
    return Promise.resolve();
  };
  const found = await findProbe('/dev/chosen', { clock, openLine, wait });
  if (!found.ok) throw new Error(found.error.kind);
  return { ...found.value, opened: [...new Set(opened)], sent, tookS: nowS };
}

const answerOf = (name: string) => {
  const language = deviceLanguages.find((each) => each.name === name);
  if (language?.answer === undefined) throw new Error(name);
  return language.answer;
};

describe('findProbe', () => {
  test.each([
    [
      { baudRate: 115_200, says: '21.50\r\n' },
      { baudRate: 115_200, language: 'plain-text' },
    ],
    [
      { baudRate: 9600, says: '21.50\r\n' },
      { baudRate: 9600, language: 'plain-text' },
    ],
    [
      { baudRate: 1200, says: 'T=21.50 C\n' },
      { baudRate: 1200, language: 'plain-text' },
    ],
    [
      { baudRate: 57_600, says: '{"head":21.5}\n' },
      { baudRate: 57_600, language: 'json-lines' },
    ],
    [
      { baudRate: 9600, says: '21,50\n' },
      { language: 'plain-text', decimalComma: true },
    ],
    [
      { baudRate: 9600, answer: answerOf('SCPI') },
      { baudRate: 9600, language: 'scpi' },
    ],
    [
      { baudRate: 19_200, parity: 'even', answer: answerOf('Modbus RTU') },
      { baudRate: 19_200, parity: 'even', language: 'modbus-rtu' },
    ],
  ] as const)('finds %o', async (device, expected) => {
    const { source } = await searched(device);
    expect(source).toMatchObject({ ...expected, path: '/dev/chosen' });
  });

  test('shows lines it cannot place, with the speed at which they are text', async () => {
    const found = await searched({ baudRate: 9600, says: 'reading no. 5 is 21.5 today\n' });
    expect({ source: found.source, heard: found.heard.at(-1), because: found.because }).toEqual({
      source: null,
      heard: 'reading no. 5 is 21.5 today',
      because: expect.stringContaining('9600 baud'),
    });
  });

  test('says so when nothing is there, within a minute, and only ever asks', async () => {
    const { source, because, sent, tookS } = await searched(null);
    expect({ source, because }).toEqual({
      source: null,
      because: expect.stringContaining('Nothing was heard'),
    });
    expect(tookS).toBeLessThan(60);
    const isQuestion = (text: string) =>
      text.endsWith('?\n') || [3, 4].includes(text.charCodeAt(1));
    expect(sent.filter((text) => !isQuestion(text))).toEqual([]);
  });

  test('sends nothing at all to a probe that speaks by itself', async () => {
    const { sent } = await searched({ baudRate: 9600, says: '21.50\r\n' });
    expect(sent).toEqual([]);
  });

  test('opens only the port that was chosen', async () => {
    const { opened } = await searched({ baudRate: 1200, says: '21.50\r\n' });
    expect(opened).toEqual(['/dev/chosen']);
  });
});
