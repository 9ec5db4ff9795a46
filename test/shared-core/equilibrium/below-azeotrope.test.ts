import { describe, expect, test } from 'vitest';
import { headVapour } from '#shared-core';
import {
  type BelowAzeotropeCause,
  type BelowAzeotropeClues,
  type BelowAzeotropeGap,
  explainBelowAzeotrope,
} from '../../../shared-core/equilibrium/below-azeotrope.ts';

/** The cause ranked first for a reading `shortfallK` below the azeotrope at 101.325 kPa (78.14 °C). */
function firstCause(shortfallK: number, clues: BelowAzeotropeClues): string | undefined {
  const vapour = headVapour({
    temperatureC: 78.14 - shortfallK,
    pressureKPa: 101.325,
    temperatureUncertaintyK: 0.1,
    pressureUncertaintyKPa: 0.2,
    clues,
  });
  return vapour.explanations[0]?.cause;
}

describe('explanations of a reading below the azeotrope', () => {
  test('name the cause that the clues point to', () => {
    expect({
      farBelowJustAfterVapour: firstCause(8, { minutesSinceVapour: 1, rateKPerMin: 0.2 }),
      slowProbeOnARamp: firstCause(1.5, {
        rateKPerMin: 6,
        responseTime90S: 40,
        minutesSinceVapour: 6,
        pressureSource: 'channel',
        calibrated: true,
      }),
      pressureNobodyMeasured: firstCause(1, {
        minutesSinceVapour: 20,
        pressureSource: 'assumed',
        calibrated: true,
        distillateSeen: true,
      }),
      uncheckedProbe: firstCause(0.6, {
        minutesSinceVapour: 20,
        pressureSource: 'channel',
        calibrated: false,
        distillateSeen: true,
      }),
    }).toEqual({
      farBelowJustAfterVapour: 'bulb-not-bathed',
      slowProbeOnARamp: 'probe-lag',
      pressureNobodyMeasured: 'wrong-pressure',
      uncheckedProbe: 'calibration',
    });
  });

  test('weigh all five causes, most likely first, and say how large each would have to be', () => {
    const { explanations, kind } = headVapour({
      temperatureC: 75,
      pressureKPa: 101.325,
      temperatureUncertaintyK: 0.1,
      pressureUncertaintyKPa: 0.2,
    });
    expect(kind).toBe('below-azeotrope');
    expect(new Set(explanations.map(({ cause }) => cause)).size).toBe(5);
    const weights = explanations.map(({ weight }) => weight);
    expect(weights).toEqual([...weights].sort((a, b) => b - a));
    expect(weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 12);
    const pressure = explanations.find(({ cause }) => cause === 'wrong-pressure');
    // 3.14 K at some 4 kPa/K.
    expect(pressure?.reason).toContain('12.');
  });

  test('are not given for a reading that ethanol–water vapour can explain', () => {
    const { explanations } = headVapour({
      temperatureC: 78.0,
      pressureKPa: 101.325,
      temperatureUncertaintyK: 0.2,
      pressureUncertaintyKPa: 0.2,
    });
    expect(explanations).toEqual([]);
  });
});

/** Half a kelvin too cold twenty minutes after vapour, everything else known and in order. */
const gap: BelowAzeotropeGap = {
  shortfallK: 0.5,
  temperatureUncertaintyK: 0.1,
  pressureUncertaintyKPa: 0.1,
  pressurePerK: 4,
  rateKPerMin: 0,
  minutesSinceVapour: 20,
  responseTime90S: 20,
  pressureSource: 'channel',
  calibrated: true,
  distillateSeen: false,
};

/** How likely a cause is beside one that the difference does not touch. */
function odds(
  cause: BelowAzeotropeCause,
  beside: BelowAzeotropeCause,
  other: Partial<BelowAzeotropeGap>,
): number {
  const explanations = explainBelowAzeotrope({ ...gap, ...other });
  const weight = (wanted: BelowAzeotropeCause) =>
    explanations.find((explanation) => explanation.cause === wanted)?.weight ?? Number.NaN;
  return weight(cause) / weight(beside);
}

function without(...clues: readonly (keyof BelowAzeotropeClues)[]): Partial<BelowAzeotropeGap> {
  return Object.fromEntries(clues.map((clue) => [clue, undefined]));
}

