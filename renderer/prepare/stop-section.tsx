import { ChoiceField, NumberField } from '../design/index.ts';
import { useDraftFields } from '../draft/index.ts';
import type { FirstFractionKind, PrepareDraft, StopKind } from '../stores/index.ts';
import { More } from './more.tsx';

const conventions = [
  { value: 'minutes', label: 'After some minutes' },
  { value: 'volume', label: 'After a volume' },
  { value: 'drops', label: 'After some drops' },
] as const satisfies readonly { value: FirstFractionKind; label: string }[];

const stops = [
  { value: 'strength', label: 'When what comes over gets too weak' },
  { value: 'purity-against-recovery', label: 'When all collected together gets too weak' },
] as const satisfies readonly { value: StopKind; label: string }[];

const units = { minutes: 'min', volume: 'mL', drops: 'drops' } as const;

export function StopSection() {
  const { draft, change, numberField, hasProblemIn } = useDraftFields();
  return (
    <More
      name="Fractions"
      summary={fractionsWords(draft)}
      mustShow={hasProblemIn(
        'leastStrengthAbv',
        'leastMeanStrengthAbv',
        'reactionTimeS',
        'firstFractionAmount',
      )}
    >
      <ChoiceField
        name="Heat off"
        options={stops}
        value={draft.stopKind}
        onValue={(value) => change({ stopKind: value })}
      />
      {draft.stopKind === 'purity-against-recovery' && (
        <NumberField
          unit="% vol"
          hint="Weigh it against the yield, under “Expected course”."
          {...numberField('leastMeanStrengthAbv')}
        />
      )}
      <NumberField
        unit="% vol"
        hint="The heat-off prompt comes when the head leaves the plateau for this."
        {...numberField('leastStrengthAbv')}
      />
      <NumberField
        unit="s"
        hint="The prompt comes that much earlier."
        {...numberField('reactionTimeS')}
      />
      <ChoiceField
        name="The first fraction ends"
        options={conventions}
        value={draft.firstFractionKind}
        onValue={(value) => change({ firstFractionKind: value })}
      />
      <NumberField
        unit={units[draft.firstFractionKind]}
        hint="A convention: a sugar ferment holds too little of it for the temperature to show."
        {...numberField('firstFractionAmount')}
      />
    </More>
  );
}

function fractionsWords(draft: PrepareDraft): string {
  const { leastStrengthAbv, reactionTimeS, firstFractionAmount, firstFractionKind } = draft;
  const first = `first fraction ${firstFractionAmount.trim()} ${units[firstFractionKind]}`;
  return `${first} · heat off at ${leastStrengthAbv.trim()} % vol, told ${reactionTimeS.trim()} s before`;
}
