import { useEffect, useRef } from 'react';
import type { RequestAnswer, RequestBody, RequestName, Result, ServiceProblem } from '#shared-core';
import { useWindowParts } from './use-stores.ts';

/**
 * Asks the services whenever this appears and the question changes; what is answered too late is left out.
 *
 * @param body null asks nothing
 * @param again asked anew whenever this changes, though the question stays the same
 */
export function useAsked<N extends RequestName>(
  name: N,
  body: RequestBody<N> | null,
  onAnswer: (answer: Result<RequestAnswer<N>, ServiceProblem>) => void,
  again: unknown = null,
): void {
  const { service } = useWindowParts();
  const current = useRef(onAnswer);
  current.current = onAnswer;
  const key = JSON.stringify(body);
  // biome-ignore lint/correctness/useExhaustiveDependencies: `again` is a moment to ask anew.
  useEffect(() => {
    const question: RequestBody<N> | null = JSON.parse(key);
    if (question === null) return;
    let isWanted = true;
    void service.request(name, question).then((answer) => {
      if (isWanted) current.current(answer);
    });
    return () => {
      isWanted = false;
    };
  }, [service, name, key, again]);
}
