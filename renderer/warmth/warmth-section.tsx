import { useState } from 'react';
import {
  type KeptFerment,
  type KeptWarm,
  say,
  usualWarmthBand,
  type WarmthReport,
} from '#shared-core';
import { Button } from '../design/index.ts';
import { useBench, usePreferences } from '../parts/index.ts';
import { mayCommand } from '../stores/index.ts';
import { KeepForm } from './keep-form.tsx';
import type { useWarmthReport } from './use-warmth-report.ts';
import { warmthDays } from './warmth-days.ts';
import { dayWords, keepingWords, warmthNowWords } from './warmth-words.ts';

interface WarmthSectionProps {
  readonly ferment: KeptFerment;
  /** The ferment that is kept now, this or another. */
  readonly kept: KeptWarm | null;
  readonly watched: ReturnType<typeof useWarmthReport>;
}

/** How warm a ferment is kept: now, day by day, and how to begin or end the watch. */
export function WarmthSection({ ferment, kept, watched }: WarmthSectionProps) {
  const canAct = useBench(mayCommand);
  const decimal = usePreferences((preferences) => preferences.decimal);
  const [isChanging, setChanging] = useState(false);
  const { report, problem, keep, leave } = watched;
  const trouble = problem !== null && (
    <p className="field-problem" role="alert">
      {problem}
    </p>
  );
  if (report === null) return trouble;
  const isKept = kept !== null && kept.fermentId === ferment.fermentId;
  const showsForm = canAct && (!isKept || isChanging);
  return (
    <section aria-label={say('Kept warm')}>
      <h3>{say('Kept warm')}</h3>
      {isKept && (
        <>
          <p role="status">
            {kept.isProbeAtStill
              ? say('The run under way has its probe: the watch goes on when that ends.')
              : warmthNowWords(kept, decimal)}
          </p>
          <p className="small soft">{keepingWords(kept.keeping, decimal)}</p>
          {kept.unsaved !== null && (
            <p className="field-problem" role="alert">
              {say(
                'What is heard of it can’t be put on the disk just now; it waits. Make room, or look for another program that has the runs’ folder.',
              )}
            </p>
          )}
        </>
      )}
      {trouble}
      {isKept && canAct && !isChanging && (
        <div className="ferment-acts">
          <Button onClick={() => setChanging(true)}>{say('Change band or channel')}</Button>
          <Button onClick={() => void leave()}>{say('End the watch')}</Button>
        </div>
      )}
      {showsForm && (
        <KeepForm
          band={report.keeping?.band ?? usualWarmthBand}
          channel={report.keeping?.channel ?? null}
          onKeep={(keeping) => {
            setChanging(false);
            void keep({ fermentId: ferment.fermentId, ...keeping });
          }}
        />
      )}
      <Days report={report} />
    </section>
  );
}

function Days({ report }: { readonly report: WarmthReport }) {
  const decimal = usePreferences((preferences) => preferences.decimal);
  const days = warmthDays(report.stretches, report.keeping?.band ?? usualWarmthBand);
  if (days.length === 0) return null;
  return (
    <dl className="warmth-days">
      {days.map(({ day, tally }) => (
        <div key={day}>
          <dt>{day}</dt>
          <dd>{dayWords(tally, decimal)}</dd>
        </div>
      ))}
    </dl>
  );
}
