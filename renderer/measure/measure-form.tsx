import { useState } from 'react';
import { type MarkBody, say } from '#shared-core';
import { Button, Form, NumberField, SelectField } from '../design/index.ts';
import { usePreferences } from '../parts/index.ts';
import { beyondChargeWords, liquidWords } from '../words/index.ts';
import {
  assumedUncertainty,
  type DraftProblems,
  fieldBeyondCharge,
  fieldLooks,
  type Instrument,
  instrumentLooks,
  instruments,
  type MeasureDraft,
  type MeasureField,
  markFromDraft,
  scaleNames,
  type UncertaintyField,
  uncertaintyLooks,
  withInstrument,
} from './measure-draft.ts';
import { StrengthSoFar } from './strength-so-far.tsx';

interface MeasureFormProps {
  /** How many receivers there were so far; each is a liquid that may be measured. */
  readonly cuts: number;
  /** What went into the pot: nothing that is measured can be more. */
  readonly chargeMl: number;
  readonly canAct: boolean;
  readonly onMark: (mark: MarkBody) => void;
  readonly onCancel?: () => void;
}

const scaleOptions = (['', 'volume', 'mass', 'sugar'] as const).map((value) => ({
  value,
  label: scaleNames[value],
}));

/** One measurement of one liquid: what, with which instrument, and the numbers read. */
export function MeasureForm({ cuts, chargeMl, canAct, onMark, onCancel }: MeasureFormProps) {
  const [draft, setDraft] = useState<MeasureDraft>({
    liquid: 'residue',
    instrument: 'cylinder',
    texts: {},
  });
  const decimal = usePreferences((preferences) => preferences.decimal);
  const written = (value: number) => String(value).replace('.', decimal);
  const [problems, setProblems] = useState<DraftProblems>({});
  const [doubted, setDoubted] = useState<MeasureDraft>();
  const liquids = [
    'residue',
    ...Array.from({ length: Math.max(1, cuts) }, (_, index) => `cut-${index + 1}`),
    'hold-up',
  ];
  const { fields, finds, uncertainties } = instrumentLooks[draft.instrument];
  const mark = markFromDraft(draft);
  const change = (changes: Partial<MeasureDraft>) => {
    setDraft({ ...draft, ...changes });
    setProblems({});
  };
  const type = (field: MeasureField | UncertaintyField, text: string) =>
    change({ texts: { ...draft.texts, [field]: text } });
  return (
    <Form
      className="measure-form"
      onSubmit={() => {
        if (!mark.ok) return setProblems(mark.error);
        const beyond = fieldBeyondCharge(mark.value, chargeMl);
        if (beyond !== null && doubted !== draft) {
          setDoubted(draft);
          return setProblems({ [beyond]: beyondChargeWords(chargeMl, fieldLooks[beyond].unit) });
        }
        onMark(mark.value);
        setDraft({ ...draft, texts: {} });
      }}
    >
      <div className="measure-choice">
        <SelectField
          name={say('Liquid')}
          options={liquids.map((value) => ({ value, label: liquidWords(value) }))}
          value={draft.liquid}
          onValue={(liquid) => change({ liquid })}
        />
        <SelectField<Instrument>
          name={say('Measured with')}
          options={instruments.map((value) => ({ value, label: instrumentLooks[value].name }))}
          value={draft.instrument}
          onValue={(instrument) => change(withInstrument(draft, instrument))}
        />
      </div>
      {draft.instrument === 'refractometer' && (
        <>
          <SelectField
            name={say('Its scale shows')}
            options={scaleOptions}
            value={draft.scale ?? ''}
            onValue={(scale) => change({ scale })}
          />
          {problems.scale !== undefined && <p className="field-problem">{problems.scale}</p>}
        </>
      )}
      <p className="small soft">{say('Finds {finds}.', { finds })}</p>
      <div className="measure-fields">
        {fields.map((field) => {
          const { name, unit, isOptional } = fieldLooks[field];
          return (
            <NumberField
              key={field}
              name={isOptional ? say('{name} (may stay empty)', { name }) : name}
              unit={unit}
              text={draft.texts[field] ?? ''}
              onText={(text) => type(field, text)}
              problem={problems[field]}
            />
          );
        })}
      </div>
      <fieldset className="measure-doubts">
        <legend className="small soft">
          {say('Standard uncertainty (k = 1). As shown unless you type another.')}
        </legend>
        <div className="measure-fields">
          {uncertainties.map((field) => {
            const { name, unit } = uncertaintyLooks[field];
            return (
              <NumberField
                key={field}
                name={name}
                unit={unit}
                text={draft.texts[field] ?? written(assumedUncertainty(draft, field))}
                onText={(text) => type(field, text)}
                problem={problems[field]}
              />
            );
          })}
        </div>
      </fieldset>
      <StrengthSoFar mark={mark.ok ? mark.value : null} />
      <div className="dialog-acts">
        {onCancel && <Button onClick={onCancel}>{say('Cancel')}</Button>}
        <Button type="submit" weight="main" disabled={!canAct}>
          {say('Keep measurement')}
        </Button>
      </div>
    </Form>
  );
}
