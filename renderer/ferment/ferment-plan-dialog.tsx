import { useState } from 'react';
import { cautionsAt, fruitSugars, leastUsefulStrengthAbv, type PlanRange } from '#shared-core';
import { CautionLines } from '../cautions/index.ts';
import { Button, Dialog, NumberField, SelectField } from '../design/index.ts';
import { useDraftFields } from '../draft/index.ts';
import { usePreferences } from '../parts/index.ts';
import { numberWords } from '../words/index.ts';
import {
  type FermentPlanDraft,
  type FermentPlanField,
  type FermentPlanShown,
  firstFermentPlan,
  type MainSource,
  planFromDraft,
} from './plan-from-draft.ts';
import { fermentWarningWords } from './plan-words.ts';

const sources: readonly { readonly value: MainSource; readonly label: string }[] = [
  { value: 'juice', label: 'Juice, by its gravity' },
  { value: 'sucrose', label: 'Table sugar' },
  { value: 'hexose', label: 'Grape or fruit sugar' },
  ...fruitSugars.map(({ fruit }) => ({ value: fruit, label: `Fruit by table: ${fruit}` })),
];

/** The week before: what a ferment would give, and how much sugar it needs. */
export function FermentPlanDialog({ onClose }: { readonly onClose: () => void }) {
  const [draft, setDraft] = useState<FermentPlanDraft>(firstFermentPlan);
  const { settings } = useDraftFields();
  const plates = settings.ok ? settings.value.rig.plates : null;
  const least =
    settings.ok && plates !== null
      ? leastUsefulStrengthAbv(
          plates,
          settings.value.leastStrengthAbv,
          settings.value.pressure.pressureKPa,
        )
      : null;
  const planned = planFromDraft(draft, least);
  const field = (name: FermentPlanField) => ({
    text: draft[name],
    onText: (text: string) => setDraft({ ...draft, [name]: text }),
    problem: planned.ok ? undefined : planned.error[name],
  });
  return (
    <Dialog title="Plan the ferment" onClose={onClose}>
      <p>A week before: what the sugar gives, and how much of it to weigh.</p>
      <div className="prepare-fields">
        <SelectField
          name="Sugar from"
          options={sources}
          value={draft.source}
          onValue={(source) => setDraft({ ...draft, source })}
        />
        <NumberField
          name={draft.source === 'juice' ? 'Juice' : 'Mass of it'}
          unit={draft.source === 'juice' ? 'mL' : 'g'}
          {...field('amount')}
        />
        {draft.source === 'juice' && (
          <>
            <NumberField
              name="Gravity of the juice"
              unit=""
              hint="As read off a hydrometer made for 20 °C."
              {...field('gravity')}
            />
            <NumberField name="Temperature of the juice" unit="°C" {...field('temperatureC')} />
          </>
        )}
        <NumberField name="Table sugar added" unit="g" {...field('addedSugarG')} />
        <NumberField
          name="Everything together"
          unit="mL"
          hint="Filled up with water."
          {...field('volumeMl')}
        />
        <NumberField name="The vessel holds" unit="mL" {...field('vesselMl')} />
        <NumberField
          name="The yeast bears"
          unit="% vol"
          hint="Baker’s yeast less than wine yeast; see its packet."
          {...field('yeastBearsAbv')}
        />
        <NumberField name="Strength you want" unit="% vol" {...field('wantedAbv')} />
      </div>
      {planned.ok ? (
        <PlanShown shown={planned.value} />
      ) : (
        <p className="soft">Fill in the marked fields and the plan stands here.</p>
      )}
      <h3>Cautions</h3>
      <CautionLines cautions={cautionsAt('ferment')} />
      <Button weight="main" onClick={onClose}>
        Done
      </Button>
    </Dialog>
  );
}

function PlanShown({ shown }: { readonly shown: FermentPlanShown }) {
  const decimal = usePreferences((preferences) => preferences.decimal);
  const range = ({ low, high }: PlanRange, digits: number, unit: string) => {
    const [from, to] = [low, high].map((value) => numberWords(value, digits, decimal));
    return from === to ? `${from} ${unit}` : `${from} to ${to} ${unit}`;
  };
  const { plan, wantedAbv, sugarToAddG } = shown;
  return (
    <div role="status" className="ferment-plan-shown">
      <ul>
        <li>
          In practice <strong>{range(plan.inPracticeAbv, 1, '% vol')}</strong>; by the equation, at
          most {range(plan.atMostAbv, 1, '% vol')}.
        </li>
        <li>
          {sugarToAddG.high < 0.5 ? (
            `There is sugar enough for ${numberWords(wantedAbv, 1, decimal)} % vol.`
          ) : (
            <>
              For {numberWords(wantedAbv, 1, decimal)} % vol add{' '}
              <strong>{range(sugarToAddG, 0, 'g')}</strong> of table sugar to what is above.
            </>
          )}
        </li>
        <li>
          It gives {range(plan.carbonDioxideL, 0, 'L')} of gas and loses{' '}
          {range(plan.massLossG, 0, 'g')} on a balance: leave the vent open.
        </li>
      </ul>
      {plan.warnings.map((warning) => (
        <p key={warning} className="field-problem">
          {fermentWarningWords(warning)}
        </p>
      ))}
    </div>
  );
}
