import { expect, test } from 'vitest';
import { type SerialSource, serialSourceSchema } from '#shared-core';
import {
  type SpeechDraft,
  sourceFromSpeech,
  speechDraftFrom,
} from '../../../renderer/probe/speech-draft.ts';

const source: SerialSource = serialSourceSchema.parse({ kind: 'serial', path: '/dev/ttyACM0' });

function spoken(from: SerialSource, changes: Partial<SpeechDraft> = {}): SerialSource {
  const result = sourceFromSpeech(from, { ...speechDraftFrom(from), ...changes });
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
}

test('a draft left as it is changes nothing of the source', () => {
  const mapped: SerialSource = { ...source, channels: { a: 'pot', b: 'room' } };
  expect([spoken(source), spoken(mapped)]).toEqual([source, mapped]);
});

test('the channel that hangs in the head changes places with the one called head', () => {
  const swapped = spoken(source, { headChannel: 'pot' });
  expect([swapped.channels, speechDraftFrom(swapped).headChannel]).toEqual([
    { pot: 'head', head: 'pot' },
    'pot',
  ]);
});

test('the only number of a probe beside others may be of the pot, a balance, or the head again', () => {
  const inPot = spoken(source, { role: 'pot' });
  expect([
    inPot.channels,
    speechDraftFrom(inPot).role,
    spoken(inPot, { role: 'head' }).channels,
  ]).toEqual([{ head: 'pot' }, 'pot', undefined]);
});

test('a pattern goes along only with the language it belongs to', () => {
  expect([
    spoken(source, { pattern: 'T {head}' }).pattern,
    spoken(source, { pattern: 'T {head}', language: 'own-pattern' }).pattern,
  ]).toEqual([null, 'T {head}']);
});

test('what the form does not show stays as it was', () => {
  const asked: SerialSource = { ...source, language: 'scpi', question: 'MEAS?', askEveryS: 2 };
  expect(spoken(asked)).toEqual(asked);
});

test('a question is one question, and no question means the usual ones', () => {
  const scpi: SerialSource = { ...source, language: 'scpi' };
  const draft = { ...speechDraftFrom(scpi), question: 'MEAS:TEMP' };
  expect([
    sourceFromSpeech(scpi, draft),
    spoken(scpi, { question: ' MEAS:TEMP? ', askEveryS: '0,5' }),
    spoken(scpi).question,
  ]).toEqual([
    { ok: false, error: { question: expect.stringContaining('question mark') } },
    { ...scpi, question: 'MEAS:TEMP?', askEveryS: 0.5 },
    null,
  ]);
});

test('the registers of a Modbus probe come as typed, or say what to enter instead', () => {
  const modbus: SerialSource = { ...source, language: 'modbus-rtu' };
  const { registers } = speechDraftFrom(modbus).modbus;
  const pot = { channel: 'pot', address: '2', type: 'float32', scale: '1' } as const;
  const both = { unitId: '17', functionCode: '3', registers: [...registers, pot] } as const;
  const wrong = { ...both, unitId: '0', registers: [{ ...pot, address: '', scale: '0' }] };
  expect([
    spoken(modbus, { modbus: both, parity: 'even' }),
    sourceFromSpeech(modbus, { ...speechDraftFrom(modbus), modbus: wrong }),
  ]).toEqual([
    {
      ...modbus,
      parity: 'even',
      modbus: {
        unitId: 17,
        functionCode: 3,
        registers: [
          { channel: 'head', address: 0, type: 'int16', scale: 0.1 },
          { channel: 'pot', address: 2, type: 'float32', scale: 1 },
        ],
      },
    },
    {
      ok: false,
      error: {
        unitId: 'A whole number from 1 to 247.',
        'address 0': 'From 0 to 65535, as on the wire.',
        'scale 0': 'A number such as 0.1 or 1.',
      },
    },
  ]);
});
