import { useState } from 'react';
import { type RunSettings, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { assumedBesideCharge, assumedOfCharge, useDraftFields } from '../draft/index.ts';
import { goTo, useWindowParts } from '../parts/index.ts';
import { firstDraft, type PrepareDraft } from '../stores/index.ts';
import { ToBeRecorded } from './to-be-recorded.tsx';
import { ToDoList } from './to-do-list.tsx';
import { useRigs } from './use-rigs.ts';
import { useToDo } from './use-to-do.ts';

/** Checks, charge and today's pressure were stated for one run; the next one needs its own. */
const nextRun = (draft: PrepareDraft) =>
  ({
    confirms: [],
    assumed: [...assumedOfCharge(firstDraft), ...assumedBesideCharge(draft)],
    ferment: null,
    stationPressure: '',
    seaLevelPressure: '',
    steamReading: '',
    steamTaken: null,
  }) as const satisfies Partial<PrepareDraft>;

/** The end of the last step: what is still missing in any of them, what will be recorded, and the start. */
export function StartPanel({ canAct }: { readonly canAct: boolean }) {
  const { commands } = useWindowParts();
  const { draft, change, settings } = useDraftFields();
  const [isStarting, setStarting] = useState(false);
  const { keep } = useRigs();
  const missing = useToDo();
  const start = async (ready: RunSettings) => {
    setStarting(true);
    const isUnderWay = await commands.start(ready);
    setStarting(false);
    if (!isUnderWay) return;
    void keep(null);
    change(nextRun(draft));
    goTo('watch');
  };
  return (
    <section className="start-panel" aria-label={say('Start')}>
      <Button
        weight="main"
        size="large"
        disabled={!canAct || isStarting || missing.length > 0 || !settings.ok}
        onClick={() => settings.ok && void start(settings.value)}
      >
        {say('Start the run')}
      </Button>
      <ToDoList name={say('Still to do')} toDo={missing} />
      <ToBeRecorded />
    </section>
  );
}
