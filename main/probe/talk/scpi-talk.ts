import {
  createPowerOnScreen,
  fail,
  meaningOf,
  parseScpiAnswer,
  type SerialSource,
  succeed,
} from '#shared-core';
import { createAskingTalk } from './asking-talk.ts';
import type { Talk, TalkWire } from './talk.ts';

/** IEEE 488.2, 10.14: every instrument that speaks this language answers with what it is. */
const identifyQuestion = '*IDN?';

/**
 * Questions in the order in which they are tried; an instrument without a thermometer's tree still
 * knows "read" or "fetch". SCPI-99, volume 2, 3 (MEASure, READ?, FETCh?).
 */
const usualQuestions = ['MEAS:TEMP?', 'READ?', 'FETC?', 'MEAS?'] as const;

type Source = Pick<SerialSource, 'unit' | 'question' | 'askEveryS' | 'channels'>;

/** For instruments that answer questions in SCPI. */
export function createScpiTalk(source: Source, wire: TalkWire): Talk {
  const manner = {
    identifyQuestion,
    questions: source.question == null ? usualQuestions : [source.question],
    lineEnd: '\n',
    reader() {
      const powerOn = createPowerOnScreen();
      return (line: string) => {
        const parsed = parseScpiAnswer(line);
        if (!parsed.ok) return fail({ text: line, values: [], rejections: [parsed.error] });
        const { values, rejections } = meaningOf(parsed.value, { ...source, language: 'scpi' });
        return succeed({ text: line, values: values.map(powerOn.screen), rejections });
      };
    },
  } as const;
  return createAskingTalk(manner, source.askEveryS ?? 1, wire);
}
