import { mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { openPseudoTerminal, type PseudoTerminal } from '#main';
import { latin1Bytes, type SerialSource, serialSourceSchema } from '#shared-core';
import { modbusChecksum } from '../../../../shared-core/frame/modbus-answer.ts';

/** How a device of one language writes a head temperature, and whether it waits to be asked. */
export interface DeviceLanguage {
  readonly name: string;
  readonly source: Partial<SerialSource>;
  /** The bytes for a temperature; null means that the sensor has no value. */
  readonly encode: (headC: number | null) => Uint8Array;
  /** What to answer to a question, null for a question that is not about a reading. */
  readonly answer?: (question: Uint8Array, headC: number | null) => Uint8Array | null;
}

const text = (words: string) => latin1Bytes(words);
const digits = (headC: number | null) => (headC === null ? 'nan' : headC.toFixed(4));

function scpiAnswer(question: Uint8Array, headC: number | null): Uint8Array | null {
  const asked = String.fromCharCode(...question).trim();
  if (asked === '*IDN?') return text('Teaching lab,Bench thermometer,0,1.0\n');
  if (asked !== 'READ?') return text('-113,"Undefined header"\n');
  return text(`${headC === null ? '9.91E37' : headC.toExponential(6)}\r\n`);
}

function modbusFrame(headC: number | null): Uint8Array {
  const raw = headC === null ? 0x8000 : Math.round(headC * 10) & 0xffff;
  const body = Uint8Array.of(1, 4, 2, raw >> 8, raw & 0xff);
  const crc = modbusChecksum(body);
  return Uint8Array.of(...body, crc & 0xff, crc >> 8);
}

export const deviceLanguages: readonly DeviceLanguage[] = [
  { name: 'plain number', source: {}, encode: (headC) => text(`${digits(headC)}\r\n`) },
  {
    name: 'named text',
    source: { language: 'plain-text' },
    encode: (headC) => text(`head,${digits(headC)},pot,91.5\n`),
  },
  {
    name: 'JSON lines',
    source: { language: 'json-lines' },
    encode: (headC) => text(`{"head":${digits(headC)},"pot":91.5,"ms":12}\n`),
  },
  {
    name: 'own pattern',
    source: { language: 'own-pattern', pattern: '{anything} T1 {head} C' },
    encode: (headC) => text(`12:30:07 T1 ${digits(headC)} C\r\n`),
  },
  {
    name: 'SCPI',
    source: { language: 'scpi', askEveryS: 0.1 },
    encode: () => text(''),
    answer: scpiAnswer,
  },
  {
    name: 'Modbus RTU',
    source: { language: 'modbus-rtu', askEveryS: 0.1 },
    encode: () => text(''),
    answer: (question, headC) => (question.length === 8 ? modbusFrame(headC) : null),
  },
];

/** What the device does at the moment. */
export type DeviceMood = 'speaking' | 'speaking in pieces' | 'mute' | 'noise' | 'flood';

const noise = Uint8Array.from({ length: 64 }, (_, index) => 0x80 + ((index * 37) % 0x70));
const block = new Uint8Array(4096).fill(0x37);

/** A device at the far end of a pseudo-terminal whose plug can be pulled and put back; it speaks every so many milliseconds. */
export function plugInDevice(language: DeviceLanguage, everyMs = 100) {
  const folder = mkdtempSync(path.join(tmpdir(), 'device-'));
  const port = path.join(folder, 'port');
  const state = { headC: 78.4 as number | null, mood: 'speaking' as DeviceMood, flooded: 0 };
  let terminal: PseudoTerminal | null = null;

  function say(bytes: Uint8Array): void {
    if (state.mood === 'speaking') terminal?.write(bytes);
    if (state.mood !== 'speaking in pieces') return;
    const middle = Math.floor(bytes.length / 2);
    terminal?.write(bytes.subarray(0, middle));
    setTimeout(() => terminal?.write(bytes.subarray(middle)), 20);
  }

  function plugIn(): void {
    const opened = openPseudoTerminal();
    if (!opened.ok) throw new Error(opened.error);
    terminal = opened.value;
    terminal.onBytes((question) => {
      const answer = language.answer?.(question, state.headC);
      if (answer) say(answer);
    });
    symlinkSync(terminal.path, port);
  }

  function unplug(): void {
    rmSync(port, { force: true });
    terminal?.close();
    terminal = null;
  }

  const timer = setInterval(() => {
    if (state.mood === 'noise') terminal?.write(noise);
    else if (language.answer === undefined) say(language.encode(state.headC));
  }, everyMs);
  const flood = setInterval(() => {
    if (state.mood !== 'flood') return;
    terminal?.write(block);
    state.flooded += block.length;
  }, 1);
  plugIn();
  return {
    state,
    source: serialSourceSchema.parse({ kind: 'serial', path: port, ...language.source }),
    plugIn,
    unplug,
    remove() {
      clearInterval(timer);
      clearInterval(flood);
      unplug();
      rmSync(folder, { recursive: true });
    },
  };
}
