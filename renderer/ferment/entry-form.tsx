import { useState } from 'react';
import { type FermentRead, fermentReadSchema, say } from '#shared-core';
import { Button, Form, fieldsOf, NumberField, TextLine } from '../design/index.ts';
import { useNow, usePreferences } from '../parts/index.ts';
import { momentText, numberWords } from '../words/index.ts';
import { type EntryDraft, type EntryProblems, emptyEntry, readFromDraft } from './entry-draft.ts';
import { treatmentWords } from './ferment-words.ts';
import { TapCounter } from './tap-counter.tsx';

interface EntryFormProps {
  /** Answers whether it was kept; only then the form is emptied. */
  readonly onEnter: (read: FermentRead) => Promise<boolean>;
}

/** What was read at one moment; every field but the moment may stay empty. */
export function EntryForm({ onEnter }: EntryFormProps) {
  const decimal = usePreferences((preferences) => preferences.decimal);
  const [draft, setDraft] = useState(emptyEntry);
  const [problems, setProblems] = useState<EntryProblems>({});
  const change = (part: Partial<EntryDraft>) => setDraft((known) => ({ ...known, ...part }));
  // A log stays open for days beside a ferment: a moment that nobody chose is now, not when the form came up.
  const now = new Date(useNow());
  const field = fieldsOf(draft, setDraft, problems);
  const enter = async () => {
    const read = readFromDraft(draft, now, decimal);
    setProblems(read.ok ? {} : read.error);
    if (read.ok && (await onEnter(read.value))) setDraft(emptyEntry);
  };
  return (
    <Form name={say('Enter what you read')} onSubmit={() => void enter()}>
      <div className="prepare-fields">
        <TextLine
          type="datetime-local"
          name={say('When')}
          text={draft.at ?? momentText(now)}
          problem={problems.at}
          onText={(at) => change({ at })}
        />
        <NumberField
          name={say('Gravity, as the hydrometer shows it')}
          unit=""
          {...field('gravity')}
        />
        <NumberField
          name={say('Temperature in its jar')}
          unit="°C"
          hint={say('The hydrometer’s 20 °C is allowed for.')}
          {...field('gravityTemperatureC')}
        />
        <NumberField
          name={say('Temperature of the ferment')}
          unit="°C"
          {...field('temperatureC')}
        />
        <NumberField
          name={say('Mass of the vessel')}
          unit="g"
          hint={say('With the same things on the balance each time.')}
          {...field('massG')}
        />
        <NumberField name={say('Bubbles a minute')} unit="/min" {...field('bubblesPerMin')} />
        <TapCounter
          onRate={(perMin) =>
            change({ bubblesPerMin: numberWords(perMin, perMin < 10 ? 1 : 0, decimal) })
          }
        />
        <NumberField name="pH" unit="" {...field('ph')} />
        <NumberField
          name={say('Refractometer')}
          unit="%"
          hint={say('Alcohol falsifies it: only together with a gravity.')}
          {...field('refractometerPercent')}
        />
        <Treatments chosen={draft.treatments} onChosen={(treatments) => change({ treatments })} />
        <div className="field-wide">
          <TextLine name={say('Note')} maxLength={400} {...field('note')} />
        </div>
      </div>
      {problems.form !== undefined && <p className="field-problem">{problems.form}</p>}
      <div className="ferment-acts">
        <Button type="submit" weight="main">
          {say('Keep this entry')}
        </Button>
      </div>
    </Form>
  );
}

interface TreatmentsProps {
  readonly chosen: EntryDraft['treatments'];
  readonly onChosen: (chosen: EntryDraft['treatments']) => void;
}

function Treatments({ chosen, onChosen }: TreatmentsProps) {
  return (
    <fieldset className="field">
      <legend className="field-name">{say('Done before this reading')}</legend>
      <div className="choices">
        {fermentReadSchema.shape.treatments.element.options.map((treatment) => (
          <label key={treatment} className="choice">
            <input
              type="checkbox"
              checked={chosen.includes(treatment)}
              onChange={({ target }) =>
                onChosen(
                  target.checked
                    ? [...chosen, treatment]
                    : chosen.filter((other) => other !== treatment),
                )
              }
            />
            {treatmentWords(treatment)}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
