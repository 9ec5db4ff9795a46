import { useState } from 'react';
import {
  cautionsAt,
  type FermentPlan,
  fruitSugars,
  inDecimals,
  keepUnits,
  leastUsefulStrengthAbv,
  say,
} from '#shared-core';
import { CautionLines } from '../cautions/index.ts';
import { Button, Dialog, fieldsOf, NumberField, SelectField } from '../design/index.ts';
import { useDraftFields } from '../draft/index.ts';
import { useBench, usePreferences } from '../parts/index.ts';
import { mayCommand } from '../stores/index.ts';
import { numberWords, Say } from '../words/index.ts';
import { type PlannedFerment, plannedFerment } from './begin-draft.ts';
import { fruitNames } from './fruit-names.ts';
import {
  type FermentPlanDraft,
  type FermentPlanShown,
  firstFermentPlan,
  type MainSource,
  planFromDraft,
} from './plan-from-draft.ts';
import { fermentWarningWords } from './plan-words.ts';

const sources: readonly { readonly value: MainSource; readonly label: string }[] = [
  { value: 'juice', label: say('Juice, by its gravity') },
  { value: 'sucrose', label: say('Table sugar') },
  { value: 'hexose', label: say('Grape or fruit sugar') },
  ...fruitSugars.map(({ fruit }) => ({
    value: fruit,
    label: say('Fruit by table: {fruit}', { fruit: fruitNames[fruit] }),
  })),
];

interface FermentPlanDialogProps {
  readonly onClose: () => void;
  /** The yeast goes in: its log begins with this plan. */
  readonly onBegin: (planned: PlannedFerment) => void;
}

/** The week before: what a ferment would give, and how much sugar it needs. */
export function FermentPlanDialog({ onClose, onBegin }: FermentPlanDialogProps) {
  const decimal = usePreferences((preferences) => preferences.decimal);
  const [draft, setDraft] = useState<FermentPlanDraft>(() => ({
    ...firstFermentPlan,
    gravity: inDecimals(firstFermentPlan.gravity, decimal),
  }));
  const canAct = useBench(mayCommand);
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
  const field = fieldsOf(draft, setDraft, planned.ok ? {} : planned.error);
  return (
    <Dialog title={say('Plan the ferment')} onClose={onClose}>
      <p className="ferment-plan-lead">
        {say('A week before: what the sugar gives, and how much of it to weigh.')}
      </p>
      <div className="prepare-fields">
        <SelectField
          name={say('Sugar from')}
          options={sources}
          value={draft.source}
          onValue={(source) => setDraft({ ...draft, source })}
        />
        <NumberField
          name={draft.source === 'juice' ? say('Juice') : say('Mass of it')}
          unit={draft.source === 'juice' ? 'mL' : 'g'}
          {...field('amount')}
        />
        {draft.source === 'juice' && (
          <>
            <NumberField
              name={say('Gravity of the juice')}
              unit=""
              hint={say('As read off a hydrometer made for 20 °C.')}
              {...field('gravity')}
            />
            <NumberField
              name={say('Temperature of the juice')}
              unit="°C"
              {...field('temperatureC')}
            />
          </>
        )}
        <NumberField name={say('Table sugar added')} unit="g" {...field('addedSugarG')} />
        <NumberField
          name={say('Everything together')}
          unit="mL"
          hint={say('Filled up with water.')}
          {...field('volumeMl')}
        />
        <NumberField name={say('The vessel holds')} unit="mL" {...field('vesselMl')} />
        <NumberField
          name={say('The yeast bears')}
          unit="% vol"
          hint={say('Baker’s yeast less than wine yeast; see its packet.')}
          {...field('yeastBearsAbv')}
        />
        <NumberField name={say('Strength you want')} unit="% vol" {...field('wantedAbv')} />
      </div>
      {planned.ok ? (
        <PlanShown shown={planned.value} />
      ) : (
        <p className="soft">{say('Fill in the marked fields and the plan stands here.')}</p>
      )}
      <h3>{say('Cautions')}</h3>
      <CautionLines cautions={cautionsAt('ferment')} />
      <div className="ferment-acts">
        {planned.ok && canAct && (
          <Button weight="main" onClick={() => onBegin(plannedFerment(draft, planned.value))}>
            {say('Begin its log')}
          </Button>
        )}
        <Button onClick={onClose}>{say('Done')}</Button>
      </div>
    </Dialog>
  );
}

function PlanShown({ shown }: { readonly shown: FermentPlanShown }) {
  const decimal = usePreferences((preferences) => preferences.decimal);
  const range = ({ low, high }: FermentPlan['sugarG'], digits: number, unit: string) => {
    const [from, to] = [low, high].map((value) => numberWords(value, digits, decimal));
    return keepUnits(
      from === to
        ? `${from} ${unit}`
        : say('{from} to {to} {unit}', { from: from ?? '', to: to ?? '', unit }),
    );
  };
  const { plan, wantedAbv, sugarToAddG } = shown;
  return (
    <div role="status" className="ferment-plan-shown">
      <ul>
        <li>
          <Say
            sentence={
              'In practice <strong>{inPractice}</strong>; by the equation, at most {atMost}.'
            }
            parts={{
              inPractice: range(plan.inPracticeAbv, 1, '% vol'),
              atMost: range(plan.atMostAbv, 1, '% vol'),
              strong: (words) => <strong>{words}</strong>,
            }}
          />
        </li>
        <li>
          {sugarToAddG.high < 0.5 ? (
            say('There is sugar enough for {wanted} % vol.', {
              wanted: numberWords(wantedAbv, 1, decimal),
            })
          ) : (
            <Say
              sentence={
                'For {wanted} % vol add <strong>{sugarToAddG}</strong> of table sugar to what is above.'
              }
              parts={{
                wanted: numberWords(wantedAbv, 1, decimal),
                sugarToAddG: range(sugarToAddG, 0, 'g'),
                strong: (words) => <strong>{words}</strong>,
              }}
            />
          )}
        </li>
        <li>
          {say(
            'It gives {carbonDioxideL} of gas and loses {massLossG} on a balance: leave the vent open.',
            {
              carbonDioxideL: range(plan.carbonDioxideL, 0, 'L'),
              massLossG: range(plan.massLossG, 0, 'g'),
            },
          )}
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
