import { judgeFerment, wordingOf } from '#shared-core';
import type { JudgeAnswer, JudgeQuestion } from './judge-messages.ts';

// Thousands of possible ferments are weighed against each reading: up to a second in which the window must go on answering.
self.onmessage = ({ data }: MessageEvent<JudgeQuestion>) => {
  const { id, readings, facts } = data;
  const verdict = judgeFerment(readings, facts);
  const wording = wordingOf([verdict.because, ...verdict.problems]);
  const answer: JudgeAnswer = { id, verdict, wording };
  self.postMessage(answer);
};
