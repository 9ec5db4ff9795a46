import { useState } from 'react';
import { type StatedFerment, say } from '#shared-core';
import { Button, Form } from '../design/index.ts';
import { useNow } from '../parts/index.ts';
import {
  type BeginProblems,
  beginDraft,
  type KnownStatement,
  type PlannedFerment,
  statedFromDraft,
} from './begin-draft.ts';
import { StatedFields } from './stated-fields.tsx';

interface BeginFormProps {
  readonly planned: PlannedFerment | null;
  readonly onBegin: (stated: StatedFerment) => void;
}

/** A new ferment, from its plan or without one. */
export function BeginForm({ planned, onBegin }: BeginFormProps) {
  const [planDraft] = useState(() => beginDraft(planned));
  const [draft, setDraft] = useState(planDraft);
  // The form may stand open while the yeast is made ready: a moment that nobody chose is now, not when the form came up.
  const known: KnownStatement = {
    draft: planDraft,
    sugarG: planned?.sugarG ?? null,
    beganAtIso: new Date(useNow()).toISOString(),
  };
  const [problems, setProblems] = useState<BeginProblems>({});
  const begin = () => {
    const stated = statedFromDraft(draft, known);
    setProblems(stated.ok ? {} : stated.error);
    if (stated.ok) onBegin(stated.value);
  };
  return (
    <Form name={say('Begin a log')} onSubmit={begin}>
      <StatedFields
        draft={draft}
        problems={problems}
        knownSugarG={known.sugarG}
        beganAtIso={known.beganAtIso}
        onDraft={setDraft}
      />
      <div className="ferment-acts">
        <Button type="submit" weight="main">
          {say('Begin the log')}
        </Button>
      </div>
    </Form>
  );
}
