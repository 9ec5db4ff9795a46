import { type MarkBody, say, strengthByMark } from '#shared-core';
import { Say, useWords } from '../words/index.ts';

/** The strength at 20 °C that a reading means, as soon as it is typed; nothing for amounts. */
export function StrengthSoFar({ mark }: { readonly mark: MarkBody | null }) {
  const words = useWords();
  const strength = mark === null ? null : strengthByMark(mark);
  if (strength === null) return null;
  return (
    <p role="status" className="measured-strength">
      {strength === 'impossible' ? (
        say('No mixture of ethanol and water reads like this. Look at the numbers again.')
      ) : (
        <Say
          sentence={
            'Strength at 20 °C: <strong>{quantity}</strong>, between {strength} (95\u00a0%)'
          }
          parts={{
            quantity: words.quantity(strength.value, 1, '% vol'),
            strength: words.range(strength, 1, '% vol'),
            strong: (words) => <strong>{words}</strong>,
          }}
        />
      )}
    </p>
  );
}
