import { useState } from 'react';
import { type StatedFerment, say } from '#shared-core';
import { Button, Form, TextLine } from '../design/index.ts';
import { usePreferences } from '../parts/index.ts';
import { type BeginProblems, draftOfStated, statedFromDraft } from './begin-draft.ts';
import { StatedFields } from './stated-fields.tsx';

interface CorrectFormProps {
  readonly stated: StatedFerment;
  /** Answers whether it was kept; only then the form is closed. */
  readonly onCorrect: (stated: StatedFerment, reason: string) => Promise<boolean>;
  readonly onClose: () => void;
}

/** Puts right what was stated of a ferment: the sugar that nobody knew as it began, a volume misread. */
export function CorrectForm({ stated, onCorrect, onClose }: CorrectFormProps) {
  const decimal = usePreferences((preferences) => preferences.decimal);
  const [known] = useState(() => draftOfStated(stated, decimal));
  const [draft, setDraft] = useState(known);
  const [reason, setReason] = useState('');
  const [problems, setProblems] = useState<BeginProblems & { readonly reason?: string }>({});
  const { sugarG, beganAtIso } = stated;
  const correct = async () => {
    const read = statedFromDraft(draft, { draft: known, sugarG, beganAtIso });
    const isReasonMissing = reason.trim() === '';
    setProblems({
      ...(read.ok ? {} : read.error),
      ...(isReasonMissing && { reason: say('A reason, please.') }),
    });
    if (!read.ok || isReasonMissing) return;
    if (await onCorrect(read.value, reason.trim())) onClose();
  };
  return (
    <Form name={say('Correct what was stated')} onSubmit={() => void correct()}>
      <StatedFields
        draft={draft}
        problems={problems}
        knownSugarG={known.tableSugarG === '' ? sugarG : null}
        beganAtIso={beganAtIso}
        onDraft={setDraft}
      />
      <TextLine
        name={say('Reason')}
        maxLength={400}
        text={reason}
        problem={problems.reason}
        onText={setReason}
      />
      <div className="ferment-acts">
        <Button onClick={onClose}>{say('Cancel')}</Button>
        <Button type="submit" weight="main">
          {say('Correct')}
        </Button>
      </div>
    </Form>
  );
}
