import { useMemo, useState } from 'react';
import { booksOfRun, cutsOfRun, type Mark, type MarkBody, type RunSummary } from '#shared-core';
import { Button } from '../design/index.ts';
import type { Film } from '../look-back/film.ts';
import { MeasureForm } from '../measure/index.ts';
import { isViewer, mayCommand } from '../stores/index.ts';
import { useBench, useWindowParts } from '../window/use-stores.ts';
import { BooksTables } from './books-tables.tsx';
import { MeasurementList } from './measurement-list.tsx';
import { SugarForm } from './sugar-form.tsx';

interface BooksOfRunProps {
  readonly film: Film;
  readonly summary: RunSummary;
  readonly lateMarks: readonly Mark[];
  readonly onClose: () => void;
}

/** The bookkeeping of a run: what was measured of each liquid, more of it now, and what the balance says. */
export function BooksOfRun({ film, summary, lateMarks, onClose }: BooksOfRunProps) {
  const { service, bench } = useWindowParts();
  const canAct = useBench(mayCommand) && summary.ended !== 'recording';
  const onlyWatches = useBench(isViewer);
  const [late, setLate] = useState(lateMarks);
  const { settings, inputs, endS, verdicts } = film;
  const all = useMemo(() => [...inputs, ...late], [inputs, late]);
  const books = useMemo(
    () => booksOfRun({ settings, inputs: all, verdicts, endS }),
    [settings, all, verdicts, endS],
  );
  const receivers = useMemo(
    () =>
      Math.max(
        1,
        cutsOfRun({ inputs, endS }).length,
        inputs.filter(({ kind, ...input }) => kind === 'mark' && isReceiverChange(input)).length +
          1,
      ),
    [inputs, endS],
  );
  const book = async (mark: MarkBody) => {
    const answer = await service.request('runs/book', { runId: summary.runId, mark });
    if (answer.ok) {
      const { markId } = answer.value;
      setLate((marks) => [...marks, { kind: 'mark', timeS: endS, markId, mark }]);
    } else bench.getState().dispatch({ type: 'problem', problem: answer.error });
  };
  return (
    <main className="place books" id="place">
      <div className="books-head">
        <h1>Books of “{summary.name}”</h1>
        <Button onClick={onClose}>Back to the library</Button>
      </div>
      <div className="books-columns">
        <section aria-labelledby="measurements">
          <h2 id="measurements">Measurements</h2>
          <MeasurementList
            inputs={all}
            canAct={canAct}
            onlyWatches={onlyWatches}
            onWithdraw={(withdrawnMarkId) => book({ type: 'mark-withdrawn', withdrawnMarkId })}
          />
          {!onlyWatches && (
            <>
              <h3>Add one</h3>
              <MeasureForm cuts={receivers} canAct={canAct} onMark={(mark) => void book(mark)} />
              <SugarForm canAct={canAct} onMark={(mark) => void book(mark)} />
            </>
          )}
        </section>
        <section aria-labelledby="balance">
          <h2 id="balance">Balance</h2>
          <BooksTables books={books} />
        </section>
      </div>
    </main>
  );
}

function isReceiverChange(input: object): boolean {
  return 'mark' in input && (input.mark as MarkBody).type === 'receiver-changed';
}
