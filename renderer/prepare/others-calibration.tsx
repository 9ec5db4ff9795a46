import { correctionAtPlateauK, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { useBench, usePrepare } from '../parts/index.ts';
import { useWords } from '../words/index.ts';
import { isCalibratedWithOther } from './still-to-do.ts';

/** A calibration that came from another probe than the one that is heard, or from this one where that cannot be known: a person says which. */
export function OthersCalibration() {
  const words = useWords();
  const probe = useBench((bench) => bench.probe);
  const draft = usePrepare((state) => state.draft);
  const change = usePrepare((state) => state.change);
  if (draft.correction === null || !isCalibratedWithOther(draft, probe)) return null;
  const atPlateauK = correctionAtPlateauK(draft.correction);
  return (
    <div className="field-wide others-calibration" role="status">
      <p className="field-problem">
        {say(
          'The calibration in use, {sign}{atPlateau} at the plateau, was made with another probe, or with this one at another port. Each probe is off in its own way.',
          { sign: atPlateauK < 0 ? '' : '+', atPlateau: words.quantity(atPlateauK, 2, 'K') },
        )}
      </p>
      <Button onClick={() => change({ correctionOf: probe?.device ?? null })}>
        {say('It belongs to this probe')}
      </Button>
      <Button onClick={() => change({ correction: null, correctionOf: null })}>
        {say('Go on without it')}
      </Button>
    </div>
  );
}
