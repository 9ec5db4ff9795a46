import { useEffect, useRef } from 'react';
import type { AlarmView } from '#shared-core';
import { usePreferences, useWindowParts } from '../parts/index.ts';
import { callDue, silent } from '../sound/index.ts';

const noAlarms: readonly AlarmView[] = [];

/** Calls while the running run has an alarm that nobody acknowledged, wherever the person looks. */
export function useAlarmSound(): void {
  const { bench, live, chime } = useWindowParts();
  const isOn = usePreferences(({ sound }) => sound);
  const calls = useRef(silent);
  const hadAdvice = useRef(true);
  useEffect(() => {
    if (!isOn) return;
    const check = () => {
      const { view } = live.getState();
      // Prompts of a monitor that has failed can no longer be answered.
      const hasAdvice = bench.getState().recording?.adviceStopped === undefined;
      const isJudged = view !== null && view.endedS === null && hasAdvice;
      const alarms = isJudged ? (view.snapshot?.alarms ?? noAlarms) : noAlarms;
      const { state, play } = callDue(calls.current, alarms, performance.now());
      calls.current = state;
      if (play || (hadAdvice.current && !hasAdvice)) chime.play(play ?? 'high');
      hadAdvice.current = hasAdvice;
    };
    const timer = setInterval(check, 500);
    return () => clearInterval(timer);
  }, [isOn, bench, live, chime]);
}
