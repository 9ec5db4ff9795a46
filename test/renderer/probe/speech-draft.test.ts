import { expect, test } from 'vitest';
import { type SerialSource, serialSourceSchema } from '#shared-core';
import { sourceFromSpeech, speechDraftFrom } from '../../../renderer/probe/speech-draft.ts';

const source: SerialSource = serialSourceSchema.parse({ kind: 'serial', path: '/dev/ttyACM0' });

test('a draft left as it is changes nothing of the source', () => {
  expect(sourceFromSpeech(source, speechDraftFrom(source))).toEqual(source);
});

test('the channel that hangs in the head changes places with the one called head', () => {
  const draft = { ...speechDraftFrom(source), headChannel: 'pot' };
  const swapped = sourceFromSpeech(source, draft);
  expect([swapped.channels, speechDraftFrom(swapped).headChannel]).toEqual([
    { pot: 'head', head: 'pot' },
    'pot',
  ]);
});

test('a pattern goes along only with the language it belongs to', () => {
  const draft = { ...speechDraftFrom(source), pattern: 'T {head}' };
  expect([
    sourceFromSpeech(source, draft).pattern,
    sourceFromSpeech(source, { ...draft, language: 'own-pattern' }).pattern,
  ]).toEqual([null, 'T {head}']);
});

test('what the form does not show stays as it was', () => {
  const asked: SerialSource = { ...source, language: 'scpi', question: 'MEAS?', askEveryS: 2 };
  expect(sourceFromSpeech(asked, speechDraftFrom(asked))).toEqual(asked);
});
