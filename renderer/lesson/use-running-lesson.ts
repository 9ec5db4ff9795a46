import { standingMarks } from '#shared-core';
import { usePrepare } from '../parts/index.ts';
import { planRequestFrom, usePlan } from '../plan/index.ts';
import type { RunView } from '../stores/index.ts';
import { numberFrom } from '../words/index.ts';
import { type RunningLesson, runningLesson } from './running-lesson.ts';

/** What is still ahead in the run in view. The plan is made only while nothing has been measured. */
export function useRunningLesson(view: RunView, isLive: boolean): RunningLesson {
  const { snapshot, settings, marks } = view;
  const dripRate = usePrepare((state) => numberFrom(state.draft.dripRateMlPerMin));
  const isWarmUp = isLive && snapshot?.stage.stage === 'warm-up';
  const { plan } = usePlan(isWarmUp ? planRequestFrom(settings, dripRate ?? 1) : null);
  if (snapshot === null) return { vapour: null, heatOff: null };
  const heatOn = standingMarks(marks).findLast(({ mark }) => mark.type === 'heat-on');
  return runningLesson(snapshot, isWarmUp ? plan : null, heatOn?.timeS ?? null);
}
