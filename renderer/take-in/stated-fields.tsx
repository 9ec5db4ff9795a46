import { say } from '#shared-core';
import { fieldsOf, NumberField, TextLine } from '../design/index.ts';
import { chargeDoubtHints } from '../draft/index.ts';
import { useWords } from '../words/index.ts';
import type { StatedDraft, StatedProblems } from './stated-draft.ts';

interface StatedFieldsProps {
  readonly draft: StatedDraft;
  readonly problems: StatedProblems;
  readonly onDraft: (draft: StatedDraft) => void;
}

/** Charge, air pressure and rig: what no table tells, and every strength and recovery hangs on. */
export function StatedFields({ draft, problems, onDraft }: StatedFieldsProps) {
  const words = useWords();
  const typed = fieldsOf(draft, onDraft, problems);
  // Nothing is wrong yet with what nobody has typed.
  const field = (name: keyof StatedDraft) => ({
    ...typed(name),
    ...(draft[name] === '' && { problem: undefined }),
  });
  return (
    <div className="stated-fields">
      <NumberField name={say('Volume in the pot')} unit="mL" {...field('volumeMl')} />
      <NumberField name={say('Strength of the charge')} unit="% vol" {...field('strengthAbv')} />
      <NumberField
        name={say('Uncertainty of the volume')}
        unit="mL"
        hint={chargeDoubtHints(draft.volumeMl, words).volume}
        {...field('volumeDoubtMl')}
      />
      <NumberField
        name={say('Uncertainty of the strength')}
        unit="% vol"
        hint={chargeDoubtHints(draft.volumeMl, words).strength}
        {...field('strengthDoubtAbv')}
      />
      <NumberField name={say('Air pressure at the still')} unit="kPa" {...field('pressureKPa')} />
      <NumberField
        name={say('Plates of the column')}
        unit=""
        hint={say('0 for no column; leave empty if not known.')}
        {...field('plates')}
      />
      <TextLine name={say('Rig')} maxLength={200} {...field('rigDescription')} />
    </div>
  );
}
