import { say } from '#shared-core';
import { NumberField, TextLine } from '../design/index.ts';
import { chargeDoubtHints, runNameOf, strengthDoubtAbv, useDraftFields } from '../draft/index.ts';
import { ChargedFrom, FermentButtons } from '../ferment/index.ts';
import { InstrumentGainsLine } from '../plan/index.ts';
import { useWords } from '../words/index.ts';
import { AssumedCharge } from './assumed-charge.tsx';
import { More } from './more.tsx';

export function ChargeSection() {
  const { draft, numberField, hasProblemIn } = useDraftFields();
  const { plates, heatW, rigDescription } = draft;
  const hints = chargeDoubtHints(
    draft.chargeVolumeMl,
    useWords(),
    strengthDoubtAbv(draft),
    draft.assumed.includes('volume'),
  );
  const inUse = [
    runNameOf(draft),
    rigDescription.trim(),
    plates.trim() === ''
      ? say('column not known')
      : // As it was typed, with the comma or point of whoever typed it.
        say('{count, plural, one {{count} plate} other {{count} plates}}', {
          count: plates.trim(),
        }),
    heatW.trim() === '' ? say('heat not known') : `${heatW.trim()} W`,
  ];
  return (
    <div className="prepare-fields">
      <NumberField unit="mL" {...numberField('chargeVolumeMl')} />
      <NumberField unit="% vol" {...numberField('chargeStrengthAbv')} />
      <AssumedCharge where="entries" />
      <More
        summary={inUse.filter((words) => words !== '').join(' · ')}
        mustShow={hasProblemIn('chargeDoubtMl', 'chargeDoubtAbv', 'plates', 'heatW')}
        whenOpen={<InstrumentGainsLine />}
      >
        <TextLine maxLength={120} placeholder={runNameOf({ name: '' })} {...numberField('name')} />
        <NumberField unit="mL" hint={hints.volume} {...numberField('chargeDoubtMl')} />
        <NumberField unit="% vol" hint={hints.strength} {...numberField('chargeDoubtAbv')} />
        <TextLine
          maxLength={200}
          placeholder={say('as it is called in this room')}
          {...numberField('rigDescription')}
        />
        <NumberField
          unit=""
          hint={say(
            'What it counts for (theoretical plates); 0 for no column; leave empty if not known.',
          )}
          {...numberField('plates')}
        />
        <NumberField unit="W" hint={say('Leave empty if not known.')} {...numberField('heatW')} />
      </More>
      <ChargedFrom />
      <FermentButtons />
    </div>
  );
}
