import { liquidsMeasured, type MarkBody, measuredStrength } from '#shared-core';
import { useWords } from '../words/index.ts';

/** The strength at 20 °C that a reading means, as soon as it is typed; nothing for amounts. */
export function StrengthSoFar({ mark }: { readonly mark: MarkBody | null }) {
  const words = useWords();
  const strength = mark === null ? null : strengthOf(mark);
  if (strength === null) return null;
  return (
    <p role="status" className="measured-strength">
      {strength === 'impossible' ? (
        'No mixture of ethanol and water reads like this. Look at the numbers again.'
      ) : (
        <>
          Strength at 20 °C: <strong>{words.quantity(strength.value, 1, '% vol')}</strong>, between{' '}
          {words.range(strength, 1, '% vol')} (95{'\u00a0'}%)
        </>
      )}
    </p>
  );
}

function strengthOf(mark: MarkBody) {
  if (!('liquid' in mark)) return null;
  const asCut = { ...mark, liquid: 'residue' };
  const { strength } = liquidsMeasured([
    { kind: 'mark', timeS: 0, markId: 1, mark: asCut },
  ]).residue;
  if (strength === null) return null;
  try {
    return measuredStrength(strength).alcoholByVolume;
  } catch (error) {
    if (error instanceof RangeError) return 'impossible';
    throw error;
  }
}
