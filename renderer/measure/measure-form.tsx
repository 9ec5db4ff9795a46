import { useState } from 'react';
import { type MarkBody, say } from '#shared-core';
import { Button, NumberField, SelectField } from '../design/index.ts';
import { beyondChargeWords, liquidWords } from '../words/index.ts';
import {
  type DraftProblems,
  fieldBeyondCharge,
  fieldLooks,
  type Instrument,
  instrumentLooks,
  instruments,
  type MeasureDraft,
  type MeasureField,
  markFromDraft,
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

/** One measurement of one liquid: what, with which instrument, and the numbers read. */
export function MeasureForm({ cuts, chargeMl, canAct, onMark, onCancel }: MeasureFormProps) {
  const [draft, setDraft] = useState<MeasureDraft>({
    liquid: 'residue',
    instrument: 'cylinder',
    texts: {},
  });
  const [problems, setProblems] = useState<DraftProblems>({});
  const [doubted, setDoubted] = useState<MeasureDraft>();
  const liquids = [
    'residue',
    ...Array.from({ length: Math.max(1, cuts) }, (_, index) => `cut-${index + 1}`),
    'hold-up',
  ];
  const { fields, finds } = instrumentLooks[draft.instrument];
  const mark = markFromDraft(draft);
  const change = (changes: Partial<MeasureDraft>) => {
    setDraft({ ...draft, ...changes });
    setProblems({});
  };
  const type = (field: MeasureField, text: string) =>
    change({ texts: { ...draft.texts, [field]: text } });
  return (
    <form
      className="measure-form"
      onSubmit={(event) => {
        event.preventDefault();
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
          onValue={(instrument) => change({ instrument })}
        />
      </div>
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
      <StrengthSoFar mark={mark.ok ? mark.value : null} />
      <div className="dialog-acts">
        {onCancel && <Button onClick={onCancel}>{say('Cancel')}</Button>}
        <button type="submit" className="button" data-weight="main" disabled={!canAct}>
          {say('Keep measurement')}
        </button>
      </div>
    </form>
  );
}
