import { calibrationLimits, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { usePreferences } from '../parts/index.ts';
import { useWords } from '../words/index.ts';
import type { SettledReading, Settling } from './calibration-state.ts';
import { settlingWords } from './calibration-words.ts';

interface CalibrationStepProps {
  readonly title: string;
  readonly how: string;
  /** What a true thermometer shows in this bath [°C]. */
  readonly referenceC: number;
  readonly taken: SettledReading | null;
  readonly settled: Settling;
  readonly onTake: () => void;
  readonly onForget: () => void;
}

/** One bath: how to make it, whether the probe has settled in it, and taking it. */
export function CalibrationStep(props: CalibrationStepProps) {
  const { title, how, referenceC, taken, settled, onTake, onForget } = props;
  const decimal = usePreferences((preferences) => preferences.decimal);
  const words = useWords();
  // A probe that far off could not be corrected anyway: it still hangs in the room or in the other bath.
  const isThisBath =
    settled.ok &&
    Math.abs(settled.value.readingC - referenceC) <= calibrationLimits.largestCorrectionK;
  return (
    <li className="calibration-step" data-done={taken !== null}>
      <h3>{title}</h3>
      <p>{how}</p>
      {taken ? (
        <p>
          <strong className="number">
            {say('✓ taken: {reading} ± {quantity}', {
              reading: words.quantity(taken.readingC, 2, '°C'),
              quantity: words.quantity(2 * taken.standardUncertaintyK, 2, 'K'),
            })}
          </strong>{' '}
          <Button
            weight="quiet"
            aria-label={say('Take again: {title}', { title })}
            onClick={onForget}
          >
            {say('Take again')}
          </Button>
        </p>
      ) : (
        <>
          <p className="number" role="status">
            {settlingWords(settled, isThisBath, decimal)}
          </p>
          <Button
            disabled={!isThisBath}
            aria-label={say('Take this point: {title}', { title })}
            onClick={onTake}
          >
            {say('Take this point')}
          </Button>
        </>
      )}
    </li>
  );
}
