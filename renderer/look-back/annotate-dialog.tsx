import { useState } from 'react';
import { type RunSummary, say } from '#shared-core';
import { FormDialog, TextLine } from '../design/index.ts';
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
  const { commands } = useWindowParts();
  const [text, setText] = useState('');
  const keep = async () => {
    const { runId, name, notes } = summary;
    const body = { runId, name, notes: withAnnotation(notes, { timeS, text }) };
    const kept = await commands.ask('runs/rename', body);
    if (kept !== null) onKept(kept);
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
      <TextLine name={say('What happens here?')} maxLength={400} text={text} onText={setText} />
    </FormDialog>
  );
}
