import { useState } from 'react';
import type { ProbeStatus, RunSettings } from '#shared-core';
import { Button } from '../design/index.ts';
import { goTo } from '../window/place.ts';
import { useBench, useWindowParts } from '../window/use-stores.ts';
import { Expectation } from './expectation.tsx';
import { safetyChecks } from './safety-checks.ts';
import { useDraftFields } from './use-draft-fields.ts';

/** What to expect, what is still missing, and the start. */
export function StartPanel({ canAct }: { readonly canAct: boolean }) {
  const { commands } = useWindowParts();
  const probe = useBench((bench) => bench.probe);
  const isRecording = useBench((bench) => bench.recording?.state === 'recording');
  const { draft, settings } = useDraftFields();
  const [isStarting, setStarting] = useState(false);
  const missing = whatIsMissing(settings.ok, probe, draft.confirms.length);
  const start = async (ready: RunSettings) => {
    setStarting(true);
    const isUnderWay = await commands.start(ready);
    setStarting(false);
    if (isUnderWay) goTo('watch');
  };
  return (
    <aside className="start-panel" aria-label="What to expect, and start">
      <h2>What to expect</h2>
      <Expectation />
      {isRecording ? (
        <Button weight="main" size="large" onClick={() => goTo('watch')}>
          Watch the run under way
        </Button>
      ) : (
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
  isFormGood: boolean,
  probe: ProbeStatus | null,
  confirmed: number,
): readonly string[] {
  const isRehearsal = probe?.source?.kind === 'demo';
  const left = safetyChecks.length - confirmed;
  return [
    ...(isFormGood ? [] : ['Mend the marked entries']),
    ...(probe?.state === 'hearing' ? [] : ['Connect a probe that is heard']),
    ...(isRehearsal || left <= 0 ? [] : [`Confirm ${left} more before heat`]),
  ];
}
