import { describe, expect, test } from 'vitest';
import { azeotrope, defaultRunSettings, pressureAtAltitudeKPa } from '#shared-core';
import { limitTemperatureC } from '../../../shared-core/equilibrium/limit-temperature.ts';
import { saturationTemperatureC } from '../../../shared-core/equilibrium/saturation-temperature.ts';
import { pressureFromSteam } from '../../../shared-core/probe/pressure-from-steam.ts';
import { scaleDoubts } from '../../../shared-core/probe/scale-doubts.ts';
import { runSettingsSchema } from '../../../shared-core/run/run-settings.ts';

const leastStrengthAbv = 80;
/** Boiling points of water from memory of steam tables (0.07, 0.085 and 0.101325 MPa). */
const boilingC = { 70: 89.93, 85: 95.13, 101.325: 99.97 } as const;
const pressures = [70, 85, 101.325] as const;
const offsets = [-1, 0, 1] as const;
/** Platinum class B as sold: u = 0.7 K/√3 at the plateau, and 0.11 K/√3 between steam and plateau. */
const probe = { offsetK: 0, gain: 1, standardUncertaintyK: 0.4 };
const gapStandardUncertaintyK = 0.064;

function steam(shownC: number, altitudeM: number | null = null, known = probe) {
  return pressureFromSteam(
    { shownC, standardUncertaintyK: 0.03, gapStandardUncertaintyK },
    { probe: known, altitudeM },
  );
}

function settingFrom(shownC: number, known = probe) {
  const found = steam(shownC, null, known);
  if (!found.ok) throw new Error(found.error.sentence);
  return found.value.setting;
}

/** k = 2, of where the limit lies on this probe; the slope of the limit is 0.25 … 0.36 K/kPa. */
function toldK(pressure: ReturnType<typeof settingFrom>): number {
  const { temperatureUncertaintyK, pressureUncertaintyKPa } = scaleDoubts({ probe, pressure });
  return 2 * Math.hypot(temperatureUncertaintyK, 0.3 * pressureUncertaintyKPa);
}

describe.each(pressures)('steam at %s kPa', (pressureKPa) => {
  test.each(offsets)('tells where the limit lies on a probe that is %s K off', (offsetK) => {
    const setting = settingFrom(boilingC[pressureKPa] + offsetK);
    const onProbeC = limitTemperatureC({ leastStrengthAbv, pressureKPa }) + offsetK;
    const byS = limitTemperatureC({ leastStrengthAbv, pressureKPa: setting.pressureKPa });
    expect(Math.abs(byS - onProbeC)).toBeLessThan(toldK(setting));
    // Nothing is left of the probe's error but a tenth: the limit moves by nine tenths of the steam.
    expect(byS - onProbeC).toBeCloseTo(-0.1 * offsetK, 1);
    expect(toldK(setting)).toBeLessThan(0.2);
  });

  test('as an air pressure it is only as good as the probe, and says so', () => {
    const setting = settingFrom(boilingC[pressureKPa] + 0.5);
    const kPaPerK = 2 / (saturationC(pressureKPa + 1) - saturationC(pressureKPa - 1));
    expect(setting.pressureKPa - pressureKPa).toBeCloseTo(0.5 * kPaPerK, 1);
    expect(setting.standardUncertaintyKPa / kPaPerK).toBeCloseTo(Math.hypot(0.4, 0.064), 1);
  });
});

const saturationC = (pressureKPa: number) => saturationTemperatureC('water', pressureKPa);

test('plateau and limit move by nine tenths of what steam moves by, at every pressure', () => {
  for (let pressureKPa = 61; pressureKPa < 110; pressureKPa += 4) {
    const over = (of: (kPa: number) => number) => of(pressureKPa + 0.5) - of(pressureKPa - 0.5);
    const steamK = over(saturationC);
    const plateauK = over((kPa) => azeotrope(kPa).temperatureC);
    expect(Math.abs(plateauK / steamK - 0.9)).toBeLessThan(0.006);
    const limitK = over((kPa) => limitTemperatureC({ leastStrengthAbv, pressureKPa: kPa }));
    expect(Math.abs(limitK / steamK - 0.9)).toBeLessThan(0.006);
  }
});

