import { useEffect, useReducer } from 'react';
import type { Film } from './film.ts';
import { frameIndexAt, frameTimeS } from './film.ts';
import { atStart, replayAfter } from './replay-state.ts';

/** Plays a film: the frame in view and the acts of the replay bar. */
export function useReplay(film: Film) {
  const [state, dispatch] = useReducer(replayAfter, { ...atStart, endS: film.endS });
  useEffect(() => {
    if (!state.isPlaying) return;
    let last = performance.now();
    let request = requestAnimationFrame(function pass(now) {
      dispatch({ type: 'passed', realS: Math.max(0, now - last) / 1000 });
      last = now;
      request = requestAnimationFrame(pass);
    });
    return () => cancelAnimationFrame(request);
  }, [state.isPlaying]);

  const index = frameIndexAt(film, state.timeS);
  const step = (by: number) => {
    const target = film.frames[Math.min(film.frames.length - 1, Math.max(0, index + by))];
    dispatch({ type: 'pause' });
    if (target) dispatch({ type: 'jumped', timeS: frameTimeS(target) });
  };
  return { state, dispatch, step, frame: film.frames[index] ?? null };
}
