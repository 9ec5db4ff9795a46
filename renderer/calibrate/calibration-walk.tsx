import { correctionFrom, defaultRunSettings, say, steamPoint } from '#shared-core';
import { pressureFromDraft } from '../draft/index.ts';
import { useBench, usePrepare } from '../parts/index.ts';
import { Say, useWords } from '../words/index.ts';
import { CalibrationResult } from './calibration-result.tsx';
import { type CalibrationEvent, calibrationAfter, takenWith } from './calibration-state.ts';
import { CalibrationStep } from './calibration-step.tsx';
import { steamHow } from './steam-how.ts';
import { useSettling } from './use-settling.ts';

/** Ice, steam, and what the probe is off by: ten minutes that make the plateau's tenths mean something. */
export function CalibrationWalk() {
  const words = useWords();
  const { head, settled } = useSettling();
  const draft = usePrepare((state) => state.draft);
  const change = usePrepare(({ change }) => change);
  const device = useBench(({ probe }) => probe?.device ?? null);
  const points = takenWith(draft.calibrationPoints, device);
  const tell = (event: CalibrationEvent) =>
    change({ calibrationPoints: calibrationAfter(points, event) });
  const pressure = pressureFromDraft(draft);
  const setting = pressure.ok ? pressure.value.setting : defaultRunSettings.pressure;
  const noSteam = noSteamWords(draft.pressureFrom === 'steam', setting.source);
  const steam = steamPoint({ kind: 'station', ...setting });
  const taken = noSteam === null ? points : { ...points, steam: null };
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
          point="ice"
          pressure={setting}
          taken={taken.ice}
          settled={settled}
          onTake={(reading) => tell({ type: 'taken', point: 'ice', settled: reading, device })}
          onForget={() => tell({ type: 'forgotten', point: 'ice' })}
        />
        {noSteam === null && (
          <CalibrationStep
            title={say('Steam, {steam} ± {doubt} at this air pressure', {
              steam: words.quantity(steam.temperatureC, 1, '°C'),
              // An altitude alone leaves the weather: half a kelvin.
              doubt: words.quantity(2 * steam.standardUncertaintyK, 1, 'K'),
            })}
            how={steamHow}
            point="steam"
            pressure={setting}
            taken={taken.steam}
            settled={settled}
            onTake={(reading) => tell({ type: 'taken', point: 'steam', settled: reading, device })}
            onForget={() => tell({ type: 'forgotten', point: 'steam' })}
          />
        )}
      </ol>
      {noSteam !== null && <p>{noSteam}</p>}
      <CalibrationResult
        correction={correctionFrom(taken, setting)}
        device={taken.device}
        hasBoth={taken.ice !== null && taken.steam !== null}
      />
    </div>
  );
}

/** Why steam can tell nothing of the probe here; null where it can. */
function noSteamWords(
  isPressureFromSteam: boolean,
  source: typeof defaultRunSettings.pressure.source,
): string | null {
  if (isPressureFromSteam) {
    return say(
      'Steam already tells the air pressure here, by this probe: the same steam cannot tell what the probe is off by as well. Ice can, alone.',
    );
  }
  return source === 'assumed'
    ? say('For steam, enter the air pressure first: it decides how hot steam is.')
    : null;
}
