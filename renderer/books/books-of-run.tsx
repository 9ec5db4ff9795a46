import { useMemo } from 'react';
import { booksOfRun, type Mark, type RunSummary, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { MeasureForm } from '../measure/index.ts';
import { useBench } from '../parts/index.ts';
import type { Film } from '../replay/index.ts';
import { isViewer, mayCommand } from '../stores/index.ts';
import { RunRemarks } from '../words/index.ts';
import { BooksTables } from './books-tables.tsx';
import { MeasurementList } from './measurement-list.tsx';
import { measurementsIn } from './measurements-in.ts';
import { receiverCount } from './receiver-count.ts';
import { SugarForm } from './sugar-form.tsx';
import { useLateMarks } from './use-late-marks.ts';

interface BooksOfRunProps {
  readonly film: Film;
  readonly summary: RunSummary;
  readonly lateMarks: readonly Mark[];
  /** Where closing them leads, as its button has it. */
  readonly closeWords: string;
  readonly onClose: () => void;
}

/** The bookkeeping of a run: what was measured of each liquid, more of it now, and what the balance says. */
export function BooksOfRun({ film, summary, lateMarks, closeWords, onClose }: BooksOfRunProps) {
  const canAct = useBench(mayCommand) && summary.ended !== 'recording';
  const onlyWatches = useBench(isViewer);
  const { settings, inputs, endS, verdicts } = film;
  const { late, book } = useLateMarks(summary.runId, endS, lateMarks);
  const all = useMemo(() => [...inputs, ...late], [inputs, late]);
  const books = useMemo(
    () => booksOfRun({ settings, inputs: all, verdicts, endS }),
    [settings, all, verdicts, endS],
  );
  const measured = useMemo(() => measurementsIn(all), [all]);
  const receivers = useMemo(() => receiverCount(inputs, endS), [inputs, endS]);
  return (
    <main className="place books" id="place">
      <div className="books-head">
        <h1>{say('Books of “{name}”', { name: summary.name })}</h1>
        <Button onClick={onClose}>{closeWords}</Button>
      </div>
      <RunRemarks run={summary} />
      <div className="books-columns">
        <section aria-labelledby="measurements">
          <h2 id="measurements">{say('Measurements')}</h2>
          <MeasurementList
            marks={measured}
            whenNone={say(
              'None yet. For a balance measure how much residue is in the pot and how strong it is, and the same of each cut.',
            )}
            canAct={canAct}
            onlyWatches={onlyWatches}
            onWithdraw={(withdrawnMarkId) => book({ type: 'mark-withdrawn', withdrawnMarkId })}
          />
          {measured.length > 0 && (
            <p className="small soft">
              {say('± here as it was entered, k = 1; in the tables k = 2.')}
            </p>
          )}
          {!onlyWatches && (
            <div className="not-on-paper">
              <h3>{say('Add one')}</h3>
              <MeasureForm
                chargeMl={settings.charge.volumeMl}
                cuts={receivers}
                canAct={canAct}
                onMark={(mark) => void book(mark)}
              />
              <SugarForm canAct={canAct} onMark={(mark) => void book(mark)} />
            </div>
          )}
        </section>
        <section aria-labelledby="balance">
          <h2 id="balance">{say('Mass balance')}</h2>
          <BooksTables books={books} />
        </section>
      </div>
    </main>
  );
}
