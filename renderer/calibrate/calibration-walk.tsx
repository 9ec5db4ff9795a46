import { useEffect, useReducer } from 'react';
import { cautionsAt, cautionWords, correctionFrom, settledReading, steamPoint } from '#shared-core';
import { pressureFromDraft } from '../draft/index.ts';
import { useBench, usePrepare } from '../parts/index.ts';
import { useWords } from '../words/index.ts';
import { CalibrationResult } from './calibration-result.tsx';
import { calibrationAfter, nothingTaken, resolutionK } from './calibration-state.ts';
import { CalibrationStep } from './calibration-step.tsx';

const steamCautions = cautionsAt('calibrate').map(cautionWords).join(' ');

/** Ice, steam, and what the probe is off by: ten minutes that make the plateau's tenths mean something. */
export function CalibrationWalk() {
  const words = useWords();
  const head = useBench(
    ({ probe }) => probe?.latest.find(({ channel }) => channel === 'head') ?? null,
  );
  const draft = usePrepare((state) => state.draft);
  const [state, dispatch] = useReducer(calibrationAfter, nothingTaken);
  useEffect(() => {
    if (head === null || head.quality !== 'good') return;
    const reading = { timeS: head.timeS, temperatureC: head.value };
    dispatch({ type: 'heard', reading });
  }, [head]);

  const pressure = pressureFromDraft(draft);
  if (!pressure.ok) {
    return <p>Enter the air pressure first: it decides how hot steam is.</p>;
  }
  const { setting } = pressure.value;
  const settled = settledReading(state.lately, resolutionK);
  const steamC = steamPoint({ kind: 'station', ...setting }).temperatureC;
  return (
    <div className="calibration">
      <p className="number">
        The probe shows{' '}
        <strong>{head ? words.quantity(head.value, 2, head.unit) : 'nothing yet'}</strong>.
      </p>
      <ol className="calibration-steps">
        <CalibrationStep
          title={`Ice, ${words.quantity(0, 0, '°C')}`}
          how="Crushed ice in a beaker, just enough water to fill the gaps, stirred for a minute. Then clamp the probe in the middle."
          referenceC={0}
          taken={state.ice}
          settled={settled}
          onTake={() => dispatch({ type: 'taken', point: 'ice' })}
          onForget={() => dispatch({ type: 'forgotten', point: 'ice' })}
        />
        <CalibrationStep
          title={`Steam, ${words.quantity(steamC, 2, '°C')} at this air pressure`}
          how={`Probe in the neck of a flask, above the water, not in it; then boil the water well. ${steamCautions}`}
          referenceC={steamC}
          taken={state.steam}
          settled={settled}
          onTake={() => dispatch({ type: 'taken', point: 'steam' })}
          onForget={() => dispatch({ type: 'forgotten', point: 'steam' })}
        />
      </ol>
      <CalibrationResult
        correction={correctionFrom(state, setting)}
        hasBoth={state.ice !== null && state.steam !== null}
      />
    </div>
  );
}
