import { useEffect } from 'react';
import type { LessonScript } from '#shared-core';
import { useBench, usePrepare, useWindowParts } from '../parts/index.ts';
import { isRunUnderWay, mayCommand } from '../stores/index.ts';
import { defaultScript } from './default-script.ts';

/** The script as typed or filled in in this window, or as kept when the run under way began; else the given one. */
export function useLessonScript() {
  const { service, bench } = useWindowParts();
  const typed = usePrepare((state) => state.draft.lessonScript);
  const change = usePrepare((state) => state.change);
  const canAct = useBench(mayCommand);
  const rigs = useBench((state) => state.rigs);
  const isUnderWay = useBench(isRunUnderWay);
  // Started in another window than this one, the run's script is that of the last set-up.
  const kept = isUnderWay ? rigs?.last?.setUp.lessonScript : null;
  const isUnknown = canAct && isUnderWay && rigs === null;
  useEffect(() => {
    if (!isUnknown) return;
    void service.request('rigs/list', {}).then((answer) => {
      if (answer.ok) bench.getState().dispatch({ type: 'rigs', rigs: answer.value });
    });
  }, [isUnknown, service, bench]);
  return {
    script: typed ?? kept ?? defaultScript,
    write: (lessonScript: LessonScript) => change({ lessonScript }),
  };
}
