import { useId } from 'react';
import { NumberField } from '../design/index.ts';
import { PlanFermentButton } from '../ferment/index.ts';
import { Section } from './section.tsx';
import { useDraftFields } from './use-draft-fields.ts';

export function ChargeSection() {
  const { draft, change, numberField } = useDraftFields();
  const nameId = useId();
  return (
    <Section title="Charge and rig" lead="What is in the pot, and what stands on it.">
      <div className="field field-wide">
        <label className="field-name" htmlFor={nameId}>
          Name of the run
        </label>
        <input
          id={nameId}
          className="entry"
          maxLength={120}
          value={draft.name}
          onChange={({ target }) => change({ name: target.value })}
        />
      </div>
      <NumberField name="Volume in the pot" unit="mL" {...numberField('chargeVolumeMl')} />
      <NumberField name="Strength" unit="% vol" {...numberField('chargeStrengthAbv')} />
      <NumberField
        name="Plates of the column"
        unit=""
        hint="Theoretical plates; 0 for no column; leave empty if not known."
        {...numberField('plates')}
      />
      <NumberField
        name="Heat"
        unit="W"
        hint="Leave empty if not known."
        {...numberField('heatW')}
      />
      <PlanFermentButton />
    </Section>
  );
}
