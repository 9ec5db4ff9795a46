import { type RunPlan, say } from '#shared-core';
import { PlannedLesson } from '../lesson/index.ts';
import { LessonScriptButton } from '../lesson-script/index.ts';
import { useBench } from '../parts/index.ts';
import { isRunUnderWay } from '../stores/index.ts';
import { AssumedCharge } from './assumed-charge.tsx';
import { Expectation } from './expectation.tsx';

/** What the head should show and when: beside every step, since each entry changes it. */
export function ExpectPanel({ plan }: { readonly plan: RunPlan | null }) {
  const isRecording = useBench(isRunUnderWay);
  return (
    <aside className="expect-panel" aria-label={say('What to expect')}>
      <h2>{say('What to expect')}</h2>
      <Expectation />
      {!isRecording && <AssumedCharge where="expectation" />}
      {!isRecording && <PlannedLesson plan={plan} />}
      <LessonScriptButton />
    </aside>
  );
}
