import { describe, expect, test } from 'vitest';
import { pressureAtAltitudeKPa, runSettingsSchema } from '#shared-core';
import { expectedPlateau } from '../../../renderer/prepare/expected-plateau.ts';
import { firstDraft, withConfirm } from '../../../renderer/prepare/prepare-draft.ts';
import { pressureFromDraft } from '../../../renderer/prepare/pressure-from-draft.ts';
import { settingsFromDraft } from '../../../renderer/prepare/settings-from-draft.ts';

describe('settingsFromDraft', () => {
  test('the first draft is ready to start and fits the contract', () => {
    const settings = settingsFromDraft(firstDraft);
    expect(settings.ok && runSettingsSchema.safeParse(settings.value).success).toBe(true);
  });

  test('a decimal comma is as good as a point', () => {
    const settings = settingsFromDraft({ ...firstDraft, chargeStrengthAbv: '8,5' });
    expect(settings.ok && settings.value.charge.strengthAbv).toBe(8.5);
  });

  test('every wrong field is told at once, with its range', () => {
    const settings = settingsFromDraft({
      ...firstDraft,
      name: ' ',
      chargeVolumeMl: '5',
      leastStrengthAbv: 'high',
      altitudeM: '9000',
    });
    expect(settings.ok ? [] : settings.error.map(({ field }) => field)).toEqual([
      'name',
      'altitudeM',
      'chargeVolumeMl',
      'leastStrengthAbv',
    ]);
  });

  test('an altitude beside the barometer may be left out, but not be nonsense', () => {
    const withAltitude = (altitudeM: string) =>
      pressureFromDraft({
        ...firstDraft,
        pressureFrom: 'barometer',
        stationPressure: '986',
        altitudeM,
      });
    expect(['', '240', '9000000', 'hill'].map((altitudeM) => withAltitude(altitudeM).ok)).toEqual([
      true,
      true,
      false,
      false,
    ]);
  });

  test('a wrong barometer does not hide a wrong altitude', () => {
    const pressure = pressureFromDraft({
      ...firstDraft,
      pressureFrom: 'barometer',
      stationPressure: '1.2',
      altitudeM: '9000',
    });
    expect(pressure.ok ? [] : pressure.error.map(({ field }) => field)).toEqual([
      'altitudeM',
      'stationPressure',
    ]);
  });

  test('what is not known of the rig stays unknown', () => {
    const settings = settingsFromDraft({ ...firstDraft, plates: '', heatW: '120' });
    expect(settings.ok && settings.value.rig).toEqual({
      description: '',
      plates: null,
      heatW: 120,
      columnLossW: null,
    });
  });
});

describe('pressureFromDraft', () => {
  test('a weather report is converted to the altitude, never used as it is', () => {
    const pressure = pressureFromDraft({
      ...firstDraft,
      pressureFrom: 'sea-level',
      seaLevelPressure: '1013.25',
      altitudeM: '600',
    });
    const expected = pressureAtAltitudeKPa(600);
    expect(pressure.ok && Math.abs(pressure.value.setting.pressureKPa - expected) < 0.1).toBe(true);
  });

  test('a barometer set to sea level is doubted in words', () => {
    const pressure = pressureFromDraft({
      ...firstDraft,
      pressureFrom: 'barometer',
      stationPressure: '1016',
      altitudeM: '600',
    });
    expect(pressure.ok && pressure.value.doubt).toContain('sea level');
  });
});

test('a confirmed check keeps the role of who looked, and can be taken back', () => {
  const confirmed = withConfirm({ ...firstDraft, role: 'technician' }, 'boiling-stones', true);
  expect([confirmed.confirms, withConfirm(confirmed, 'boiling-stones', false).confirms]).toEqual([
    [{ check: 'boiling-stones', role: 'technician' }],
    [],
  ]);
});

test('the expected plateau at standard pressure runs from the azeotrope to the limit', () => {
  // Azeotrope 78.1–78.2 °C at 101.325 kPa, Kamihama et al. 2012.
  const { azeotropeC, limitC } = expectedPlateau(101.325, 80);
  expect(azeotropeC).toBeGreaterThan(78.1);
  expect(azeotropeC).toBeLessThan(78.2);
  expect(limitC).toBeGreaterThan(azeotropeC + 3);
});
