import { correctionFrom, type RunSettings, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { usePreferences } from '../parts/index.ts';
import { useWords } from '../words/index.ts';
import type { Point } from './calibration-state.ts';
import { settlingWords } from './calibration-words.ts';
import type { SettledReading, Settling } from './settling.ts';

interface CalibrationStepProps {
  readonly title: string;
  readonly how: string;
  readonly point: Point;
  /** It decides how hot steam is. */
  readonly pressure: RunSettings['pressure'];
  readonly taken: SettledReading | null;
  readonly settled: Settling;
  readonly onTake: (settled: SettledReading) => void;
  readonly onForget: () => void;
}

/** One bath: how to make it, whether the probe has settled in it, and taking it. */
export function CalibrationStep(props: CalibrationStepProps) {
  const { title, how, point, pressure, taken, settled, onTake, onForget } = props;
  const decimal = usePreferences((preferences) => preferences.decimal);
  const words = useWords();
  const isThisBath = settled.ok && isNear(point, settled.value, pressure);
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
            onClick={() => settled.ok && onTake(settled.value)}
          >
            {say('Take this point')}
          </Button>
        </>
      )}
    </li>
  );
}

/** A probe too far off to be corrected anyway still hangs in the room or in the other bath. */
function isNear(point: Point, settled: SettledReading, pressure: RunSettings['pressure']): boolean {
  const alone = correctionFrom({ ice: null, steam: null, [point]: settled }, pressure);
  return alone === null || alone.ok || alone.error.kind !== 'correction-too-large';
}
