import {
  createLineSplitter,
  type LineOutcome,
  latin1Bytes,
  printable,
  type Result,
} from '#shared-core';
import type { Talk, TalkWire } from './talk.ts';

/** How instruments of one kind are asked. */
export interface AskingManner {
  /** Answered once, with what the instrument is; null where there is no such question. */
  readonly identifyQuestion: string | null;
  /** In the order in which they are tried. */
  readonly questions: readonly string[];
  readonly lineEnd: '\n' | '\r\n';
  /** A reader of answers for one opening of the port; it fails with what is no answer to the question. */
  readonly reader: () => (line: string) => Result<LineOutcome, LineOutcome>;
}

const patienceS = 2;
/** A question that failed this often in a row is not understood there. */
const failuresBeforeNext = 2;
/** Boards that restart when the port opens would miss a question asked at once. */
const firstAskAfterS = 0.3;

/** For instruments that answer questions, one line each. It asks only; it never sets anything. */
export function createAskingTalk(manner: AskingManner, everyS: number, wire: TalkWire): Talk {
  const { identifyQuestion, questions, lineEnd } = manner;
  const splitter = createLineSplitter();
  let read = manner.reader();
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
    wire.send(latin1Bytes(`${question}${lineEnd}`));
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
    if (asked !== undefined && asked === identifyQuestion) {
      identity = printable(line);
      return null;
    }
    const heard = read(line);
    if (!heard.ok) {
      failed();
      return heard.error;
    }
    failures = 0;
    return heard.value;
  }

  return {
    opened(atS) {
      splitter.restart();
      read = manner.reader();
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
      if (!identified && identifyQuestion !== null) {
        identified = true;
        ask(identifyQuestion, atS);
        return;
      }
      nextAskS = Math.max(nextAskS + everyS, atS);
      const question = questions[current];
      if (question !== undefined) ask(question, atS);
    },
    droppedBytes: () => splitter.droppedBytes(),
    identity: () => identity,
  };
}
