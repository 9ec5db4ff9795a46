import { createLineReader, fail, type SerialSource, succeed } from '#shared-core';
import { createAskingTalk } from './asking-talk.ts';
import type { Talk, TalkWire } from './talk.ts';

/**
 * What makes a balance send what it shows now, whether it has settled or not: each maker has his own (from memory; there is no
 * common standard). None of them sets anything; those that tare or calibrate are left out.
 */
const usualQuestions = ['SI', 'Q', '\u001bP', 'P', 'W'] as const;

type Source = Pick<SerialSource, 'unit' | 'decimalComma' | 'askEveryS' | 'channels'>;

/** For balances that send their mass only when they are asked. */
export function createBalanceTalk(source: Source, wire: TalkWire): Talk {
  const manner = {
    identifyQuestion: null,
    questions: usualQuestions,
    lineEnd: '\r\n',
    reader() {
      const lines = createLineReader({ ...source, language: 'plain-text', pattern: null });
      return (line: string) => {
        const outcome = lines.read(line);
        // A balance that is overloaded has understood the question.
        const isAnswer = outcome.rejections.every(({ kind }) => kind === 'no-value');
        return isAnswer ? succeed(outcome) : fail(outcome);
      };
    },
  } as const;
  return createAskingTalk(manner, source.askEveryS ?? 1, wire);
}
