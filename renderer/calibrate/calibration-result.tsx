import { correctionAtPlateauK, type correctionFrom, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { usePreferences, usePrepare } from '../parts/index.ts';
import { useWords } from '../words/index.ts';
import { calibrationProblemWords } from './calibration-words.ts';

type ProbeCorrection = Parameters<typeof correctionAtPlateauK>[0];

interface CalibrationResultProps {
  readonly correction: ReturnType<typeof correctionFrom> | null;
  readonly hasBoth: boolean;
  /** The device that the points were taken with; null where nobody knows. */
  readonly device: string | null;
}

/** What the points come to and what is in use: points taken after a correction came into use are offered beside it, never left out in silence. */
export function CalibrationResult({ correction, hasBoth, device }: CalibrationResultProps) {
  const inUse = usePrepare((state) => state.draft.correction);
  const isUsed = inUse !== null && correction?.ok === true && isSame(correction.value, inUse);
  return (
    <>
      {inUse && <InUse correction={inUse} />}
      {correction && !isUsed && (
        <FromPoints
          correction={correction}
          hasBoth={hasBoth}
          device={device}
          isInstead={inUse !== null}
        />
      )}
    </>
  );
}

function InUse({ correction }: { readonly correction: ProbeCorrection }) {
  const words = useWords();
  const change = usePrepare((state) => state.change);
  return (
    <div className="calibration-result" role="status">
      <p>
        {say('In use: {inUse}. The record keeps it.', {
          inUse: correctionWords(correction, words),
        })}
      </p>
      <Button onClick={() => change({ correction: null, correctionOf: null })}>
        {say('Go on without it')}
      </Button>
    </div>
  );
}

interface FromPointsProps {
  readonly correction: NonNullable<CalibrationResultProps['correction']>;
  readonly hasBoth: boolean;
  readonly device: string | null;
  /** Another is in use. */
  readonly isInstead: boolean;
}

function FromPoints({ correction, hasBoth, device, isInstead }: FromPointsProps) {
  const words = useWords();
  const decimal = usePreferences((preferences) => preferences.decimal);
  const change = usePrepare((state) => state.change);
  if (!correction.ok) {
    return (
      <p className="warning" role="status">
        {calibrationProblemWords(correction.error, decimal)}
      </p>
    );
  }
  const found = correctionWords(correction.value, words);
  return (
    <div className="calibration-result" role="status">
      <p>
        {isInstead
          ? say('By the points taken here, not in use yet: {found}.', { found })
          : `${found}.`}
        {!hasBoth && ` ${say('One point only: good near it, less sure away from it.')}`}
      </p>
      <Button
        weight="main"
        onClick={() => change({ correction: correction.value, correctionOf: device })}
      >
        {isInstead ? say('Use this one instead') : say('Use this correction')}
      </Button>
    </div>
  );
}

const isSame = (one: ProbeCorrection, other: ProbeCorrection): boolean =>
  one.offsetK === other.offsetK &&
  one.gain === other.gain &&
  one.standardUncertaintyK === other.standardUncertaintyK;

function correctionWords(correction: ProbeCorrection, words: ReturnType<typeof useWords>): string {
  const atPlateauK = correctionAtPlateauK(correction);
  const sign = atPlateauK < 0 ? '' : '+';
  const doubt = words.quantity(2 * correction.standardUncertaintyK, 2, 'K');
  return say(
    'At the plateau {sign}{atPlateau} is added to every reading, known to ± {doubt} (k = 2)',
    { sign, atPlateau: words.quantity(atPlateauK, 2, 'K'), doubt },
  );
}
