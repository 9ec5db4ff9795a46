import { useState } from 'react';
import { type RunSettings, type RunSummary, say } from '#shared-core';
import { FormDialog, TextLine } from '../design/index.ts';
import { useAsked, usePreferences, useWindowParts } from '../parts/index.ts';
import {
  correctionOf,
  nothingStated,
  StatedFields,
  statedDraftOf,
  statedFrom,
} from '../take-in/index.ts';
import { momentIso, momentText, RunRemarks, signs } from '../words/index.ts';

interface CorrectDialogProps {
  readonly run: RunSummary;
  readonly onClose: (hasChanged: boolean) => void;
}

/** Puts right what was said wrongly of a run. The record keeps what was said first, and why it was changed. */
export function CorrectDialog({ run, onClose }: CorrectDialogProps) {
  const { commands } = useWindowParts();
  const decimal = usePreferences((state) => state.decimal);
  const [known, setKnown] = useState<RunSettings | null>(null);
  const [draft, setDraft] = useState(nothingStated);
  const [reason, setReason] = useState('');
  const begun = momentText(run.startedAtIso);
  const [began, setBegan] = useState(begun);
  useAsked('runs/read', { runId: run.runId, fromIndex: 0 }, (answer) => {
    if (!answer.ok) return;
    setKnown(answer.value.settings);
    setDraft(statedDraftOf(answer.value.settings, decimal));
  });
  const stated = known === null ? null : statedFrom(draft, known, decimal);
  const newStart = began === begun ? undefined : (momentIso(began, run.startedAtIso) ?? undefined);
  const correction =
    stated?.ok && known !== null ? correctionOf(stated.value, known, reason, newStart) : null;
  const save = async () => {
    if (correction === null) return;
    onClose((await commands.ask('runs/correct', { runId: run.runId, correction })) !== null);
  };
  return (
    <FormDialog
      title={say('Correct charge and pressure')}
      act={say('Correct')}
      isComplete={correction !== null}
      onSubmit={() => void save()}
      onClose={() => onClose(false)}
    >
      <RunRemarks run={run} />
      {(known?.charge.assumed ?? []).map((part) => (
        <p key={part} className="small">
          {signs.toDo}{' '}
          {part === 'volume'
            ? say('The volume was only assumed: write what was measured, or how well it is known.')
            : say(
                'The strength was only assumed: write what was measured, or how well it is known.',
              )}
        </p>
      ))}
      <StatedFields
        draft={draft}
        problems={stated !== null && !stated.ok ? stated.error : {}}
        onDraft={setDraft}
      />
      {run.imported === true && (
        <TextLine name={say('Began')} type="datetime-local" text={began} onText={setBegan} />
      )}
      <TextLine
        name={say('Reason')}
        maxLength={500}
        hint={say(
          'The record itself stays as it was; books, replay and reports take what is right.',
        )}
        text={reason}
        onText={setReason}
      />
    </FormDialog>
  );
}
