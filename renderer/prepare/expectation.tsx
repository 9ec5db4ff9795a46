import { useMemo } from 'react';
import { say } from '#shared-core';
import { useDraftFields } from '../draft/index.ts';
import { useWords } from '../words/index.ts';
import { expectedPlateau } from './expected-plateau.ts';

/** What the head should show at this pressure, before any heat. */
export function Expectation() {
  const words = useWords();
  const { settings } = useDraftFields();
  const pressureKPa = settings.ok ? settings.value.pressure.pressureKPa : null;
  const leastStrengthAbv = settings.ok ? settings.value.leastStrengthAbv : null;
  const plateau = useMemo(
    () =>
      pressureKPa === null || leastStrengthAbv === null
        ? null
        : expectedPlateau(pressureKPa, leastStrengthAbv),
    [pressureKPa, leastStrengthAbv],
  );
  if (!settings.ok || plateau === null) {
    return (
      <p className="soft">
        {say('Fill in the marked fields and the expected plateau appears here.')}
      </p>
    );
  }
  const { pressure } = settings.value;
  return (
    <>
      <dl className="expectation">
        <div>
          <dt>{say('Plateau at the head')}</dt>
          <dd className="expectation-main number">
            {words.number(plateau.azeotropeC, 1)}–{words.quantity(plateau.limitC, 1, '°C')}
          </dd>
        </div>
      </dl>
      <details className="why">
        <summary aria-label={say('Why this plateau?')}>{say('Why?')}</summary>
        <dl className="expectation">
          <div>
            <dt>{say('Azeotrope, the lowest it can be')}</dt>
            <dd className="number">{words.quantity(plateau.azeotropeC, 1, '°C')}</dd>
          </div>
          <div>
            <dt>
              {say('{leastStrength} reached at', {
                leastStrength: words.quantity(settings.value.leastStrengthAbv, 0, '% vol'),
              })}
            </dt>
            <dd className="number">{words.quantity(plateau.limitC, 1, '°C')}</dd>
          </div>
          <div>
            <dt>{say('Air pressure on the still')}</dt>
            <dd className="number">
              {words.quantity(pressure.pressureKPa, 1, 'kPa')} ±{' '}
              {words.quantity(2 * pressure.standardUncertaintyKPa, 1, 'kPa')}
            </dd>
          </div>
        </dl>
      </details>
    </>
  );
}
