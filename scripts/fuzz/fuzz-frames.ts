import {
  createLineReader,
  createLineSplitter,
  createRandom,
  findModbusAnswer,
  latin1Bytes,
  parseScpiAnswer,
  toChannelValue,
} from '#shared-core';
import { modbusChecksum } from '../../shared-core/frame/index.ts';
import type { Random } from '../../shared-core/random/index.ts';

/** One parser under fire. */
export interface FuzzTarget {
  readonly name: string;
  /** Material that looks like the language: noise alone rarely gets past the first character. */
  readonly fragments: readonly string[];
  /** A fresh listener. It answers what bytes gave: readings, and bytes it still holds. */
  readonly listen: () => (bytes: Uint8Array) => FuzzHearing;
  /** A message that must be heard after anything, and the value in it. */
  readonly message: Uint8Array;
  readonly messageValue: number;
}

export interface FuzzHearing {
  /** Readings taken as good. */
  readonly good: readonly number[];
  readonly pending: number;
}

export interface FuzzReport {
  readonly strings: number;
  readonly threw: number;
  /** Strings after which the next message was not heard. */
  readonly notResynchronised: number;
  /** Good readings that are no finite number in the plausible range. */
  readonly madeUp: number;
  readonly longestPending: number;
}

const messageValue = 78.4375;

function lines(options: Partial<Parameters<typeof createLineReader>[0]>): FuzzTarget['listen'] {
  return () => {
    const splitter = createLineSplitter();
    splitter.startOfLine();
    const reader = createLineReader({
      language: 'auto',
      unit: '°C',
      decimalComma: false,
      pattern: null,
      ...options,
    });
    return (bytes) => ({
      good: splitter
        .push(bytes)
        .flatMap((line) => reader.read(line).values)
        .filter(({ quality, unit }) => quality === 'good' && unit === '°C')
        .map(({ value }) => value),
      pending: splitter.pendingBytes(),
    });
  };
}

function scpi(): ReturnType<FuzzTarget['listen']> {
  const splitter = createLineSplitter();
  splitter.startOfLine();
  return (bytes) => ({
    good: splitter.push(bytes).flatMap((line) => {
      const parsed = parseScpiAnswer(line);
      return parsed.ok
        ? parsed.value.flatMap(({ value }) => (isPlausible(value) ? [value] : []))
        : [];
    }),
    pending: splitter.pendingBytes(),
  });
}

function modbus(): ReturnType<FuzzTarget['listen']> {
  const question = { unitId: 1, functionCode: 4, registerCount: 1 } as const;
  let heard = new Uint8Array();
  return (bytes) => {
    const all = new Uint8Array(heard.length + bytes.length);
    all.set(heard);
    all.set(bytes, heard.length);
    heard = all.subarray(Math.max(0, all.length - 256));
    const place = findModbusAnswer(heard, question);
    if (place === null) return { good: [], pending: heard.length };
    const raw = (heard[place.start + 3] ?? 0) * 256 + (heard[place.start + 4] ?? 0);
    heard = heard.subarray(place.start + place.length);
    const meant = toChannelValue('head', { name: null, value: raw / 128, unit: null }, '°C');
    const isGood = place.length === 7 && meant.ok && meant.value.quality === 'good';
    return { good: isGood ? [raw / 128] : [], pending: heard.length };
  };
}

const body = Uint8Array.of(1, 4, 2, (messageValue * 128) >> 8, (messageValue * 128) & 0xff);
const checksum = modbusChecksum(body);
const modbusMessage = Uint8Array.of(...body, checksum & 0xff, checksum >> 8);
const numbers = [
  '78.42',
  '-127',
  '85.0',
  'nan',
  '1e9',
  '7',
  '.',
  ',',
  '-',
  '+',
  'E',
  '0x4e',
  '78,42',
];

export const fuzzTargets: readonly FuzzTarget[] = [
  {
    name: 'plain text',
    fragments: [...numbers, 'head', 'pot', '=', ':', ' ', ';', '\t', '\u00b0C', 'F', '\r', '\n'],
    listen: lines({ language: 'plain-text' }),
    message: latin1Bytes(`\nhead=${messageValue}\r\n`),
    messageValue,
  },
  {
    name: 'plain text with a decimal comma',
    fragments: [...numbers, 'head', '=', ' ', ';', '\n'],
    listen: lines({ language: 'plain-text', decimalComma: true }),
    message: latin1Bytes('\n78,4375\n'),
    messageValue,
  },
  {
    name: 'JSON lines',
    fragments: [...numbers, '{', '}', '[', ']', '"head"', '"pot"', ':', 'null', '"', '\\u00', '\n'],
    listen: lines({ language: 'json-lines' }),
    message: latin1Bytes(`\n{"head":${messageValue}}\n`),
    messageValue,
  },
  {
    name: 'own pattern',
    fragments: [...numbers, 'T1', 'C', ' ', '12:30:07', '\n'],
    listen: lines({ language: 'own-pattern', pattern: '{anything} T1 {head} C' }),
    message: latin1Bytes(`\nnow T1 ${messageValue} C\n`),
    messageValue,
  },
  {
    name: 'SCPI answers',
    fragments: [...numbers, '9.91E37', '"Undefined header"', '#', '\n'],
    listen: scpi,
    message: latin1Bytes(`\n${messageValue}\n`),
    messageValue,
  },
  {
    name: 'Modbus answers',
    fragments: ['\u0001', '\u0004', '\u0002', '\u0084', '\u0001\u0004\u0002', '\u0000'],
    listen: () => modbus(),
    message: modbusMessage,
    messageValue,
  },
];

/** Feeds arbitrary byte strings, each followed by a proper message that must be heard. */
export function fuzzFrames(
  target: FuzzTarget,
  { strings, seed }: { readonly strings: number; readonly seed: number },
): FuzzReport {
  const random = createRandom(seed).fork(target.name);
  let threw = 0;
  let notResynchronised = 0;
  let madeUp = 0;
  let longestPending = 0;
  let listen = target.listen();
  for (let count = 0; count < strings; count += 1) {
    if (count % 1000 === 0) listen = target.listen();
    try {
      const noise = listen(arbitraryBytes(target, random));
      const message = listen(target.message);
      // Half a Modbus frame of noise may swallow the answer after it; the second must be heard.
      const second = message.good.includes(target.messageValue) ? message : listen(target.message);
      longestPending = Math.max(longestPending, noise.pending, message.pending);
      madeUp += noise.good.filter((value) => !isPlausible(value)).length;
      if (!second.good.includes(target.messageValue)) notResynchronised += 1;
    } catch {
      threw += 1;
      listen = target.listen();
    }
  }
  return { strings, threw, notResynchronised, madeUp, longestPending };
}

function arbitraryBytes(target: FuzzTarget, random: Random): Uint8Array {
  if (random.uniform() < 0.3) {
    return Uint8Array.from({ length: random.integer(0, 120) }, () => random.integer(0, 255));
  }
  let text = '';
  for (let pieces = random.integer(0, 24); pieces > 0; pieces -= 1) {
    text +=
      random.uniform() < 0.1
        ? String.fromCharCode(random.integer(0, 255))
        : (target.fragments[random.integer(0, target.fragments.length - 1)] ?? '');
  }
  // Now and then far longer than any line.
  return latin1Bytes(random.uniform() < 0.01 ? text.repeat(20) : text);
}

function isPlausible(value: number | null): value is number {
  return value !== null && value >= -55 && value <= 150;
}
