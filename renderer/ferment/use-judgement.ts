import { useEffect, useRef, useState } from 'react';
import {
  type FermentVerdict,
  factsOfFerment,
  judgeFerment,
  type KeptFerment,
  learnWording,
  readingsOfFerment,
} from '#shared-core';
import { startWorker } from '../parts/index.ts';
import type { JudgeAnswer, JudgeQuestion } from './judge-messages.ts';

const makeWorker = () =>
  new Worker(new URL('./judge-worker.ts', import.meta.url), { type: 'module' });

/** What the readings of a ferment say, worked out beside the window; null until it is there. */
export function useJudgement(ferment: KeptFerment | null): FermentVerdict | null {
  const [answer, setAnswer] = useState<Omit<JudgeAnswer, 'wording'> | null>(null);
  const worker = useRef<Worker | null>(null);
  const asked = useRef(0);
  const key = ferment === null ? null : JSON.stringify(questionOf(ferment));

  useEffect(() => () => worker.current?.terminate(), []);

  useEffect(() => {
    // An answer to the log as it was before is none.
    asked.current += 1;
    setAnswer(null);
    if (key === null) return;
    const question: JudgeQuestion = { id: asked.current, ...JSON.parse(key) };
    worker.current ??= startWorker(makeWorker, (found: JudgeAnswer) => {
      learnWording(found.wording);
      if (found.id === asked.current) setAnswer(found);
    });
    if (worker.current !== null) worker.current.postMessage(question);
    // A window that may start no worker stands still for a moment instead.
    else setAnswer({ id: question.id, verdict: judgeFerment(question.readings, question.facts) });
  }, [key]);

  return answer?.verdict ?? null;
}

function questionOf(ferment: KeptFerment): Omit<JudgeQuestion, 'id'> {
  return { readings: readingsOfFerment(ferment), facts: factsOfFerment(ferment.stated) };
}
