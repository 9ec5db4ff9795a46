import { type StatedFerment, say } from '#shared-core';
import { fieldsOf, NumberField, TextLine } from '../design/index.ts';
import { usePreferences } from '../parts/index.ts';
import { momentText, rangeWords } from '../words/index.ts';
import type { BeginDraft, BeginProblems } from './begin-draft.ts';

interface StatedFieldsProps {
  readonly draft: BeginDraft;
  readonly problems: BeginProblems;
  /** Sugar that is known without the field; null where the field alone tells it. */
  readonly knownSugarG: StatedFerment['sugarG'];
  /** Stands in the field of the beginning while that is left to the clock. */
  readonly beganAtIso: string;
  readonly onDraft: (draft: BeginDraft) => void;
}

/** What is stated of a ferment: its name and beginning, how much it is, and what went in. */
export function StatedFields({
  draft,
  problems,
  knownSugarG,
  beganAtIso,
  onDraft,
}: StatedFieldsProps) {
  const decimal = usePreferences((preferences) => preferences.decimal);
  const field = fieldsOf(draft, onDraft, problems);
  return (
    <div className="prepare-fields">
      <TextLine name={say('Name of the ferment')} maxLength={120} {...field('name')} />
      <TextLine
        type="datetime-local"
        name={say('The yeast went in')}
        text={draft.began ?? momentText(beganAtIso)}
        problem={problems.began}
        onText={(began) => onDraft({ ...draft, began })}
      />
      <NumberField name={say('Volume of the ferment')} unit="mL" {...field('volumeMl')} />
      <NumberField
        name={say('Table sugar, if that is all its sugar')}
        unit="g"
        hint={
          knownSugarG === null
            ? say('Empty where the sugar is a fruit’s: the gravity tells it.')
            : say('Empty leaves what is known, as grape sugar: {sugarG}.', {
                sugarG: rangeWords(knownSugarG, 0, 'g', decimal),
              })
        }
        {...field('tableSugarG')}
      />
      <div className="field-wide">
        <TextLine name={say('What went in')} maxLength={400} {...field('wentIn')} />
      </div>
    </div>
  );
}
