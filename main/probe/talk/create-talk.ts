import { assertNever, type SerialSource } from '#shared-core';
import { createBalanceTalk } from './balance-talk.ts';
import { createListeningTalk } from './listening-talk.ts';
import { createModbusTalk } from './modbus-talk.ts';
import { createScpiTalk } from './scpi-talk.ts';
import type { Talk, TalkWire } from './talk.ts';

/** The conversation for the language that was chosen: who need not be asked is listened to. */
export function createTalk(source: SerialSource, wire: TalkWire): Talk {
  switch (source.language) {
    case 'scpi':
      return createScpiTalk(source, wire);
    case 'balance':
      return createBalanceTalk(source, wire);
    case 'modbus-rtu':
      return createModbusTalk(source, wire);
    case 'auto':
    case 'plain-text':
    case 'json-lines':
    case 'own-pattern':
      return createListeningTalk(source, wire);
    default:
      return assertNever(source.language);
  }
}