describe('how likely a cause of a reading below the azeotrope is', () => {
  // Weights of judgement, common practice, no source.
  test.each([
    ['in the first five minutes', { minutesSinceVapour: 4.9 }, 1.5 / 0.7],
    ['five minutes after vapour', { minutesSinceVapour: 5 }, 1],
    ['where nobody knows when vapour came', without('minutesSinceVapour'), 1.5 / 0.7],
    ['while distillate drips', { distillateSeen: true }, 0.5],
    ['more than a kelvin too cold', { shortfallK: 1.01 }, 3],
    ['a kelvin too cold', { shortfallK: 1 }, 1],
    ['more than three kelvins too cold', { shortfallK: 3.01 }, 6],
    ['three kelvins too cold', { shortfallK: 3 }, 3],
  ])('a bulb that vapour does not bathe, %s', (_, other, times) => {
    // A probe at rest lags by nothing, whatever is known otherwise.
    const grown =
      odds('bulb-not-bathed', 'probe-lag', other) / odds('bulb-not-bathed', 'probe-lag', {});
    expect(grown).toBeCloseTo(times, 10);
  });

  test.each([
    ['in the first quarter of an hour', { minutesSinceVapour: 14.9 }, 5],
    ['a quarter of an hour after vapour', { minutesSinceVapour: 15 }, 1],
    ['where nobody knows when vapour came', without('minutesSinceVapour'), 5],
    ['while distillate drips', { distillateSeen: true }, 2],
    ['more than ten kelvins too cold', { shortfallK: 10.01 }, 0.3],
    ['ten kelvins too cold', { shortfallK: 10 }, 1],
    ['while the head cools by less than 0.3 K/min', { rateKPerMin: -0.29 }, 1],
    ['while the head cools by 0.3 K/min', { rateKPerMin: -0.3 }, 1 / 1.5],
    ['where nobody knows how fast the head moves', without('rateKPerMin'), 1],
  ])('lighter volatiles, %s', (_, other, times) => {
    // A falling head lags by nothing that would make it too cold.
    const grown =
      odds('lighter-volatiles', 'probe-lag', other) / odds('lighter-volatiles', 'probe-lag', {});
    expect(grown).toBeCloseTo(times, 10);
  });

  // A first-order probe trails a ramp by slope × t90 / ln 10; at 6 K/min and ln 10 × 10 s by 1 K.
  const ramp = { rateKPerMin: 6, responseTime90S: 10 * Math.LN10, minutesSinceVapour: 20 };
  test.each([
    ['that explains all of it', { ...ramp, shortfallK: 1 }, 6.1],
    ['that explains more than all of it', { ...ramp, shortfallK: 0.9 }, 6.1],
    ['that explains a half', { ...ramp, shortfallK: 2 }, 3.1 / 3],
    [
      'that explains nothing, since the head cools',
      { ...ramp, rateKPerMin: -6, shortfallK: 1 },
      0.1,
    ],
    [
      'of a probe of 20 s, where nobody knows it',
      { ...ramp, ...without('responseTime90S'), shortfallK: 2 },
      (0.1 + 6 / Math.LN10) / 3,
    ],
    [
      'of a head whose slope nobody knows',
      { ...ramp, ...without('rateKPerMin'), shortfallK: 1 },
      0.1,
    ],
  ])('a lag %s', (_, other, weight) => {
    // Beside a bulb that weighs 0.7 up to one kelvin, three times as much up to three.
    expect(odds('probe-lag', 'bulb-not-bathed', other)).toBeCloseTo(weight / 0.7, 10);
  });

  // As likely as a normal error of twice the spread: half a kelvin is 2 kPa at 4 kPa/K.
  const error = (spreads: number) => Math.exp(-0.5 * (spreads / 2) ** 2);
  test.each([
    ['that a channel brings, within 0.5 kPa', { pressureSource: 'channel' }, error(4)],
    ['that a channel brings with a greater doubt', { pressureUncertaintyKPa: 2 }, error(1)],
    ['of a barometer, within 1.5 kPa', { pressureSource: 'barometer' }, error(2 / 1.5)],
    [
      'of a barometer with a greater doubt',
      { pressureSource: 'barometer', pressureUncertaintyKPa: 2 },
      error(1),
    ],
    ['from the altitude, within 1.5 kPa', { pressureSource: 'altitude' }, error(2 / 1.5)],
    ['that was assumed, within 3 kPa', { pressureSource: 'assumed' }, error(2 / 3)],
    [
      'that was assumed with a greater doubt',
      { pressureSource: 'assumed', pressureUncertaintyKPa: 4 },
      error(0.5),
    ],
    ['from nobody knows where, within 3 kPa', without('pressureSource'), error(2 / 3)],
  ] as const)('a wrong pressure %s', (_, other, likely) => {
    expect(odds('wrong-pressure', 'bulb-not-bathed', other)).toBeCloseTo(
      (0.1 + 4 * likely) / 0.7,
      10,
    );
  });

  test.each([
    ['that was checked, within 0.1 K', {}, error(5)],
    ['that was not, within 0.5 K', { calibrated: false }, error(1)],
    ['of which nobody knows, within 0.5 K', without('calibrated'), error(1)],
    ['with a greater doubt of its own', { temperatureUncertaintyK: 1 }, error(0.5)],
  ])('a probe %s', (_, other, likely) => {
    expect(odds('calibration', 'bulb-not-bathed', other)).toBeCloseTo((0.1 + 3 * likely) / 0.7, 10);
  });
});

