import { useEffect, useReducer } from 'react';
import {
  cautionsAt,
  cautionWords,
  correctionFrom,
  say,
  settledReading,
  steamPoint,
  told,
} from '#shared-core';
import { pressureFromDraft } from '../draft/index.ts';
import { useBench, usePrepare } from '../parts/index.ts';
import { Say, useWords } from '../words/index.ts';
import { CalibrationResult } from './calibration-result.tsx';
import { calibrationAfter, nothingTaken, resolutionK } from './calibration-state.ts';
import { CalibrationStep } from './calibration-step.tsx';

const steamCautions = cautionsAt('calibrate')
  .map((caution) => told(cautionWords(caution)))
  .join(' ');

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
  if (!pressure.ok || pressure.value.setting.source === 'assumed') {
    return <p>{say('Enter the air pressure first: it decides how hot steam is.')}</p>;
  }
  const { setting } = pressure.value;
  const settled = settledReading(state.lately, resolutionK);
  const steamC = steamPoint({ kind: 'station', ...setting }).temperatureC;
  return (
    <div className="calibration">
      <p className="number">
        <Say
          sentence={'The probe shows <strong>{what}</strong>.'}
          parts={{
            what: head ? words.quantity(head.value, 2, head.unit) : say('nothing yet'),
            strong: (words) => <strong>{words}</strong>,
          }}
        />
      </p>
      <ol className="calibration-steps">
        <CalibrationStep
          title={say('Ice, {quantity}', { quantity: words.quantity(0, 0, '°C') })}
          how={say(
            'Crushed ice in a beaker, just enough water to fill the gaps, stirred for a minute. Then clamp the probe in the middle.',
          )}
          referenceC={0}
          taken={state.ice}
          settled={settled}
          onTake={() => dispatch({ type: 'taken', point: 'ice' })}
          onForget={() => dispatch({ type: 'forgotten', point: 'ice' })}
        />
        <CalibrationStep
          title={say('Steam, {steam} at this air pressure', {
            steam: words.quantity(steamC, 2, '°C'),
          })}
          how={say(
            'Probe in the neck of a flask, above the water, not in it; then boil the water well. {steamCautions}',
            { steamCautions },
          )}
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
