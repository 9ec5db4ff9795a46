import type { RunSummary } from '#shared-core';
import {
  clockWords,
  dateWords,
  durationWords,
  signs,
  unreadableWords,
  useWords,
} from '../words/index.ts';

/** What a run of the library was, in a few lines. */
export function RunLines({ run }: { readonly run: RunSummary }) {
  const words = useWords();
  if (run.unreadable !== null) {
    return (
      <>
        <h2 className="run-name">{run.name}</h2>
        <p className="soft number">{dateWords(run.startedAtIso)}</p>
        <p className="run-damage">
          {signs.problem} {unreadableWords(run.unreadable, run.runId)}
        </p>
      </>
    );
  }
  // Taken in without times: neither a duration nor a plateau could be told of it.
  const isTable = run.imported === true && run.durationS === 0;
  return (
    <>
      <h2 className="run-name">{run.name}</h2>
      <p className="soft number">
        {dateWords(run.startedAtIso)} ·{' '}
        {isTable ? 'a table by volume, without times' : durationWords(run.durationS)}
        {run.rehearsal && ' · rehearsal'}
        {run.imported && ' · imported'}
        {run.ended === 'cut-off' && ' · cut off, saved up to its last second'}
        {run.ended === 'recording' && ' · being recorded'}
      </p>
      {!isTable && (
        <p className="number">
          {run.plateauC === null
            ? 'No plateau'
            : `Plateau at ${words.quantity(run.plateauC, 1, '°C')}`}
          {run.heatOffCalledS !== null && ` · heat-off prompt at ${clockWords(run.heatOffCalledS)}`}
        </p>
      )}
      {run.damagedRecords > 0 && (
        <p className="run-damage">
          {signs.problem} {damageWords(run.damagedRecords)}; the rest is good.
        </p>
      )}
      {run.notes !== '' && <p className="run-notes">{run.notes}</p>}
    </>
  );
}

function damageWords(records: number): string {
  return records === 1 ? '1 damaged record was skipped' : `${records} damaged records were skipped`;
}
