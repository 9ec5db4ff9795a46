import {
  askEveryRangeS,
  baudRates,
  fail,
  type Result,
  type SerialSource,
  say,
  serialSourceSchema,
  succeed,
} from '#shared-core';
import { numberFrom } from '../words/index.ts';
import { type ChannelRole, roleFrom } from './channel-roles.ts';
import { type ModbusDraft, modbusDraftFrom, modbusFrom } from './modbus-draft.ts';

/** How a probe speaks, as chosen in the form. */
export interface SpeechDraft {
  readonly language: SerialSource['language'];
  readonly baudRate: string;
  readonly parity: 'usual' | 'none' | 'even' | 'odd';
  readonly unit: SerialSource['unit'];
  readonly decimal: 'point' | 'comma';
  readonly pattern: string;
  /** Which of the probe's channels hangs in the still head; empty for "as it says". */
  readonly headChannel: string;
  /** What the only number of a probe beside others measures; empty for "as it says". */
  readonly role: ChannelRole;
  /** Empty for the usual questions. */
  readonly question: string;
  readonly askEveryS: string;
  readonly modbus: ModbusDraft;
}

export function speechDraftFrom(source: SerialSource): SpeechDraft {
  const renamed = Object.entries(source.channels ?? {}).find(([, name]) => name === 'head');
  return {
    language: source.language,
    baudRate: String(source.baudRate),
    parity: source.parity ?? 'usual',
    unit: source.unit,
    decimal: source.decimalComma ? 'comma' : 'point',
    pattern: source.pattern ?? '',
    headChannel: renamed?.[0] ?? '',
    role: roleFrom(source.channels),
    question: source.question ?? '',
    askEveryS: String(source.askEveryS ?? 1),
    modbus: modbusDraftFrom(source.modbus),
  };
}

/** Problems by field, in words that say what to enter. */
export type SpeechProblems = Readonly<Record<string, string>>;

/** The source spoken to as the draft says, or what must be entered otherwise. */
export function sourceFromSpeech(
  source: SerialSource,
  draft: SpeechDraft,
): Result<SerialSource, SpeechProblems> {
  const { language, baudRate, parity, unit, decimal, pattern } = draft;
  const { channels: _, parity: __, ...others } = source;
  const asked = askedFrom(source, draft);
  if (!asked.ok) return asked;
  return succeed({
    ...others,
    language,
    baudRate: Number(baudRate),
    unit,
    decimalComma: decimal === 'comma',
    pattern: language === 'own-pattern' ? pattern : null,
    ...(parity !== 'usual' && { parity }),
    ...asked.value,
    ...channelsFrom(source, draft),
  });
}

/** Whether nothing comes in a language before it is asked for. */
export function mustBeAsked(language: SerialSource['language']): boolean {
  return language === 'scpi' || language === 'modbus-rtu' || language === 'balance';
}

type Asked = Pick<SerialSource, 'question' | 'askEveryS' | 'modbus'>;

/** What only the languages that ask need; for the others it stays as it was. */
function askedFrom(source: SerialSource, draft: SpeechDraft): Result<Asked, SpeechProblems> {
  if (!mustBeAsked(draft.language)) return succeed({});
  const askEveryS = numberFrom(draft.askEveryS);
  if (askEveryS === null || askEveryS < askEveryRangeS.low || askEveryS > askEveryRangeS.high) {
    return fail({
      askEveryS: say('From {low} to {high} s.', {
        low: askEveryRangeS.low,
        high: askEveryRangeS.high,
      }),
    });
  }
  const pace = askEveryS === (source.askEveryS ?? 1) ? {} : { askEveryS };
  if (draft.language === 'modbus-rtu') {
    const modbus = modbusFrom(draft.modbus);
    return modbus.ok ? succeed({ ...pace, modbus: modbus.value }) : modbus;
  }
  if (draft.language === 'balance') return succeed(pace);
  const question = draft.question.trim();
  if (question === '') return succeed({ ...pace, question: null });
  return serialSourceSchema.shape.question.safeParse(question).success
    ? succeed({ ...pace, question })
    : fail({ question: say('One question that ends in a question mark, such as MEAS:TEMP?') });
}

function channelsFrom(
  source: SerialSource,
  { headChannel, role }: SpeechDraft,
): Pick<SerialSource, 'channels'> {
  const { channels } = source;
  const before = speechDraftFrom(source);
  if (role === before.role && headChannel === before.headChannel) {
    return channels === undefined ? {} : { channels };
  }
  if (role !== '') return role === 'head' ? {} : { channels: { head: role } };
  // The two change places, so that no channel is lost.
  return headChannel === '' || headChannel === 'head'
    ? {}
    : { channels: { [headChannel]: 'head', head: headChannel } };
}

const languageNames: Readonly<Record<SerialSource['language'], string>> = {
  auto: say('Listen and decide'),
  'plain-text': say('Plain text, one line a reading'),
  'json-lines': say('JSON, one object a line'),
  scpi: say('SCPI: it answers questions'),
  'modbus-rtu': say('Modbus RTU'),
  balance: say('A balance that must be asked'),
  'own-pattern': say('A pattern of my own'),
};

export const languageOptions = serialSourceSchema.shape.language
  .unwrap()
  .options.map((value) => ({ value, label: languageNames[value] }));

export const unitOptions = [
  { value: '°C', label: '°C' },
  { value: '°F', label: '°F' },
  { value: 'K', label: 'K' },
  { value: 'ohm-pt100', label: say('Ω of a Pt100') },
  { value: 'ohm-pt1000', label: say('Ω of a Pt1000') },
] as const satisfies readonly { value: SerialSource['unit']; label: string }[];

export const parityOptions = [
  { value: 'usual', label: say('as usual for its language') },
  { value: 'none', label: say('none') },
  { value: 'even', label: say('even') },
  { value: 'odd', label: say('odd') },
] as const;

export const baudOptions = baudRates.map((rate) => ({
  value: String(rate),
  label: say('{rate} baud', { rate }),
}));
