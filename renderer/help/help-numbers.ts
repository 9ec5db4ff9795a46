import {
  azeotrope,
  azeotropeSlopeKPerKPa,
  defaultRunSettings,
  pressureFromSteam,
  saturationPressureKPa,
  say,
  sensorToleranceK,
  serialSourceSchema,
  settingRanges,
} from '#shared-core';
import { plateauC, probeKinds } from '../draft/index.ts';

const standardKPa = 101.325;
/** Air at about 1500 m (ISO 2533): the example of a place well above the sea. */
const lowPressureKPa = 85;
/** Highest temperature at which a digital one-wire sensor keeps its narrower limits; see `sensorToleranceK`. */
const oneWireEndC = 85;
/** Sheaths that follow a still head quickly enough and last in a class; common practice, no source. */
const sheath = say('3 to 4 mm');

/** What the window may say, to be explained: made up, no source needed. */
const examples = {
  exampleDoubt: '0.4 K',
  exampleRange: '88–93 % vol',
  exampleLikely: '85 %',
  exampleOffset: '0.3 K',
};

const { chargeVolumeMl, chargeStrengthAbv, pressureKPa, leastStrengthAbv } = settingRanges;
const celsius = (temperatureC: number) => `${temperatureC.toFixed(1)} °C`;
const toleranceK = (sensor: Parameters<typeof sensorToleranceK>[0]) =>
  `${sensorToleranceK(sensor, plateauC).toFixed(1)} K`;
/** Steam at standard pressure, by a probe as bought. */
const steamBy = (kind: keyof typeof probeKinds) =>
  pressureFromSteam(
    {
      shownC: 100,
      standardUncertaintyK: 0.03,
      gapStandardUncertaintyK: probeKinds[kind].steamGapStandardUncertaintyK,
    },
    {
      probe: { offsetK: 0, gain: 1, standardUncertaintyK: probeKinds[kind].standardUncertaintyK },
      altitudeM: null,
    },
  );
/** What it leaves in doubt of the limit, k = 2. */
const steamLimitK = (kind: keyof typeof probeKinds) => {
  const steam = steamBy(kind);
  return steam.ok ? `${(2 * steam.value.onProbeStandardUncertaintyK).toFixed(1)} K` : '';
};
const halfK = 0.5;
const halfKelvinKPa =
  saturationPressureKPa('water', 100) - saturationPressureKPa('water', 100 - halfK);
const lag = (kind: keyof typeof probeKinds) => `${probeKinds[kind].lagT90S} s`;

/** What stands in double braces on the pages of the help; worked out where the rest of the program takes it from. */
export const helpNumbers: Readonly<Record<string, string>> = {
  slopePerKPa: `${azeotropeSlopeKPerKPa(standardKPa).toFixed(2)} K`,
  azeotropeC: celsius(azeotrope(standardKPa).temperatureC),
  azeotropeLowC: celsius(azeotrope(lowPressureKPa).temperatureC),
  lowPressure: `${lowPressureKPa} kPa`,
  baudRate: String(serialSourceSchema.parse({ kind: 'serial', path: 'any' }).baudRate),
  plateauC: `${plateauC} °C`,
  classAK: toleranceK({ kind: 'platinum', toleranceClass: 'A' }),
  classBK: toleranceK({ kind: 'platinum', toleranceClass: 'B' }),
  oneWireK: toleranceK({ kind: 'one-wire' }),
  oneWireHotK: `${sensorToleranceK({ kind: 'one-wire' }, oneWireEndC + 1).toFixed(0)} K`,
  oneWireEndC: `${oneWireEndC} °C`,
  thermocoupleK: toleranceK({ kind: 'thermocouple', type: 'K', toleranceClass: 1 }),
  steamLimitBestK: steamLimitK('platinum-a'),
  steamLimitDigitalK: steamLimitK('digital'),
  halfKelvin: `${halfK} K`,
  halfKelvinKPa: `${halfKelvinKPa.toFixed(1)} kPa`,
  platinumLag: lag('platinum-a'),
  digitalLag: lag('digital'),
  thermocoupleLag: lag('thermocouple'),
  sheath,
  chargeLow: `${chargeVolumeMl.low} mL`,
  chargeHigh: `${chargeVolumeMl.high / 1000} L`,
  strengthLow: `${chargeStrengthAbv.low} % vol`,
  strengthHigh: `${chargeStrengthAbv.high} % vol`,
  pressureLow: `${pressureKPa.low} kPa`,
  pressureHigh: `${pressureKPa.high} kPa`,
  leastLow: `${leastStrengthAbv.low} % vol`,
  leastHigh: `${leastStrengthAbv.high} % vol`,
  ...examples,
  reactionTime: `${defaultRunSettings.reactionTimeS} s`,
};

/** Numbers of a page in this person's way of writing them; a name that nobody knows stays, for the tests to find. */
export function fillNumbers(page: string, known: Readonly<Record<string, string>>): string {
  return page.replace(/\{\{(\w+)\}\}/g, (braces, name: string) => known[name] ?? braces);
}
