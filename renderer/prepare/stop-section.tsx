import { say } from '#shared-core';
import { ChoiceField, NumberField } from '../design/index.ts';
import { useDraftFields } from '../draft/index.ts';
import type { FirstFractionKind, PrepareDraft, StopKind } from '../stores/index.ts';
import { More } from './more.tsx';

const conventions = [
  { value: 'minutes', label: say('After some minutes') },
  { value: 'volume', label: say('After a volume') },
  { value: 'drops', label: say('After some drops') },
] as const satisfies readonly { value: FirstFractionKind; label: string }[];

const stops = [
  { value: 'strength', label: say('When what comes over gets too weak') },
  { value: 'purity-against-recovery', label: say('When all collected together gets too weak') },
] as const satisfies readonly { value: StopKind; label: string }[];

const units = { minutes: 'min', volume: 'mL', drops: say('drops') } as const;

export function StopSection() {
  const { draft, change, numberField, hasProblemIn } = useDraftFields();
  return (
    <More
      name={say('Fractions')}
      summary={fractionsWords(draft)}
      mustShow={hasProblemIn(
        'leastStrengthAbv',
        'leastMeanStrengthAbv',
        'reactionTimeS',
        'firstFractionAmount',
      )}
    >
      <ChoiceField
        name={say('Heat off')}
        options={stops}
        value={draft.stopKind}
        onValue={(value) => change({ stopKind: value })}
      />
      {draft.stopKind === 'purity-against-recovery' && (
        <NumberField
          unit="% vol"
          hint={say('Weigh it against the yield, under “Expected course”.')}
          {...numberField('leastMeanStrengthAbv')}
        />
      )}
      <NumberField
        unit="% vol"
        hint={say('The heat-off prompt comes when the head leaves the plateau for this.')}
        {...numberField('leastStrengthAbv')}
      />
      <NumberField
        unit="s"
        hint={say('The prompt comes that much earlier.')}
        {...numberField('reactionTimeS')}
      />
      <ChoiceField
        name={say('The first fraction ends')}
        options={conventions}
        value={draft.firstFractionKind}
        onValue={(value) => change({ firstFractionKind: value })}
      />
      <NumberField
        unit={units[draft.firstFractionKind]}
        hint={say('A convention: mostly there is too little of it for the temperature to show.')}
        {...numberField('firstFractionAmount')}
      />
    </More>
  );
}

function fractionsWords(draft: PrepareDraft): string {
  const { leastStrengthAbv, reactionTimeS, firstFractionAmount, firstFractionKind } = draft;
  const first = say('first fraction {amount} {unit}', {
    amount: firstFractionAmount.trim(),
    unit: units[firstFractionKind],
  });
  return say('{first} · heat off at {leastStrength} % vol, told {reactionTime} s before', {
    first,
    leastStrength: leastStrengthAbv.trim(),
    reactionTime: reactionTimeS.trim(),
  });
}
