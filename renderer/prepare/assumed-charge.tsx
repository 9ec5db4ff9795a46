import { keepUnits, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { assumedBesideCharge, assumedOfCharge, useDraftFields } from '../draft/index.ts';
import { signs } from '../words/index.ts';
import { focusOn } from './focus-on.ts';

interface AssumedChargeProps {
  /** Beside the entries, or beside what hangs on them. */
  readonly where: 'entries' | 'expectation';
}

/** That the charge is only assumed, and how to state it; nothing once it is stated. */
export function AssumedCharge({ where }: AssumedChargeProps) {
  const { draft, change } = useDraftFields();
  const [first] = assumedOfCharge(draft);
  if (first === undefined) return null;
  const words = keepUnits(assumedWords(draft));
  if (where === 'entries') {
    return (
      <div className="prepare-finding" role="status">
        <p>
          {signs.toDo} {words} {say('Write what was measured, or confirm what stands there.')}
        </p>
        <Button onClick={() => change({ assumed: assumedBesideCharge(draft) })}>
          {say('This is in the pot: {charge}', { charge: keepUnits(chargeWords(draft)) })}
        </Button>
      </div>
    );
  }
  return (
    <div className="small">
      <p>
        {signs.toDo} {words} {say('Times, volumes and yields hang on it.')}
      </p>
      <Button
        weight="quiet"
        onClick={() => focusOn(first === 'volume' ? 'chargeVolumeMl' : 'chargeStrengthAbv')}
      >
        {say('Say what is in the pot')}
      </Button>
    </div>
  );
}

type Charge = Pick<
  ReturnType<typeof useDraftFields>['draft'],
  'chargeVolumeMl' | 'chargeStrengthAbv' | 'assumed'
>;

const chargeWords = ({ chargeVolumeMl, chargeStrengthAbv }: Charge): string =>
  say('{chargeVolume} mL of {chargeStrength} % vol', {
    chargeVolume: chargeVolumeMl.trim(),
    chargeStrength: chargeStrengthAbv.trim(),
  });

function assumedWords(draft: Charge): string {
  const assumed = assumedOfCharge(draft);
  if (assumed.length > 1) {
    return say('Assumed, nobody has stated it yet: {charge}.', { charge: chargeWords(draft) });
  }
  return assumed.includes('volume')
    ? say('Assumed, nobody has stated it yet: a volume of {chargeVolume} mL.', {
        chargeVolume: draft.chargeVolumeMl.trim(),
      })
    : say('Assumed, nobody has stated it yet: a strength of {chargeStrength} % vol.', {
        chargeStrength: draft.chargeStrengthAbv.trim(),
      });
}
