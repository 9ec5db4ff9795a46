import { useState } from 'react';
import { contractLimits, say } from '#shared-core';
import { Button, Form, TextLine } from '../design/index.ts';
import { useDraftFields } from '../draft/index.ts';
import { setUpFromDraft } from './set-up-from-draft.ts';
import { useRigs } from './use-rigs.ts';

/** Keeps what stands in the form under a name of the teacher's own, and takes kept ones away. */
export function KeepRig({ canAct }: { readonly canAct: boolean }) {
  const { rigs, keep, forget } = useRigs();
  const { draft } = useDraftFields();
  const [name, setName] = useState('');
  const [said, setSaid] = useState<string | null>(null);
  const kept = rigs?.rigs ?? [];
  const wanted = name.trim();
  const isComplete = setUpFromDraft(draft, null).ok;
  const isKnown = kept.some((rig) => rig.name === wanted);
  const isFull = kept.length >= contractLimits.rigs && !isKnown;
  const submit = async () => {
    if (!(await keep(wanted))) return;
    setSaid(say('Kept as “{wanted}”: one press brings it back next time.', { wanted }));
    setName('');
  };
  return (
    <details className="why keep-rig">
      <summary>{say('Keep this set-up under a name')}</summary>
      <Form
        className="field"
        onSubmit={() => {
          if (canAct && wanted !== '' && isComplete && !isFull) void submit();
        }}
      >
        <TextLine
          name={say('Name of the rig')}
          maxLength={60}
          placeholder={say('such as: Lab 2, short column')}
          text={name}
          onText={setName}
          beside={
            <Button type="submit" disabled={!canAct || wanted === '' || !isComplete || isFull}>
              {isKnown ? say('Replace') : say('Keep')}
            </Button>
          }
        />
        <p className="small soft" role="status">
          {isFull
            ? say('{mostRigs} rigs are kept already. Take one away first.', {
                mostRigs: contractLimits.rigs,
              })
            : (said ??
              say(
                'Still, column, probe, limit and charge. Not the checks, nor what barometer or steam said today.',
              ))}
        </p>
      </Form>
      {kept.length > 0 && (
        <ul className="kept-rigs" aria-label={say('Kept rigs')}>
          {kept.map((rig) => (
            <li key={rig.name}>
              <span>{rig.name}</span>
              <Button
                weight="quiet"
                disabled={!canAct}
                aria-label={say('Take away: {name}', { name: rig.name })}
                onClick={() => void forget(rig.name)}
              >
                {say('Take away')}
              </Button>
            </li>
          ))}
        </ul>
      )}
    </details>
  );
}
