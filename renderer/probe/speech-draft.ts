import { baudRates, type LineLanguage, type SerialSource } from '#shared-core';

/** How a probe speaks, as chosen in the form. */
export interface SpeechDraft {
  readonly language: LineLanguage;
  readonly baudRate: string;
  readonly unit: SerialSource['unit'];
  readonly decimal: 'point' | 'comma';
  readonly pattern: string;
  /** Which of the probe's channels hangs in the still head; empty for "as it says". */
  readonly headChannel: string;
}

export function speechDraftFrom(source: SerialSource): SpeechDraft {
  const renamed = Object.entries(source.channels ?? {}).find(([, name]) => name === 'head');
  return {
    language: source.language,
    baudRate: String(source.baudRate),
    unit: source.unit,
    decimal: source.decimalComma ? 'comma' : 'point',
    pattern: source.pattern ?? '',
    headChannel: renamed?.[0] ?? '',
  };
}

/** The source spoken to as the draft says; what the form does not show stays as it was. */
export function sourceFromSpeech(source: SerialSource, draft: SpeechDraft): SerialSource {
  const { language, baudRate, unit, decimal, pattern, headChannel } = draft;
  const { channels: _, ...others } = source;
  return {
    ...others,
    language,
    baudRate: Number(baudRate),
    unit,
    decimalComma: decimal === 'comma',
    pattern: language === 'own-pattern' ? pattern : null,
    // The two change places, so that no channel is lost.
    ...(headChannel !== '' &&
      headChannel !== 'head' && { channels: { [headChannel]: 'head', head: headChannel } }),
  };
}

export const languageOptions = [
  { value: 'auto', label: 'Listen and decide' },
  { value: 'plain-text', label: 'Plain text, one line a reading' },
  { value: 'json-lines', label: 'JSON, one object a line' },
  { value: 'scpi', label: 'SCPI: it answers questions' },
  { value: 'modbus-rtu', label: 'Modbus RTU' },
  { value: 'own-pattern', label: 'A pattern of my own' },
] as const satisfies readonly { value: LineLanguage; label: string }[];

export const unitOptions = [
  { value: '°C', label: '°C' },
  { value: '°F', label: '°F' },
  { value: 'K', label: 'K' },
  { value: 'ohm-pt100', label: 'Ω of a Pt100' },
  { value: 'ohm-pt1000', label: 'Ω of a Pt1000' },
] as const satisfies readonly { value: SerialSource['unit']; label: string }[];

export const baudOptions = baudRates.map((rate) => ({
  value: String(rate),
  label: `${rate} baud`,
}));
