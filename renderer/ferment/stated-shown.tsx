import { useState } from 'react';
import { type KeptFerment, keepUnits, type StatedFerment, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { usePreferences } from '../parts/index.ts';
import { type Decimal, dateWords, quantityWords, rangeWords } from '../words/index.ts';
import { CorrectForm } from './correct-form.tsx';

interface StatedShownProps {
  readonly ferment: KeptFerment;
  /** Null where this window may only look on. */
  readonly onCorrect: Parameters<typeof CorrectForm>[0]['onCorrect'] | null;
}

/** What was stated of a ferment, with what stood there before, and the way to put it right. */
export function StatedShown({ ferment: { stated, corrections }, onCorrect }: StatedShownProps) {
  const decimal = usePreferences((preferences) => preferences.decimal);
  const [isCorrecting, setCorrecting] = useState(false);
  return (
    <>
      <p className="small soft">{statementWords(stated, decimal)}</p>
      {corrections.map(({ keptAtIso, before, reason }) => (
        <p key={keptAtIso} className="small soft">
          {say('Corrected {at}: {reason}. Until then: {before}', {
            at: dateWords(keptAtIso),
            reason,
            before: statementWords(before, decimal),
          })}
        </p>
      ))}
      {onCorrect !== null && isCorrecting && (
        <CorrectForm stated={stated} onCorrect={onCorrect} onClose={() => setCorrecting(false)} />
      )}
      {onCorrect !== null && !isCorrecting && (
        <div className="ferment-acts">
          <Button onClick={() => setCorrecting(true)}>{say('Correct what was stated')}</Button>
        </div>
      )}
    </>
  );
}

function statementWords(
  { beganAtIso, volumeMl, sugarG, wentIn }: StatedFerment,
  decimal: Decimal,
): string {
  const volume = quantityWords(volumeMl, 0, 'mL', decimal);
  const facts =
    sugarG === null
      ? say('Begun {at}, {volume}, its sugar not known.', { at: dateWords(beganAtIso), volume })
      : say('Begun {at}, {volume}, sugar as grape sugar {sugarG}.', {
          at: dateWords(beganAtIso),
          volume,
          sugarG: rangeWords(sugarG, 0, 'g', decimal),
        });
  return wentIn === ''
    ? facts
    : `${facts} ${say('In it: {wentIn}.', { wentIn: keepUnits(wentIn) })}`;
}
