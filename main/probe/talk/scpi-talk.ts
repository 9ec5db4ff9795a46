import {
  createLineSplitter,
  createPowerOnScreen,
  type LineOutcome,
  latin1Bytes,
  meaningOf,
  parseScpiAnswer,
  printable,
  type SerialSource,
} from '#shared-core';
import type { Talk, TalkWire } from './talk.ts';

/** IEEE 488.2, 10.14: every instrument that speaks this language answers with what it is. */
const identifyQuestion = '*IDN?';

/**
 * Questions in the order in which they are tried; an instrument without a thermometer's tree still
 * knows "read" or "fetch". SCPI-99, volume 2, 3 (MEASure, READ?, FETCh?).
 */
const usualQuestions = ['MEAS:TEMP?', 'READ?', 'FETC?', 'MEAS?'] as const;

const patienceS = 2;
/** A question that failed this often in a row is not understood there. */
const failuresBeforeNext = 2;
/** Boards that restart when the port opens would miss a question asked at once. */
const firstAskAfterS = 0.3;

type Source = Pick<SerialSource, 'unit' | 'question' | 'askEveryS' | 'channels'>;

/** For instruments that answer questions in SCPI. It asks only; it never sets anything. */
export function createScpiTalk(source: Source, wire: TalkWire): Talk {
  const questions = source.question == null ? usualQuestions : [source.question];
  const everyS = source.askEveryS ?? 1;
  const splitter = createLineSplitter();
  let powerOn = createPowerOnScreen();
  let identity: string | null = null;
  let awaiting: { readonly question: string; readonly sinceS: number } | null = null;
  let nextAskS = 0;
  let identified = false;
  let current = 0;
  let failures = 0;

  function ask(question: string, atS: number): void {
    // Whatever was half-heard belongs to an answer that is no longer waited for.
    splitter.startOfLine();
    awaiting = { question, sinceS: atS };
    wire.send(latin1Bytes(`${question}\n`));
  }

  function failed(): void {
    failures += 1;
    if (failures < failuresBeforeNext) return;
    failures = 0;
    current = (current + 1) % questions.length;
  }

  function answered(line: string): LineOutcome | null {
    const asked = awaiting?.question;
    awaiting = null;
    if (asked === identifyQuestion) {
      identity = printable(line);
      return null;
    }
    const parsed = parseScpiAnswer(line);
    if (!parsed.ok) {
      failed();
      return { text: line, values: [], rejections: [parsed.error] };
    }
    failures = 0;
    const { values, rejections } = meaningOf(parsed.value, { ...source, language: 'scpi' });
    return { text: line, values: values.map((value) => powerOn.screen(value)), rejections };
  }

  return {
    opened(atS) {
      splitter.restart();
      powerOn = createPowerOnScreen();
      awaiting = null;
      identified = false;
      nextAskS = atS + firstAskAfterS;
    },
    receive(bytes, atS) {
      const outcomes = splitter
        .push(bytes)
        .map(answered)
        .filter((outcome) => outcome !== null);
      if (outcomes.length > 0) wire.outcomes(outcomes, atS);
    },
    tick(atS) {
      if (awaiting !== null && atS - awaiting.sinceS > patienceS) {
        if (awaiting.question !== identifyQuestion) failed();
        awaiting = null;
      }
      if (awaiting !== null || atS < nextAskS) return;
      if (!identified) {
        identified = true;
        ask(identifyQuestion, atS);
        return;
      }
      nextAskS = Math.max(nextAskS + everyS, atS);
      ask(questions[current] ?? identifyQuestion, atS);
    },
    droppedBytes: () => splitter.droppedBytes(),
    identity: () => identity,
  };
}
