import { useEffect, useReducer } from 'react';
import { useBench } from '../parts/index.ts';
import { settlingOf, withReading } from './settling.ts';

/** What the head probe says, and whether it has settled in the bath that it is held in. */
export function useSettling() {
  const head = useBench(
    ({ probe }) => probe?.latest.find(({ channel }) => channel === 'head') ?? null,
  );
  const [lately, hear] = useReducer(withReading, []);
  useEffect(() => {
    if (head === null || head.quality !== 'good') return;
    hear({ timeS: head.timeS, temperatureC: head.value });
  }, [head]);
  return { head, settled: settlingOf(lately, head !== null) };
}
