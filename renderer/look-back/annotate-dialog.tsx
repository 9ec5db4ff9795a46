import { useId, useState } from 'react';
import { type RunSummary, say } from '#shared-core';
import { FormDialog } from '../design/index.ts';
import { useWindowParts } from '../parts/index.ts';
import { clockWords } from '../words/index.ts';
import { withAnnotation } from './annotations.ts';

interface AnnotateDialogProps {
  readonly summary: RunSummary;
  readonly timeS: number;
  readonly onKept: (summary: RunSummary) => void;
  readonly onClose: () => void;
}

/** Writes beside a moment of the run. The record stays as it was; the words go into the run's notes. */
export function AnnotateDialog({ summary, timeS, onKept, onClose }: AnnotateDialogProps) {
  const { service, bench } = useWindowParts();
  const id = useId();
  const [text, setText] = useState('');
  const keep = async () => {
    const { runId, name, notes } = summary;
    const body = { runId, name, notes: withAnnotation(notes, { timeS, text }) };
    const answer = await service.request('runs/rename', body);
    if (answer.ok) onKept(answer.value);
    else bench.getState().dispatch({ type: 'problem', problem: answer.error });
    onClose();
  };
  return (
    <FormDialog
      title={say('Annotate {time}', { time: clockWords(timeS) })}
      act={say('Keep annotation')}
      isComplete={text.trim() !== ''}
      onSubmit={() => void keep()}
      onClose={onClose}
    >
      <div className="field">
        <label className="field-name" htmlFor={id}>
          {say('What happens here?')}
        </label>
        <input
          id={id}
          className="entry"
          maxLength={400}
          value={text}
          onChange={({ target }) => setText(target.value)}
        />
      </div>
    </FormDialog>
  );
}
