import { correctionAtPlateauK, type correctionFrom, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { usePreferences, usePrepare } from '../parts/index.ts';
import { useWords } from '../words/index.ts';
import { calibrationProblemWords } from './calibration-words.ts';

interface CalibrationResultProps {
  readonly correction: ReturnType<typeof correctionFrom> | null;
  readonly hasBoth: boolean;
}

export function CalibrationResult({ correction, hasBoth }: CalibrationResultProps) {
  const words = useWords();
  const decimal = usePreferences((preferences) => preferences.decimal);
  const inUse = usePrepare((state) => state.draft.correction);
  const change = usePrepare((state) => state.change);
  if (inUse) {
    return (
      <div className="calibration-result" role="status">
        <p>
          {say('In use: {inUse}. The record keeps it.', { inUse: correctionWords(inUse, words) })}
        </p>
        <Button onClick={() => change({ correction: null })}>{say('Go on without it')}</Button>
      </div>
    );
  }
  if (correction === null) return null;
  if (!correction.ok) {
    return (
      <p className="warning" role="status">
        {calibrationProblemWords(correction.error, decimal)}
      </p>
    );
  }
  return (
    <div className="calibration-result" role="status">
      <p>
        {correctionWords(correction.value, words)}.
        {!hasBoth && ` ${say('One point only: good near it, less sure away from it.')}`}
      </p>
      <Button weight="main" onClick={() => change({ correction: correction.value })}>
        {say('Use this correction')}
      </Button>
    </div>
  );
}

function correctionWords(
  correction: Parameters<typeof correctionAtPlateauK>[0],
  words: ReturnType<typeof useWords>,
): string {
  const atPlateauK = correctionAtPlateauK(correction);
  const sign = atPlateauK < 0 ? '' : '+';
  const doubt = words.quantity(2 * correction.standardUncertaintyK, 2, 'K');
  return say(
    'At the plateau {sign}{atPlateau} is added to every reading, known to ± {doubt} (k = 2)',
    { sign, atPlateau: words.quantity(atPlateauK, 2, 'K'), doubt },
  );
}
