import { useState } from 'react';
import type { ProbeStatus, RunSettings } from '#shared-core';
import { Button } from '../design/index.ts';
import { hasHead, isSimulated } from '../probe/index.ts';
import { isRunUnderWay } from '../stores/index.ts';
import { goTo } from '../window/place.ts';
import { useBench, useWindowParts } from '../window/use-stores.ts';
import { Expectation } from './expectation.tsx';
import type { FieldProblem } from './pressure-from-draft.ts';
import { safetyChecks } from './safety-checks.ts';
import { useDraftFields } from './use-draft-fields.ts';

/** What to expect, what is still missing, and the start. */
export function StartPanel({ canAct }: { readonly canAct: boolean }) {
  const { commands } = useWindowParts();
  const probe = useBench((bench) => bench.probe);
  const isRecording = useBench(isRunUnderWay);
  const { draft, change, settings } = useDraftFields();
  const [isStarting, setStarting] = useState(false);
  const missing = whatIsMissing(settings.ok ? [] : settings.error, probe, draft.confirms.length);
  const start = async (ready: RunSettings) => {
    setStarting(true);
    const isUnderWay = await commands.start(ready);
    setStarting(false);
    if (!isUnderWay) return;
    // The checks were made for this run; the next one needs its own.
    change({ confirms: [] });
    goTo('watch');
  };
  return (
    <aside className="start-panel" aria-label="What to expect, and start">
      <h2>What to expect</h2>
      <Expectation />
      {!isRecording && (
        <>
          <ul className="missing" aria-label="Still to do">
            {missing.map((words) => (
              <li key={words}>{words}</li>
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
    </aside>
  );
}

function whatIsMissing(
  problems: readonly FieldProblem[],
  probe: ProbeStatus | null,
  confirmed: number,
): readonly string[] {
  const left = safetyChecks.length - confirmed;
  return [
    ...entriesStillToDo(problems),
    ...probeStillToDo(probe),
    ...(left <= 0 ? [] : [`Confirm ${left} more before heat`]),
  ];
}

function probeStillToDo(probe: ProbeStatus | null): readonly string[] {
  // The simulated still is no probe: a run of it is a rehearsal, and is started as one.
  if (probe?.state !== 'hearing' || isSimulated(probe)) return ['Connect a probe that is heard'];
  return hasHead(probe) ? [] : ['Say which number is the still head'];
}

/** The one entry that nobody can guess is asked for by its name. */
function entriesStillToDo(problems: readonly FieldProblem[]): readonly string[] {
  const [first, ...others] = problems;
  if (first === undefined) return [];
  return first.field === 'altitudeM' && others.length === 0
    ? ['Say how high this room lies, under “Air pressure”']
    : ['Mend the marked entries'];
}
