import { useState } from 'react';
import { type RunSummary, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { TrashDialog } from './trash-dialog.tsx';
import { useMayChange } from './use-may-change.ts';

interface RemoveButtonProps {
  readonly run: RunSummary;
  readonly onRemoved: () => void;
}

/** Takes a run out of the library, after asking. */
export function RemoveButton({ run, onRemoved }: RemoveButtonProps) {
  const mayChange = useMayChange(run);
  const [isAsking, setAsking] = useState(false);
  return (
    <>
      <Button
        weight="quiet"
        disabled={!mayChange}
        onClick={() => setAsking(true)}
        aria-label={say('Remove … {name}', { name: run.name })}
      >
        {say('Remove …')}
      </Button>
      {isAsking && (
        <TrashDialog
          run={run}
          onClose={(hasChanged) => {
            setAsking(false);
            if (hasChanged) onRemoved();
          }}
        />
      )}
    </>
  );
}
