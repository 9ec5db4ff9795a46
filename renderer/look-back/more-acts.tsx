import { useState } from 'react';
import { type RunSummary, say } from '#shared-core';
import { Button } from '../design/index.ts';
import type { PackMaking } from '../exchange/index.ts';
import { exportRun } from '../exchange/index.ts';
import { useBench, usePreferences, useWindowParts } from '../parts/index.ts';
import { RenameDialog } from '../replay/index.ts';
import { isViewer } from '../stores/index.ts';
import { CorrectDialog } from './correct-dialog.tsx';
import type { OpenFor } from './open-run.tsx';
import { RemoveButton } from './remove-button.tsx';
import { useMayChange } from './use-may-change.ts';

interface MoreActsProps {
  readonly id: string;
  readonly run: RunSummary;
  readonly pack: PackMaking;
  readonly onOpen: (openFor: OpenFor) => void;
  readonly onChanged: () => void;
}

/** What is done with a run now and then. */
export function MoreActs({ id, run, pack, onOpen, onChanged }: MoreActsProps) {
  const { service, bench } = useWindowParts();
  const onlyWatches = useBench(isViewer);
  const mayChange = useMayChange(run);
  const format = usePreferences(({ decimal }) => (decimal === ',' ? 'csv-semicolon' : 'csv'));
  const [isRenaming, setRenaming] = useState(false);
  const [isCorrecting, setCorrecting] = useState(false);
  return (
    <div id={id} className="run-more">
      <Button
        onClick={() => onOpen('books')}
        aria-label={say('Books of {name}', { name: run.name })}
      >
        {say('Books')}
      </Button>
      <Button
        onClick={() => onOpen('by-volume')}
        aria-label={say('Against volume: {name}', { name: run.name })}
      >
        {say('Against volume')}
      </Button>
      <Button
        onClick={() => onOpen('proof')}
        aria-label={say('Prove by burning … for {name}', { name: run.name })}
      >
        {say('Prove by burning …')}
      </Button>
      <Button
        onClick={() => onOpen('what-if')}
        aria-label={say('What if … for {name}', { name: run.name })}
      >
        {say('What if …')}
      </Button>
      <Button
        onClick={() => void exportRun(service, bench, run.runId, format)}
        aria-label={say('Export CSV of {name}', { name: run.name })}
      >
        {say('Export CSV')}
      </Button>
      <Button
        disabled={pack.step !== null}
        onClick={() => void pack.make([run.runId])}
        aria-label={say('Export pack of {name}', { name: run.name })}
      >
        {say('Export pack')}
      </Button>
      {!onlyWatches && (
        <>
          <Button
            disabled={!mayChange}
            onClick={() => setRenaming(true)}
            aria-label={say('Name and notes … of {name}', { name: run.name })}
          >
            {say('Name and notes …')}
          </Button>
          <Button
            disabled={!mayChange}
            onClick={() => setCorrecting(true)}
            aria-label={say('Correct charge and pressure … of {name}', { name: run.name })}
          >
            {say('Correct charge …')}
          </Button>
          <RemoveButton run={run} onRemoved={onChanged} />
        </>
      )}
      {isCorrecting && (
        <CorrectDialog
          run={run}
          onClose={(hasChanged) => {
            setCorrecting(false);
            if (hasChanged) onChanged();
          }}
        />
      )}
      {isRenaming && (
        <RenameDialog
          run={run}
          onClose={(hasChanged) => {
            setRenaming(false);
            if (hasChanged) onChanged();
          }}
        />
      )}
    </div>
  );
}
