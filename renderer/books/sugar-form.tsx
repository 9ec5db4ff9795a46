import { useState } from 'react';
import { hexoseFromSucroseGPerG, type MarkBody, say } from '#shared-core';
import { Button, Form, NumberField } from '../design/index.ts';
import { numberFrom } from '../words/index.ts';

interface SugarFormProps {
  readonly canAct: boolean;
  readonly onMark: (mark: MarkBody) => void;
}

/** Of sugar from a hydrometer or a label; common practice, no source. */
const usualShare = 0.02;

/** Source: C12H22O11 + H2O = 2 C6H12O6, see `hexoseFromSucroseGPerG`. */
const hint = say(
  'Fermentable sugar in the juice or mash that this charge came from, as glucose and fructose (100 g of table sugar make {hexoseG} g).',
  { hexoseG: (100 * hexoseFromSucroseGPerG).toFixed(0) },
);

/** The sugar that the ferment came from: with it the yield of the yeast can be told. */
export function SugarForm({ canAct, onMark }: SugarFormProps) {
  const [sugar, setSugar] = useState('');
  const [doubt, setDoubt] = useState('');
  const [problem, setProblem] = useState<string>();
  return (
    <details className="why">
      <summary>{say('Sugar in the ferment')}</summary>
      <Form
        className="measure-form"
        onSubmit={() => {
          const sugarG = numberFrom(sugar);
          const standardUncertaintyG = numberFrom(doubt) ?? usualShare * (sugarG ?? 0);
          if (sugarG === null || sugarG <= 0 || standardUncertaintyG < 0) {
            return setProblem(say('A number of grams, more than 0.'));
          }
          setProblem(undefined);
          onMark({ type: 'sugar-known', sugarG, standardUncertaintyG });
        }}
      >
        <p className="small soft">{hint}</p>
        <div className="measure-fields">
          <NumberField
            name={say('Sugar')}
            unit="g"
            text={sugar}
            onText={setSugar}
            problem={problem}
          />
          <NumberField
            name={say('Standard uncertainty (empty: {percent} %)', { percent: 100 * usualShare })}
            unit="g"
            text={doubt}
            onText={setDoubt}
          />
        </div>
        <div className="dialog-acts">
          <Button type="submit" disabled={!canAct}>
            {say('Keep sugar')}
          </Button>
        </div>
      </Form>
    </details>
  );
}
