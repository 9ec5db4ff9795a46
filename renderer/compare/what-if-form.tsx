import { useState } from 'react';
import { say } from '#shared-core';
import { Button, Form, fieldsOf, NumberField } from '../design/index.ts';
import { useWords } from '../words/index.ts';
import type { WhatIfChange } from './what-if-change.ts';
import { checkDraft, type WhatIfDraft } from './what-if-draft.ts';

/** Plates may be a fraction: rounded, it would count as changed. */
const platesDecimals = (plates: number) => (Number.isInteger(plates) ? 0 : 2);

interface WhatIfFormProps {
  readonly recorded: WhatIfChange;
  readonly onChange: (change: WhatIfChange) => void;
}

/** What to suppose instead of what was. */
export function WhatIfForm({ recorded, onChange }: WhatIfFormProps) {
  const words = useWords();
  const [draft, setDraft] = useState<WhatIfDraft>(() => ({
    pressureKPa: words.number(recorded.pressureKPa, 1),
    leastStrengthAbv: words.number(recorded.leastStrengthAbv, 0),
    plates:
      recorded.plates === null
        ? ''
        : words.number(recorded.plates, platesDecimals(recorded.plates)),
  }));
  const { change, problems } = checkDraft(draft);
  const field = fieldsOf(draft, setDraft, problems);
  const was = (value: string) => say('was {value}', { value });
  return (
    <Form
      className="what-if-form"
      onSubmit={() => {
        if (change) onChange(change);
      }}
    >
      <NumberField
        name={say('Air pressure')}
        unit="kPa"
        hint={was(words.quantity(recorded.pressureKPa, 1, 'kPa'))}
        {...field('pressureKPa')}
      />
      <NumberField
        name={say('Least strength')}
        unit="% vol"
        hint={was(words.quantity(recorded.leastStrengthAbv, 0, '% vol'))}
        {...field('leastStrengthAbv')}
      />
      <NumberField
        name={say('Plates of the column')}
        unit={say('plates')}
        hint={was(
          recorded.plates === null
            ? say('not known')
            : words.number(recorded.plates, platesDecimals(recorded.plates)),
        )}
        {...field('plates')}
      />
      <Button type="submit" weight="main" disabled={change === null}>
        {say('Go through the run again')}
      </Button>
    </Form>
  );
}
