import { describe, expect, test } from 'vitest';
import { pressureAtAltitudeKPa } from '#shared-core';
import { pressureFromDraft } from '../../../renderer/draft/pressure-from-draft.ts';
import { settingsFromDraft } from '../../../renderer/draft/settings-from-draft.ts';
import { expectedPlateau } from '../../../renderer/prepare/expected-plateau.ts';
import { firstDraft as emptyDraft, withConfirms } from '../../../renderer/stores/prepare-draft.ts';
import { thousandsWords } from '../../../renderer/words/index.ts';
import { runSettingsSchema } from '../../../shared-core/run/run-settings.ts';

const firstDraft = { ...emptyDraft, altitudeM: '0' };

describe('settingsFromDraft', () => {
  test('the first draft asks for the altitude and for nothing else', () => {
    const settings = settingsFromDraft(emptyDraft);
    expect(settings.ok ? [] : settings.error).toEqual([
      {
        field: 'altitudeM',
        message: 'Needed: metres above sea level, from a map. 0 at the coast.',
      },
    ]);
  });

  test.each([
    ['altitudeM', '1,700'],
    ['altitudeM', '1.700'],
    ['altitudeM', "1'700"],
    ['chargeVolumeMl', '1,250'],
    ['chargeVolumeMl', '12.500,5'],
    ['heatW', '1.200'],
    ['stationPressure', '1,013'],
    ['seaLevelPressure', '1.013,2'],
  ] as const)('a mark for thousands in %s is refused with a word: %s', (field, typed) => {
    const pressureFrom =
      field === 'stationPressure'
        ? 'barometer'
        : field === 'seaLevelPressure'
          ? 'sea-level'
          : 'altitude';
    const settings = settingsFromDraft({ ...firstDraft, pressureFrom, [field]: typed });
    expect(settings.ok ? [] : settings.error).toEqual([{ field, message: thousandsWords }]);
  });

  test('three decimals are no mark for thousands where thousands can not be', () => {
    const kPa = {
      pressureFrom: 'barometer',
      pressureUnit: 'kPa',
      stationPressure: '101.325',
    } as const;
    expect(settingsFromDraft({ ...firstDraft, ...kPa, chargeStrengthAbv: '8.125' }).ok).toBe(true);
  });

  test('the first draft with its altitude is ready to start and fits the contract', () => {
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
      chargeVolumeMl: '5',
      leastStrengthAbv: 'high',
      altitudeM: '9000',
    });
    expect(settings.ok ? [] : settings.error.map(({ field }) => field)).toEqual([
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

test('a confirmed check keeps the role of who looked and when, also in the record, and can be taken back', () => {
  const atIso = '2026-03-18T09:15:00.000Z';
  const draft = { ...firstDraft, role: 'technician' } as const;
  const confirmed = withConfirms(draft, ['boiling-stones'], true, atIso);
  const taken = withConfirms(confirmed, ['boiling-stones'], false, atIso);
  expect([confirmed.confirms, taken.confirms]).toEqual([
    [{ check: 'boiling-stones', role: 'technician', confirmedAtIso: atIso }],
    [],
  ]);
  const settings = settingsFromDraft(confirmed);
  expect(settings.ok && runSettingsSchema.parse(settings.value).safetyConfirms).toEqual(
    confirmed.confirms,
  );
});

test('the expected plateau at standard pressure runs from the azeotrope to the limit', () => {
  // Azeotrope 78.1–78.2 °C at 101.325 kPa, Kamihama et al. 2012.
  const { azeotropeC, limitC } = expectedPlateau(101.325, 80);
  expect(azeotropeC).toBeGreaterThan(78.1);
  expect(azeotropeC).toBeLessThan(78.2);
  expect(limitC).toBeGreaterThan(azeotropeC + 3);
});
