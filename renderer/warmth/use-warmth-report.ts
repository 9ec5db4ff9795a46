import { useState } from 'react';
import type { KeptWarm, RequestBody, WarmthReport } from '#shared-core';
import { useAsked, useWindowParts } from '../parts/index.ts';
import { problemWords } from '../words/index.ts';

/** How warm a ferment was kept so far, and what can be done about it; read anew with each minute heard. */
export function useWarmthReport(fermentId: string, kept: KeptWarm | null) {
  const { service } = useWindowParts();
  const [report, setReport] = useState<WarmthReport | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const heardAtIso = kept?.fermentId === fermentId ? kept.now.heardAtIso : null;

  useAsked(
    'warmth/report',
    { fermentId },
    (answer) => {
      if (answer.ok) setReport(answer.value);
      else setProblem(problemWords(answer.error));
    },
    heardAtIso,
  );

  const ask = async <N extends 'warmth/keep' | 'warmth/leave'>(
    name: N,
    body: RequestBody<N>,
  ): Promise<void> => {
    const answer = await service.request(name, body);
    if (!answer.ok) {
      setProblem(problemWords(answer.error));
      return;
    }
    const changed: WarmthReport = answer.value;
    setProblem(null);
    setReport(changed);
  };

  return {
    report,
    problem,
    keep: (body: RequestBody<'warmth/keep'>) => ask('warmth/keep', body),
    leave: () => ask('warmth/leave', { fermentId }),
  };
}
