import { useId, useState } from 'react';
import { type RunSummary, say } from '#shared-core';
import { FormDialog } from '../design/index.ts';
import { useWindowParts } from '../parts/index.ts';

interface RenameDialogProps {
  readonly run: RunSummary;
  readonly onClose: (hasChanged: boolean) => void;
}

export function RenameDialog({ run, onClose }: RenameDialogProps) {
  const { service, bench } = useWindowParts();
  const id = useId();
  const [name, setName] = useState(run.name);
  const [notes, setNotes] = useState(run.notes);
  const save = async () => {
    const body = { runId: run.runId, name: name.trim(), notes };
    const answer = await service.request('runs/rename', body);
    if (!answer.ok) bench.getState().dispatch({ type: 'problem', problem: answer.error });
    onClose(answer.ok);
  };
  return (
    <FormDialog
      title={say('Name and notes')}
      act={say('Keep')}
      isComplete={name.trim() !== ''}
      onSubmit={() => void save()}
      onClose={() => onClose(false)}
    >
      <div className="field">
        <label className="field-name" htmlFor={`${id}-name`}>
          {say('Name')}
        </label>
        <input
          id={`${id}-name`}
          className="entry"
          maxLength={120}
          value={name}
          onChange={({ target }) => setName(target.value)}
        />
      </div>
      <div className="field">
        <label className="field-name" htmlFor={`${id}-notes`}>
          {say('Notes')}
        </label>
        <textarea
          id={`${id}-notes`}
          className="entry"
          rows={4}
          maxLength={4000}
          value={notes}
          onChange={({ target }) => setNotes(target.value)}
        />
        <p className="small soft">
          {say('The record itself stays as it was; this is kept beside it.')}
        </p>
      </div>
    </FormDialog>
  );
}
