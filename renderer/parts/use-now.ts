import { useEffect, useState } from 'react';

/** Clock times are told to the minute. */
const lookEveryMs = 10_000;

/** The computer's clock [ms], looked at now and then. */
export function useNow(): number {
  const [nowMs, setNowMs] = useState(() => Date.now());
  useEffect(() => {
    const timer = setInterval(() => setNowMs(Date.now()), lookEveryMs);
    return () => clearInterval(timer);
  }, []);
  return nowMs;
}
