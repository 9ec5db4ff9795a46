import { useEffect, useRef, useState } from 'react';

/** A value that may change many times a second, taken up at most once in so long: for what takes long to draw. */
export function usePaced<Value>(value: Value, everyMs: number): Value {
  const newest = useRef(value);
  const [shown, setShown] = useState(value);
  useEffect(() => {
    newest.current = value;
  });
  useEffect(() => {
    const timer = setInterval(() => setShown(newest.current), everyMs);
    return () => clearInterval(timer);
  }, [everyMs]);
  return shown;
}
