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
  /** What it says once a second, if it speaks by itself; several things by turns. */
  readonly says?: string | readonly string[];
  readonly answer?: DeviceLanguage['answer'];
}

const noise = Uint8Array.from({ length: 40 }, (_, index) => 0x80 + ((index * 37) % 0x70));

async function searched(device: Device | null) {
  let nowS = 0;
  let at: LineAddress = { path: '', baudRate: 0, parity: 'none' };
  let hear: (bytes: Uint8Array) => void = () => {};
  let turn = 0;
  const say = () => {
    const texts = [device?.says ?? ''].flat();
    turn += 1;
    return texts[(turn - 1) % texts.length] ?? '';
  };
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
      hear(isRight() ? latin1Bytes(say()) : noise);
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
      // One of its sensors shows what cannot be.
      { baudRate: 57_600, says: '{"head":21.5,"pot":9000}\n' },
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

  test('takes a form that at least half of the lines have, and two of them at the least', async () => {
    const found = async (...says: readonly string[]) => {
      const { source } = await searched({ baudRate: 115_200, says });
      return source?.kind === 'serial' ? [source.language, source.decimalComma] : null;
    };
    const odd = 'what no. 5 is\n';
    expect([
      await found('21.50\n', odd),
      await found('21,50\n', odd),
      await found('21.50\n', odd, odd),
      await found('21,50\n', odd, odd),
    ]).toEqual([['plain-text', false], ['plain-text', true], null, null]);
  });

  test('takes JSON only where every line that was understood is some', async () => {
    const { source } = await searched({ baudRate: 115_200, says: ['{"head":21.5}\n', '21.50\n'] });
    expect(source).toMatchObject({ language: 'plain-text' });
  });

  test('says in one sentence how it was found', async () => {
    const because = async (device: Device) => (await searched(device)).because;
    expect([
      await because({ baudRate: 9600, says: '21.50\r\n' }),
      await because({ baudRate: 57_600, says: '{"head":21.5}\n' }),
      await because({ baudRate: 9600, says: '21,50\n' }),
      await because({ baudRate: 9600, answer: answerOf('SCPI') }),
      await because({ baudRate: 19_200, parity: 'even', answer: answerOf('Modbus RTU') }),
      await because({ baudRate: 300, says: '21.50\n' }),
    ]).toEqual([
      'Plain text at 9600 baud.',
      'JSON lines at 57600 baud.',
      'Plain text with a decimal comma at 9600 baud: check the value before you trust it.',
      expect.stringMatching(/^It answers SCPI questions at 9600 baud\./),
      'A Modbus device answers (19200 baud, even parity); its first register reads as 21.5 °C. Check that against a thermometer.',
      'Bytes arrive, but at no usual speed are they text. What does its manual say of speed?',
    ]);
  });

  test('shows the newest five lines that were heard', async () => {
    const says = Array.from({ length: 9 }, (_, index) => `no. ${index} is odd\n`);
    const { heard } = await searched({ baudRate: 115_200, says });
    expect(heard).toHaveLength(5);
    expect(heard).toEqual([...heard].sort());
  });
});
