import { useMemo } from 'react';
import { say } from '#shared-core';
import { useDraftFields } from '../draft/index.ts';
import { usePreferences } from '../parts/index.ts';
import { useWords } from '../words/index.ts';
import { expectedPlateau } from './expected-plateau.ts';
import { pressureWords, unknownPressureKPa } from './unknown-pressure.ts';

/** What the head should show at this pressure, before any heat. */
export function Expectation() {
  const words = useWords();
  const decimal = usePreferences((preferences) => preferences.decimal);
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
  const { low, high } = unknownPressureKPa;
  return (
    <>
      <dl className="expectation">
        <div>
          <dt>{say('The plateau lies between')}</dt>
          <dd className="expectation-main number">
            {words.number(plateau.azeotropeC, 1)}–{words.quantity(plateau.limitC, 1, '°C')}
          </dd>
        </div>
      </dl>
      {pressure.source === 'assumed' && (
        <p className="small">
          {say(
            'At {pressure}, which nobody measured: between {low} and {high} all of it shifts by up to {shift}.',
            {
              pressure: words.quantity(pressure.pressureKPa, 1, 'kPa'),
              low: words.quantity(low, 0, 'kPa'),
              high: words.quantity(high, 0, 'kPa'),
              shift: words.quantity(
                plateau.limitC - expectedPlateau(low, settings.value.leastStrengthAbv).limitC,
                1,
                'K',
              ),
            },
          )}
        </p>
      )}
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
            <dd className="number">{pressureWords({ pressure }, decimal)}</dd>
          </div>
        </dl>
      </details>
    </>
  );
}
