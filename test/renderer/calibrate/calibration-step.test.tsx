// @vitest-environment happy-dom
import { cleanup, screen } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { defaultRunSettings, saturationPressureKPa } from '#shared-core';
import { CalibrationStep } from '../../../renderer/calibrate/calibration-step.tsx';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

/** Steam of 99.2 °C: Tsat by IAPWS. */
const pressure = {
  ...defaultRunSettings.pressure,
  pressureKPa: saturationPressureKPa('water', 99.2),
  standardUncertaintyKPa: 0.1,
};

function showSteam(readingC: number): { readonly canTake: boolean; readonly words: string } {
  renderInWindow(
    <ol>
      <CalibrationStep
        title="Steam"
        how="Boil water."
        point="steam"
        pressure={pressure}
        taken={null}
        settled={{
          ok: true,
          value: { readingC, standardUncertaintyK: 0.03, driftKPerMin: 0 },
        }}
        onTake={() => {}}
        onForget={() => {}}
      />
    </ol>,
  );
  const button = screen.getByRole<HTMLButtonElement>('button', { name: /^Take this point/ });
  const shown = { canTake: !button.disabled, words: screen.getByRole('status').textContent ?? '' };
  cleanup();
  return shown;
}

describe('CalibrationStep', () => {
  test('a probe that is steady in the ice cannot be taken for the steam', () => {
    const { canTake, words } = showSteam(0.38);
    expect([canTake, words]).toEqual([
      false,
      'Steady at 0.38\u00a0°C: the probe is not in this bath.',
    ]);
  });

  test('a probe that is off by as much as can be corrected is taken', () => {
    expect([showSteam(94.3).canTake, showSteam(94.1).canTake]).toEqual([true, false]);
  });
});
