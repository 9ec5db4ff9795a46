import { useEffect, useRef } from 'react';
import type { AlarmView } from '#shared-core';
import { usePreferences, useWindowParts } from '../window/use-stores.ts';
import { callDue, silent } from './call-for-alarms.ts';

const noAlarms: readonly AlarmView[] = [];

/** Calls while the running run has an alarm that nobody acknowledged, wherever the person looks. */
export function useAlarmSound(): void {
  const { live, chime } = useWindowParts();
  const isOn = usePreferences(({ sound }) => sound);
  const calls = useRef(silent);
  useEffect(() => {
    if (!isOn) return;
    const check = () => {
      const { view } = live.getState();
      const alarms = view && view.endedS === null ? (view.snapshot?.alarms ?? noAlarms) : noAlarms;
      const { state, play } = callDue(calls.current, alarms, performance.now());
      calls.current = state;
      if (play) chime.play(play);
    };
    const timer = setInterval(check, 500);
    return () => clearInterval(timer);
  }, [isOn, live, chime]);
}
