import { useState } from 'react';
import type { RunSummary } from '#shared-core';
import { Button } from '../design/index.ts';
import { PackProgress, usePack } from '../exchange/index.ts';
import { isViewer, mayCommand } from '../stores/index.ts';
import { useBench, usePreferences, useWindowParts } from '../window/use-stores.ts';
import { clockWords, dateWords, durationWords } from '../words/index.ts';
import { useWords } from '../words/use-words.ts';
import { exportRun } from './export-run.ts';
import type { OpenFor } from './open-run.tsx';
import { RenameDialog } from './rename-dialog.tsx';
import { TrashDialog } from './trash-dialog.tsx';

interface RunCardProps {
  readonly run: RunSummary;
  readonly onOpen: (openFor: OpenFor) => void;
  readonly onChanged: () => void;
}

/** One run of the library: what it was, and what can be done with it. */
export function RunCard({ run, onOpen, onChanged }: RunCardProps) {
  const { service, bench } = useWindowParts();
  const canAct = useBench(mayCommand);
  const onlyWatches = useBench(isViewer);
  const format = usePreferences(({ decimal }) => (decimal === ',' ? 'csv-semicolon' : 'csv'));
  const words = useWords();
  const pack = usePack();
  const [dialog, setDialog] = useState<'rename' | 'trash' | null>(null);
  const close = (hasChanged: boolean) => {
    setDialog(null);
    if (hasChanged) onChanged();
  };
  return (
    <li className="run">
      <div>
        <h2 className="run-name">{run.name}</h2>
        <p className="soft number">
          {dateWords(run.startedAtIso)} · {durationWords(run.durationS)}
          {run.rehearsal && ' · rehearsal'}
          {run.imported && ' · imported'}
          {run.ended === 'cut-off' && ' · cut off, saved up to its last second'}
          {run.ended === 'recording' && ' · being recorded'}
        </p>
        <p className="number">
          {run.plateauC === null
            ? 'No plateau reached'
            : `Plateau at ${words.quantity(run.plateauC, 1, '°C')}`}
          {run.heatOffCalledS !== null && ` · heat-off prompt at ${clockWords(run.heatOffCalledS)}`}
        </p>
        {run.damagedRecords > 0 && (
          <p className="run-damage">
            ▲ {run.damagedRecords} damaged records were skipped; the rest is good.
          </p>
        )}
        {run.notes !== '' && <p className="run-notes">{run.notes}</p>}
      </div>
      <div className="run-acts">
        <Button weight="main" onClick={() => onOpen('replay')} aria-label={`Replay ${run.name}`}>
          Replay
        </Button>
        <Button onClick={() => onOpen('guess')} aria-label={`Guess first: ${run.name}`}>
          Guess first
        </Button>
        <Button onClick={() => onOpen('what-if')} aria-label={`What if … for ${run.name}`}>
          What if …
        </Button>
        <Button onClick={() => onOpen('books')} aria-label={`Books of ${run.name}`}>
          Books
        </Button>
        <Button
          onClick={() => void exportRun(service, bench, run.runId, format)}
          aria-label={`Export CSV of ${run.name}`}
        >
          Export CSV
        </Button>
        <Button
          disabled={pack.step !== null}
          onClick={() => void pack.make([run.runId])}
          aria-label={`Export pack of ${run.name}`}
        >
          Export pack
        </Button>
        {!onlyWatches && (
          <>
            <Button
              disabled={!canAct || run.ended === 'recording'}
              onClick={() => setDialog('rename')}
              aria-label={`Name and notes … of ${run.name}`}
            >
              Name and notes …
            </Button>
            <Button
              weight="quiet"
              disabled={!canAct || run.ended === 'recording'}
              onClick={() => setDialog('trash')}
              aria-label={`Remove … ${run.name}`}
            >
              Remove …
            </Button>
          </>
        )}
        {pack.step && <PackProgress step={pack.step} />}
      </div>
      {dialog === 'rename' && <RenameDialog run={run} onClose={close} />}
      {dialog === 'trash' && <TrashDialog run={run} onClose={close} />}
    </li>
  );
}