describe('the reason for a cause of a reading below the azeotrope', () => {
  const reasons = (other: Partial<BelowAzeotropeGap>) =>
    Object.fromEntries(
      explainBelowAzeotrope({ ...gap, ...other }).map(({ cause, reason }) => [cause, reason]),
    );

  test('says with numbers what it would take, and what to look at', () => {
    expect(reasons({ shortfallK: 1.234, rateKPerMin: 0.6 })).toEqual({
      'bulb-not-bathed':
        'The head still moves by 0.6 K/min: vapour may not bathe the whole bulb yet.',
      // 0.6 K/min × 20 s / ln 10.
      'probe-lag':
        'At 0.6 K/min a probe with a response time of 20 s trails by 0.09 K of the 1.23 K missing.',
      // 1.234 K × 4 kPa/K.
      'wrong-pressure':
        'The air pressure would have to be 4.9 kPa lower than its channel shows: hold it against a barometer in the room.',
      calibration: 'The probe was checked, yet it would have to read 1.23 K too low.',
      'lighter-volatiles':
        'Lighter volatiles may distil first; in a sugar ferment they are usually too little to lower the head temperature, so look for the other causes first.',
    });
  });

  test('is what the clues allow to be said', () => {
    const bulb = (other: Partial<BelowAzeotropeGap>) => reasons(other)['bulb-not-bathed'];
    const wet =
      'The bulb may not be bathed by vapour: see that it is wet and level with the side arm.';
    const drips =
      'Distillate drips, so vapour passes the head: the bulb may sit too high or too near the wall.';
    expect([
      bulb({}),
      bulb({ rateKPerMin: 0.5 }),
      bulb({ rateKPerMin: -0.6 }),
      bulb({ rateKPerMin: 0.6, distillateSeen: true }),
      bulb(without('rateKPerMin', 'distillateSeen')),
    ]).toEqual([
      wet,
      wet,
      'The head still moves by -0.6 K/min: vapour may not bathe the whole bulb yet.',
      drips,
      wet,
    ]);
    expect(reasons({ calibrated: false }).calibration).toBe(
      'The probe may read 0.50 K too low: check it in melting ice and in steam.',
    );
  });

  test('claims nothing that nobody said: neither a slope, nor a response time, nor an entered pressure', () => {
    const said = (other: Partial<BelowAzeotropeGap>) => {
      const { 'probe-lag': lag, 'wrong-pressure': wrong } = reasons(other);
      return [lag, wrong];
    };
    expect(said(without('rateKPerMin', 'responseTime90S', 'pressureSource'))).toEqual([
      'How fast the head moves is not known: while it climbs, a probe trails behind it.',
      'The air pressure would have to be 2.0 kPa lower than taken: see where it comes from, and that it is the local pressure, not the value reduced to sea level.',
    ]);
    expect(said({ ...without('responseTime90S'), rateKPerMin: 0.6 })[0]).toBe(
      'At 0.6 K/min a probe whose response time is not known (here 20 s) trails by 0.09 K of the 0.50 K missing.',
    );
    expect(
      (['barometer', 'altitude', 'assumed'] as const).map(
        (pressureSource) => said({ pressureSource })[1],
      ),
    ).toEqual(
      [
        'entered: see that it is the local pressure, not the value reduced to sea level.',
        'the altitude gives: enter what a barometer in the room shows.',
        'assumed: nobody entered one, so enter what a barometer in the room shows.',
      ].map((than) => `The air pressure would have to be 2.0 kPa lower than ${than}`),
    );
  });
});
