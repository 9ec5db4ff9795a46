import { describe, expect, test } from 'vitest';
import { defaultRunSettings } from '#shared-core';
import { pressureFromDraft } from '../../../renderer/draft/pressure-from-draft.ts';
import { settingsFromDraft } from '../../../renderer/draft/settings-from-draft.ts';
import { draftFromSetUp } from '../../../renderer/prepare/draft-from-set-up.ts';
import { expectedPlateau } from '../../../renderer/prepare/expected-plateau.ts';
import { setUpFromDraft } from '../../../renderer/prepare/set-up-from-draft.ts';
import {
  pressureWords,
  unknownPressureKPa,
  unknownPressureWords,
} from '../../../renderer/prepare/unknown-pressure.ts';
import { firstDraft, type PrepareDraft } from '../../../renderer/stores/prepare-draft.ts';
import { runSettingsSchema } from '../../../shared-core/run/run-settings.ts';

/** Whoever knows no altitude: one press, and nothing typed. */
const draft: PrepareDraft = { ...firstDraft, pressureFrom: 'unknown' };

describe('where nobody knows how high the room lies', () => {
  test('a run can be begun all the same, with a pressure that is assumed, very doubtful, and said to be so', () => {
    const settings = settingsFromDraft(draft);
    if (!settings.ok) throw new Error(JSON.stringify(settings.error));
    expect(settings.value.pressure).toEqual({
      pressureKPa: 101.325,
      standardUncertaintyKPa: 6,
      source: 'assumed',
      altitudeM: null,
    });
    expect(runSettingsSchema.safeParse(settings.value).success).toBe(true);
    const altitude = pressureFromDraft({ ...draft, pressureFrom: 'altitude', altitudeM: '540' });
    if (!altitude.ok) throw new Error('no pressure');
    const { standardUncertaintyKPa } = altitude.value.setting;
    expect(settings.value.pressure.standardUncertaintyKPa).toBeGreaterThan(
      4 * standardUncertaintyKPa,
    );
  });

  test('what that does to the limit is said in its own degrees, beside what the altitude would bring', () => {
    const said = unknownPressureWords(80, '.').replaceAll('\u00a0', ' ');
    const { low, high } = unknownPressureKPa;
    const limits = [low, high].map((kPa) => `${expectedPlateau(kPa, 80).limitC.toFixed(1)} °C`);
    expect(said).toContain(`at ${limits[0]} or only at ${limits[1]}`);
    expect(said).toContain('from 89 kPa to 103 kPa');
    // ± 2 kPa of weather, at a quarter of a kelvin each.
    expect(said).toMatch(/within ± 0\.[56] K\.$/);
    expect(expectedPlateau(high, 80).limitC - expectedPlateau(low, 80).limitC).toBeGreaterThan(3);
  });

  test('no figure of a pressure is shown as if it had been measured', () => {
    expect(pressureWords(defaultRunSettings, '.').replaceAll('\u00a0', ' ')).toBe(
      'not known: 89 kPa to 103 kPa',
    );
    const { pressure } = defaultRunSettings;
    const measured = { ...pressure, source: 'barometer', standardUncertaintyKPa: 0.1 } as const;
    expect(pressureWords({ pressure: measured }, ',').replaceAll('\u00a0', ' ')).toBe(
      '101,3 kPa ± 0,2 kPa',
    );
  });

  test('a rig that is kept remembers that it is not known, and asks for nothing next time', () => {
    const kept = setUpFromDraft(draft, null);
    if (!kept.ok) throw new Error(JSON.stringify(kept.error));
    const next = draftFromSetUp(kept.value, firstDraft, '.');
    expect([next.pressureFrom, next.altitudeM, settingsFromDraft(next).ok]).toEqual([
      'unknown',
      '',
      true,
    ]);
  });
});
