import { useState } from 'react';
import type { FermentRead, KeptFerment, RequestBody, requests, StatedFerment } from '#shared-core';
import { useAsked, useWindowParts } from '../parts/index.ts';
import { problemWords } from '../words/index.ts';

type FermentChange = Exclude<keyof typeof requests & `ferments/${string}`, 'ferments/list'>;

/**
 * The kept ferments, newest first, and what can be done with them; every change answers whether it was kept.
 *
 * @param readAgainAt read anew whenever this changes: another window may have entered something
 */
export function useFerments(readAgainAt: string | null = null) {
  const { service } = useWindowParts();
  const [ferments, setFerments] = useState<readonly KeptFerment[] | null>(null);
  const [problem, setProblem] = useState<string | null>(null);

  useAsked(
    'ferments/list',
    {},
    (answer) => {
      if (answer.ok) setFerments(answer.value.ferments);
      else setProblem(problemWords(answer.error));
    },
    readAgainAt,
  );

  const ask = async <N extends FermentChange>(
    name: N,
    body: RequestBody<N>,
  ): Promise<KeptFerment | null> => {
    const answer = await service.request(name, body);
    if (!answer.ok) {
      setProblem(problemWords(answer.error));
      return null;
    }
    const ferment: KeptFerment = answer.value;
    setProblem(null);
    setFerments((known) => withFerment(known ?? [], ferment));
    return ferment;
  };

  return {
    ferments,
    problem,
    begin: (stated: StatedFerment) => ask('ferments/begin', { stated }),
    correct: (fermentId: string, stated: StatedFerment, reason: string) =>
      ask('ferments/correct', { fermentId, stated, reason }),
    enter: (fermentId: string, read: FermentRead) => ask('ferments/enter', { fermentId, read }),
    withdraw: (fermentId: string, entryId: number) =>
      ask('ferments/withdraw', { fermentId, entryId }),
  };
}

function withFerment(known: readonly KeptFerment[], ferment: KeptFerment): readonly KeptFerment[] {
  const isKnown = known.some(({ fermentId }) => fermentId === ferment.fermentId);
  return isKnown
    ? known.map((one) => (one.fermentId === ferment.fermentId ? ferment : one))
    : [ferment, ...known];
}