test('half a kelvin is 1.8 kPa, and a correction is made before the steam is looked up', () => {
  const asBought = settingFrom(99.974);
  const corrected = settingFrom(99.974, { ...probe, offsetK: 0.5 });
  expect(asBought.pressureKPa).toBeCloseTo(101.325, 2);
  expect(corrected.pressureKPa - asBought.pressureKPa).toBeCloseTo(1.8, 1);
  expect(corrected.steam).toEqual({
    shownC: 99.974,
    standardUncertaintyK: 0.03,
    gapStandardUncertaintyK,
  });
});

test('the probe’s error falls out of the limit: a bad probe knows it as well as a good one, the gap to the plateau apart', () => {
  const pressure = settingFrom(99.5);
  const doubtK = (standardUncertaintyK: number) =>
    scaleDoubts({ probe: { standardUncertaintyK }, pressure }).temperatureUncertaintyK;
  expect([doubtK(0.1), doubtK(0.9)]).toEqual([
    expect.closeTo(Math.hypot(0.01, 0.027, 0.026, 0.064), 3),
    expect.closeTo(Math.hypot(0.09, 0.027, 0.026, 0.064), 3),
  ]);
});

test('what no air pressure explains is refused with what to do, at each end', () => {
  const refused = [21.4, 84, 85.8, 102.4, 105, 137].map((shownC) => steam(shownC));
  expect(refused.map((one) => (one.ok ? 'taken' : one.error.kind))).toEqual([
    'too-cool',
    'too-cool',
    'too-cool',
    'too-hot',
    'too-hot',
    'too-hot',
  ]);
  const words = refused.map((one) => (one.ok ? '' : one.error.sentence));
  expect(words[0]).toContain('Hang the probe in the steam, above the water');
  expect(words[5]).toContain('not in it, clear of the glass, and boil water without salt');
});

test('a probe that is off by more than it may be is found out by the altitude, and its reading still taken', () => {
  const atC = saturationC(pressureAtAltitudeKPa(600));
  // Limits ± 0.7 K of the probe and ± 0.55 K of two standard deviations of the weather.
  const doubts = [-1.5, -1.2, 0, 1.2, 1.5].map((offK) => {
    const found = steam(atC + offK, 600);
    return found.ok ? found.value.doubt : 'refused';
  });
  expect(doubts.map((doubt) => doubt?.match(/reads too (low|high)/)?.[1] ?? doubt)).toEqual([
    'low',
    null,
    null,
    null,
    'high',
  ]);
  expect(doubts[0]).toContain('At 600 m water boils at 98.0 °C');
});

test('settings with steam fit the contract, and so do those of older records', () => {
  const known = { ...defaultRunSettings, pressure: settingFrom(98.4) };
  expect(runSettingsSchema.safeParse(known).data).toEqual(known);
  expect(runSettingsSchema.safeParse(defaultRunSettings).success).toBe(true);
  for (let shownC = 86; shownC <= 102; shownC += 0.5) {
    expect(
      runSettingsSchema.safeParse({ ...known, pressure: settingFrom(shownC) }).success,
      `${shownC}`,
    ).toBe(true);
  }
});

test('without steam probe and air pressure are two doubts of their own', () => {
  for (const source of ['barometer', 'channel', 'altitude', 'assumed'] as const) {
    const pressure = { ...settingFrom(99), source, standardUncertaintyKPa: 0.4 };
    expect(scaleDoubts({ probe, pressure })).toEqual({
      temperatureUncertaintyK: 0.4,
      pressureUncertaintyKPa: 0.4,
    });
  }
});
