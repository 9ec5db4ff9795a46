import { useState } from 'react';
import { type StatedFerment, say } from '#shared-core';
import { Button, NumberField, TextLine } from '../design/index.ts';
import { usePreferences } from '../parts/index.ts';
import { rangeWords } from '../words/index.ts';
import {
  type BeginDraft,
  type BeginProblems,
  beginDraft,
  type PlannedFerment,
  statedFromDraft,
} from './begin-draft.ts';

interface BeginFormProps {
  readonly planned: PlannedFerment | null;
  readonly onBegin: (stated: StatedFerment) => void;
}

/** A new ferment, from its plan or without one. */
export function BeginForm({ planned, onBegin }: BeginFormProps) {
  const decimal = usePreferences((preferences) => preferences.decimal);
  const [draft, setDraft] = useState<BeginDraft>(() => beginDraft(planned, new Date()));
  const [problems, setProblems] = useState<BeginProblems>({});
  const field = (name: keyof BeginDraft) => ({
    text: draft[name],
    onText: (text: string) => setDraft({ ...draft, [name]: text }),
    problem: problems[name],
  });
  const begin = () => {
    const stated = statedFromDraft(draft, planned);
    setProblems(stated.ok ? {} : stated.error);
    if (stated.ok) onBegin(stated.value);
  };
  return (
    <form
      className="dialog-form"
      aria-label={say('Begin a log')}
      onSubmit={(event) => {
        event.preventDefault();
        begin();
      }}
    >
      <div className="prepare-fields">
        <TextLine name={say('Name of the ferment')} maxLength={120} {...field('name')} />
        <TextLine type="datetime-local" name={say('The yeast went in')} {...field('began')} />
        <NumberField name={say('Volume of the ferment')} unit="mL" {...field('volumeMl')} />
        {planned?.sugarG ? (
          <p className="small soft">
            {say('Sugar by the plan, as grape sugar: {sugarG}.', {
              sugarG: rangeWords(planned.sugarG, 0, 'g', decimal),
            })}
          </p>
        ) : (
          <NumberField
            name={say('Table sugar, if that is all its sugar')}
            unit="g"
            hint={say('Empty where the sugar is a fruit’s: the gravity tells it.')}
            {...field('tableSugarG')}
          />
        )}
        <div className="field-wide">
          <TextLine name={say('What went in')} maxLength={400} {...field('wentIn')} />
        </div>
      </div>
      <div className="ferment-acts">
        <Button weight="main" onClick={begin}>
          {say('Begin the log')}
        </Button>
      </div>
    </form>
  );
}
