import { useState } from 'react';
import { type RunSummary, say } from '#shared-core';
import { FormDialog, TextBlock, TextLine } from '../design/index.ts';
import { useWindowParts } from '../parts/index.ts';

interface RenameDialogProps {
  readonly run: RunSummary;
  readonly onClose: (hasChanged: boolean) => void;
}

export function RenameDialog({ run, onClose }: RenameDialogProps) {
  const { commands } = useWindowParts();
  const [name, setName] = useState(run.name);
  const [notes, setNotes] = useState(run.notes);
  const save = async () => {
    const body = { runId: run.runId, name: name.trim(), notes };
    onClose((await commands.ask('runs/rename', body)) !== null);
  };
  return (
    <FormDialog
      title={say('Name and notes')}
      act={say('Keep')}
      isComplete={name.trim() !== ''}
      onSubmit={() => void save()}
      onClose={() => onClose(false)}
    >
      <TextLine name={say('Name')} maxLength={120} text={name} onText={setName} />
      <TextBlock
        name={say('Notes')}
        rows={4}
        maxLength={4000}
        hint={say('The record itself stays as it was; this is kept beside it.')}
        text={notes}
        onText={setNotes}
      />
    </FormDialog>
  );
}
