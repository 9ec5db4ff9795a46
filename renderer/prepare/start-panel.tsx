import { useState } from 'react';
import type { RunPlan, RunSettings } from '#shared-core';
import { Button } from '../design/index.ts';
import { useDraftFields } from '../draft/index.ts';
import { PlannedLesson } from '../lesson/index.ts';
import { goTo, useBench, useWindowParts } from '../parts/index.ts';
import { isRunUnderWay } from '../stores/index.ts';
import { Expectation } from './expectation.tsx';
import { focusOn } from './focus-on.ts';
import { KeepRig } from './keep-rig.tsx';
import { stillToDo } from './still-to-do.ts';
import { useRigs } from './use-rigs.ts';

interface StartPanelProps {
  readonly canAct: boolean;
  readonly plan: RunPlan | null;
}

/** What to expect, what is still missing, and the start. */
export function StartPanel({ canAct, plan }: StartPanelProps) {
  const { commands } = useWindowParts();
  const probe = useBench((bench) => bench.probe);
  const isRecording = useBench(isRunUnderWay);
  const { draft, change, settings } = useDraftFields();
  const [isStarting, setStarting] = useState(false);
  const { keep } = useRigs();
  const missing = stillToDo(settings.ok ? [] : settings.error, probe, draft.confirms);
  const start = async (ready: RunSettings) => {
    setStarting(true);
    const isUnderWay = await commands.start(ready);
    setStarting(false);
    if (!isUnderWay) return;
    void keep(null);
    // Checks and barometer were for this run; the next one needs its own.
    change({ confirms: [], stationPressure: '', seaLevelPressure: '' });
    goTo('watch');
  };
  return (
    <aside className="start-panel" aria-label="What to expect, and start">
      {!isRecording && (
        <>
          <h2>Start</h2>
          <ul className="missing" aria-label="Still to do">
            {missing.map(({ words, field }) => (
              <li key={field}>
                <Button weight="quiet" onClick={() => focusOn(field)}>
                  {words}
                </Button>
              </li>
            ))}
          </ul>
          <Button
            weight="main"
            size="large"
            disabled={!canAct || isStarting || missing.length > 0 || !settings.ok}
            onClick={() => settings.ok && void start(settings.value)}
          >
            Start the run
          </Button>
        </>
      )}
      <h2>What to expect</h2>
      <Expectation />
      {!isRecording && <PlannedLesson plan={plan} />}
      {!isRecording && <KeepRig canAct={canAct} />}
    </aside>
  );
}
