import { useState } from 'react';
import { type ProofMark, proofSights, proofSightWords, say, told } from '#shared-core';
import { Button, ChoiceField, Form, NumberField, SelectField } from '../design/index.ts';
import { numberFrom, useWords } from '../words/index.ts';

interface SightFormProps {
  readonly cuts: number;
  readonly mostMl: number;
  readonly canAct: boolean;
  readonly onSeen: (seen: Pick<ProofMark, 'cut' | 'volumeMl' | 'seen'>) => Promise<void>;
}

/** What was burned and what it did, for the record. */
export function SightForm({ cuts, mostMl, canAct, onSeen }: SightFormProps) {
  const words = useWords();
  const [cut, setCut] = useState('1');
  const [volume, setVolume] = useState('');
  const [seen, setSeen] = useState<ProofMark['seen']>('burned-away');
  const [problem, setProblem] = useState<string>();
  return (
    <Form
      className="measure-form"
      onSubmit={() => {
        const volumeMl = numberFrom(volume);
        if (volumeMl === null || volumeMl <= 0 || volumeMl > mostMl) {
          return setProblem(
            say('More than 0, at most {most}.', { most: words.quantity(mostMl, 0, 'mL') }),
          );
        }
        void onSeen({ cut: Number(cut), volumeMl, seen });
      }}
    >
      <div className="measure-choice">
        <SelectField
          name={say('Sample from')}
          options={Array.from({ length: cuts }, (_, index) => ({
            value: `${index + 1}`,
            label: say('Cut {index}', { index: index + 1 }),
          }))}
          value={cut}
          onValue={setCut}
        />
        <NumberField
          name={say('Volume burned')}
          unit="mL"
          text={volume}
          onText={(text) => {
            setVolume(text);
            setProblem(undefined);
          }}
          problem={problem}
          hint={say('It is missing from a cut that is measured only now.')}
        />
      </div>
      <ChoiceField
        name={say('It')}
        options={proofSights.map((value) => ({ value, label: told(proofSightWords[value]) }))}
        value={seen}
        onValue={setSeen}
      />
      <div className="dialog-acts">
        <Button type="submit" weight="main" disabled={!canAct}>
          {say('Keep it in the record')}
        </Button>
      </div>
    </Form>
  );
}
